// The stemmer on words of the bench; tests/browser holds the script to the same table.
#include "base/files.h"
#include "base/stem.h"
#include "base/text.h"

#include <doctest/doctest.h>

using namespace benchlore;

TEST_CASE("stems agree with the table") {
  auto table = disk_files(BENCHLORE_ROOT)->read("tests/unit/site/stems.txt");
  REQUIRE(table);
  for (std::string_view line : split(*table, '\n')) {
    if (line.empty() || line.front() == '#') continue;
    auto blank = line.find(' ');
    CHECK(stem(line.substr(0, blank)) == line.substr(blank + 1));
  }
}
