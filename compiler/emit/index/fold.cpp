// The folding table of the search.
#include "emit/index/fold.h"

#include <array>

namespace benchlore {
namespace {

// U+00C0..U+017F, one after the other; `-` is no letter.
constexpr std::string_view latin = "a a a a a a ae c e e e e i i i i d n o o o o o - o u u u u y th ss "
                                   "a a a a a a ae c e e e e i i i i d n o o o o o - o u u u u y th y "
                                   "a a a a a a c c c c c c c c d d d d e e e e e e e e e e g g g g "
                                   "g g g g h h h h i i i i i i i i i i ij ij j j k k k l l l l l l l "
                                   "l l l n n n n n n n n n o o o o o o oe oe r r r r r r s s s s s s "
                                   "s s t t t t t t u u u u u u u u u u u u w w y y y z z z z z z s ";

constexpr auto latin_letters = [] {
  std::array<std::string_view, 192> letters{};
  std::size_t at = 0;
  for (std::string_view& letter : letters) {
    const std::size_t blank = latin.find(' ', at);
    letter = latin.substr(at, blank - at);
    at = blank + 1;
  }
  return letters;
}();

bool between(char32_t point, char32_t first, char32_t last) { return point >= first && point <= last; }

void append_utf8(std::string& out, char32_t point) {
  auto put = [&](char32_t byte) { out += static_cast<char>(static_cast<unsigned char>(byte)); };
  if (point < 0x800) {
    put(0xC0 | point >> 6);
  } else if (point < 0x10000) {
    put(0xE0 | point >> 12);
    put(0x80 | (point >> 6 & 0x3F));
  } else {
    put(0xF0 | point >> 18);
    put(0x80 | (point >> 12 & 0x3F));
    put(0x80 | (point >> 6 & 0x3F));
  }
  put(0x80 | (point & 0x3F));
}

Folded fold_ascii(char32_t point, std::string& out) {
  if (between(point, 'a', 'z') || between(point, '0', '9') || between(point, 'A', 'Z')) {
    out += static_cast<char>(between(point, 'A', 'Z') ? point + 32 : point);
    return Folded::word;
  }
  if (point == '\'') return Folded::nothing;
  if (point == '-' || point == '/' || point == '_') return Folded::joiner;
  if (point == '.') return Folded::point;
  return point == ' ' ? Folded::space : Folded::other;
}

char32_t lower_letter(char32_t point) {
  if (between(point, 0x391, 0x3A9) || between(point, 0x410, 0x42F)) return point + 0x20;
  return between(point, 0x400, 0x40F) ? point + 0x50 : point;
}

bool other_letter(char32_t point) {
  return between(point, 0x180, 0x1FFF) || between(point, 0x3041, 0xD7FF) || between(point, 0xF900, 0xFAFF) ||
         point >= 0x20000;
}

} // namespace

CodePoint code_point_at(std::string_view text, std::size_t offset) {
  auto byte = [&](std::size_t at) { return static_cast<unsigned char>(text[at]); };
  const unsigned char lead = byte(offset);
  if (lead < 0x80) return {lead, offset + 1};
  const std::size_t length = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : lead >= 0xC2 ? 2 : 1;
  if (length == 1 || offset + length > text.size()) return {0xFFFD, offset + 1};
  char32_t value = lead & (0xFFu >> (length + 1));
  for (std::size_t i = 1; i < length; ++i) {
    if ((byte(offset + i) & 0xC0) != 0x80) return {0xFFFD, offset + 1};
    value = value << 6 | (byte(offset + i) & 0x3Fu);
  }
  return {value, offset + length};
}

Folded fold(char32_t point, std::string& out) {
  if (point < 0x80) return fold_ascii(point, out);
  if (point == 0xA0 || point == 0x2009 || point == 0x202F) return Folded::space;
  if (point == 0xAD || between(point, 0x300, 0x36F) || point == 0x2019) return Folded::nothing;
  if (point == 0x2010 || point == 0x2011) return Folded::joiner;
  if (point == 0xB5 || point == 0x3BC) return out += 'u', Folded::word;
  if (point == 0x3A9 || point == 0x2126) return out += "ohm", Folded::word;
  if (between(point, 0xC0, 0x17F)) {
    const std::string_view letters = latin_letters[point - 0xC0];
    if (letters == "-") return Folded::other;
    return out += letters, Folded::word;
  }
  if (!other_letter(point)) return Folded::other;
  append_utf8(out, lower_letter(point));
  return Folded::word;
}

} // namespace benchlore
