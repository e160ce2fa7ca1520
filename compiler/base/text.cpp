// Text helpers over bytes: ASCII is folded, everything beyond it is decoded only where code points count.
#include "base/text.h"

#include <algorithm>
#include <utility>

namespace benchlore {

namespace {

bool is_space(char c) { return c == ' ' || (c >= '\t' && c <= '\r'); }
bool is_upper(char c) { return c >= 'A' && c <= 'Z'; }
bool is_word(char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9'); }
char lower_letter(char c) { return is_upper(c) ? static_cast<char>(c - 'A' + 'a') : c; }

bool within(char32_t point, char32_t first, char32_t last) { return point >= first && point <= last; }

// Signs, dashes and spaces beyond ASCII that do not belong in an id; the ohm, kelvin and micro signs do.
bool is_sign(char32_t point) {
  if (point == 0xAA || point == 0xB5 || point == 0xBA || within(point, 0x2100, 0x214F)) return false;
  return within(point, 0x80, 0xBF) || point == 0xD7 || point == 0xF7 || within(point, 0x2000, 0x2BFF) ||
         within(point, 0x3000, 0x303F) || within(point, 0xFE00, 0xFE0F) || within(point, 0xFEFF, 0xFEFF) ||
         point >= 0xFFF0;
}

// Bytes of the sequence that a lead byte begins; 0 when it begins none.
std::size_t sequence_length(unsigned char lead) {
  if (lead < 0x80) return 1;
  if (lead >= 0xC2 && lead <= 0xDF) return 2;
  if (lead >= 0xE0 && lead <= 0xEF) return 3;
  return lead >= 0xF0 && lead <= 0xF4 ? 4 : 0;
}

// Edits (insert, drop, change, swap of neighbours) that lead from one word to the other.
std::size_t edits(std::string_view from, std::string_view to) {
  std::vector<std::size_t> before, last(to.size() + 1), now(to.size() + 1);
  for (std::size_t j = 0; j <= to.size(); ++j) last[j] = j;
  for (std::size_t i = 1; i <= from.size(); ++i) {
    now[0] = i;
    for (std::size_t j = 1; j <= to.size(); ++j) {
      const std::size_t change = last[j - 1] + (from[i - 1] == to[j - 1] ? 0 : 1);
      now[j] = std::min({last[j] + 1, now[j - 1] + 1, change});
      const bool swapped = i > 1 && j > 1 && from[i - 1] == to[j - 2] && from[i - 2] == to[j - 1];
      if (swapped) now[j] = std::min(now[j], before[j - 2] + 1);
    }
    before = last;
    last = now;
  }
  return last[to.size()];
}

} // namespace

std::string_view trim(std::string_view text) {
  while (!text.empty() && is_space(text.front())) text.remove_prefix(1);
  while (!text.empty() && is_space(text.back())) text.remove_suffix(1);
  return text;
}

std::vector<std::string_view> split(std::string_view text, char separator) {
  std::vector<std::string_view> pieces;
  for (std::size_t at = text.find(separator); at != std::string_view::npos; at = text.find(separator)) {
    pieces.push_back(text.substr(0, at));
    text.remove_prefix(at + 1);
  }
  pieces.push_back(text);
  return pieces;
}

std::string join(std::span<const std::string> pieces, std::string_view separator) {
  std::string out;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    if (i > 0) out += separator;
    out += pieces[i];
  }
  return out;
}

std::string lower(std::string_view text) {
  std::string out(text);
  std::transform(out.begin(), out.end(), out.begin(), lower_letter);
  return out;
}

char32_t next_point(std::string_view text, std::size_t& at) {
  const auto lead = static_cast<unsigned char>(text[at]);
  const std::size_t length = sequence_length(lead);
  ++at;
  if (length == 0 || text.size() - (at - 1) < length) return bad_point;
  if (length == 1) return lead;
  char32_t point = lead & (0x7Fu >> length);
  for (std::size_t i = 0; i + 1 < length; ++i) {
    const auto byte = static_cast<unsigned char>(text[at + i]);
    if ((byte & 0xC0) != 0x80) return bad_point;
    point = (point << 6) | (byte & 0x3Fu);
  }
  const bool overlong = (length == 3 && point < 0x800) || (length == 4 && point < 0x10000);
  if (overlong || within(point, 0xD800, 0xDFFF) || point > 0x10FFFF) return bad_point;
  at += length - 1;
  return point;
}

void append_point(std::string& text, char32_t point) {
  const auto put = [&](char32_t byte) { text += static_cast<char>(byte); };
  if (point < 0x80) return put(point);
  if (point < 0x800) {
    put(0xC0 | (point >> 6));
  } else if (point < 0x10000) {
    put(0xE0 | (point >> 12));
    put(0x80 | ((point >> 6) & 0x3F));
  } else {
    put(0xF0 | (point >> 18));
    put(0x80 | ((point >> 12) & 0x3F));
    put(0x80 | ((point >> 6) & 0x3F));
  }
  put(0x80 | (point & 0x3F));
}

bool valid_utf8(std::string_view bytes) {
  for (std::size_t at = 0; at < bytes.size();) {
    if (next_point(bytes, at) == bad_point) return false;
  }
  return true;
}

std::size_t code_points(std::string_view text) {
  const auto starts = [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; };
  return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), starts));
}

std::string type_key(std::string_view text) {
  std::string key;
  for (const char c : text) {
    if (!is_space(c) && c != '-' && c != '.' && c != '/') key += lower_letter(c);
  }
  return key;
}

std::string slug(std::string_view text) {
  std::string out;
  bool gap = false;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t begin = at;
    const char32_t point = next_point(text, at);
    const bool kept = point < 0x80 ? is_word(lower_letter(static_cast<char>(point))) : !is_sign(point);
    if (kept && gap && !out.empty()) out += '-';
    if (kept) out += lower(text.substr(begin, at - begin));
    gap = !kept;
  }
  return out;
}

std::vector<std::string> near_names(std::string_view word, std::span<const std::string> known, std::size_t limit) {
  constexpr std::size_t longest = 64; // beyond this nobody mistypes, and the comparison would cost too much
  if (word.empty() || word.size() > longest) return {};
  const std::string wanted = lower(word);
  const std::size_t most = std::max<std::size_t>(1, std::min<std::size_t>(3, wanted.size() / 3));
  std::vector<std::pair<std::size_t, std::string>> found;
  for (const std::string& name : known) {
    if (name.empty() || name.size() > longest) continue;
    const std::string other = lower(name);
    const bool begins = wanted.size() >= 3 && (other.starts_with(wanted) || wanted.starts_with(other));
    const std::size_t distance = edits(wanted, other);
    if (distance <= most || begins) found.emplace_back(std::min(distance, most + 1), name);
  }
  std::sort(found.begin(), found.end());
  found.erase(std::unique(found.begin(), found.end()), found.end());
  std::vector<std::string> names;
  for (std::size_t i = 0; i < std::min(limit, found.size()); ++i) names.push_back(found[i].second);
  return names;
}

std::string alternatives(std::span<const std::string> names) {
  if (names.empty()) return "nothing";
  std::string out;
  for (std::size_t i = 0; i < names.size(); ++i) {
    if (i > 0) out += i + 1 == names.size() ? " or " : ", ";
    out += '`' + names[i] + '`';
  }
  return out;
}

} // namespace benchlore
