// Information, cost and counts; each formula stands in its header.
#include "diagnosis/decisions.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace benchlore {

double entropy(const std::vector<double>& probabilities) {
  double bits = 0;
  for (double p : probabilities) {
    if (p > 0) bits -= p * std::log2(p);
  }
  return bits;
}

double information_gain(const std::vector<double>& causes, const std::vector<std::vector<double>>& outcomes) {
  if (outcomes.empty()) return 0;
  double left = 0;
  for (std::size_t outcome = 0; outcome < outcomes.front().size(); ++outcome) {
    double probability = 0, bits = 0; // of this outcome; and minus the sum of p log p before dividing by it
    for (std::size_t cause = 0; cause < causes.size(); ++cause) {
      const double p = causes[cause] * outcomes[cause][outcome];
      probability += p;
      if (p > 0) bits -= p * std::log2(p);
    }
    if (probability > 0) left += bits + probability * std::log2(probability);
  }
  return std::max(0.0, entropy(causes) - left);
}

std::vector<std::size_t> repair_order(const std::vector<double>& probabilities, const std::vector<double>& costs) {
  std::vector<std::size_t> order(probabilities.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    return probabilities[a] * costs[b] > probabilities[b] * costs[a];
  });
  return order;
}

double expected_cost(const std::vector<double>& probabilities, const std::vector<double>& costs,
                     const std::vector<std::size_t>& order) {
  double expected = 0, gone = 0;
  for (std::size_t at : order) {
    expected += costs[at] * (1 - gone);
    gone += probabilities[at];
  }
  return expected;
}

std::size_t half_split(const std::vector<double>& stages) {
  const double whole = std::accumulate(stages.begin(), stages.end(), 0.0);
  double before = 0, nearest = INFINITY;
  std::size_t cut = 0;
  for (std::size_t i = 0; i + 1 < stages.size(); ++i) {
    before += stages[i];
    const double distance = std::fabs(before - whole / 2);
    if (distance < nearest * (1 - 1e-12)) {
      nearest = distance;
      cut = i + 1;
    }
  }
  return cut;
}

std::vector<double> smoothed(const std::vector<double>& counts, const std::vector<double>& weights, double strength) {
  const double cases = std::accumulate(counts.begin(), counts.end(), 0.0);
  std::vector<double> probabilities;
  for (std::size_t i = 0; i < counts.size(); ++i)
    probabilities.push_back((counts[i] + strength * weights[i]) / (cases + strength));
  return probabilities;
}

} // namespace benchlore
