// The table of units, and reading unit expressions such as `V/us`, `ppm/K`, `A2s`, `kbit/s`.
#pragma once

#include "quantity/decimal.h"
#include "quantity/dimension.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace benchlore {

struct UnitRow {
  std::string_view symbol; // as printed
  Dimension dimension;
  Decimal factor;            // to the SI unit of the dimension
  std::string_view prefixes; // the SI prefixes it takes, `u` for micro; empty when none
};
std::span<const UnitRow> units();

struct Unit {
  Dimension dimension;
  Decimal factor; // multiply by it to get SI units
};

// A unit expression with prefixes. `m` is milli and `M` mega, always; micro is `u`, U+00B5 or U+03BC; `ohm`,
// `Ω` (U+03A9) and U+2126 are one, `R` is no unit. `K` alone is kelvin, a difference. Nothing when unknown.
std::optional<Unit> parse_unit(std::string_view text);

// Unit texts that would do for a dimension, the usual first: for capacitance `pF`, `nF`, `uF`.
std::vector<std::string> units_for(Dimension dimension);

} // namespace benchlore
