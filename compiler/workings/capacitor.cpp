// Circuit theory; each formula stands in its header.
#include "workings/capacitor.h"

#include <cmath>

namespace benchlore {

Amperes touch_current(Farads capacitance, Volts voltage, Hertz frequency) {
  constexpr double two_pi = 6.283185307179586;
  return two_pi * (frequency * capacitance * voltage);
}

Seconds time_constant(Ohms resistance, Farads capacitance) { return resistance * capacitance; }

Seconds bleed_time(Ohms resistance, Farads capacitance, Volts from, Volts to) {
  if (!(to < from) || to.si <= 0) return {0};
  return std::log(from.si / to.si) * time_constant(resistance, capacitance);
}

Joules stored_energy(Farads capacitance, Volts voltage) { return 0.5 * (capacitance * voltage * voltage); }

Volts worst_series_share(Volts string, int count, double low_fraction, double high_fraction) {
  const double low = 1 / low_fraction;
  const double others = (count - 1) / high_fraction;
  return (low / (low + others)) * string;
}

} // namespace benchlore
