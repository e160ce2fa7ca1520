// The text helpers on their edges.
#include "base/text.h"

#include <doctest/doctest.h>

using namespace benchlore;
using Strings = std::vector<std::string>;

TEST_CASE("trim takes white space off both ends only") {
  CHECK(trim(" \t a b \r\n") == "a b");
  CHECK(trim("   ").empty());
  CHECK(trim("").empty());
}

TEST_CASE("split keeps empty pieces") {
  CHECK(split("a,,b", ',') == std::vector<std::string_view>{"a", "", "b"});
  CHECK(split("", ',') == std::vector<std::string_view>{""});
  CHECK(split(",", ',').size() == 2);
}

TEST_CASE("join is the inverse of split") {
  CHECK(join(Strings{"a", "", "b"}, ",") == "a,,b");
  CHECK(join(Strings{}, ",").empty());
}

TEST_CASE("lower leaves bytes beyond ASCII alone") { CHECK(lower("ÄB1") == "Äb1"); }

TEST_CASE("well-formed UTF-8 is told from ill-formed") {
  for (const char* good : {"", "a", "Ω", "€", "😀", "\xF4\x8F\xBF\xBF"}) CHECK(valid_utf8(good));
  for (const char* bad : {"\x80", "\xC0\xAF", "\xC1\xBF", "\xE0\x80\xAF", "\xED\xA0\x80", "\xF4\x90\x80\x80",
                          "\xF5\x80\x80\x80", "\xE2\x82", "\xF0\x9F\x98", "a\xFF", "\xC3("}) {
    CHECK_FALSE(valid_utf8(bad));
  }
}

TEST_CASE("a code point survives being taken apart and put together") {
  for (const char32_t point : {U'a', U'\x7F', U'\x80', U'\x7FF', U'\x800', U'\xFFFF', U'\x10000', U'\x10FFFF'}) {
    std::string text;
    append_point(text, point);
    std::size_t at = 0;
    CHECK(next_point(text, at) == point);
    CHECK(at == text.size());
  }
}

TEST_CASE("an ill-formed byte is passed one at a time") {
  std::size_t at = 0;
  CHECK(next_point("\xE2\x82!", at) == bad_point);
  CHECK(at == 1);
}

TEST_CASE("code points are counted, not bytes") { CHECK(code_points("10 µF ±20 %") == 11); }

TEST_CASE("type numbers that differ in spacing have one key") {
  for (const char* name : {"1N 4007", "1n-4007", "1N4007", "1N/4007", "1n.4007"}) CHECK(type_key(name) == "1n4007");
  CHECK(type_key("BC547B") != type_key("BC547C"));
}

TEST_CASE("a slug has letters, digits and single hyphens") {
  CHECK(slug("  Replace the 10 µF -- twice! ") == "replace-the-10-µf-twice");
  CHECK(slug("Öl – Wechsel") == "Öl-wechsel");
  CHECK(slug("4.7 kΩ") == "4-7-kΩ");
  CHECK(slug("---").empty());
  CHECK(slug("a\xFF") == "a");
}

TEST_CASE("near names come nearest first") {
  const Strings known{"voltage", "current", "capacitance", "voltage_drop", "tolerance"};
  CHECK(near_names("votlage", known) == Strings{"voltage"});
  CHECK(near_names("voltage_", known) == Strings{"voltage", "voltage_drop"});
  CHECK(near_names("colour", known).empty());
  CHECK(near_names("", known).empty());
  CHECK(near_names("voltage", known, 1) == Strings{"voltage"});
}

TEST_CASE("alternatives read as a sentence") {
  CHECK(alternatives(Strings{}) == "nothing");
  CHECK(alternatives(Strings{"a"}) == "`a`");
  CHECK(alternatives(Strings{"a", "b"}) == "`a` or `b`");
  CHECK(alternatives(Strings{"a", "b", "c"}) == "`a`, `b` or `c`");
}
