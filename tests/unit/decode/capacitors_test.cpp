// Tolerances, voltages and dielectrics of capacitors against published tables.
#include "decoding.h"

using namespace benchlore;

namespace {

void check_tolerance(std::string_view text, double minus, double plus) {
  const Reading reading = first_reading(text);
  REQUIRE_MESSAGE(reading.tolerance.has_value(), text);
  CHECK_MESSAGE(same_number(reading.tolerance->minus, minus), text);
  CHECK_MESSAGE(same_number(reading.tolerance->plus, plus), text);
}

} // namespace

// source: 3bmdesign.com, ceramic capacitor codes.
TEST_CASE("tolerance letters are the published ones") {
  struct Row {
    const char* text;
    double minus, plus; // per cent
  };
  for (const Row& row : std::vector<Row>{{"100nB", 0.1, 0.1},
                                         {"100nC", 0.25, 0.25},
                                         {"100nD", 0.5, 0.5},
                                         {"104G", 2, 2},
                                         {"104H", 3, 3},
                                         {"104J", 5, 5},
                                         {"104K", 10, 10},
                                         {"104M", 20, 20},
                                         {"104N", 30, 30},
                                         {"100nQ", 10, 30},
                                         {"100nS", 20, 50},
                                         {"104Z", 20, 80},
                                         {"104S", 20, 50},
                                         {"J", 5, 5},
                                         {"K", 10, 10},
                                         {"M", 20, 20},
                                         {"Z", 20, 80},
                                         {"Q", 10, 30},
                                         {"N", 30, 30}})
    check_tolerance(row.text, row.minus / 100, row.plus / 100);
}

// source: 3bmdesign.com, ceramic capacitor codes.
TEST_CASE("below 10 pF the letters B C D F G are picofarads") {
  check_tolerance("4p7C", 0.25 / 4.7, 0.25 / 4.7);
  check_tolerance("479D", 0.5 / 4.7, 0.5 / 4.7);
  check_tolerance("2p2B", 0.1 / 2.2, 0.1 / 2.2);
  check_tolerance("8p2G", 2 / 8.2, 2 / 8.2);
  CHECK(says("4p7C", "±0.25 pF"));
  CHECK(says("8p2F", "±1 pF"));
  check_tolerance("10pJ", 0.05, 0.05);
}

// source: oriedza.blogspot.com, 3bmdesign.com and signalpro.biz, which contradict one another.
TEST_CASE("letters on which sources disagree tell no tolerance") {
  for (const char* text : {"P", "W", "Y", "E", "V", "104P", "104Y", "104W"}) {
    CHECK_MESSAGE(says(text, "sources disagree"), text);
    for (const Reading& reading : decode(text)) {
      if (reading.text.find("tolerance") != std::string::npos) CHECK_MESSAGE(!reading.tolerance, text);
    }
  }
}

// source: pedalprojects.co.uk and oriedza.blogspot.com, tables of EIA capacitor codes.
TEST_CASE("EIA voltage codes are the published ones") {
  check_first({{"0E", 2.5}, {"0G", 4},   {"0J", 6.3}, {"1A", 10},  {"1C", 16},  {"1D", 20},  {"1E", 25},
               {"1V", 35},  {"1H", 50},  {"1J", 63},  {"2A", 100}, {"2B", 125}, {"2C", 160}, {"2D", 200},
               {"2E", 250}, {"2F", 315}, {"2V", 350}, {"2G", 400}, {"2W", 450}, {"2H", 500}, {"2J", 630}},
              dimension::voltage);
  check_read({{"0L", 5.5}, {"1G", 40}, {"1K", 80}, {"2K", 800}, {"3A", 1000}, {"2Q", 110}, {"2Z", 180}, {"2P", 220}},
             dimension::voltage);
}

// source: a reader's note in a repair blog (2T), pedalprojects.co.uk (3N): each stands alone.
TEST_CASE("voltage codes of one source only tell no voltage") {
  for (const char* text : {"2T", "3N"}) CHECK_MESSAGE(says(text, "sources disagree"), text);
  CHECK(!reading_of("2T", dimension::voltage, 150));
  CHECK(!reading_of("3N", dimension::voltage, 1500));
}

// source: oriedza.blogspot.com (2A474J); pedalprojects.co.uk (.1K63); 2A102K by the same tables.
TEST_CASE("value, tolerance and voltage are read from one text") {
  check_first({{"2A474J", 470e-9},
               {"2A102K", 1e-9},
               {"1H104", 100e-9},
               {"1E224Z", 220e-9},
               {"2J103K", 10e-9},
               {".1K63", 100e-9},
               {"0.47K100", 470e-9},
               {".022J400", 22e-9},
               {"1000J1600", 1e-9},
               {"10nK100", 10e-9},
               {"2A 474 J", 470e-9}},
              dimension::capacitance);
  CHECK(says("2A474J", "470 nF ±5 %, 100 V"));
  CHECK(says("2A102K", "1 nF ±10 %, 100 V"));
  CHECK(says(".1K63", "100 nF ±10 %, 63 V"));
  CHECK(says("1000J1600", "1 nF ±5 %, 1.6 kV"));
  CHECK(says("2T104K", "rated d.c. voltage not known: sources disagree"));
}

// source: from memory.
TEST_CASE("a letter beside the digits of a tantalum chip is its voltage") {
  struct Row {
    const char* text;
    const char* words;
  };
  for (const Row& row : std::vector<Row>{{"226G", "22 µF, 4 V"},
                                         {"J107", "100 µF, 6.3 V"},
                                         {"A106", "10 µF, 10 V"},
                                         {"226C", "22 µF, 16 V"},
                                         {"106D", "10 µF, 20 V"},
                                         {"E105", "1 µF, 25 V"},
                                         {"106V", "10 µF, 35 V"},
                                         {"475T", "4.7 µF, 50 V"}})
    CHECK_MESSAGE(says(row.text, row.words), row.text);
  check_first({{"226C", 22e-6}, {"107A", 100e-6}, {"106V", 10e-6}, {"C106", 10e-6}}, dimension::capacitance);
}

TEST_CASE("words beside a value belong to the part") {
  CHECK(first_reading("104K 50V").text == "capacitor, 100 nF ±10 %, 50 V");
  CHECK(first_reading("100n 63").text == "capacitor, 100 nF, 63 V");
  CHECK(first_reading("106 16V").text == "capacitor, 10 µF, 16 V");
  CHECK(first_reading("10 16").text == "capacitor, 10 µF, 16 V");
  CHECK(first_reading("2µ2 250").text == "capacitor, 2.2 µF, 250 V");
  CHECK(first_reading("1n 1600").text == "capacitor, 1 nF, 1.6 kV");
  CHECK(first_reading("5W 10RJ").text == "resistor, 10 Ω ±5 %, 5 W");
  CHECK(first_reading("4k7 ±1%").text == "resistor, 4.7 kΩ ±1 %");
  CHECK(first_reading("1001 1%").text == "resistor, 1 kΩ ±1 %");
  CHECK(first_reading("226 C").text == "capacitor, 22 µF, 16 V");
  CHECK(first_reading("474 2A").text == "capacitor, 470 nF, 100 V");
  CHECK(first_reading("100 µF 16 V 105°C").text == "capacitor, 100 µF, 16 V, 105 °C");
}

// source: EIA-198 as transcribed by 3bmdesign.com and in a thread of element14.
TEST_CASE("dielectric codes of class 2 are the published ones") {
  struct Row {
    const char* text;
    const char* words;
  };
  for (const Row& row : std::vector<Row>{{"X7R", "within ±15 % from -55 to +125 °C"},
                                         {"X5R", "within ±15 % from -55 to +85 °C"},
                                         {"X8R", "within ±15 % from -55 to +150 °C"},
                                         {"X6S", "within ±22 % from -55 to +105 °C"},
                                         {"X7T", "within -33/+22 % from -55 to +125 °C"},
                                         {"Z5U", "within -56/+22 % from +10 to +85 °C"},
                                         {"Y5V", "within -82/+22 % from -30 to +85 °C"},
                                         {"Y5P", "within ±10 % from -30 to +85 °C"},
                                         {"Z5F", "within ±7.5 % from +10 to +85 °C"},
                                         {"Y5E", "within ±4.7 % from -30 to +85 °C"},
                                         {"Z2D", "within ±3.3 % from +10 to +45 °C"},
                                         {"X4A", "within ±1 % from -55 to +65 °C"}})
    CHECK_MESSAGE(first_reading(row.text).text.find(row.words) != std::string::npos, row.text);
}

// source: EIA-198 as transcribed by 3bmdesign.com and in a thread of element14.
TEST_CASE("dielectric codes of class 1 are the published ones") {
  constexpr Dimension per_kelvin = inverse(dimension::temperature_difference);
  check_first({{"U1G", -75e-6},
               {"P2G", -150e-6},
               {"S2H", -330e-6},
               {"T2H", -470e-6},
               {"U2J", -750e-6},
               {"P3K", -1500e-6},
               {"R2G", -220e-6},
               {"M7G", 100e-6},
               {"N750", -750e-6},
               {"N150", -150e-6},
               {"P100", 100e-6}},
              per_kelvin);
  for (const char* text : {"C0G", "COG", "NP0", "NPO"}) {
    CHECK_MESSAGE(first_reading(text).value == 0.0, text);
    CHECK_MESSAGE(says(text, "±30 ppm/K"), text);
  }
  CHECK(says("U2J", "±120 ppm/K"));
  CHECK(says("S2H", "±60 ppm/K"));
  CHECK(says("P3K", "±250 ppm/K"));
  CHECK(says("SL", "-1000 and +350 ppm/K"));
}
