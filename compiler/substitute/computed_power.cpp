// Computations about regulators and cells: heat, the loop's capacitor, and current into a cell.
#include "substitute/computed.h"
#include "workings/heat.h"

#include <cmath>

namespace benchlore::computed {
namespace {

// What the part turns into heat at this place: as stated, or from the voltage that a regulator takes away.
std::optional<double> dissipation(const Comparison& c, std::string& working) {
  if (const auto stated = greatest(c.where.stress, "dissipation")) {
    working = show(*stated, dimension::power);
    return stated;
  }
  const auto input = greatest(c.where.stress, "input-voltage");
  const auto load = greatest(c.where.stress, "load-current");
  const Quantity* output = quantity(*c.substitute.ratings, "output-voltage");
  if (!input || !load || output == nullptr || !output->low() || !output->high()) return std::nullopt;
  const double kept = std::min(std::fabs(*output->low()), std::fabs(*output->high()));
  const double power = series_dissipation({std::fabs(*input)}, {kept}, {*load}).si;
  working = "(" + show(std::fabs(*input), dimension::voltage) + " − " + show(kept, dimension::voltage) + ") × " +
            show(*load, dimension::current) + " = " + show(power, dimension::power);
  return power;
}

// Junction to surroundings: through the heatsink that the place has, or through still air.
std::optional<double> thermal_path(const Comparison& c) {
  const Ratings& mine = *c.substitute.ratings;
  const auto sink = greatest(c.where.stress, "heatsink-resistance");
  const auto to_case = greatest(mine, "thermal-resistance-case");
  if (!sink) return greatest(mine, "thermal-resistance");
  return to_case ? std::optional<double>(*to_case + *sink) : std::nullopt;
}

} // namespace

Finding junction_temperature(const Comparison& c) {
  constexpr Dimension path_dimension = dimension::temperature_difference / dimension::power;
  std::string working;
  const auto power = dissipation(c, working);
  const auto ambient = greatest(c.where.stress, "temperature");
  const auto margin = parameter(c.rule, "margin");
  if (!power || !ambient || !margin)
    return unusable("the temperature around it and its dissipation (or input voltage and load) must be stated");
  const auto path = thermal_path(c);
  const auto limit = greatest(*c.substitute.ratings, "junction-temperature");
  if (!path || !limit)
    return unusable("the substitute's thermal resistance or highest junction temperature is not stated");
  const double junction = benchlore::junction_temperature({*ambient}, {*power}, {*path}).si;
  Finding finding;
  finding.required = "a junction at most " + show(*limit - *margin, dimension::temperature) + " hot";
  finding.met = not_above(junction, *limit - *margin);
  finding.margin = (*limit - *margin - junction) / (*limit - *ambient > 1 ? *limit - *ambient : 1);
  finding.working = working + "; " + show(*ambient, dimension::temperature) + " + " + show(*power, dimension::power) +
                    " × " + show(*path, path_dimension) + " = " + show(junction, dimension::temperature);
  return finding;
}

Finding output_capacitor(const Comparison& c) {
  const Ratings& mine = *c.substitute.ratings;
  const auto needed = greatest(mine, "minimum-output-capacitance");
  const auto needed_least = least(mine, "minimum-output-capacitance");
  const Quantity* window = quantity(mine, "output-esr-window");
  if ((!needed && !needed_least) || window == nullptr || !window->low() || !window->high())
    return unusable("the capacitor that the substitute needs at its output is not stated");
  const double capacitance = needed ? *needed : *needed_least;
  Finding finding;
  finding.required =
      "at least " + show(capacitance, dimension::capacitance) + " with " + to_text(*window) + " at its output";
  const bool undemanding = capacitance <= 0 && *window->low() <= 0 && *window->high() >= 1000;
  if (undemanding) {
    finding.met = true;
    finding.working = "it needs no capacitor of its own";
    return finding;
  }
  const auto fitted = least(c.where.stress, "output-capacitance");
  const Quantity* esr = quantity(c.where.stress, "output-esr");
  if (!fitted) return unusable("the capacitance at the output must be stated with its tolerance");
  if (esr == nullptr || !esr->low() || !esr->high())
    return unusable("the series resistance of the output capacitor must be stated from least to greatest");
  finding.met = not_below(*fitted, capacitance) && not_below(*esr->low(), *window->low()) &&
                not_above(*esr->high(), *window->high());
  finding.working = show(*fitted, dimension::capacitance) + " with " + to_text(*esr) + " stands there";
  return finding;
}

Finding charge_current(const Comparison& c) {
  const auto allowed = greatest(*c.substitute.ratings, "maximum-charge-current");
  const auto stated = greatest(c.where.stress, "charge-current");
  const auto charger = greatest(c.where.stress, "charger-voltage");
  const auto resistance = least(c.where.stress, "charger-resistance");
  const auto cell = least(*c.substitute.ratings, "cell-voltage");
  if (!allowed) return unusable("the charging current that the substitute bears is not stated");
  Finding finding;
  finding.required = "at most " + show(*allowed, dimension::current) + " into the cell";
  double current = 0;
  if (stated) {
    current = *stated;
    finding.working = show(current, dimension::current) + " flows into it";
  } else if (charger && resistance && cell && *resistance > 0) {
    current = std::max(0.0, (*charger - *cell) / *resistance);
    finding.working = "(" + show(*charger, dimension::voltage) + " − " + show(*cell, dimension::voltage) + ") / " +
                      show(*resistance, dimension::resistance) + " = " + show(current, dimension::current);
  } else {
    return unusable("the charging current, or the charger's voltage and resistance, must be stated");
  }
  finding.met = not_above(current, *allowed);
  if (*allowed > 0) finding.margin = (*allowed - current) / *allowed;
  return finding;
}

} // namespace benchlore::computed
