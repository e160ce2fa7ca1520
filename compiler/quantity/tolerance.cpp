// Tolerances behind a nominal value: `±20 %`, `+/-0.5 V`, `-10/+50 %` in either order, or the letter of a code.
#include "quantity/marking_code.h"
#include "quantity/reader.h"

#include <array>

namespace benchlore {
namespace {

struct Tolerance {
  std::array<Amount, 2> sides; // minus, plus
};

bool plus_minus(Reader& reader) {
  for (std::string_view sign : {"±", "+/-", "+/\u2212", "+-", "+\u2212"}) {
    if (reader.take(sign)) return true;
  }
  return false;
}

bool read_even(Reader& reader, Tolerance& tolerance) {
  reader.skip_space();
  if (std::size_t sign = sign_at(reader.text, reader.at)) {
    return reader.fail(reader.at, sign, "a second sign in the tolerance", "write a tolerance such as `±20 %`");
  }
  auto amount = read_amount(reader);
  if (amount) tolerance.sides = {*amount, *amount};
  return amount.has_value();
}

bool positive_sign(const Reader& reader, const Amount& amount) { return reader.text[amount.offset] == '+'; }

bool fail_one_sided(Reader& reader, const Amount& first) {
  return reader.fail(first.offset, first.length, "a sign after the value and only one number behind it",
                     "write `10..20 V` for a range, `-20/+0 %` for a tolerance to one side");
}

// `-10/+50 %`, `+80 -20 %`.
bool read_uneven(Reader& reader, Tolerance& tolerance) {
  auto first = read_amount(reader);
  if (!first) return false;
  reader.skip_space();
  reader.take("/");
  reader.skip_space();
  if (sign_at(reader.text, reader.at) == 0 || !number_at(reader.text, reader.at)) return fail_one_sided(reader, *first);
  auto second = read_amount(reader);
  if (!second) return false;
  if (positive_sign(reader, *first) == positive_sign(reader, *second)) {
    return reader.fail(second->offset, second->length, "both sides of the tolerance have the same sign",
                       "write a tolerance such as `-10/+50 %`");
  }
  tolerance.sides = {*first, *second};
  share_units(tolerance.sides);
  if (positive_sign(reader, *first)) std::swap(tolerance.sides[0], tolerance.sides[1]);
  Amount& minus = tolerance.sides[0];
  minus.number = negate(minus.number);
  return true;
}

bool relative(const Amount& amount) { return amount.unit && amount.unit->dimension == dimension::none; }

bool check_sides(Reader& reader, const Tolerance& tolerance, const Amount& nominal, Dimension expected) {
  const auto& [minus, plus] = tolerance.sides;
  std::size_t length = reader.at - minus.offset;
  if (relative(minus) != relative(plus)) {
    return reader.fail(plus.offset, plus.length, "one side of the tolerance is a fraction and the other is not",
                       "write both sides in the same unit");
  }
  if (relative(minus) && expected == dimension::temperature) {
    return reader.fail(minus.offset, length, "a fraction of a temperature in °C means nothing",
                       "write the tolerance in kelvin, such as `±5 K`");
  }
  if (relative(minus) && relative(nominal)) {
    return reader.fail(minus.offset, length, "it is open whether the tolerance is of the value or of the whole",
                       "write the value as a number, such as `0.5 ±0.05` or `0.5 ±10 %`");
  }
  if (minus.unit || minus.coded || expected == dimension::none) return true;
  return reader.fail(minus.offset, minus.length, "the tolerance has no unit",
                     "write `%` or a unit of " + describe(expected) + " behind it");
}

// Nobody means more, and every fraction below can be written in percent.
Decimal most_fraction() { return Decimal::make(1, 4).value_or(Decimal{}); }

// A tolerance in °C is a difference, as is one in kelvin.
std::optional<Decimal> side_to_si(Reader& reader, Amount side, Dimension expected) {
  if (relative(side)) {
    auto fraction = multiply(side.number, side.unit->factor);
    return fraction && less(*fraction, most_fraction()) ? fraction : std::nullopt;
  }
  if (expected != dimension::temperature) return to_si(reader, side, expected);
  if (side.unit && side.unit->dimension == expected) side.unit->dimension = dimension::temperature_difference;
  return to_si(reader, side, dimension::temperature_difference);
}

// `10 ±0.5 V`; yet `25 ±5 K` does not say on which scale the 25 are.
void lend_unit(Amount& nominal, const Amount& side, Dimension expected) {
  if (nominal.unit || nominal.coded || relative(side) || !side.unit || side.unit->dimension != expected) return;
  std::array<Amount, 2> both{nominal, side};
  share_units(both);
  nominal = both[0];
}

// Below 10 pF the letters B to G are picofarads (IEC 60062), and the others are not defined.
std::optional<Decimal> small_capacitance_letter(char letter) {
  switch (letter) {
  case 'B':
    return Decimal::make(1, -13);
  case 'C':
    return Decimal::make(25, -14);
  case 'D':
    return Decimal::make(5, -13);
  case 'G':
    return Decimal::make(2, -12);
  default:
    return std::nullopt;
  }
}

bool small_capacitance(const Amount& amount, const Quantity& quantity) {
  auto limit = Decimal::make(1, -11);
  return quantity.dimension == dimension::capacitance && limit && less(amount.number, *limit);
}

} // namespace

bool read_tolerance(Reader& reader, Amount& nominal, Quantity& quantity) {
  std::size_t before = reader.at;
  reader.skip_space();
  Tolerance tolerance;
  bool even = plus_minus(reader);
  if (!even && !(sign_at(reader.text, reader.at) > 0 && number_at(reader.text, reader.at))) {
    reader.at = before;
    return true;
  }
  if (!(even ? read_even(reader, tolerance) : read_uneven(reader, tolerance))) return false;
  if (!check_sides(reader, tolerance, nominal, quantity.dimension)) return false;
  lend_unit(nominal, tolerance.sides[1], quantity.dimension);
  quantity.relative_tolerance = relative(tolerance.sides[0]);
  quantity.minus = side_to_si(reader, tolerance.sides[0], quantity.dimension);
  quantity.plus = side_to_si(reader, tolerance.sides[1], quantity.dimension);
  if (quantity.minus && quantity.plus) return true;
  return reader.fail(tolerance.sides[0].offset, reader.at - tolerance.sides[0].offset,
                     "the tolerance is too large or too long", "write fewer digits");
}

bool apply_tolerance_letter(Reader& reader, const Amount& amount, Quantity& quantity) {
  if (!amount.tolerance_letter) return true;
  std::size_t offset = amount.offset + amount.length - 1;
  if (quantity.minus) {
    return reader.fail(offset, 1, "the tolerance is stated twice, by a letter and by a number",
                       "leave one of them out");
  }
  if (small_capacitance(amount, quantity)) {
    quantity.relative_tolerance = false;
    quantity.minus = quantity.plus = small_capacitance_letter(*amount.tolerance_letter);
  } else if (auto code = read_tolerance_letter(*amount.tolerance_letter)) {
    quantity.minus = code->minus;
    quantity.plus = code->plus;
  }
  if (quantity.minus) return true;
  return reader.fail(offset, 1, "this tolerance letter is not defined below 10 pF", "write the tolerance as a number");
}

} // namespace benchlore
