// Text brought to the small alphabet in which the search compares: one code point at a time.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace benchlore {

// One code point of well-formed UTF-8 and the offset of the next; a stray byte counts as U+FFFD.
struct CodePoint {
  char32_t value = 0;
  std::size_t next = 0;
};
CodePoint code_point_at(std::string_view text, std::size_t offset);

enum class Folded {
  word,    // part of a word: `out` holds what it becomes
  nothing, // vanishes without ending a word: combining marks, soft hyphens, apostrophes
  joiner,  // `-`, `/`, `_`: joins the words on both sides
  point,   // a full stop: part of a number between digits, otherwise a joiner
  space,   // one blank, which may stand between a number and its unit
  other,   // ends a word
};

// What a code point is to the search.
//   word     ASCII letters and digits, in lower case; U+00C0..U+017F without accents (`ß` ss, `æ` ae, `ø` o, `ð` d,
//            `þ` th, `đ` d, `ħ` h, `ı` i, `ĳ` ij, `ĸ` k, `ł` l, `ŋ` n, `œ` oe, `ŧ` t, `ſ` s); `µ` and `μ` u; `Ω`
//            (U+03A9, U+2126) ohm; other letters (U+0180..U+1FFF, U+3041..U+D7FF, U+F900..U+FAFF, from U+20000) as they
//            are, Greek and Cyrillic in lower case
//   nothing  U+00AD, U+0300..U+036F, `'`, U+2019
//   joiner   `-`, `/`, `_`, U+2010, U+2011
//   point    `.`
//   space    a blank, U+00A0, U+2009, U+202F
Folded fold(char32_t point, std::string& out);

} // namespace benchlore
