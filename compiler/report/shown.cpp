// Widths are those of common terminals, by ranges: an exact table would be longer than it helps.
#include "report/shown.h"

#include "base/text.h"

#include <algorithm>
#include <cstdio>
#include <vector>

namespace benchlore {

namespace {

struct Range {
  char32_t first, last;
};

// Controls, and formatting characters that nobody sees.
constexpr Range hidden[] = {{0x00, 0x1F},     {0x7F, 0x9F},     {0xAD, 0xAD},      {0x61C, 0x61C},
                            {0x180E, 0x180E}, {0x200B, 0x200F}, {0x2028, 0x202E},  {0x2060, 0x206F},
                            {0xFEFF, 0xFEFF}, {0xFFF9, 0xFFFB}, {0xE0000, 0xE0FFF}};
constexpr Range combining[] = {{0x300, 0x36F}, {0x1AB0, 0x1AFF}, {0x1DC0, 0x1DFF}, {0x20D0, 0x20FF}, {0xFE00, 0xFE0F}};
constexpr Range wide[] = {{0x1100, 0x115F},   {0x2E80, 0xA4CF},  {0xAC00, 0xD7A3}, {0xF900, 0xFAFF},
                          {0xFE30, 0xFE6F},   {0xFF00, 0xFF60},  {0xFFE0, 0xFFE6}, {0x1F300, 0x1F64F},
                          {0x1F680, 0x1FAFF}, {0x20000, 0x3FFFD}};

template <std::size_t N> bool in(const Range (&ranges)[N], char32_t point) {
  return std::any_of(ranges, ranges + N, [&](Range range) { return point >= range.first && point <= range.last; });
}

struct Point {
  char32_t point;
  std::size_t at; // its first byte in the line
};

std::vector<Point> points_of(std::string_view line) {
  std::vector<Point> points;
  for (std::size_t at = 0; at < line.size();) {
    const std::size_t begin = at;
    points.push_back({next_point(line, at), begin});
  }
  return points;
}

// The stretch of points to keep: all of them, or `most` with a third of the room before the mark.
std::pair<std::size_t, std::size_t> stretch(std::size_t count, std::size_t mark, std::size_t most) {
  if (count <= most) return {0, count};
  const std::size_t first = std::min(mark > most / 3 ? mark - most / 3 : 0, count - most);
  return {first, first + most};
}

} // namespace

Shown shown_point(char32_t point) {
  if (point == '\t') return {"    ", 4};
  if (point == bad_point) return {"\xEF\xBF\xBD", 1};
  if (in(hidden, point)) {
    char buffer[16];
    std::snprintf(buffer, sizeof buffer, "\\u{%x}", static_cast<unsigned>(point));
    return {buffer, std::string_view(buffer).size()};
  }
  Shown plain;
  append_point(plain.text, point);
  plain.width = in(combining, point) ? 0 : in(wide, point) ? 2 : 1;
  return plain;
}

std::string shown(std::string_view text) {
  std::string out;
  for (std::size_t at = 0; at < text.size();) out += shown_point(next_point(text, at)).text;
  return out;
}

Excerpt excerpt(std::string_view line, std::size_t begin, std::size_t end, std::size_t most) {
  const std::vector<Point> points = points_of(line);
  const auto before_begin = [&](const Point& point) { return point.at < begin; };
  const auto mark = static_cast<std::size_t>(std::count_if(points.begin(), points.end(), before_begin));
  const auto [first, last] = stretch(points.size(), mark, most);
  Excerpt out{first > 0 ? "…" : "", first > 0 ? 1u : 0u, 0};
  for (std::size_t i = first; i < last; ++i) {
    const Shown one = shown_point(points[i].point);
    out.line += one.text;
    if (points[i].at < begin) out.before += one.width;
    if (points[i].at >= begin && points[i].at < end) out.width += one.width;
  }
  if (last < points.size()) out.line += "…";
  out.width = std::max<std::size_t>(out.width, 1);
  return out;
}

} // namespace benchlore
