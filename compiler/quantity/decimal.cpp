// Exact decimal arithmetic on an integer and a power of ten; intermediate results have 128 bits, and a result that
// would lose a digit is refused instead of rounded.
#include "quantity/decimal.h"

#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>

namespace benchlore {
namespace {

__extension__ typedef __int128 Wide;
constexpr std::int64_t digit_limit = 1'000'000'000'000'000'000;
constexpr int digit_count_limit = 18;
constexpr int exponent_limit = 60;

std::optional<Decimal> fit(Wide digits, int exponent) {
  while (digits != 0 && digits % 10 == 0) {
    digits /= 10;
    ++exponent;
  }
  if (digits >= digit_limit || digits <= -digit_limit) return std::nullopt;
  return Decimal::make(static_cast<std::int64_t>(digits), exponent);
}

Wide power_of_ten(int exponent) {
  Wide power = 1;
  for (int i = 0; i < exponent; ++i) power *= 10;
  return power;
}

int digit_count(std::int64_t digits) {
  int count = 0;
  for (; digits != 0; digits /= 10) ++count;
  return count;
}

bool is_digit(char c) { return c >= '0' && c <= '9'; }

// Zeros wait until another digit follows, so `1.000…0` of any length is 1.
struct DigitSum {
  std::int64_t digits = 0;
  int count = 0;
  int zeros = 0;
  int exponent = 0;
  bool any = false;

  bool take(char digit, bool fraction) {
    any = true;
    if (fraction) --exponent;
    if (digit == '0') {
      if (digits != 0) ++zeros;
      return true;
    }
    count += zeros + 1;
    if (count > digit_count_limit) return false;
    for (; zeros > 0; --zeros) digits *= 10;
    digits = digits * 10 + (digit - '0');
    return true;
  }
};

bool take_digits(std::string_view text, std::size_t& at, bool fraction, DigitSum& sum) {
  for (; at < text.size() && is_digit(text[at]); ++at) {
    if (!sum.take(text[at], fraction)) return false;
  }
  return true;
}

// The power of ten after `e`, held back from overflow; nothing when there is no number.
std::optional<int> read_power(std::string_view text) {
  bool negative = !text.empty() && text[0] == '-';
  std::size_t at = !text.empty() && (text[0] == '-' || text[0] == '+') ? 1 : 0;
  if (at == text.size()) return std::nullopt;
  int power = 0;
  for (; at < text.size(); ++at) {
    if (!is_digit(text[at])) return std::nullopt;
    if (power < 100000) power = power * 10 + (text[at] - '0');
  }
  return negative ? -power : power;
}

std::string plain_text(std::string digits, int exponent) {
  if (exponent >= 0) return digits + std::string(static_cast<std::size_t>(exponent), '0');
  std::size_t fraction = static_cast<std::size_t>(-exponent);
  if (digits.size() <= fraction) digits.insert(0, fraction + 1 - digits.size(), '0');
  digits.insert(digits.size() - fraction, 1, '.');
  return digits;
}

} // namespace

std::optional<Decimal> Decimal::make(std::int64_t digits, int exponent) {
  Decimal result;
  if (digits == 0) return result;
  if (exponent > 10 * exponent_limit || exponent < -10 * exponent_limit) return std::nullopt;
  for (; digits % 10 == 0; digits /= 10) ++exponent;
  if (digits >= digit_limit || digits <= -digit_limit) return std::nullopt;
  if (exponent > exponent_limit || exponent < -exponent_limit) return std::nullopt;
  result.digits_ = digits;
  result.exponent_ = exponent;
  return result;
}

std::optional<Decimal> Decimal::parse(std::string_view text) {
  bool minus = !text.empty() && text[0] == '-';
  std::size_t at = !text.empty() && (text[0] == '-' || text[0] == '+') ? 1 : 0;
  DigitSum sum;
  if (!take_digits(text, at, false, sum)) return std::nullopt;
  if (at < text.size() && text[at] == '.') {
    std::size_t first = ++at;
    if (!take_digits(text, at, true, sum) || at == first) return std::nullopt;
  }
  if (!sum.any) return std::nullopt;
  int power = 0;
  if (at < text.size()) {
    if (text[at] != 'e' && text[at] != 'E') return std::nullopt;
    auto read = read_power(text.substr(at + 1));
    if (!read) return std::nullopt;
    power = *read;
  }
  return make(minus ? -sum.digits : sum.digits, sum.exponent + sum.zeros + power);
}

std::optional<Decimal> Decimal::nearest(double number) {
  if (!std::isfinite(number)) return std::nullopt;
  std::array<char, 40> text{};
  for (int precision = 0; precision < 15; ++precision) {
    std::snprintf(text.data(), text.size(), "%.*e", precision, number);
    if (std::strtod(text.data(), nullptr) == number) break;
  }
  for (char& c : text) {
    if (c == ',') c = '.'; // a locale may have put it there
  }
  return parse(text.data());
}

double Decimal::value() const {
  static constexpr std::array<double, 23> exact{1e0,  1e1,  1e2,  1e3,  1e4,  1e5,  1e6,  1e7,  1e8,  1e9,  1e10, 1e11,
                                                1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19, 1e20, 1e21, 1e22};
  constexpr std::int64_t exact_limit = std::int64_t{1} << 53;
  if (digits_ <= exact_limit && digits_ >= -exact_limit && exponent_ <= 22 && exponent_ >= -22) {
    // Both operands are exact, so the one operation rounds once.
    double number = static_cast<double>(digits_);
    return exponent_ < 0 ? number / exact[static_cast<std::size_t>(-exponent_)]
                         : number * exact[static_cast<std::size_t>(exponent_)];
  }
  std::array<char, 40> text{};
  std::snprintf(text.data(), text.size(), "%llde%d", static_cast<long long>(digits_), exponent_);
  return std::strtod(text.data(), nullptr); // rounds correctly, and no locale touches a text without a point
}

std::string Decimal::text() const {
  std::string sign = negative() ? "-" : "";
  std::string digits = std::to_string(negative() ? -digits_ : digits_);
  std::string plain = sign + plain_text(digits, exponent_);
  if (plain.size() <= 21) return plain;
  return sign + digits + "e" + std::to_string(exponent_);
}

std::optional<Decimal> multiply(Decimal a, Decimal b) {
  return fit(static_cast<Wide>(a.digits()) * b.digits(), a.exponent() + b.exponent());
}

std::optional<Decimal> divide(Decimal a, Decimal b) {
  if (b.zero()) return std::nullopt;
  Wide scaled = static_cast<Wide>(a.digits()) * power_of_ten(digit_count_limit);
  if (scaled % b.digits() != 0) return std::nullopt;
  return fit(scaled / b.digits(), a.exponent() - b.exponent() - digit_count_limit);
}

std::optional<Decimal> add(Decimal a, Decimal b) {
  if (a.zero()) return b;
  if (b.zero()) return a;
  if (a.exponent() < b.exponent()) return add(b, a);
  int shift = a.exponent() - b.exponent();
  if (shift > 19) return std::nullopt; // the last digit of b stays, more than 18 places below the first of a
  return fit(a.digits() * power_of_ten(shift) + b.digits(), b.exponent());
}

Decimal negate(Decimal a) { return Decimal::make(-a.digits(), a.exponent()).value_or(Decimal{}); }

int order_of(Decimal a) { return digit_count(a.digits()) + a.exponent() - 1; }

bool less(Decimal a, Decimal b) {
  if (a.zero() || b.zero() || a.negative() != b.negative()) return a.digits() < b.digits();
  if (order_of(a) != order_of(b)) return (order_of(a) < order_of(b)) != a.negative();
  int shift = a.exponent() - b.exponent(); // below 18, as the orders are equal
  Wide left = a.digits() * power_of_ten(shift > 0 ? shift : 0);
  Wide right = b.digits() * power_of_ten(shift < 0 ? -shift : 0);
  return left < right;
}

} // namespace benchlore
