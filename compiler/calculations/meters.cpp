// Meters and their limits.
#include "calculations/definitions.h"
#include "workings/acceptance.h"

#include <algorithm>

namespace benchlore::definitions {
namespace {

// The numbers have no unit here, so that one calculation serves volts, ohms and farads.
PointResult acceptance(const Numbers& in) {
  const double low = in["low"], high = in["high"], reading = in["reading"];
  if (!(low < high)) return refused("`low` must be below `high`");
  const double doubt = meter_uncertainty(reading, in["accuracy"], in["counts"], in["resolution"]);
  if (!(doubt > 0))
    return refused("a meter without any uncertainty does not exist: give its accuracy, or its counts and resolution");
  const Ruling ruling = guarded(reading, doubt, low, high);
  std::string verdict(to_text(ruling));
  if (ruling == Ruling::undecided) {
    const double distance = std::min(std::fabs(reading - low), std::fabs(high - reading));
    verdict += ": a meter that is right within " + show(distance) + " would decide it";
  }
  return found({doubt, low + doubt, high - doubt},
               {show(reading) + " × " + show(in["accuracy"] * 100) + " % + " + show(in["counts"]) + " × " +
                    show(in["resolution"]) + " = " + show(doubt),
                "accept from " + show(low + doubt) + " to " + show(high - doubt) + ", reject below " +
                    show(low - doubt) + " or above " + show(high + doubt)},
               verdict);
}

} // namespace

std::vector<Calculation> meters() {
  return {
      {"meter-acceptance",
       "Accepting a measured value",
       "U = reading × % + counts × resolution; accept inside the limits less U, reject outside by more than U",
       "whether a reading decides anything; all numbers in one unit, without it",
       {{"low", "Low limit", dimension::none, "of the part or rail", Allowed::any},
        {"high", "High limit", dimension::none, "of the part or rail", Allowed::any},
        {"reading", "Reading", dimension::none, "on the meter", Allowed::any},
        {"accuracy", "Accuracy", dimension::none, "of the reading, such as 1 %", Allowed::not_negative},
        {"counts", "Counts", dimension::none, "steps of the last digit", Allowed::not_negative, "0"},
        {"resolution", "Resolution", dimension::none, "one step of the last digit", Allowed::not_negative, "0"}},
       {{"uncertainty", "Uncertainty", dimension::none},
        {"accept-from", "Accepted from", dimension::none},
        {"accept-to", "Accepted to", dimension::none}},
       acceptance,
       "guarded acceptance: ISO 14253-1; ILAC-G8:09/2019",
       {},
       {"low=80", "high=120", "reading=80.9", "accuracy=1 %", "counts=5", "resolution=0.1"}},
  };
}

} // namespace benchlore::definitions
