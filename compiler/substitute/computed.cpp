// The table of computations by name, and what they share.
#include "substitute/computed.h"

namespace benchlore {
namespace computed {

Finding unusable(std::string why) {
  Finding finding;
  finding.unusable = std::move(why);
  return finding;
}

const Quantity* quantity(const Ratings& ratings, std::string_view name) {
  const auto found = ratings.find(name);
  return found == ratings.end() ? nullptr : std::get_if<Quantity>(&found->second.value);
}

std::string word(const Ratings& ratings, std::string_view name) {
  const auto found = ratings.find(name);
  const Words* words = found == ratings.end() ? nullptr : std::get_if<Words>(&found->second.value);
  return words == nullptr || words->items.size() != 1 ? std::string() : words->items.front();
}

std::optional<double> greatest(const Ratings& ratings, std::string_view name) {
  const Quantity* q = quantity(ratings, name);
  return q == nullptr ? std::nullopt : q->high();
}

std::optional<double> least(const Ratings& ratings, std::string_view name) {
  const Quantity* q = quantity(ratings, name);
  return q == nullptr ? std::nullopt : q->low();
}

std::optional<double> parameter(const Rule& rule, std::string_view name) {
  const Quantity* q = quantity(rule.parameters, name);
  return q == nullptr ? std::nullopt : q->centre();
}

std::string show(double si, Dimension dimension) { return show_number(si, dimension); }

} // namespace computed

namespace {

struct ComputationRow {
  std::string_view name;
  Finding (*compute)(const Comparison&);
};

constexpr ComputationRow computations[] = {
    {"touch-current", computed::touch},
    {"discharge-time", computed::discharge},
    {"series-sharing", computed::series_sharing},
    {"hot-voltage-share", computed::hot_voltage_share},
    {"stored-energy", computed::stored},
    {"noise-margin", computed::noise_margin},
    {"fan-out", computed::fan_out},
    {"access-time-budget", computed::access_time_budget},
    {"refresh-rate", computed::refresh_rate},
    {"junction-temperature", computed::junction_temperature},
    {"output-capacitor", computed::output_capacitor},
    {"charge-current", computed::charge_current},
    {"drive-geometry", computed::drive_geometry},
};

} // namespace

bool computation_known(std::string_view name) {
  for (const ComputationRow& row : computations) {
    if (row.name == name) return true;
  }
  return false;
}

Finding apply_computation(const Comparison& c) {
  for (const ComputationRow& row : computations) {
    if (row.name == c.rule.computation) return row.compute(c);
  }
  return computed::unusable("there is no computation `" + c.rule.computation + "`");
}

} // namespace benchlore
