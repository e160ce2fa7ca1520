// Codes of values against published tables and examples.
#include "decoding.h"

using namespace benchlore;

// source: RKM code article of Wikipedia.
TEST_CASE("a letter stands for the decimal point of resistors") {
  check_first({{"R47", 0.47},
               {"4R7", 4.7},
               {"470R", 470},
               {"47R", 47},
               {"4K7", 4700},
               {"47K", 47e3},
               {"47K3", 47.3e3},
               {"470K", 470e3},
               {"4M7", 4.7e6},
               {"2M2", 2.2e6},
               {"0R22", 0.22},
               {"R020", 0.020},
               {"1R0", 1},
               {"4r7", 4.7}},
              dimension::resistance);
}

// source: from memory (L), and of old continental parts (E).
TEST_CASE("L is milliohm and E is ohm") {
  check_read({{"2L2", 2.2e-3}, {"4E7", 4.7}, {"47E", 47}}, dimension::resistance);
}

// source: RKM code article of Wikipedia; capitals and microhenries from common practice.
TEST_CASE("a letter stands for the decimal point of capacitors and coils") {
  check_first({{"4p7", 4.7e-12},
               {"n47", 470e-12},
               {"4n7", 4.7e-9},
               {"47n", 47e-9},
               {"u47", 0.47e-6},
               {"4u7", 4.7e-6},
               {"4µ7", 4.7e-6},
               {"100N", 100e-9},
               {"U47", 0.47e-6}},
              dimension::capacitance);
  check_read({{"4R7", 4.7e-6}, {"R15", 0.15e-6}, {"R47", 0.47e-6}, {"22N", 22e-9}}, dimension::inductance);
}

// source: common practice, listed as an ambiguity in repairers' notes.
TEST_CASE("4R7 on a capacitor is picofarads or microfarads") {
  check_read({{"4R7", 4.7e-12}, {"4R7", 4.7e-6}}, dimension::capacitance);
}

// source: pedalprojects.co.uk, capacitor codes (229, 479 and 478 among them).
TEST_CASE("three digits on a capacitor are picofarads") {
  check_first({{"100", 10e-12},
               {"101", 100e-12},
               {"102", 1e-9},
               {"103", 10e-9},
               {"104", 100e-9},
               {"105", 1e-6},
               {"106", 10e-6},
               {"226", 22e-6},
               {"220", 22e-12},
               {"221", 220e-12},
               {"222", 2.2e-9},
               {"473", 47e-9},
               {"472", 4.7e-9},
               {"334", 330e-9},
               {"684", 680e-9},
               {"229", 2.2e-12},
               {"479", 4.7e-12},
               {"478", 0.47e-12}},
              dimension::capacitance);
}

TEST_CASE("100 is 10 pF and not 100 pF") { CHECK(!reading_of("100", dimension::capacitance, 100e-12)); }

// source: common practice; a ceramic part of the same marking is 22 pF.
TEST_CASE("220 is 220 uF on a can, 22 pF on ceramic and 22 ohm on a resistor") {
  CHECK(reading_of("220", dimension::capacitance, 220e-6)->why.find("can") != std::string::npos);
  CHECK(reading_of("220", dimension::capacitance, 22e-12)->why.find("picofarads") != std::string::npos);
  CHECK(reading_of("220", dimension::resistance, 22)->why.find("chip") != std::string::npos);
  check_first({{"220 16V", 220e-6}, {"470 25V", 470e-6}, {"1000 35V", 1e-3}}, dimension::capacitance);
}

// source: the Wikipedia article on surface-mount resistor marking and common practice.
TEST_CASE("three and four digits on a resistor have two and three figures") {
  check_read({{"220", 22}, {"221", 220}, {"472", 4700}, {"103", 10e3}, {"105", 1e6}, {"470", 47}},
             dimension::resistance);
  check_first({{"4702", 47e3}, {"1001", 1e3}, {"1000", 100}, {"1002", 10e3}, {"2201", 2200}, {"4993", 499e3}},
              dimension::resistance);
}

TEST_CASE("four digits tell no tolerance") { CHECK(!first_reading("4702").tolerance); }

TEST_CASE("zeros are a link") {
  for (const char* text : {"0", "00", "000", "0000", "0R"}) CHECK_MESSAGE(says(text, "link"), text);
}

// source: common practice of coil makers.
TEST_CASE("three digits on a coil are microhenries") {
  check_read({{"101", 100e-6}, {"220", 22e-6}, {"471", 470e-6}, {"102", 1e-3}, {"103", 10e-3}}, dimension::inductance);
}

// source: developer.wildernesslabs.co, table of surface-mount resistor codes.
TEST_CASE("EIA-96 is an index and a letter") {
  check_first({{"01A", 100},
               {"01B", 1000},
               {"01C", 10e3},
               {"12A", 130},
               {"24A", 174},
               {"22A", 165},
               {"48C", 30.9e3},
               {"66B", 4.75e3},
               {"68X", 49.9},
               {"96D", 976e3},
               {"30Z", 0.200},
               {"68S", 49.9},
               {"01E", 1e6},
               {"01F", 10e6},
               {"66H", 4.75e3},
               {"01Y", 1}},
              dimension::resistance);
  CHECK(same_number(first_reading("01C").tolerance->plus, 0.01));
}

TEST_CASE("EIA-96 ends with the 96th value and begins with the first") {
  for (const char* text : {"00A", "97A", "99C"}) {
    for (const Reading& reading : decode(text)) CHECK_MESSAGE(reading.code != "EIA-96", text);
  }
}

TEST_CASE("the digits of EIA-96 are never the value") {
  CHECK(!reading_of("12A", dimension::resistance, 12));
  CHECK(!reading_of("48C", dimension::resistance, 4800));
}

TEST_CASE("47R is rather 47 ohm than the 47th value of E96") {
  check_first({{"47R", 47}, {"10R", 10}, {"33R", 33}}, dimension::resistance);
  check_read({{"47R", 3.01}}, dimension::resistance);
}

// source: units as cans and crystals print them; MFD and MMF from memory.
TEST_CASE("values with their units are read as such") {
  check_first({{"100uF", 100e-6},
               {"4.7 µF", 4.7e-6},
               {".01MFD", 10e-9},
               {"0.1 mfd", 100e-9},
               {"250MMF", 250e-12},
               {"47 pF", 47e-12}},
              dimension::capacitance);
  check_first({{"4.7k", 4700}, {"1.5M", 1.5e6}, {"10 kohm", 10e3}}, dimension::resistance);
  check_first({{"12.000MHz", 12e6}, {"32.768kHz", 32768}}, dimension::frequency);
  check_first({{"16V", 16}, {"450 VDC", 450}}, dimension::voltage);
}
