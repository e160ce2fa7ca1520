// JSON text, byte by byte.
#include "base/json.h"

#include <doctest/doctest.h>

#include <limits>

using namespace benchlore;

namespace {

std::string number(double value) {
  JsonWriter json;
  json.value(value);
  return json.text();
}

} // namespace

TEST_CASE("commas stand between members and nowhere else") {
  JsonWriter json;
  json.object();
  json.field("a", 1);
  json.key("b");
  json.list();
  json.value("x");
  json.object();
  json.end();
  json.list();
  json.end();
  json.null();
  json.end();
  json.field("c", true);
  json.field("d", std::string("e"));
  json.end();
  CHECK(json.text() == R"({"a":1,"b":["x",{},[],null],"c":true,"d":"e"})");
}

TEST_CASE("a number is as short as it can be and reads back") {
  CHECK(number(0.1) == "0.1");
  CHECK(number(4700) == "4700");
  CHECK(number(1e-12) == "1e-12");
  CHECK(number(0.1 + 0.2) == "0.30000000000000004");
  CHECK(number(-0.5) == "-0.5");
}

TEST_CASE("what is no number is null") {
  CHECK(number(std::numeric_limits<double>::quiet_NaN()) == "null");
  CHECK(number(std::numeric_limits<double>::infinity()) == "null");
}

TEST_CASE("integers of every width are written plainly") {
  JsonWriter json;
  json.list();
  json.value(-7);
  json.value(std::uint32_t{4294967295u});
  json.value(std::size_t{12});
  json.value(-9007199254740993LL);
  json.end();
  CHECK(json.text() == "[-7,4294967295,12,-9007199254740993]");
}

TEST_CASE("quotes, controls and bad bytes are escaped") {
  CHECK(json_escape("a\"b\\c\n\t\x01") == R"(a\"b\\c\n\t\u0001)");
  CHECK(json_escape("10 µF 😀") == "10 µF 😀");
  CHECK(json_escape("\xFF") == "\xEF\xBF\xBD");
}

TEST_CASE("the text may stand in a script") {
  CHECK(json_escape("</script>&") == R"(\u003c/script\u003e\u0026)");
  CHECK(json_escape("\u2028\u2029") == R"(\u2028\u2029)");
}
