// Small questions about text that every layer asks: trimming, splitting, case, UTF-8, near names.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace benchlore {

// The text without leading and trailing white space.
std::string_view trim(std::string_view text);

// The pieces between separators; "a,,b" has three, "" has one empty piece.
std::vector<std::string_view> split(std::string_view text, char separator);

// The text joined with a separator between the pieces.
std::string join(std::span<const std::string> pieces, std::string_view separator);

// ASCII letters in lower case; other bytes unchanged.
std::string lower(std::string_view text);

// True when the bytes are well-formed UTF-8 (no overlong forms, no surrogates).
bool valid_utf8(std::string_view bytes);

// The code point at `at`, which moves past it; bytes that are no UTF-8 give `bad_point` one at a time.
inline constexpr char32_t bad_point = 0xFFFFFFFF;
char32_t next_point(std::string_view text, std::size_t& at);

void append_point(std::string& text, char32_t point);

// Number of code points in well-formed UTF-8.
std::size_t code_points(std::string_view text);

// The key under which type numbers and markings meet: letters lower-cased, spaces, hyphens, dots and
// slashes dropped, so `1N 4007`, `1n-4007` and `1N4007` are one. Suffix letters are kept.
std::string type_key(std::string_view text);

// A word in a form fit for an HTML id or a file name: lower case, letters, digits and single hyphens.
// Letters beyond ASCII stay as they are; dashes, quotes and other signs count as spaces.
std::string slug(std::string_view text);

// Up to `limit` of the known names nearest to a word that is none of them, nearest first.
std::vector<std::string> near_names(std::string_view word, std::span<const std::string> known, std::size_t limit = 4);

// `nothing`, `a`, `a or b`, `a, b or c`, each in backticks.
std::string alternatives(std::span<const std::string> names);

} // namespace benchlore
