// A value as a datasheet states it: nominal with tolerance, limits, or a range; with test conditions.
#pragma once

#include "quantity/decimal.h"
#include "quantity/dimension.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace benchlore {

struct Condition;

// Numbers are in SI units (temperatures in °C, turns per minute, tracks per inch as such).
// What is guaranteed lies in [low(), high()]; a typical value guarantees nothing.
struct Quantity {
  Dimension dimension;
  std::optional<Decimal> nominal; // `10 uF`
  std::optional<Decimal> minimum; // `min 100`, or the lower end of a range
  std::optional<Decimal> typical; // `typ 200`
  std::optional<Decimal> maximum; // `max 300`, or the upper end of a range
  bool range = false;             // written `a..b`: everything between is meant
  std::optional<Decimal> minus;   // tolerance below the nominal value, not negative
  std::optional<Decimal> plus;    // tolerance above it, not negative
  bool relative_tolerance = true; // minus and plus are fractions (0.2 for 20 %), otherwise in the unit
  std::vector<Condition> at;      // test conditions, in the order written

  bool tolerance_stated() const { return minus.has_value(); }
  // The least and the greatest that is guaranteed; nothing when that side is not. A nominal value without a
  // tolerance counts as exact.
  std::optional<double> low() const;
  std::optional<double> high() const;
  // Nominal, or typical, or the middle of a range, or the one limit there is.
  std::optional<double> centre() const;
  bool only_typical() const { return typical && !nominal && !minimum && !maximum; }
  // The condition of this name, or, for an unnamed one, of this dimension.
  const Condition* condition(std::string_view name) const;
  const Condition* condition(Dimension dimension) const;
  bool operator==(const Quantity& other) const;
};

// `100 kHz`, `IC 4 A`, `case 25 °C`: a name (may be empty) and a value; or a name alone (`loaded`).
struct Condition {
  std::string name;
  std::optional<Quantity> value;
  bool operator==(const Condition& other) const;
};

struct QuantityError {
  std::size_t offset = 0; // in bytes of the text, the narrowest thing that is wrong
  std::size_t length = 0;
  std::string message; // what was found
  std::string way_out; // what to write instead
};

struct QuantityResult {
  std::optional<Quantity> quantity;
  std::optional<QuantityError> error;
};

// Reads datasheet notation; `expected` is the dimension that the field asks for.
//
//   10 uF ±20%   10uF +/-20 %   100 uF -10/+50%   10.0 V ±0.5 V   4u7   4k7   R47   2n2 (IEC 60062, when it fits)
//   max 0.3 ohm @ 100 kHz, 20 °C   min 100 typ 200 max 300   -40..105 °C   -40 .. +105 °C   2000 h @ 105 °C   1:10  3/4
// Spaces may be thin or no-break (U+2009, U+202F, U+00A0); minus may be U+2212. A letter after an IEC 60062 value
// is its tolerance (`4k7J`, ±5 %).
//
// Errors: a number without a unit (names the units that would do), a unit of another dimension, an unknown unit
// (with near ones), a decimal comma, a number too large or too long, minimum above maximum, leftover text.
// Pure numbers (dimension none) need no unit and take `%` and `ppm`.
QuantityResult parse_quantity(std::string_view text, Dimension expected);

// The canonical text: one form for each value, which reads back as exactly the same value.
std::string to_text(const Quantity& quantity);

// One number in a unit of the dimension with an engineering prefix: 4.7e-6 F gives `4.7 µF`; at most `figures` figures.
std::string show_number(double si, Dimension dimension, int figures = 4);

} // namespace benchlore
