// Bytes to lines and columns.
#include "report/span.h"

#include <doctest/doctest.h>

using namespace benchlore;

namespace {

void check_place(const Sources& sources, Span span, std::uint32_t line, std::uint32_t column, std::uint32_t end_line,
                 std::uint32_t end_column) {
  const Place place = sources.place(span);
  CHECK(place.line == line);
  CHECK(place.column == column);
  CHECK(place.end_line == end_line);
  CHECK(place.end_column == end_column);
}

} // namespace

TEST_CASE("lines and columns count from one, and columns are code points") {
  Sources sources;
  const FileId file = sources.add("a.md", "µF: 10\r\nΩ\n");
  check_place(sources, {file, 0, 3}, 1, 1, 1, 3);
  check_place(sources, {file, 5, 7}, 1, 5, 1, 7);
  check_place(sources, {file, 9, 11}, 2, 1, 2, 2);
  check_place(sources, {file, 0, 11}, 1, 1, 2, 2);
  CHECK(sources.place({file, 0, 0}).path == "a.md");
}

TEST_CASE("a span beyond the file is cut to it") {
  Sources sources;
  const FileId file = sources.add("a.md", "ab\ncd");
  check_place(sources, {file, 90, 95}, 2, 3, 2, 3);
  check_place(sources, {file, 4, 1}, 2, 2, 2, 2);
  CHECK(sources.text(Span{file, 3, 900}) == "cd");
  CHECK(sources.text(Span{file, 4, 1}).empty());
}

TEST_CASE("a span without a file is nowhere") {
  Sources sources;
  check_place(sources, {}, 0, 0, 0, 0);
  CHECK(sources.text(Span{}).empty());
  CHECK(sources.path(FileId{}).empty());
  CHECK(sources.line_of({}).empty());
}

TEST_CASE("the line of a span has no line end") {
  Sources sources;
  const FileId file = sources.add("a.md", "one\r\ntwo\nthree");
  CHECK(sources.line_of({file, 1, 2}) == "one");
  CHECK(sources.line_of({file, 3, 3}) == "one");
  CHECK(sources.line_of({file, 6, 12}) == "two");
  CHECK(sources.line_of({file, 14, 14}) == "three");
}
