// Anchors of headings: lower case, spaces to hyphens, signs dropped, as the common forges do it, so that a link written
// for one of them works here.
#include "base/text.h"
#include "notes/tree.h"

#include <algorithm>

namespace benchlore {
namespace {

bool is_sign(char32_t point) {
  return (point >= 0xA1 && point <= 0xBF && point != 0xAA && point != 0xB2 && point != 0xB3 && point != 0xB5 &&
          point != 0xB9 && point != 0xBA) ||
         point == 0xD7 || point == 0xF7 || (point >= 0x2000 && point <= 0x206F) ||
         (point >= 0x20A0 && point <= 0x20CF) || (point >= 0x2190 && point <= 0x2BFF) ||
         (point >= 0x3000 && point <= 0x303F) || point >= 0x1F000;
}

char32_t lowered(char32_t point) {
  if ((point >= 'A' && point <= 'Z') || (point >= 0xC0 && point <= 0xDE && point != 0xD7)) return point + 32;
  if ((point >= 0x391 && point <= 0x3A9) || (point >= 0x410 && point <= 0x42F)) return point + 32;
  return point;
}

bool is_kept(char32_t point) {
  if (point >= 0x80) return !is_sign(point);
  return (point >= '0' && point <= '9') || (point >= 'a' && point <= 'z') || point == '-' || point == '_';
}

std::string anchor_of(std::string_view heading) {
  std::string anchor;
  for (std::size_t at = 0; at < heading.size();) {
    const char32_t point = lowered(next_point(heading, at));
    if (point == ' ' || point == '\t' || point == 0xA0) {
      anchor += '-';
    } else if (point != bad_point && is_kept(point)) {
      append_point(anchor, point);
    }
  }
  return anchor.empty() ? "section" : anchor;
}

} // namespace

std::string Anchors::next(std::string_view heading) {
  const std::string plain = anchor_of(trim(heading));
  std::string anchor = plain;
  for (std::size_t& count = counts_[plain]; taken_.contains(anchor);) anchor = plain + "-" + std::to_string(++count);
  taken_.insert(anchor);
  return anchor;
}

} // namespace benchlore
