// Any bytes are read or not read, and nothing else happens.
#include "decoding.h"

#include <cstdint>

using namespace benchlore;

namespace {

void check_sound(const std::string& text) {
  const auto readings = decode(text);
  const auto again = decode(text);
  REQUIRE(readings.size() == again.size());
  for (std::size_t i = 0; i < readings.size(); ++i) {
    REQUIRE(readings[i].text == again[i].text);
    REQUIRE(!readings[i].text.empty());
    REQUIRE((!readings[i].value || std::isfinite(*readings[i].value)));
  }
}

// A small generator, so that a failure comes again.
struct Chance {
  std::uint32_t state = 12345;
  std::uint32_t next(std::uint32_t below) {
    state = state * 1664525u + 1013904223u;
    return (state >> 8) % below;
  }
};

} // namespace

TEST_CASE("nothing is read from nothing") {
  for (const char* text : {"", " ", "\t\n", ",,,", "/", "-", "\x01", "\xff\xfe", "é", "\u2126"})
    CHECK_MESSAGE(decode(text).empty(), text);
  CHECK(decode(std::string_view("\0\0", 2)).empty());
}

TEST_CASE("a text longer than a marking is not read") {
  CHECK(decode(std::string(longest_marking + 1, '1')).empty());
  CHECK(!decode("104" + std::string(longest_marking - 3, ' ')).empty());
  CHECK(decode("104" + std::string(longest_marking - 2, ' ')).empty());
}

TEST_CASE("long numbers and many words are no harm") {
  for (std::string_view piece : {"9", "R", "1R", "K", ".", "0", "104 ", "J ", "1/", "2A", "µ", "red ", "4k7J "}) {
    std::string text;
    while (text.size() + piece.size() <= longest_marking) text += piece;
    check_sound(text);
  }
}

TEST_CASE("any bytes are read alike twice") {
  Chance chance;
  for (int round = 0; round < 4000; ++round) {
    std::string text;
    const std::uint32_t length = chance.next(14);
    for (std::uint32_t i = 0; i < length; ++i) text += static_cast<char>(chance.next(256));
    check_sound(text);
  }
}

TEST_CASE("signs of markings in any order are read alike twice") {
  constexpr std::string_view signs = "0123456789ABCDEFGHJKLMNPQRSTUVWXYZkpnuR.. /xV%Fm";
  Chance chance;
  for (int round = 0; round < 8000; ++round) {
    std::string text;
    const std::uint32_t length = 1 + chance.next(8);
    for (std::uint32_t i = 0; i < length; ++i) text += signs[chance.next(static_cast<std::uint32_t>(signs.size()))];
    check_sound(text);
  }
}
