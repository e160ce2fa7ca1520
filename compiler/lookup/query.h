// A query as written, taken apart, and made into one for Xapian.
#pragma once

#include "emit/index/index_format.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>
#include <xapian.h>

namespace benchlore {

// `-field:"value"`, `"a phrase"` or a word.
struct QueryItem {
  std::string field; // in lower case, or empty
  std::string text;
  bool quoted = false;
  bool excluded = false;
  std::size_t begin = 0, end = 0; // of the text in the query
};
std::vector<QueryItem> query_items(std::string_view query);

// What the index says about how to read a query.
struct QueryRules {
  RatingSlots slots;
  std::vector<SynonymGroup> synonyms;
};
QueryRules query_rules(const Xapian::Database& database);

struct ReadQuery {
  Xapian::Query query;
  std::vector<std::string> terms; // that an excerpt shows, synonyms too
  std::vector<QueryItem> plain;   // words, not phrases, for the spelling
};

// Nothing, with the reason, when a value cannot be understood.
std::optional<ReadQuery> read_query(std::string_view query, const QueryRules& rules, std::string& error);

} // namespace benchlore
