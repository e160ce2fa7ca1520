// Decimals: exactness, the limits of 18 digits and 60 powers of ten, and doubles rounded correctly.
#include "quantity/decimal.h"

#include <doctest/doctest.h>

#include <cmath>
#include <cstdlib>
#include <limits>
#include <random>

using namespace benchlore;

namespace {

Decimal number(std::string_view text) {
  auto read = Decimal::parse(text);
  REQUIRE_MESSAGE(read.has_value(), std::string(text));
  return *read;
}

} // namespace

TEST_CASE("a decimal has one form") {
  CHECK(number("4.70") == number("0.0047e3"));
  CHECK(number("-0") == Decimal{});
  CHECK(number("1." + std::string(5000, '0')) == number("1"));
  CHECK(number("100").digits() == 1);
  CHECK(number("100").exponent() == 2);
}

TEST_CASE("texts that are no decimal are refused") {
  for (const char* text : {"",
                           "-",
                           "+",
                           ".",
                           "e3",
                           "1e",
                           "1e+",
                           "1.",
                           "1.e3",
                           "1,5",
                           " 1",
                           "1 ",
                           "--1",
                           "0x10",
                           "inf",
                           "nan",
                           "1e61",
                           "1e-61",
                           "1e400",
                           "1e99999999999999999999",
                           "1234567890123456789",
                           "1.000000000000000001"}) {
    CHECK_MESSAGE(!Decimal::parse(text), text);
  }
}

TEST_CASE("eighteen digits are kept and written as they were read") {
  for (const char* text : {"123456789012345678", "-0.00123456789012345", "0.1", "-4.7", "100000", "1e60", "-1e-60",
                           "123456789012345678e40", "0.000001", "999999999999999999"}) {
    CHECK(number(text).text() == text);
  }
}

TEST_CASE("every decimal text reads back as the same decimal") {
  std::mt19937_64 random(7);
  for (int i = 0; i < 20000; ++i) {
    auto digits = static_cast<std::int64_t>(random() % 1'000'000'000'000'000'000ULL) >> (random() % 60);
    auto made = Decimal::make(i % 2 ? -digits : digits, static_cast<int>(random() % 80) - 40);
    if (made) CHECK(Decimal::parse(made->text()) == made);
  }
}

TEST_CASE("the double of a decimal is the nearest one") {
  std::mt19937_64 random(11);
  for (int i = 0; i < 20000; ++i) {
    auto digits = static_cast<std::int64_t>(random() % 1'000'000'000'000'000'000ULL) >> (random() % 60);
    auto made = Decimal::make(digits, static_cast<int>(random() % 110) - 55);
    if (made) CHECK(made->value() == std::strtod(made->text().c_str(), nullptr));
  }
  CHECK(number("0.3").value() == 0.3);
  CHECK(number("9007199254740993").value() == 9007199254740992.0);
}

TEST_CASE("nearest gives the fewest digits") {
  CHECK(Decimal::nearest(0.1) == number("0.1"));
  CHECK(Decimal::nearest(4.7e-6) == number("4.7e-6"));
  CHECK(Decimal::nearest(-1e22) == number("-1e22"));
  CHECK(Decimal::nearest(0.0) == Decimal{});
  CHECK(!Decimal::nearest(std::nan("")));
  CHECK(!Decimal::nearest(std::numeric_limits<double>::infinity()));
  CHECK(!Decimal::nearest(1e300));
}

TEST_CASE("arithmetic is exact or refused") {
  CHECK(multiply(number("0.1"), number("0.2")) == number("0.02"));
  CHECK(!multiply(number("123456789012345678"), number("1.1")));
  CHECK(!multiply(number("1e40"), number("1e40")));
  CHECK(add(number("0.1"), number("0.2")) == number("0.3"));
  CHECK(add(number("1e17"), number("-1")) == number("99999999999999999"));
  CHECK(!add(number("1e30"), number("1")));
  CHECK(add(number("-273.15"), number("273.15")) == Decimal{});
  CHECK(divide(number("3"), number("4")) == number("0.75"));
  CHECK(!divide(number("1"), number("3")));
  CHECK(!divide(number("1"), number("0")));
  CHECK(divide(number("7200000"), number("3600")) == number("2000"));
}

TEST_CASE("less agrees with the doubles where these differ") {
  std::mt19937_64 random(13);
  auto any = [&] { return Decimal::make(static_cast<std::int64_t>(random() % 2000) - 1000, int(random() % 60) - 30); };
  for (int i = 0; i < 20000; ++i) {
    auto a = any(), b = any();
    if (a->value() != b->value()) CHECK(less(*a, *b) == (a->value() < b->value()));
  }
  CHECK(less(number("123456789012345677"), number("123456789012345678")));
  CHECK(!less(number("1"), number("1")));
}

TEST_CASE("integers at the ends of 64 bits are refused, not wrapped") {
  CHECK(!Decimal::make(std::numeric_limits<std::int64_t>::min(), 0));
  CHECK(!Decimal::make(std::numeric_limits<std::int64_t>::max(), 0));
  CHECK(!Decimal::make(1, std::numeric_limits<int>::max()));
  CHECK(!Decimal::make(1, std::numeric_limits<int>::min()));
}
