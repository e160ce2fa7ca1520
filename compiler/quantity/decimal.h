// Exact decimal numbers, so that a value reads, converts and prints without losing a digit.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace benchlore {

// digits * 10^exponent, at most 18 significant digits, exponent within ±60; kept without trailing zeros.
class Decimal {
public:
  constexpr Decimal() = default;
  // Nothing when the result would not fit.
  static std::optional<Decimal> make(std::int64_t digits, int exponent);
  // `4.7`, `-0.05`, `1e3`; a decimal point only. Nothing when it is no number or does not fit.
  static std::optional<Decimal> parse(std::string_view text);
  // The number with the fewest digits (at most 15) that reads back as this double. Not finite: nothing.
  static std::optional<Decimal> nearest(double number);

  // The double nearest to the number.
  double value() const;
  std::int64_t digits() const { return digits_; }
  int exponent() const { return exponent_; }
  bool negative() const { return digits_ < 0; }
  bool zero() const { return digits_ == 0; }

  // Without an exponent where that is at most 21 characters long.
  std::string text() const;

  bool operator==(const Decimal&) const = default; // exact: both are kept in the same form

private:
  std::int64_t digits_ = 0;
  int exponent_ = 0;
};

std::optional<Decimal> multiply(Decimal a, Decimal b);
// Nothing when the quotient is no decimal of 18 digits: 3/4 is one, 1/3 is not.
std::optional<Decimal> divide(Decimal a, Decimal b);
std::optional<Decimal> add(Decimal a, Decimal b);
Decimal negate(Decimal a);
bool less(Decimal a, Decimal b);
// The power of ten of the first digit: 2 for 470, -1 for 0.47. Of zero it means nothing.
int order_of(Decimal a);

} // namespace benchlore
