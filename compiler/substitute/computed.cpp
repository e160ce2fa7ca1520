// The computations that a rule may ask for by name. They take ratings and stresses by name and know no class.
#include "substitute/comparison.h"
#include "workings/capacitor.h"

#include <cmath>

namespace benchlore {
namespace {

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

// The greatest value that is guaranteed; nothing when that is not stated.
std::optional<double> greatest(const Ratings& ratings, std::string_view name) {
  const Quantity* q = quantity(ratings, name);
  return q == nullptr ? std::nullopt : q->high();
}

std::optional<double> parameter(const Rule& rule, std::string_view name) {
  const Quantity* q = quantity(rule.parameters, name);
  return q == nullptr ? std::nullopt : q->centre();
}

std::string show(double si, Dimension dimension) { return show_number(si, dimension); }

// Current that flows through every line-to-earth capacitor into a body that touches the case while the earth is open.
// A part that is not larger than the original keeps what the machine had.
Finding touch(const Comparison& c) {
  const auto mine = greatest(*c.substitute.ratings, "capacitance");
  const auto theirs = greatest(*c.original.ratings, "capacitance");
  if (!mine || !theirs) return unusable("a capacitance is not stated");
  Finding finding;
  finding.required = "a total that keeps the touch current within its limit, or no more than the original";
  finding.met = not_above(*mine, *theirs);
  if (finding.met) return finding;
  const auto voltage = greatest(c.where.stress, "mains-voltage");
  const auto frequency = greatest(c.where.stress, "mains-frequency");
  const auto others = greatest(c.where.stress, "other-y-capacitance");
  const std::string earth = word(c.where.stress, "earth");
  const auto limit = parameter(c.rule, earth == "earthed" ? "limit-earthed" : "limit-unearthed");
  if (!voltage || !frequency || !others || earth.empty() || !limit) {
    return unusable("mains voltage and frequency, the other line-to-earth capacitance and whether the case is earthed "
                    "must be stated");
  }
  const double current = touch_current({*mine + *others}, {*voltage}, {*frequency}).si;
  finding.met = not_above(current, *limit);
  finding.margin = (*limit - current) / *limit;
  finding.working = "2 π × " + show(*frequency, dimension::frequency) + " × " +
                    show(*mine + *others, dimension::capacitance) + " × " + show(*voltage, dimension::voltage) + " = " +
                    show(current, dimension::current) + ", limit " + show(*limit, dimension::current);
  return finding;
}

// Whether the plug's pins are dead soon enough after unplugging.
Finding discharge(const Comparison& c) {
  const auto mine = greatest(*c.substitute.ratings, "capacitance");
  const auto theirs = greatest(*c.original.ratings, "capacitance");
  const auto limit = parameter(c.rule, "time-constant");
  const auto exempt = parameter(c.rule, "exempt-capacitance");
  if (!mine || !limit) return unusable("the substitute's capacitance is not stated");
  Finding finding;
  finding.required = "a time constant with the bleeder of at most " + show(*limit, dimension::time);
  finding.met = exempt && not_above(*mine, *exempt);
  if (finding.met) return finding;
  const auto resistance = greatest(c.where.stress, "bleeder-resistance");
  if (!resistance) {
    finding.met = theirs && not_above(*mine, *theirs);
    if (!finding.met) return unusable("the resistor that discharges it is not stated");
    finding.required += "; not more than the original holds";
    return finding;
  }
  const double tau = time_constant({*resistance}, {*mine}).si;
  finding.met = not_above(tau, *limit);
  finding.margin = (*limit - tau) / *limit;
  finding.working = show(*resistance, dimension::resistance) + " × " + show(*mine, dimension::capacitance) + " = " +
                    show(tau, dimension::time);
  return finding;
}

// Whether each of several capacitors in series stays within its voltage when their values differ, and leakage is
// levelled.
Finding series_sharing(const Comparison& c) {
  const auto string = greatest(c.where.stress, "string-voltage");
  const auto count = greatest(c.where.stress, "string-count");
  const std::string balancing = word(c.where.stress, "balancing");
  const Quantity* capacitance = quantity(*c.substitute.ratings, "capacitance");
  const Quantity* rated = quantity(*c.substitute.ratings, "rated-voltage");
  if (!string || !count || balancing.empty())
    return unusable("the string's voltage, how many share it and whether resistors balance it must be stated");
  if (capacitance == nullptr || rated == nullptr || !rated->low())
    return unusable("capacitance and rated voltage must be stated");
  if (!capacitance->tolerance_stated() || !capacitance->nominal)
    return unusable("the capacitance tolerance is not stated");
  if (*count < 2 || *count > 16 || capacitance->nominal->value() <= 0 || *capacitance->low() <= 0)
    return unusable("the string is not one of 2 to 16 parts");
  const double nominal = capacitance->nominal->value();
  const double share = worst_series_share({*string}, static_cast<int>(*count), *capacitance->low() / nominal,
                                          *capacitance->high() / nominal)
                           .si;
  Finding finding;
  finding.required =
      "balancing resistors, and " + show(share, dimension::voltage) + " on the part with the least capacitance";
  finding.met = balancing == "fitted" && not_below(*rated->low(), share);
  finding.margin = (*rated->low() - share) / share;
  finding.working = "worst share of " + show(*string, dimension::voltage) + " over " + show(*count, dimension::none) +
                    " parts: " + show(share, dimension::voltage);
  if (balancing != "fitted")
    finding.working += "; without balancing resistors leakage decides, and no share is guaranteed";
  return finding;
}

// Rated voltage in the heat: the share of it that may be applied falls in a straight line between two temperatures;
// above the second one no rating is enough.
Finding hot_voltage_share(const Comparison& c) {
  const auto applied = greatest(c.where.stress, "applied-voltage");
  const auto temperature = greatest(c.where.stress, "temperature");
  const Quantity* rated = quantity(*c.substitute.ratings, "rated-voltage");
  const auto cool = parameter(c.rule, "cool"), hot = parameter(c.rule, "hot");
  const auto cool_share = parameter(c.rule, "cool-share"), hot_share = parameter(c.rule, "hot-share");
  if (!applied || !temperature || !cool || !hot || !cool_share || !hot_share) {
    return unusable("applied voltage and temperature must be stated");
  }
  if (rated == nullptr || !rated->low()) return unusable("the substitute does not state its rated voltage");
  const double along = (*temperature - *cool) / (*hot - *cool);
  const double share = *cool_share + along * (*hot_share - *cool_share);
  Finding finding;
  finding.required = "not hotter than " + show(*cool, dimension::temperature) + ", or more rated voltage";
  finding.met = along <= 0; // where it is cool, other rules judge the voltage
  if (finding.met) return finding;
  finding.required = "a rated voltage of " + show(*applied / share, dimension::voltage) + " at " +
                     show(*temperature, dimension::temperature);
  finding.met = not_above(*temperature, *hot) && not_below(*rated->low(), *applied / share);
  finding.margin = (*rated->low() - *applied / share) / (*applied / share);
  finding.working = show(*applied, dimension::voltage) + " over a share of " + show(share, dimension::none);
  return finding;
}

struct ComputationRow {
  std::string_view name;
  Finding (*compute)(const Comparison&);
};

constexpr ComputationRow computations[] = {
    {"touch-current", touch},
    {"discharge-time", discharge},
    {"series-sharing", series_sharing},
    {"hot-voltage-share", hot_voltage_share},
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
  return unusable("there is no computation `" + c.rule.computation + "`");
}

} // namespace benchlore
