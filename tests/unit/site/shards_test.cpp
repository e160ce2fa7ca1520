// Data for the browser: numbers as code points, ranges that can be looked up.
#include "base/text.h"
#include "emit/site/shards.h"

#include <doctest/doctest.h>

using namespace benchlore;

TEST_CASE("numbers are well-formed text without quotes or backslashes") {
  for (std::uint32_t value : {0u, 1u, 56u, 57u, 58u, 92u, 2000u, 55000u, 55260u, 55261u, 60000u, 60001u, 1000000u}) {
    std::string code = as_code_point(value);
    CHECK_MESSAGE(valid_utf8(code), value);
    CHECK_MESSAGE(code.find_first_of("\"\\\n\r") == std::string::npos, value);
  }
  CHECK(as_code_point(0) == "#");
}

TEST_CASE("entries are cut into files of even size") {
  std::vector<ShardEntry> entries;
  for (int i = 1000; i < 1100; ++i) entries.push_back({std::to_string(i), "\"" + std::string(1000, 'x') + "\""});
  MemoryFiles out;
  ShardFiles files = write_shards("terms", entries, ShardJoin::object, out);
  REQUIRE(files.written);
  CHECK(files.first_keys.size() == 4);
  CHECK(files.first_keys.front() == "1000");
  auto first = out.read("data/terms/0.js");
  REQUIRE(first);
  CHECK(first->starts_with("benchloreData(\"terms/0\",{\"1000\":\"xxx"));
  CHECK(first->size() < 34 * 1024);
}

TEST_CASE("an entry that is too long for a file has one to itself") {
  MemoryFiles out;
  ShardFiles files =
      write_shards("w", {{"a", "1"}, {"b", std::string(40000, '2')}, {"c", "3"}}, ShardJoin::string, out);
  CHECK(files.first_keys == std::vector<std::string>{"a", "b", "c"});
}
