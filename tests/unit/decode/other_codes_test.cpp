// Dates, tapers, drives, and the order of readings.
#include "decoding.h"

using namespace benchlore;

namespace {

int rank_of_words(std::string_view text, std::string_view words) {
  for (const Reading& reading : decode(text)) {
    if (reading.text.find(words) != std::string::npos) return reading.rank;
  }
  return 0;
}

} // namespace

// source: common practice; a week above 53 decides the order.
TEST_CASE("four digits may be year and week") {
  CHECK(first_reading("8632").text == "made in week 32 of 1986");
  CHECK(first_reading("3286").text == "made in week 32 of 1986");
  CHECK(says("8512", "made in week 12 of 1985"));
  CHECK(says("1208", "made in week 8 of 2012"));
  CHECK(says("1208", "made in week 12 of 2008"));
  CHECK(!says("8632", "week 86"));
  CHECK(!says("9999", "week"));
  CHECK(!says("0000", "week"));
}

// source: EPCOS marking document of 2009 and an abstract of IEC 60062; letters from memory.
TEST_CASE("a letter and a sign may be year and month") {
  CHECK(first_reading("K7").text == "made in July 1978, 1998 or 2018");
  CHECK(first_reading("T5").text == "made in May 1985, 2005 or 2025");
  CHECK(first_reading("XD").text == "made in December 1989, 2009 or 2029");
  CHECK(first_reading("A1").text == "made in January 1970, 1990 or 2010");
  CHECK(first_reading("MO").text == "made in October 1980, 2000 or 2020");
  CHECK(first_reading("SN").text == "made in November 1984, 2004 or 2024");
  for (const char* text : {"G7", "I7", "O7", "Q7", "Y7", "Z7", "K0"}) CHECK_MESSAGE(!says(text, "made in"), text);
}

// source: clubedohardware.com.br and precisionelectronics.com, which differ; older European use from memory.
TEST_CASE("taper letters are read and their disagreement is told") {
  check_first({{"B10K", 10e3}, {"A100K", 100e3}, {"100KA", 100e3}, {"10KB", 10e3}, {"A1M", 1e6}, {"B 10K", 10e3}},
              dimension::resistance);
  check_read({{"B103", 10e3}, {"A503", 50e3}}, dimension::resistance);
  for (const char* text : {"A", "B", "B10K", "A100K", "100KA"}) CHECK_MESSAGE(says(text, "(sources disagree)"), text);
  CHECK(says("U50K", "linear (one maker)"));
}

// source: arithmetic; the geometries are those of the first hard disk types of the AT.
TEST_CASE("a drive's geometry gives its capacity") {
  check_first({{"615/4/17", 8.0 * 21411840},
               {"306/4/17", 8.0 * 10653696},
               {"615x6x17", 8.0 * 32117760},
               {"940×8×17", 8.0 * 65454080},
               {"977/5/17", 8.0 * 42519040},
               {"820/6/26", 8.0 * 65495040},
               {"1024/16/63", 8.0 * 528482304}},
              dimension::information);
  CHECK(first_reading("615/4/17").text.find("21411840 bytes (20.42 MiB)") != std::string::npos);
  for (const char* text :
       {"615/4", "615/0/17", "0/4/17", "615/4/17/1", "615//17", "65536/4/17", "615/257/17", "6é5/4/17"})
    CHECK_MESSAGE(decode(text).empty(), text);
}

TEST_CASE("a preferred value ranks before an odd one, and the reason says so") {
  CHECK(rank_of_words("104", "capacitor, 100 nF") > rank_of_words("134", "capacitor, 130 nF"));
  CHECK(rank_of_words("134", "capacitor, 130 nF") > rank_of_words("144", "capacitor, 140 nF"));
  CHECK(rank_of_words("144", "resistor, 140 kΩ") > rank_of_words("194", "resistor, 190 kΩ"));
  CHECK(first_reading("104").why.find("preferred value of series E3") != std::string::npos);
  CHECK(first_reading("194").why.find("no preferred value") != std::string::npos);
}

TEST_CASE("what reads the whole marking ranks before what reads a word of it") {
  for (const char* text : {"104K 50V", "100n 63", "4k7 5%", "220 16V"}) {
    CHECK_MESSAGE(first_reading(text).marking == text, text);
    const auto readings = decode(text);
    CHECK_MESSAGE(std::any_of(readings.begin(), readings.end(), [&](const Reading& r) { return r.marking != text; }),
                  text);
  }
}

TEST_CASE("words that do not belong together are read one by one") {
  for (const Reading& reading : decode("104K wobble")) CHECK(reading.marking == "104K");
  CHECK(!decode("104K wobble").empty());
}

TEST_CASE("type numbers are not taken for values") {
  for (const char* text : {"1N4007", "2N2222", "2N3055", "BC547", "74LS00", "LM317T", "1N914"})
    CHECK_MESSAGE(decode(text).empty(), text);
}

TEST_CASE("readings are best first, without repetition, and each has a reason") {
  for (const char* text : {"104", "220", "4R7", "104K 50V", "1001", "B10K", "47K", "brown black black red brown"}) {
    const auto readings = decode(text);
    for (std::size_t i = 0; i < readings.size(); ++i) {
      CHECK_MESSAGE(!readings[i].why.empty(), text);
      CHECK_MESSAGE(!readings[i].code.empty(), text);
      CHECK_MESSAGE((readings[i].rank >= 1 && readings[i].rank <= 99), text);
      if (i > 0) CHECK_MESSAGE(readings[i - 1].rank >= readings[i].rank, text);
      for (std::size_t j = 0; j < i; ++j)
        CHECK_MESSAGE((readings[i].text != readings[j].text || readings[i].marking != readings[j].marking), text);
    }
  }
}
