// The table of units and unit expressions; dimensions as values and as types.
#include "quantity/unit.h"

#include <doctest/doctest.h>

#include <map>
#include <type_traits>

using namespace benchlore;

namespace {

Decimal exact(std::int64_t digits, int exponent) { return Decimal::make(digits, exponent).value_or(Decimal{}); }

void check_unit(const char* text, Dimension dimension, std::int64_t digits, int exponent) {
  auto unit = parse_unit(text);
  REQUIRE_MESSAGE(unit.has_value(), text);
  CHECK_MESSAGE(unit->dimension == dimension, text);
  CHECK_MESSAGE(unit->factor == exact(digits, exponent), text);
}

} // namespace

TEST_CASE("no unit text has two meanings") {
  std::map<std::string, int> meanings;
  for (const UnitRow& row : units()) {
    ++meanings[std::string(row.symbol)];
    for (char prefix : row.prefixes) ++meanings[prefix + std::string(row.symbol)];
  }
  for (const auto& [text, count] : meanings) CHECK_MESSAGE(count == 1, text);
}

TEST_CASE("simple and compound units are exact") {
  check_unit("uF", dimension::capacitance, 1, -6);
  check_unit("µF", dimension::capacitance, 1, -6);
  check_unit("\u03BCF", dimension::capacitance, 1, -6);
  check_unit("kΩ", dimension::resistance, 1, 3);
  check_unit("k\u2126", dimension::resistance, 1, 3);
  check_unit("kohm", dimension::resistance, 1, 3);
  check_unit("mF", dimension::capacitance, 1, -3);
  check_unit("MF", dimension::capacitance, 1, 6);
  check_unit("mAh", dimension::charge, 36, -1);
  check_unit("in", dimension::length, 254, -4);
  check_unit("KiB", dimension::information, 8192, 0);
  check_unit("kbit/s", dimension::information / dimension::time, 1, 3);
  check_unit("V/us", dimension::voltage / dimension::time, 1, 6);
  check_unit("ppm/K", inverse(dimension::temperature_difference), 1, -6);
  check_unit("ppm/°C", inverse(dimension::temperature_difference), 1, -6);
  check_unit("°C", dimension::temperature, 1, 0);
  check_unit("K", dimension::temperature_difference, 1, 0);
  check_unit("A2s", dimension::current * dimension::current * dimension::time, 1, 0);
  check_unit("A²s", dimension::current * dimension::current * dimension::time, 1, 0);
  check_unit("uV/V", dimension::none, 1, -6);
  check_unit("mm²", dimension::length * dimension::length, 1, -6);
  check_unit("V*A", dimension::power, 1, 0);
  check_unit("kg*m^2*s^-3", dimension::power, 1, 0);
}

TEST_CASE("units that are not known are not guessed") {
  for (const char* text : {"",     "K/",
                           "/s",   "Kohm",
                           "KHz",  "R",
                           "k",    "u",
                           "MFD",  "mfd",
                           "Ohm",  "volts",
                           "UF",   "pf",
                           "V//s", "V/s/",
                           "V^",   "V^9",
                           "mmF",  "dB",
                           "°F",   "mK/Kohm",
                           "1/s",  "V/min",
                           "kmin", "mh",
                           "µ",    "°",
                           "C°",   "kkV",
                           "Hz ",  " V",
                           "m%",   "s*s*s*s*s*s*s*s*s"}) {
    CHECK_MESSAGE(!parse_unit(text), text);
  }
}

TEST_CASE("every dimension has units that would do") {
  CHECK(units_for(dimension::capacitance) == std::vector<std::string>{"pF", "nF", "uF"});
  for (const UnitRow& row : units()) {
    for (const std::string& text : units_for(row.dimension)) {
      auto unit = parse_unit(text);
      REQUIRE_MESSAGE(unit.has_value(), text);
      CHECK_MESSAGE(unit->dimension == row.dimension, text);
    }
  }
}

TEST_CASE("base units read back as their dimension") {
  for (const UnitRow& row : units()) {
    if (row.dimension == dimension::none) continue;
    auto unit = parse_unit(base_units(row.dimension));
    REQUIRE(unit.has_value());
    CHECK(unit->dimension == row.dimension);
    CHECK(unit->factor == exact(1, 0));
  }
}

TEST_CASE("dimensions are described by name or by base units") {
  CHECK(describe(dimension::capacitance) == "capacitance");
  CHECK(describe(dimension::none) == "a pure number");
  CHECK(describe({.kilogram = 1, .second = -5}) == "`kg*s^-5`");
}

TEST_CASE("the type of a product is the product of the dimensions") {
  static_assert(std::is_same_v<decltype(Farads{} * Volts{}), Coulombs>);
  static_assert(std::is_same_v<decltype(Volts{} * Amperes{}), Watts>);
  static_assert(std::is_same_v<decltype(Volts{} / Amperes{}), Ohms>);
  static_assert(std::is_same_v<decltype(Watts{} * Seconds{}), Joules>);
  static_assert(std::is_same_v<decltype(Ohms{} * Farads{}), Seconds>);
  static_assert(!std::is_same_v<Volts, Amperes>);
  CHECK((Farads{2} * Volts{3} + Coulombs{1}).si == 7);
  CHECK(2 * Volts{3} < Volts{7});
}
