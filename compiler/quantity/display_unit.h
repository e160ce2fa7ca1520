// Which unit a number is shown in: one deterministic rule, so that one value has one text.
#pragma once

#include "quantity/decimal.h"
#include "quantity/dimension.h"

#include <span>
#include <string>

namespace benchlore {

struct DisplayUnit {
  std::string symbol; // empty for a pure number
  Decimal factor;     // to SI units; every number divides by it exactly
};
// The unit for numbers that stand side by side, chosen by the largest of them.
DisplayUnit display_unit(Dimension dimension, std::span<const Decimal> numbers);

} // namespace benchlore
