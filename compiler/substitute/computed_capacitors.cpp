// Computations about capacitors: what they pass, hold and share.
#include "substitute/computed.h"
#include "workings/capacitor.h"

namespace benchlore::computed {

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

// What the capacitor holds at the voltage that is applied, against what the original held there.
Finding stored(const Comparison& c) {
  const auto applied = greatest(c.where.stress, "applied-voltage");
  const auto mine = greatest(*c.substitute.ratings, "capacitance");
  const auto theirs = greatest(*c.original.ratings, "capacitance");
  if (!applied) return unusable("the applied voltage is not stated");
  if (!mine || !theirs) return unusable("a capacitance is not stated");
  const double energy = stored_energy({*mine}, {*applied}).si;
  const double bound = c.factor * stored_energy({*theirs}, {*applied}).si;
  Finding finding;
  finding.required = "at most " + show(bound, dimension::energy) + " stored";
  finding.met = not_above(energy, bound);
  if (bound > 0) finding.margin = (bound - energy) / bound;
  finding.working = "½ × " + show(*mine, dimension::capacitance) + " × (" + show(*applied, dimension::voltage) +
                    ")² = " + show(energy, dimension::energy);
  return finding;
}

} // namespace benchlore::computed
