// What one logic output offers another logic input, at the worst of both. Pure functions, SI units in the types.
#pragma once

#include "quantity/dimension.h"

#include <cstdint>

namespace benchlore {

// Least high output less the input's high threshold; and the input's low threshold less the greatest low output. A
// negative margin means that some pairs of parts do not work.
Volts high_noise_margin(Volts output_high, Volts input_high);
Volts low_noise_margin(Volts input_low, Volts output_low);

// How many inputs an output can drive in one state: what it can carry over what one input takes, rounded down.
// Inputs that take nothing set no limit: the greatest count is returned.
std::int64_t fan_out(Amperes output, Amperes input);

} // namespace benchlore
