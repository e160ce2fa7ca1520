// How text becomes search terms: the one policy of the index, of the search and of the browser's search.
//
// 1. Each code point is folded (emit/index/fold.h). Runs of word characters are words; a point between two digits
//    belongs to its number. A word is cut to its first 60 bytes, at a code point.
// 2. A number (digits and points) and a unit of the list `is_unit`, with one blank between them, are one word:
//    `10 µF` is `10uf`.
// 3. Words with one joiner (or a point that is not in a number) between them are a compound. Its words are tokens of
//    sort `part`; a word alone is of sort `word`. Stop words are dropped from both, and count no place.
// 4. A compound of two to four words that holds a letter and a digit, and is at most 60 bytes joined, also gives its
//    words joined: `1N-4007` is `1n`, `4007` and `1n4007`.
// 5. A joined compound, or a word alone, also gives its base: without its last word, when that is at most three letters
//    and no digit; otherwise without the at most three letters after its last digit. `2N3904-Y` gives `2n3904` and
//    `pn2222a` gives `pn2222`. A base has a letter, at least one digit and three bytes, or at least four digits.
//    A number with its unit has none, nor a compound of such numbers.
// 6. The term of a token without digits is its stem (base/stem.h); of any other the token itself.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace benchlore {

struct SearchToken {
  enum class Sort { word, part, joined, base };
  std::string text; // folded
  Sort sort = Sort::word;
  std::uint32_t chunk = 0; // tokens of one compound share it
  std::uint32_t place = 0; // counts words and parts from 0; of a joined or base token: that of the first part
  std::size_t begin = 0;   // bytes of the text that it stands for
  std::size_t end = 0;
  bool operator==(const SearchToken&) const = default;
};

inline constexpr std::size_t longest_token = 60; // bytes; a Xapian term takes 245

std::vector<SearchToken> search_tokens(std::string_view text);

// The term under which a token is indexed and looked for.
std::string search_term(const SearchToken& token);

// The text of a name as one token, blanks and all: `1N 4007` gives `1n4007`. Empty when it has no letter, no digit, or
// more than three words or 60 bytes.
std::string name_term(std::string_view name);

bool is_stop_word(std::string_view word);
bool is_unit(std::string_view word);

} // namespace benchlore
