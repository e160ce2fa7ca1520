// Preferred values against a published table, and codes of IEC 60062 against the published letters.
#include "quantity/marking_code.h"
#include "quantity/preferred.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <vector>

using namespace benchlore;

namespace {

#include "e_series.inc"

int rounded(int series, std::size_t index, int decade) {
  double exact = decade * std::pow(10.0, static_cast<double>(index) / series);
  return static_cast<int>(std::lround(exact));
}

} // namespace

TEST_CASE("every series equals the published one") {
  for (const PublishedSeries& published : published_series) {
    auto values = preferred_values(published.series);
    REQUIRE(values.size() == static_cast<std::size_t>(published.series));
    std::vector<int> scaled;
    for (int value : published.values) scaled.push_back(value * published.scale);
    CHECK(std::equal(values.begin(), values.end(), scaled.begin(), scaled.end()));
  }
}

TEST_CASE("the fine series are rounded powers except for one value") {
  for (int series : {48, 96, 192}) {
    auto values = preferred_values(series);
    for (std::size_t i = 0; i < values.size(); ++i) {
      if (values[i] == 920) continue; // 919 by the formula
      CHECK(values[i] == rounded(series, i, 100));
    }
  }
}

TEST_CASE("the historic series differ from rounded powers in eight known places") {
  const std::map<int, int> exceptions{{260, 270}, {290, 300}, {320, 330}, {350, 360},
                                      {380, 390}, {420, 430}, {460, 470}, {830, 820}};
  auto values = preferred_values(24);
  for (std::size_t i = 0; i < values.size(); ++i) {
    int computed = 10 * rounded(24, i, 10);
    auto exception = exceptions.find(computed);
    CHECK(values[i] == (exception == exceptions.end() ? computed : exception->second));
  }
}

TEST_CASE("another series is empty") {
  for (int series : {-1, 0, 1, 5, 7, 25, 100, 384}) CHECK(preferred_values(series).empty());
}

// IEC 60062 as transcribed by 3bmdesign.com and by the Wikipedia article on the RKM code.
TEST_CASE("tolerance letters are the published ones") {
  struct Row {
    char letter;
    const char* minus;
    const char* plus;
  };
  const std::vector<Row> rows{{'B', "0.1", "0.1"}, {'C', "0.25", "0.25"}, {'D', "0.5", "0.5"}, {'F', "1", "1"},
                              {'G', "2", "2"},     {'H', "3", "3"},       {'J', "5", "5"},     {'K', "10", "10"},
                              {'M', "20", "20"},   {'N', "30", "30"},     {'Q', "10", "30"},   {'T', "10", "50"},
                              {'S', "20", "50"},   {'Z', "20", "80"}};
  for (const Row& row : rows) {
    auto code = read_tolerance_letter(row.letter);
    REQUIRE(code.has_value());
    CHECK(code->minus == Decimal::parse(std::string(row.minus) + "e-2"));
    CHECK(code->plus == Decimal::parse(std::string(row.plus) + "e-2"));
  }
}

TEST_CASE("letters on which publications disagree are not read") {
  for (char letter : {'P', 'W', 'Y', 'E', 'V', 'A', 'I', 'j', 'k', '5', ' '}) CHECK(!read_tolerance_letter(letter));
}

TEST_CASE("value codes give ohms and farads exactly") {
  struct Row {
    const char* code;
    CodedThing thing;
    const char* si;
  };
  constexpr auto r = CodedThing::resistance;
  constexpr auto c = CodedThing::capacitance;
  const std::vector<Row> rows{
      {"R47", r, "0.47"},     {"4R7", r, "4.7"},        {"47R", r, "47"},      {"470R", r, "470"},
      {"4k7", r, "4700"},     {"4K7", r, "4700"},       {"47k", r, "47000"},   {"M47", r, "470000"},
      {"2M2", r, "2.2e6"},    {"1G", r, "1e9"},         {"0R", r, "0"},        {"R005", r, "0.005"},
      {"p47", c, "0.47e-12"}, {"4p7", c, "4.7e-12"},    {"n47", c, "0.47e-9"}, {"4n7", c, "4.7e-9"},
      {"u47", c, "0.47e-6"},  {"4µ7", c, "4.7e-6"},     {"4u7", c, "4.7e-6"},  {"10m", c, "0.01"},
      {"1F5", c, "1.5"},      {"4\u03BC7", c, "4.7e-6"}};
  for (const Row& row : rows) {
    auto code = read_value_code(row.code, row.thing);
    REQUIRE_MESSAGE(code.has_value(), row.code);
    CHECK_MESSAGE(code->si == *Decimal::parse(row.si), row.code);
    CHECK(!code->tolerance_letter);
  }
}

TEST_CASE("a tolerance letter follows the code") {
  CHECK(read_value_code("4k7J", CodedThing::resistance)->tolerance_letter == 'J');
  CHECK(read_value_code("4M7M", CodedThing::resistance)->tolerance_letter == 'M');
  CHECK(read_value_code("10nK", CodedThing::capacitance)->tolerance_letter == 'K');
}

TEST_CASE("what is no code, or could mean two things, is not read") {
  for (const char* text :
       {"", "R", "k", "J", "47", "4.7k", "4k7k7", "4k7JJ", "4k7j", "4r7", "10m", "4u7", " 4k7", "-4k7"}) {
    CHECK_MESSAGE(!read_value_code(text, CodedThing::resistance), text);
  }
  for (const char* text : {"", "u", "47", "4R7", "4k7", "2M2", "10uF", "4u7F", "4u7P", "4U7"}) {
    CHECK_MESSAGE(!read_value_code(text, CodedThing::capacitance), text);
  }
}
