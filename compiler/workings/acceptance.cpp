// Acceptance with a guard band.
#include "workings/acceptance.h"

#include <cmath>

namespace benchlore {

double meter_uncertainty(double reading, double share, double counts, double resolution) {
  return std::fabs(reading) * share + counts * resolution;
}

Ruling guarded(double reading, double uncertainty, std::optional<double> low, std::optional<double> high) {
  // A reading that lies on the guarded limit but for the last bit is accepted.
  const double slip = 1e-9 * (std::fabs(reading) + uncertainty);
  const bool above_low = !low || reading - uncertainty >= *low - slip;
  const bool below_high = !high || reading + uncertainty <= *high + slip;
  if (above_low && below_high) return Ruling::accept;
  const bool surely_low = low && reading + uncertainty < *low - slip;
  const bool surely_high = high && reading - uncertainty > *high + slip;
  return surely_low || surely_high ? Ruling::reject : Ruling::undecided;
}

std::string_view to_text(Ruling ruling) {
  switch (ruling) {
  case Ruling::accept:
    return "accept";
  case Ruling::undecided:
    return "undecided";
  case Ruling::reject:
    return "reject";
  }
  return {};
}

} // namespace benchlore
