// Which check tells most, and in which order to repair. Pure functions over probabilities.
#pragma once

#include <cstddef>
#include <vector>

namespace benchlore {

// Entropy of a distribution in bits; what has probability zero adds nothing.
double entropy(const std::vector<double>& probabilities);

// Expected gain in bits of a check: entropy of the causes less what is expected to be left of it. `outcomes` holds for
// each cause the probabilities of the outcomes.
double information_gain(const std::vector<double>& causes, const std::vector<std::vector<double>>& outcomes);

// Order of repairs with the least expected cost, for one fault, independent costs and a look after each repair:
// probability over cost, greatest first (Kadane and Simon; Breese and Heckerman, MSR-TR-96-06). Equal ones keep their
// order.
std::vector<std::size_t> repair_order(const std::vector<double>& probabilities, const std::vector<double>& costs);

// Expected cost of repairing in an order: each cost times the chance that nothing before it was the cause.
double expected_cost(const std::vector<double>& probabilities, const std::vector<double>& costs,
                     const std::vector<std::size_t>& order);

// Where to cut a chain of stages so that both sides are as equally probable as can be: the number of stages before the
// cut.
std::size_t half_split(const std::vector<double>& stages);

// Counts smoothed by pseudo-counts: (n + s w) / (N + s), with weights w that add to one and a strength s. With equal
// weights and s equal to their number it is Laplace's rule.
std::vector<double> smoothed(const std::vector<double>& counts, const std::vector<double>& weights, double strength);

} // namespace benchlore
