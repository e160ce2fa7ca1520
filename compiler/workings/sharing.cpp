// Sharing; each formula stands in its header.
#include "workings/sharing.h"

#include <algorithm>
#include <cmath>

namespace benchlore {

double worst_share(const std::vector<Spread>& weights, std::size_t part) {
  double others = 0;
  for (std::size_t i = 0; i < weights.size(); ++i) {
    if (i != part) others += weights[i].low;
  }
  return weights[part].high / (weights[part].high + others);
}

double shared_limit(const std::vector<double>& limits, const std::vector<Spread>& weights) {
  double limit = INFINITY;
  for (std::size_t i = 0; i < limits.size(); ++i) limit = std::min(limit, limits[i] / worst_share(weights, i));
  return limit;
}

double heat_shared_current(const std::vector<double>& limits, const std::vector<double>& greatest_resistance) {
  double total = 0;
  for (double resistance : greatest_resistance) total += 1 / resistance;
  double limit = INFINITY;
  for (std::size_t i = 0; i < limits.size(); ++i) {
    const double own = 1 / greatest_resistance[i], others = total - own;
    const double at_worst = own >= others ? limits[i] * total / own : limits[i] * std::sqrt(4 * others / own);
    limit = std::min(limit, at_worst);
  }
  return limit;
}

Ohms balancing_resistance(int count, Volts rated, Volts string, Amperes leakage) {
  const Volts spare = static_cast<double>(count) * rated - string;
  return {std::min((spare / leakage).si, (rated / leakage).si)};
}

} // namespace benchlore
