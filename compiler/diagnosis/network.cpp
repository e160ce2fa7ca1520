// Variable elimination; the variable whose tables make the smallest product goes first.
#include "diagnosis/network.h"

#include <algorithm>

namespace benchlore {
namespace {

std::size_t product_of(const std::vector<std::size_t>& sizes) {
  std::size_t product = 1;
  for (std::size_t size : sizes) product *= size;
  return product;
}

std::size_t place_of(const std::vector<std::size_t>& variables, std::size_t variable) {
  return static_cast<std::size_t>(std::find(variables.begin(), variables.end(), variable) - variables.begin());
}

bool has(const ProbabilityTable& table, std::size_t variable) {
  return std::binary_search(table.variables.begin(), table.variables.end(), variable);
}

// How far the index of a table moves with one step of each of the wider table's variables; 0 where it has none.
std::vector<std::size_t> strides_in(const ProbabilityTable& table, const std::vector<std::size_t>& variables) {
  std::vector<std::size_t> strides(variables.size(), 0);
  std::size_t stride = 1;
  for (std::size_t i = table.variables.size(); i-- > 0;) {
    strides[place_of(variables, table.variables[i])] = stride;
    stride *= table.sizes[i];
  }
  return strides;
}

ProbabilityTable multiply(const ProbabilityTable& a, const ProbabilityTable& b,
                          const std::vector<std::size_t>& states) {
  ProbabilityTable whole;
  std::set_union(a.variables.begin(), a.variables.end(), b.variables.begin(), b.variables.end(),
                 std::back_inserter(whole.variables));
  for (std::size_t variable : whole.variables) whole.sizes.push_back(states[variable]);
  whole.values.resize(product_of(whole.sizes));
  const auto in_a = strides_in(a, whole.variables), in_b = strides_in(b, whole.variables);
  std::vector<std::size_t> at(whole.variables.size(), 0);
  std::size_t i = 0, j = 0;
  for (double& value : whole.values) {
    value = a.values[i] * b.values[j];
    for (std::size_t k = at.size(); k-- > 0;) { // counts up, the last variable fastest
      i += in_a[k];
      j += in_b[k];
      if (++at[k] < whole.sizes[k]) break;
      i -= in_a[k] * at[k];
      j -= in_b[k] * at[k];
      at[k] = 0;
    }
  }
  return whole;
}

// Only the rows that agree with an observation are kept.
ProbabilityTable observe(const ProbabilityTable& table, std::size_t variable, std::size_t state) {
  if (!has(table, variable)) return table;
  const std::size_t place = place_of(table.variables, variable);
  ProbabilityTable rest;
  std::size_t inner = 1;
  for (std::size_t i = 0; i < table.variables.size(); ++i) {
    if (i == place) continue;
    rest.variables.push_back(table.variables[i]);
    rest.sizes.push_back(table.sizes[i]);
    if (i > place) inner *= table.sizes[i];
  }
  rest.values.resize(product_of(rest.sizes));
  const std::size_t size = table.sizes[place];
  for (std::size_t i = 0; i < rest.values.size(); ++i)
    rest.values[i] = table.values[(i / inner * size + state) * inner + i % inner];
  return rest;
}

ProbabilityTable sum_out(const ProbabilityTable& table, std::size_t variable) {
  ProbabilityTable sum = observe(table, variable, 0);
  const std::size_t states = table.sizes[place_of(table.variables, variable)];
  for (std::size_t state = 1; state < states; ++state) {
    const ProbabilityTable one = observe(table, variable, state);
    for (std::size_t i = 0; i < sum.values.size(); ++i) sum.values[i] += one.values[i];
  }
  return sum;
}

std::size_t cost_of(const std::vector<ProbabilityTable>& tables, std::size_t variable,
                    const std::vector<std::size_t>& states) {
  std::vector<std::size_t> joined;
  for (const ProbabilityTable& table : tables) {
    if (has(table, variable)) joined.insert(joined.end(), table.variables.begin(), table.variables.end());
  }
  std::sort(joined.begin(), joined.end());
  joined.erase(std::unique(joined.begin(), joined.end()), joined.end());
  std::size_t cost = 1;
  for (std::size_t one : joined) cost *= states[one];
  return cost;
}

void eliminate(std::vector<ProbabilityTable>& tables, std::size_t variable, const std::vector<std::size_t>& states) {
  ProbabilityTable whole{{}, {}, {1.0}};
  std::vector<ProbabilityTable> rest;
  for (ProbabilityTable& table : tables) {
    if (has(table, variable)) {
      whole = multiply(whole, table, states);
    } else {
      rest.push_back(std::move(table));
    }
  }
  rest.push_back(sum_out(whole, variable));
  tables = std::move(rest);
}

} // namespace

std::size_t Network::variable(std::size_t states) {
  states_.push_back(states);
  return states_.size() - 1;
}

void Network::table(std::size_t child, const std::vector<std::size_t>& parents, const std::vector<double>& values) {
  // The rows as they are given: parents in their order, then the child. They are sorted into ascending variables.
  std::vector<std::size_t> given = parents;
  given.push_back(child);
  ProbabilityTable made;
  made.variables = given;
  std::sort(made.variables.begin(), made.variables.end());
  for (std::size_t one : made.variables) made.sizes.push_back(states_[one]);
  made.values.resize(product_of(made.sizes));
  std::vector<std::size_t> at(given.size(), 0);
  for (double value : values) {
    std::size_t index = 0;
    for (std::size_t i = 0; i < made.variables.size(); ++i)
      index = index * made.sizes[i] + at[place_of(given, made.variables[i])];
    made.values[index] = value;
    for (std::size_t k = given.size(); k-- > 0;) {
      if (++at[k] < states_[given[k]]) break;
      at[k] = 0;
    }
  }
  tables_.push_back(std::move(made));
}

std::vector<double> Network::joint(std::optional<std::size_t> kept, const Evidence& evidence) const {
  std::vector<ProbabilityTable> tables;
  for (const ProbabilityTable& table : tables_) {
    ProbabilityTable seen = table;
    for (const auto& [variable, state] : evidence) seen = observe(seen, variable, state);
    tables.push_back(std::move(seen));
  }
  std::vector<std::size_t> left;
  for (std::size_t variable = 0; variable < states_.size(); ++variable) {
    if (variable != kept && !evidence.contains(variable)) left.push_back(variable);
  }
  while (!left.empty()) {
    const auto cheapest = std::min_element(left.begin(), left.end(), [&](std::size_t a, std::size_t b) {
      return cost_of(tables, a, states_) < cost_of(tables, b, states_);
    });
    eliminate(tables, *cheapest, states_);
    left.erase(cheapest);
  }
  ProbabilityTable whole{{}, {}, {1.0}};
  for (const ProbabilityTable& table : tables) whole = multiply(whole, table, states_);
  return whole.values;
}

double Network::probability(const Evidence& evidence) const { return joint(std::nullopt, evidence).front(); }

std::optional<std::vector<double>> Network::posterior(std::size_t variable, const Evidence& evidence) const {
  if (const auto known = evidence.find(variable); known != evidence.end()) {
    std::vector<double> certain(states_[variable], 0);
    certain[known->second] = 1;
    return certain;
  }
  std::vector<double> values = joint(variable, evidence);
  double sum = 0;
  for (double value : values) sum += value;
  if (!(sum > 0)) return std::nullopt;
  for (double& value : values) value /= sum;
  return values;
}

} // namespace benchlore
