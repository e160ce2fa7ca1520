// Rows of a table are tried in order; a row marked `whole` serves only when all numbers are whole multiples of it,
// so 2000 hours are not 7.2 Ms. Prefixes are those that the bench writes: capacitances have no `mF`, which people
// read as microfarads.
#include "quantity/display_unit.h"

#include <array>

namespace benchlore {
namespace {

using namespace dimension;

struct Row {
  Dimension dimension;
  std::string_view symbol;
  std::int64_t digits; // the factor is digits * 10^exponent
  int exponent;
  std::string_view prefixes; // ascending, `-` for none
  bool whole;
};

constexpr Dimension root{.root_hertz = 1};
constexpr Dimension force = energy / length;

constexpr auto rows = std::to_array<Row>({
    {capacitance, "F", 1, 0, "pnu-", false},
    {resistance, "Ω", 1, 0, "um-kMG", false},
    {inverse(resistance), "S", 1, 0, "num-", false},
    {inductance, "H", 1, 0, "pnum-", false},
    {voltage, "V", 1, 0, "num-kM", false},
    {current, "A", 1, 0, "pnum-k", false},
    {power, "W", 1, 0, "num-kM", false},
    {frequency, "Hz", 1, 0, "m-kMG", false},
    {energy, "Wh", 3600, 0, "-", true},
    {energy, "J", 1, 0, "num-kM", false},
    {charge, "Ah", 3600, 0, "-", true},
    {charge, "mAh", 36, -1, "-", true},
    {charge, "C", 1, 0, "pnum-", false},
    {time, "h", 3600, 0, "-", true},
    {time, "s", 1, 0, "pnum-", false},
    {length, "m", 1, 0, "m-k", false},
    {length * length, "mm²", 1, -6, "-", false},
    {length * length * length, "mm³", 1, -9, "-", false},
    {mass, "g", 1, -3, "um-k", false},
    {temperature, "°C", 1, 0, "-", false},
    {temperature_difference, "K", 1, 0, "-", false},
    {information, "GiB", 8LL << 30, 0, "-", true},
    {information, "MiB", 8LL << 20, 0, "-", true},
    {information, "KiB", 8LL << 10, 0, "-", true},
    {information, "B", 8, 0, "-kMG", true},
    {information, "bit", 1, 0, "-kMG", false},
    {information / time, "bit/s", 1, 0, "-kMG", false},
    {force, "N", 1, 0, "m-k", false},
    {force / (length * length), "Pa", 1, 0, "-kM", false},
    {length / time, "m/s", 1, 0, "-", false},
    {voltage / time, "V/µs", 1, 6, "-", false},
    {current / time, "A/µs", 1, 6, "-", false},
    {inverse(temperature_difference), "ppm/K", 1, -6, "-", false},
    {temperature_difference / power, "K/W", 1, 0, "-", false},
    {power / temperature_difference, "W/K", 1, 0, "um-", false},
    {voltage / temperature_difference, "V/K", 1, 0, "um-", false},
    {resistance / temperature_difference, "Ω/K", 1, 0, "um-", false},
    {resistance / voltage, "Ω/V", 1, 0, "-kM", false},
    {current * current * time, "A²s", 1, 0, "-", false},
    {voltage / root, "V/√Hz", 1, 0, "num-", false},
    {current / root, "A/√Hz", 1, 0, "pnum-", false},
    {{.turn = 1}, "rpm", 1, 0, "-", false},
    {{.track = 1}, "tpi", 1, 0, "-", false},
    {none, "", 1, 0, "-", false},
});

int prefix_power(char prefix) {
  switch (prefix) {
  case 'p':
    return -12;
  case 'n':
    return -9;
  case 'u':
    return -6;
  case 'm':
    return -3;
  case 'k':
    return 3;
  case 'M':
    return 6;
  case 'G':
    return 9;
  default:
    return 0;
  }
}

std::string prefix_text(char prefix) {
  if (prefix == '-') return "";
  return prefix == 'u' ? "\u00B5" : std::string(1, prefix);
}

bool serves(Decimal number, Decimal factor, bool whole) {
  auto quotient = divide(number, factor);
  return quotient && (!whole || quotient->exponent() >= 0);
}

bool serves_all(std::span<const Decimal> numbers, Decimal factor, bool whole) {
  bool any = false;
  for (Decimal number : numbers) {
    if (!serves(number, factor, whole)) return false;
    any = any || !number.zero();
  }
  return any || !whole; // zero is a whole multiple of everything
}

// The largest prefix that leaves at least one whole unit of the largest number; without one, the smallest.
DisplayUnit prefixed(const Row& row, const Decimal* largest) {
  char chosen = largest ? row.prefixes[0] : '-';
  for (char prefix : row.prefixes) {
    int needed = row.exponent + prefix_power(prefix);
    if (largest && order_of(*largest) - order_of(Decimal::make(row.digits, 0).value_or(Decimal{})) >= needed) {
      chosen = prefix;
    }
  }
  auto factor = Decimal::make(row.digits, row.exponent + prefix_power(chosen));
  return {prefix_text(chosen) + std::string(row.symbol), factor.value_or(Decimal{})};
}

const Decimal* largest_of(std::span<const Decimal> numbers) {
  const Decimal* largest = nullptr;
  for (const Decimal& number : numbers) {
    if (!number.zero() && (!largest || order_of(number) > order_of(*largest))) largest = &number;
  }
  return largest;
}

} // namespace

DisplayUnit display_unit(Dimension dimension, std::span<const Decimal> numbers) {
  const Decimal* largest = largest_of(numbers);
  for (const Row& row : rows) {
    if (row.dimension != dimension) continue;
    DisplayUnit unit = prefixed(row, largest);
    if (serves_all(numbers, unit.factor, row.whole)) return unit;
  }
  return {base_units(dimension), Decimal::make(1, 0).value_or(Decimal{})};
}

} // namespace benchlore
