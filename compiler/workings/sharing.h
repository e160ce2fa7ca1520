// How parts that are joined share a voltage, a current or a power, at the worst that their tolerances allow. Pure
// functions; weights are what the sharing goes by (resistances in series, conductances in parallel, and so on).
#pragma once

#include "quantity/dimension.h"

#include <vector>

namespace benchlore {

struct Spread {
  double low = 0, high = 0; // of a weight, both above zero
};

// The greatest share that one part can have: itself at its greatest weight, all others at their least.
double worst_share(const std::vector<Spread>& weights, std::size_t part);

// The most of a whole that leaves every part within its own limit at its worst share.
double shared_limit(const std::vector<double>& limits, const std::vector<Spread>& weights);

// The most alternating current through parts in parallel that heats none of them above its own limit, when only the
// greatest series resistance of each is known. A part of lower resistance takes more current and turns less of it into
// heat; the worst is where it takes half of the whole, or, when it has already more, where it stands.
double heat_shared_current(const std::vector<double>& limits, const std::vector<double>& greatest_resistance);

// The greatest resistance across each of `count` equal capacitors in series that keeps them within their rated
// voltage while their leakage differs by as much as `leakage`: (n Um - Ub) / I, and never more than Um / I, which
// another maker's guide asks for.
Ohms balancing_resistance(int count, Volts rated, Volts string, Amperes leakage);

} // namespace benchlore
