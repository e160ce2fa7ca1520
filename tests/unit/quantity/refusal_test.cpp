// Texts that are refused: what is marked, what is said, and the way out; and texts meant to do harm.
#include "quantity/quantity.h"

#include <doctest/doctest.h>

#include <random>
#include <vector>

using namespace benchlore;

namespace {

struct Refusal {
  const char* text;
  Dimension dimension;
  const char* marked;
  const char* message; // a part of it
  const char* way_out; // a part of it
};

using namespace dimension;

const std::vector<Refusal> refusals{
    {"", voltage, "", "no value", "10 V"},
    {"  ", voltage, "  ", "no value", "10 V"},
    {"10", capacitance, "10", "has no unit", "`pF`, `nF` or `uF`"},
    {"10 ±20 %", capacitance, "10", "has no unit", "`uF`"},
    {"min 1 V max 2", voltage, "2", "has no unit", "`V`"},
    {"1 V..2", voltage, "2", "has no unit", "`V`"},
    {"10 V", capacitance, "V", "`V` is a unit of voltage, not of capacitance", "`uF`"},
    {"10 V", none, "V", "a pure number", "alone"},
    {"10 K ±1 V", temperature, "V", "unit of voltage", "`K`"},
    {"25 C", temperature, "C", "unit of charge", "`°C`"},
    {"25 °C", temperature_difference, "°C", "unit of temperature", "`K`"},
    {"25 °F", temperature, "°F", "unknown unit", "`°C`"},
    {"10 Kohm", resistance, "Kohm", "unknown unit", "`kohm`"},
    {"10 KHz", frequency, "KHz", "unknown unit", "`kHz`"},
    {"10 KB", information, "KB", "unknown unit", "`KiB` for 1024"},
    {"10 UF", capacitance, "UF", "unknown unit", "`uF`"},
    {"10 MFD", capacitance, "MFD", "old marking", "`uF`"},
    {"10 mfd", capacitance, "mfd", "old marking", "`uF`"},
    {"47 MMFD", capacitance, "MMFD", "old marking", "`pF`"},
    {"10 Ohm", resistance, "Ohm", "unknown unit", "`ohm`"},
    {"10 R", voltage, "R", "unknown unit", "`V`"},
    {"10 furlongs", voltage, "furlongs", "unknown unit", "`V`"},
    {"4,7 uF", capacitance, ",", "decimal comma", "`4.7 uF`"},
    {"1,000 uF", capacitance, ",", "decimal comma", "`1000 uF` or `1.000 uF`"},
    {"5 V @ 1,5 A", voltage, ",", "decimal comma", "`1.5`"},
    {"max 4,7 uF", capacitance, ",", "decimal comma", "`4.7`"},
    {"10 000 h", time, "10 0", "two numbers", "without spaces"},
    {"4R7", capacitance, "4R7", "letter of ohms", "with its unit"},
    {"4n7", resistance, "n7", "unknown unit", "`ohm`"},
    {"10m", resistance, "m", "unit of length", "`ohm`"},
    {"4.7k", resistance, "k", "unknown unit", "`kohm`"},
    {"4k7J ±5 %", resistance, "J", "stated twice", "leave one"},
    {"4p7J", capacitance, "J", "not defined below 10 pF", "as a number"},
    {"1k0J..2k0", resistance, "1k0J..2k0", "in a range", "without it"},
    {"max 4k7J", resistance, "J", "at a limit", "without it"},
    {"1e400 V", voltage, "1e400", "too large", "18 digits"},
    {"1e60 kV", voltage, "1e60", "too large", "fewer"},
    {"1234567890123456789 V", voltage, "1234567890123456789", "too long", "18 digits"},
    {"min 3 max 1 V", voltage, "min 3 max 1 V", "above the maximum", "check"},
    {"min 3 typ 1 V", voltage, "min 3 typ 1 V", "above the typical", "check"},
    {"typ 3 max 1 V", voltage, "typ 3 max 1 V", "above the maximum", "check"},
    {"105..-40 °C", temperature, "105..-40 °C", "above the maximum", "check"},
    {"min 1 min 2 V", voltage, "min", "stands twice", "leave one"},
    {"5 V max", voltage, "max", "behind the value", "before"},
    {"5 V min", voltage, "min", "behind the value", "before"},
    {"5 V typ", voltage, "typ", "behind the value", "before"},
    {"10-20 V", voltage, "-20", "only one number", "`10..20 V`"},
    {"10\u201320 V", voltage, "\u201320 V", "leftover", "`10..20 V`"},
    {"10 to 20 V", voltage, "to", "unknown unit", "`10..20 V`"},
    {"-40...105 °C", temperature, "...", "three dots", "two dots"},
    {"10 V ±", voltage, "", "no number", "4.7"},
    {"10 V ±5", voltage, "5", "tolerance has no unit", "`%`"},
    {"10 V ±-5 %", voltage, "-", "second sign", "±20 %"},
    {"10 V +5/+6 %", voltage, "+6", "same sign", "-10/+50"},
    {"10 V -5 %/+1 V", voltage, "+1", "fraction", "same unit"},
    {"25 °C ±5 %", temperature, "5 %", "means nothing", "±5 K"},
    {"25 ±5 K", temperature, "25", "has no unit", "`°C`"},
    {"50 % ±5 %", none, "5 %", "open", "0.5"},
    {"10 V ±1e8 %", voltage, "1e8 %", "too large", "fewer"},
    {"<5 V", voltage, "<", "sign", "`max`"},
    {"\u2264 5 V", voltage, "\u2264", "sign", "`max`"},
    {"-300 °C", temperature, "-300", "absolute zero", "check"},
    {"1/3", none, "1/3", "no exact decimal", "0.333"},
    {"1:0", none, "1:0", "no exact decimal", "0.333"},
    {"V", voltage, "V", "instead of a number", "4.7"},
    {"min", voltage, "", "no number", "4.7"},
    {"-", voltage, "", "no number", "4.7"},
    {"5 V 6", voltage, "6", "leftover", "`@`"},
    {"5 V; 6 V", voltage, "; 6 V", "leftover", "`@`"},
    {"1.2.3 V", voltage, ".3 V", "leftover", ""},
    {"@", voltage, "", "no number", ""},
    {"5 V @", voltage, "", "no condition", "100 kHz"},
    {"5 V @ ,", voltage, ",", "no condition", "100 kHz"},
    {"5 V @ 1 A,", voltage, "", "no condition", "100 kHz"},
    {"5 V @ IC 4", voltage, "4", "has no unit", "4 A"},
    {"5 V @ IC 1..4", voltage, "4", "has no unit", "4 A"},
    {"5 V @ IC 1 V..4 A", voltage, "V", "unit of voltage", "`A`"},
    {"5 V @ IC4 A", voltage, "IC4 A", "part of the name", "`IC 4 A`"},
    {"5 V @ max 4 A", voltage, "max", "limit", "range"},
    {"5 V @ IC =", voltage, "", "no number", ""},
    {"5 V @ IC 4 A x", voltage, "x", "leftover", ""},
    {"5 V @ 1 kHz @ 2 A", voltage, "@ 2 A", "leftover", ""},
    {"5 V @ 3 zorks", voltage, "zorks", "unknown unit", "unit"},
};

} // namespace

TEST_CASE("a text that is refused has its fault marked and a way out") {
  for (const Refusal& row : refusals) {
    auto result = parse_quantity(row.text, row.dimension);
    CHECK_MESSAGE(!result.quantity, row.text);
    REQUIRE_MESSAGE(result.error.has_value(), row.text);
    std::string text = row.text;
    REQUIRE(result.error->offset + result.error->length <= text.size());
    INFO(text << " | " << result.error->message << " | " << result.error->way_out);
    CHECK(text.substr(result.error->offset, result.error->length) == std::string(row.marked));
    CHECK(result.error->message.find(row.message) != std::string::npos);
    CHECK(result.error->way_out.find(row.way_out) != std::string::npos);
    CHECK(!result.error->message.ends_with("."));
  }
}

TEST_CASE("a decimal comma is refused and the comma is marked") {
  auto result = parse_quantity("4,7 uF", capacitance);
  REQUIRE(result.error);
  CHECK(result.error->offset == 1);
  CHECK(result.error->length == 1);
}

TEST_CASE("broken UTF-8 is refused at the broken byte") {
  auto result = parse_quantity("10 \xC2", voltage);
  REQUIRE(result.error);
  CHECK(result.error->offset == 3);
}

TEST_CASE("very long texts are refused quickly and with a short message") {
  for (const std::string& text :
       {std::string(1000000, '9') + " V", std::string(1000000, ' '), "5 V @ " + std::string(100000, 'x') + "=",
        "5 " + std::string(100000, 'k') + "V", "5 V" + std::string(100000, '@'), std::string(100000, '-')}) {
    auto result = parse_quantity(text, voltage);
    REQUIRE(result.error);
    CHECK(result.error->message.size() < 300);
    CHECK(result.error->way_out.size() < 300);
  }
}

TEST_CASE("random texts give a value that round-trips, or an error within the text") {
  const std::vector<std::string> pieces{"1",   "0",   ".",  "..", "-", "+", "±",      "/",      "%",    "V",
                                        "m",   "k",   "µ",  "F",  "Ω", "e", " ",      "@",      ",",    "min",
                                        "max", "typ", "°C", "K",  "R", "=", "\u2009", "\u2212", "\xFF", "\xC2",
                                        "J",   "IC",  "9",  ":",  "h", "^", "²",      "*",      "(",    "ppm"};
  const std::vector<Dimension> dimensions{voltage, capacitance, resistance, temperature, none, time};
  std::mt19937 random(3);
  int read = 0;
  for (int i = 0; i < 40000; ++i) {
    std::string text = random() % 2 ? "10 V" : "";
    for (std::size_t n = random() % 9; n > 0; --n) text += pieces[random() % pieces.size()];
    Dimension expected = dimensions[random() % dimensions.size()];
    auto result = parse_quantity(text, expected);
    REQUIRE_MESSAGE(result.quantity.has_value() != result.error.has_value(), text);
    if (result.error) {
      REQUIRE_MESSAGE(result.error->offset + result.error->length <= text.size(), text);
      continue;
    }
    ++read;
    auto again = parse_quantity(to_text(*result.quantity), expected);
    REQUIRE_MESSAGE(again.quantity.has_value(), text << " -> " << to_text(*result.quantity));
    REQUIRE_MESSAGE(*again.quantity == *result.quantity, text << " -> " << to_text(*result.quantity));
  }
  CHECK(read > 400);
}
