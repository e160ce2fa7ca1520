// Text from notes made safe to print: what moves the cursor or turns the writing direction is shown as an escape.
#pragma once

#include <string>
#include <string_view>

namespace benchlore {

// One code point as printed, and the columns that it takes on a terminal.
struct Shown {
  std::string text;
  std::size_t width = 1;
};

Shown shown_point(char32_t point);

std::string shown(std::string_view text);

// A stretch of a line with a mark of `width` columns `before` columns into it.
struct Excerpt {
  std::string line;
  std::size_t before = 0;
  std::size_t width = 1;
};

// Cuts a line to about `most` code points around its bytes [begin, end); `…` stands where something was cut.
Excerpt excerpt(std::string_view line, std::size_t begin, std::size_t end, std::size_t most);

} // namespace benchlore
