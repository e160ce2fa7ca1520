// What stands in the index beside words: filter terms, value slots, metadata and a note's stored lines.
#pragma once

#include "link/shop.h"

#include <cstdint>
#include <map>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace benchlore {

// Filter terms: prefix, then the name in lower case. They do not count in a note's length.
struct FilterRow {
  std::string_view name;   // as written in a query: `kind:fault`
  std::string_view prefix; // of its terms; words are lower-case, so that they never meet one
};
inline constexpr FilterRow filter_rows[]{
    {"kind", "XK"}, {"class", "XC"},   {"tag", "XT"}, {"equipment", "XE"}, {"board", "XB"},
    {"part", "XP"}, {"symptom", "XS"}, {"id", "Q"},   {"role", "XO"},      {"verdict", "XV"},
};
std::string filter_term(std::string_view filter, std::string_view value);
// Of a rating that holds words: `polarity:bipolar`.
std::string rating_term(std::string_view rating, std::string_view word);

// A slot for each pair of rating and unit that the schema knows: a hash of both, counted up past one that is taken.
struct RatingSlot {
  std::string unit; // as schema/ writes it; empty for words
  std::uint32_t slot = 0;
};
using RatingSlots = std::multimap<std::string, RatingSlot, std::less<>>;
RatingSlots rating_slots(const Schema& schema);
std::uint32_t slot_of(const RatingSlots& slots, std::string_view rating, std::string_view unit); // 0: none

// Metadata `format`, `ratings` (lines `name<TAB>unit<TAB>slot`) and `synonyms` (lines of terms: words of a member with
// blanks, members with tabs between them).
inline constexpr std::string_view index_format = "benchlore-index 1";
std::string to_metadata(const RatingSlots& slots);
RatingSlots slots_from(std::string_view metadata);

using SynonymGroup = std::vector<std::vector<std::string>>; // members as terms
std::vector<SynonymGroup> synonym_groups(const Schema& schema);
std::string to_metadata(const std::vector<SynonymGroup>& groups);
std::vector<SynonymGroup> groups_from(std::string_view metadata);

// What a hit shows, kept as six lines.
struct StoredNote {
  std::string id, kind, title, path, class_name, text;
};
inline constexpr std::size_t stored_text = 400; // bytes
std::string to_lines(const StoredNote& note);
StoredNote note_from(std::string_view lines);

// Blanks and line ends as one blank each, cut before `most` bytes at a code point.
std::string flat_text(std::string_view text, std::size_t most);

} // namespace benchlore
