// Logic levels and currents; each formula stands in its header.
#include "workings/logic.h"

#include <cmath>

namespace benchlore {

Volts high_noise_margin(Volts output_high, Volts input_high) { return output_high - input_high; }

Volts low_noise_margin(Volts input_low, Volts output_low) { return input_low - output_low; }

std::int64_t fan_out(Amperes output, Amperes input) {
  constexpr std::int64_t no_limit = INT64_MAX;
  if (!(Amperes{0} < input)) return no_limit;
  const double count = output.si / input.si;
  // A quotient that is whole but for the last bit counts as whole: 8 mA over 0.4 mA is 20.
  return count > 1e9 ? no_limit : static_cast<std::int64_t>(std::floor(count * (1 + 1e-12)));
}

} // namespace benchlore
