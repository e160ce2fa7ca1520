// Lexical questions of the quantity parser, answered on the original bytes so that offsets stay true.
#include "base/text.h"
#include "quantity/reader.h"

#include <array>

namespace benchlore {
namespace {

std::size_t one_of_at(std::string_view text, std::size_t at, std::span<const std::string_view> signs) {
  if (at >= text.size()) return 0;
  for (std::string_view sign : signs) {
    if (text.substr(at).starts_with(sign)) return sign.size();
  }
  return 0;
}

bool letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }

// Length of the non-ASCII character at `at` when it may belong to a unit (or to a word mistaken for one).
std::size_t foreign_at(std::string_view text, std::size_t at) {
  constexpr std::array<std::string_view, 8> others{"±", "\u2212", "\u2013", "\u2014", "…", "≤", "≥", "×"};
  if (static_cast<unsigned char>(text[at]) < 0x80 || space_at(text, at) > 0 || one_of_at(text, at, others) > 0)
    return 0;
  std::size_t next = at;
  next_point(text, next);
  return next - at;
}

bool begins_factor(std::string_view text, std::size_t at) {
  return at < text.size() && (letter(text[at]) || text[at] == '%' || foreign_at(text, at) > 0);
}

// Length of the piece of a unit at `at`: `/` belongs to it only before a further factor.
std::size_t unit_piece_at(std::string_view text, std::size_t at, bool first) {
  char c = text[at];
  if (letter(c) || c == '%') return 1;
  if (first) return foreign_at(text, at);
  if (digit_at(text, at)) return 1;
  if (c == '/' || c == '*') return begins_factor(text, at + 1) ? 1 : 0;
  if (c == '^') return at + 1 < text.size() && text[at + 1] == '-' ? 2 : 1;
  return foreign_at(text, at);
}

} // namespace

bool Reader::take(std::string_view sign) {
  if (!rest().starts_with(sign)) return false;
  at += sign.size();
  return true;
}

void Reader::skip_space() {
  while (std::size_t length = space_at(text, at)) at += length;
}

bool Reader::fail(std::size_t offset, std::size_t length, std::string message, std::string way_out) {
  if (!error) error = QuantityError{offset, length, std::move(message), std::move(way_out)};
  return false;
}

std::size_t space_at(std::string_view text, std::size_t at) {
  constexpr std::array<std::string_view, 7> spaces{" ", "\t", "\n", "\r", "\u00A0", "\u2009", "\u202F"};
  return one_of_at(text, at, spaces);
}

std::size_t sign_at(std::string_view text, std::size_t at) {
  constexpr std::array<std::string_view, 3> signs{"+", "-", "\u2212"};
  return one_of_at(text, at, signs);
}

bool digit_at(std::string_view text, std::size_t at) { return at < text.size() && text[at] >= '0' && text[at] <= '9'; }

bool number_at(std::string_view text, std::size_t at) {
  at += sign_at(text, at);
  return digit_at(text, at) || (at < text.size() && text[at] == '.' && digit_at(text, at + 1));
}

std::string_view limit_word_at(std::string_view text, std::size_t at) {
  constexpr std::array<std::string_view, 3> words{"min", "typ", "max"};
  if (at >= text.size() || (at + 3 < text.size() && letter(text[at + 3]))) return {};
  std::string word = lower(text.substr(at, 3));
  for (std::string_view known : words) {
    if (word == known) return known;
  }
  return {};
}

std::size_t unit_end(std::string_view text, std::size_t at) {
  for (bool first = true; at < text.size(); first = false) {
    std::size_t length = unit_piece_at(text, at, first);
    if (length == 0) break;
    at += length;
  }
  return at;
}

std::string quoted(std::string_view text) {
  constexpr std::size_t longest = 40;
  if (text.size() <= longest) return "`" + std::string(text) + "`";
  std::size_t end = longest;
  while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0) == 0x80) --end;
  return "`" + std::string(text.substr(0, end)) + "…`";
}

} // namespace benchlore
