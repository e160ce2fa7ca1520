// Searches the full-text index.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace benchlore {

struct Hit {
  std::string id, kind, title, path;
  double score = 0; // BM25, as emit/index/ranking.h says
  std::string excerpt;
};

struct SearchAnswer {
  std::vector<Hit> hits;   // best first; equal ones by id
  std::size_t matches = 0; // about how many notes match; exact when it is at most `count_up_to`
  std::string suggestion;  // the query with words of the index in place of unknown ones, or empty
};

struct SearchOptions {
  std::size_t limit = 20;
  std::size_t skip = 0;
  std::size_t count_up_to = 200;
  std::size_t excerpt = 200;                  // bytes, about
  std::string mark_begin = {}, mark_end = {}; // around each word of the query in an excerpt
};

// The query: words of which any may match, the more and the rarer the better; `"words in this order"`;
// `kind:fault`, also class, tag, equipment, board, part, symptom, role, verdict, id (the same twice: either; different
// ones: all); `capacitance:10uF..47uF`, `capacitance:10uF`, `capacitance:10uF..` for the nominal value,
// `polarity:bipolar` for ratings in words; `-` before any of these leaves its notes out. Quotes keep blanks in a value:
// `tag:"dead set"`. Nothing, with the reason, when the index cannot be read or a value of the query cannot be
// understood. A folder may hold a stub database that names several indexes.
std::optional<SearchAnswer> search(const std::string& index_folder, std::string_view query,
                                   const SearchOptions& options, std::string& error);

} // namespace benchlore
