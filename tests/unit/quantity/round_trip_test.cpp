// The law of the canonical text: it reads back as the same quantity, and writing that again changes nothing.
#include "quantity/quantity.h"
#include "quantity/unit.h"

#include <doctest/doctest.h>

#include <random>
#include <vector>

using namespace benchlore;

namespace {

void check_round_trip(const std::string& text, Dimension dimension) {
  auto first = parse_quantity(text, dimension);
  std::string said = first.error ? first.error->message + "; " + first.error->way_out : "";
  REQUIRE_MESSAGE(first.quantity.has_value(), text << ": " << said);
  std::string canonical = to_text(*first.quantity);
  auto second = parse_quantity(canonical, dimension);
  said = second.error ? second.error->message : "";
  REQUIRE_MESSAGE(second.quantity.has_value(), canonical << ": " << said);
  CHECK_MESSAGE(*second.quantity == *first.quantity, text << " -> " << canonical);
  CHECK(to_text(*second.quantity) == canonical);
}

struct Written {
  const char* text;
  const char* canonical;
  Dimension dimension;
};

using namespace dimension;

const std::vector<Written> forms{
    {"10 uF ±20%", "10 µF ±20 %", capacitance},
    {"max 0.3 ohm @ 100 kHz, 20 °C", "max 300 mΩ @ 100 kHz, 20 °C", resistance},
    {"-40 .. +105 °C", "-40..105 °C", temperature},
    {"2000 h @ 105 °C", "2000 h @ 105 °C", time},
    {"7200 s", "2 h", time},
    {"90 min", "5400 s", time},
    {"1 d", "24 h", time},
    {"1 year", "8766 h", time},
    {"0 h", "0 s", time},
    {"min 100 typ 200 max 300", "min 100 typ 200 max 300", none},
    {"max 3 V min 1 V", "min 1 max 3 V", voltage},
    {"min 100 uV max 5 V", "min 100 µV max 5 V", voltage},
    {"typ 0 V max 5 mV", "typ 0 max 5 mV", voltage},
    {"100 uF +50/-10%", "100 µF -10/+50 %", capacitance},
    {"10 V ±500 mV", "10 V ±500 mV", voltage},
    {"10 V -0.1/+2 V", "10 V -0.1/+2 V", voltage},
    {"10 V -1 uV/+2 V", "10 V -1 µV/+2 V", voltage},
    {"12 MHz ±50 ppm", "12 MHz ±50 ppm", frequency},
    {"12 MHz ±100 ppm", "12 MHz ±0.01 %", frequency},
    {"12 MHz -0/+30 ppm", "12 MHz -0/+30 ppm", frequency},
    {"25 °C ±5 °C", "25 °C ±5 K", temperature},
    {"4k7J", "4.7 kΩ ±5 %", resistance},
    {"4p7C", "4.7 pF ±0.25 pF", capacitance},
    {"0.047 F", "47000 µF", capacitance},
    {"1.5 F", "1.5 F", capacitance},
    {"0.5 pF", "0.5 pF", capacitance},
    {"3 fF", "0.003 pF", capacitance},
    {"20 %", "0.2", none},
    {"1:10", "0.1", none},
    {"3/4 ±1 %", "0.75 ±1 %", none},
    {"2 KiB", "2 KiB", information},
    {"16 Kibit", "2 KiB", information},
    {"1 MB", "1 MB", information},
    {"12 bit", "12 bit", information},
    {"115.2 kbit/s", "115.2 kbit/s", information / time},
    {"2000 mAh", "2 Ah", charge},
    {"150 mAh", "150 mAh", charge},
    {"36 nC", "36 nC", charge},
    {"50 Wh", "50 Wh", energy},
    {"13 V/us", "13 V/µs", voltage / time},
    {"5 A/ms", "0.005 A/µs", current / time},
    {"0.1 %/K", "1000 ppm/K", inverse(temperature_difference)},
    {"30 ppm/°C", "30 ppm/K", inverse(temperature_difference)},
    {"1.5 °C/W", "1.5 K/W", temperature_difference / power},
    {"8 mW/K", "8 mW/K", power / temperature_difference},
    {"-2 mV/°C", "-2 mV/K", voltage / temperature_difference},
    {"20 kohm/V", "20 kΩ/V", resistance / voltage},
    {"120 A2s", "120 A²s", current* current* time},
    {"4 nV/rtHz", "4 nV/√Hz", voltage / Dimension{.root_hertz = 1}},
    {"5400 rpm", "5400 rpm", {.turn = 1}},
    {"135 tpi", "135 tpi", {.track = 1}},
    {"0.1 in", "2.54 mm", length},
    {"2 mm2", "2 mm²", length* length},
    {"250 g", "250 g", mass},
    {"1.2 kg", "1.2 kg", mass},
    {"1 uV/V", "0.000001", none},
    {"5 V @ 50 %, IC 1..2 A, duty 100 ppm", "5 V @ 50 %, IC 1..2 A, duty 0.01 %", voltage},
    {"5 V @ Tj = 25 °C,case", "5 V @ Tj 25 °C, case", voltage},
    {"5 V @ −40..85 °C, θ 3 K", "5 V @ -40..85 °C, θ 3 K", voltage},
    {"1e50 V", "1e44 MV", voltage},
    {"123456789012345678 V", "123456789012.345678 MV", voltage},
    {"1e-55 V", "1e-46 nV", voltage},
    {"1e60 V", "1e54 MV", voltage},
    {"1e-57 F", "1e-45 pF", capacitance},
    {"1 V*s", "1 kg*m^2*s^-2*A^-1", voltage* time},
};

} // namespace

TEST_CASE("each form has the canonical text of the table, and it reads back") {
  for (const Written& row : forms) {
    check_round_trip(row.text, row.dimension);
    auto read = parse_quantity(row.text, row.dimension);
    CHECK(to_text(*read.quantity) == row.canonical);
  }
}

TEST_CASE("every unit with every prefix and many shapes round-trips") {
  for (const UnitRow& row : units()) {
    std::vector<std::string> texts{std::string(row.symbol)};
    for (char prefix : row.prefixes) texts.push_back(prefix + std::string(row.symbol));
    for (const std::string& unit : texts) {
      for (const char* number : {"1", "0.047", "999.5", "12345.6"}) {
        check_round_trip(number + (" " + unit), row.dimension);
        check_round_trip("min 0.02 max " + (number + (" " + unit)), row.dimension);
      }
      check_round_trip("0.5.." + ("3300 " + unit) + " @ x 2 " + unit, row.dimension);
    }
  }
}

TEST_CASE("random quantities round-trip") {
  std::mt19937 random(42);
  auto number = [&] {
    std::string digits = std::to_string(random() % 100000);
    return digits + (random() % 2 ? "." + std::to_string(random() % 1000) : "");
  };
  for (int i = 0; i < 3000; ++i) {
    const UnitRow& row = units()[random() % units().size()];
    std::string prefix = row.prefixes.empty() ? "" : std::string(1, row.prefixes[random() % row.prefixes.size()]);
    std::string unit = " " + prefix + std::string(row.symbol);
    check_round_trip("typ " + number() + unit + " @ IC " + number() + " mA, loaded, " + number() + unit, row.dimension);
    bool plain = row.dimension == none || row.dimension == temperature;
    check_round_trip(number() + unit + (plain ? "" : " -" + number() + "/+" + std::to_string(random() % 99) + " ppm"),
                     row.dimension);
  }
}
