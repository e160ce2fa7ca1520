// Exact inference in networks of discrete variables: tables are multiplied and variables summed out one after the
// other. Pure: no files, no clock, nothing random.
#pragma once

#include <cstddef>
#include <map>
#include <optional>
#include <vector>

namespace benchlore {

// A table over some variables; the first one varies slowest.
struct ProbabilityTable {
  std::vector<std::size_t> variables; // ascending, each once
  std::vector<std::size_t> sizes;     // number of states of each
  std::vector<double> values;         // one for each combination of states
};

class Network {
public:
  // Adds a variable with so many states; its number is returned.
  std::size_t variable(std::size_t states);
  // Adds P(child | parents): for each combination of parents' states (the last parent varies fastest) the
  // probabilities of the child's states.
  void table(std::size_t child, const std::vector<std::size_t>& parents, const std::vector<double>& values);

  using Evidence = std::map<std::size_t, std::size_t>; // variable to its observed state

  // P(evidence).
  double probability(const Evidence& evidence) const;
  // P(variable | evidence); nothing when the evidence is impossible.
  std::optional<std::vector<double>> posterior(std::size_t variable, const Evidence& evidence) const;

private:
  std::vector<double> joint(std::optional<std::size_t> kept, const Evidence& evidence) const;
  std::vector<std::size_t> states_;
  std::vector<ProbabilityTable> tables_;
};

} // namespace benchlore
