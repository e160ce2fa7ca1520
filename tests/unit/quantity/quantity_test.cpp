// What a quantity says: numbers, tolerances, limits, ranges, codes and conditions, and what it guarantees.
#include "quantity/quantity.h"
#include "quantity/value.h"

#include <doctest/doctest.h>

using namespace benchlore;

namespace {

Quantity read(std::string_view text, Dimension dimension) {
  auto result = parse_quantity(text, dimension);
  std::string said = result.error ? result.error->message : "";
  REQUIRE_MESSAGE(result.quantity.has_value(), std::string(text) << ": " << said);
  return *result.quantity;
}

Decimal number(std::string_view text) { return Decimal::parse(text).value_or(Decimal{}); }

using namespace dimension;

} // namespace

TEST_CASE("one capacitance written in many ways is one value") {
  for (const char* text : {"10 uF", "10uF", "10 µF", "10 \u03BCF", "10000 nF", "10u", "0.01 mF", "0.00001 F", "10e-6 F",
                           "1e7 pF", "10.0 uF", "+10 uF", "10\u2009uF", "10\u202FuF", "10\u00A0uF", " 10 uF ", "10µ"}) {
    CHECK_MESSAGE(read(text, capacitance) == read("10 uF", capacitance), text);
  }
}

TEST_CASE("milli and mega are never taken for one another") {
  CHECK(read("10 mF", capacitance).nominal == number("0.01"));
  CHECK(read("10 MF", capacitance).nominal == number("1e7"));
  CHECK(read("5 mW", power).nominal == number("0.005"));
  CHECK(read("5 MW", power).nominal == number("5e6"));
}

TEST_CASE("tolerances are fractions or values, even or not") {
  auto even = read("10 uF ±20%", capacitance);
  CHECK(even.minus == number("0.2"));
  CHECK(even.relative_tolerance);
  CHECK(even == read("10uF+/-20 %", capacitance));
  auto uneven = read("100 uF -10/+50%", capacitance);
  CHECK(uneven.minus == number("0.1"));
  CHECK(uneven.plus == number("0.5"));
  for (const char* text :
       {"100 uF +50/-10%", "100 uF -10%/+50%", "100 uF +50 % / -10 %", "100 uF +50 -10 %", "100 uF \u221210/+50 %"}) {
    CHECK_MESSAGE(read(text, capacitance) == uneven, text);
  }
  auto absolute = read("10.0 V ±0.5 V", voltage);
  CHECK(absolute.minus == number("0.5"));
  CHECK(!absolute.relative_tolerance);
  CHECK(absolute == read("10 ±0.5 V", voltage));
  CHECK(absolute == read("10 V ±500 mV", voltage));
}

TEST_CASE("what is guaranteed lies between low and high") {
  CHECK(read("10 uF ±20%", capacitance).low() == 8e-6);
  CHECK(read("10 uF ±20%", capacitance).high() == 12e-6);
  CHECK(read("-5 V ±5%", voltage).low() == -5.25);
  CHECK(read("-5 V -10/+50%", voltage).high() == -2.5);
  CHECK(read("10 V", voltage).low() == 10);
  CHECK(read("max 0.3 ohm", resistance).high() == 0.3);
  CHECK(!read("max 0.3 ohm", resistance).low());
  CHECK(!read("typ 200 V", voltage).high());
  CHECK(read("typ 200 V", voltage).only_typical());
  CHECK(read("-40..105 °C", temperature).centre() == 32.5);
  CHECK(read("typ 200 V", voltage).centre() == 200);
  CHECK(read("min 3 V", voltage).centre() == 3);
  CHECK(!read("min 1 max 3 V", voltage).centre());
}

TEST_CASE("limits stand in any order, with one unit or each its own") {
  auto limits = read("min 100 typ 200 max 300", none);
  CHECK(limits.minimum == number("100"));
  CHECK(limits.typical == number("200"));
  CHECK(limits.maximum == number("300"));
  CHECK(!limits.range);
  auto volts = read("min 1 typ 2 max 3 V", voltage);
  for (const char* text : {"max 3 V min 1 V typ 2 V", "typ 2 min 1 max 3 V", "MIN 1000 mV Typ 2 V Max. 3 V"}) {
    CHECK_MESSAGE(read(text, voltage) == volts, text);
  }
}

TEST_CASE("min is a limit before a number and otherwise a minute") {
  CHECK(read("5 min", time).nominal == number("300"));
  CHECK(read("min 5 min", time).minimum == number("300"));
  CHECK(read("min 1 max 2 min", time).minimum == number("60"));
  CHECK(read("typ 2 min 1 min", time).minimum == number("60"));
  CHECK(read("typ 2 min 1 min", time).typical == number("120"));
}

TEST_CASE("a range has two ends") {
  auto range = read("-40..105 °C", temperature);
  CHECK(range.range);
  CHECK(range.minimum == number("-40"));
  for (const char* text : {"-40 .. +105 °C", "\u221240..+105 °C", "-40 °C..105 °C", "-40..105 degC"}) {
    CHECK_MESSAGE(read(text, temperature) == range, text);
  }
  CHECK(read(".5 .. .7 V", voltage).maximum == number("0.7"));
}

TEST_CASE("kelvin are converted where a temperature is meant") {
  CHECK(read("298.15 K", temperature).nominal == number("25"));
  auto warm = read("25 °C ±5 °C", temperature);
  CHECK(warm == read("25 °C ±5 K", temperature));
  CHECK(warm.minus == number("5"));
  CHECK(read("10 K", temperature_difference).nominal == number("10"));
}

TEST_CASE("codes of IEC 60062 are read where they fit") {
  CHECK(read("4u7", capacitance).nominal == number("4.7e-6"));
  CHECK(read("2n2", capacitance).nominal == number("2.2e-9"));
  CHECK(read("n47", capacitance).nominal == number("0.47e-9"));
  CHECK(read("4k7", resistance).nominal == number("4700"));
  CHECK(read("4K7", resistance).nominal == number("4700"));
  CHECK(read("R47", resistance).nominal == number("0.47"));
  CHECK(read("2M2", resistance).nominal == number("2.2e6"));
  CHECK(read("10K", resistance).nominal == number("10000"));
  CHECK(read("1k..4k7", resistance).maximum == number("4700"));
  CHECK(read("4k7 ±1 %", resistance).minus == number("0.01"));
  CHECK(!read("10uF", capacitance).minus);
  CHECK(!read("10F", capacitance).minus);
}

TEST_CASE("the letter behind a code is its tolerance") {
  CHECK(read("4k7J", resistance).minus == number("0.05"));
  CHECK(read("4k7K", resistance).plus == number("0.1"));
  CHECK(read("4u7Z", capacitance).plus == number("0.8"));
}

TEST_CASE("below 10 pF the letters are picofarads") {
  auto small = read("4p7C", capacitance);
  CHECK(small.minus == number("0.25e-12"));
  CHECK(!small.relative_tolerance);
  CHECK(read("47p0J", capacitance).relative_tolerance);
}

TEST_CASE("conditions have a name, a value or both") {
  auto quantity = read("max 0.3 ohm @ 100 kHz, IC 4 A, case, TA=25 °C, VGS -10 V, half sine, f 1..2 kHz", resistance);
  REQUIRE(quantity.at.size() == 7);
  CHECK(quantity.condition(frequency)->value->nominal == number("1e5"));
  CHECK(quantity.condition("IC")->value->nominal == number("4"));
  CHECK(!quantity.condition("case")->value);
  CHECK(quantity.condition("TA")->value->nominal == number("25"));
  CHECK(quantity.condition("VGS")->value->nominal == number("-10"));
  CHECK(quantity.condition("half sine") != nullptr);
  CHECK(quantity.condition("f")->value->maximum == number("2000"));
  CHECK(quantity.condition("VDS") == nullptr);
  CHECK(quantity.condition(current) == nullptr); // the current has a name
}

TEST_CASE("pure numbers need no unit") {
  CHECK(read("615", none).nominal == number("615"));
  CHECK(read("20 %", none).nominal == number("0.2"));
  CHECK(read("50 ppm", none).nominal == number("5e-5"));
  CHECK(read("3/4", none).nominal == number("0.75"));
  CHECK(read("1:10", none).nominal == number("0.1"));
  CHECK(read("1:10 ±2 %", none).minus == number("0.02"));
  CHECK_FALSE(read("0.5 ±0.1", none).relative_tolerance);
}

TEST_CASE("numbers are shown with a prefix and few figures") {
  CHECK(show_number(4.7e-6, capacitance) == "4.7 µF");
  CHECK(show_number(0.0047, capacitance) == "4700 µF");
  CHECK(show_number(1.0 / 3, voltage) == "333.3 mV");
  CHECK(show_number(999.96, resistance) == "1 kΩ");
  CHECK(show_number(7200000, time) == "2000 h");
  CHECK(show_number(0, voltage) == "0 V");
  CHECK(show_number(-12.3456, temperature, 3) == "-12.3 °C");
  CHECK(show_number(0.25, none) == "0.25");
  CHECK(show_number(1.0 / 0.0, voltage) == "?");
  CHECK(show_number(0.0 / 0.0, voltage) == "?");
  CHECK(show_number(1e300, voltage) == "1.000e+300 kg*m^2*s^-3*A^-1");
  CHECK(show_number(2e-6, voltage / frequency, 100) == "0.000002 kg*m^2*s^-2*A^-1");
}

TEST_CASE("a value is a quantity or words") {
  CHECK(to_text(Value{read("10 uF", capacitance)}) == "10 µF");
  CHECK(to_text(Value{Words{{"X1", "Y2"}}}) == "X1, Y2");
}
