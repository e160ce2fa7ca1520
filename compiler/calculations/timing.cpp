// Dividers, resistor-capacitor times and the timer chip.
#include "calculations/definitions.h"

namespace benchlore::definitions {
namespace {

PointResult divider(const Numbers& in) {
  const double out = in["voltage"] * in["lower"] / (in["upper"] + in["lower"]);
  const double source = in["upper"] * in["lower"] / (in["upper"] + in["lower"]);
  const double loaded = out - source * in["load-current"];
  return found({loaded, source},
               {show(in["voltage"], dimension::voltage) + " × " + show(in["lower"], dimension::resistance) + " / (" +
                    show(in["upper"], dimension::resistance) + " + " + show(in["lower"], dimension::resistance) +
                    ") = " + show(out, dimension::voltage),
                "behind " + show(source, dimension::resistance)});
}

PointResult rc(const Numbers& in) {
  if (!(in["threshold"] < in["supply"]))
    return refused("`threshold` must be below `supply`: the capacitor never gets there");
  const double tau = in["resistance"] * in["capacitance"];
  const double seconds = -tau * std::log(1 - in["threshold"] / in["supply"]);
  return found({seconds, tau}, {"−" + show(in["resistance"], dimension::resistance) + " × " +
                                show(in["capacitance"], dimension::capacitance) + " × ln(1 − " +
                                show(in["threshold"], dimension::voltage) + " / " +
                                show(in["supply"], dimension::voltage) + ") = " + show(seconds, dimension::time)});
}

constexpr double ln2 = 0.6931471805599453;

PointResult astable(const Numbers& in) {
  const double ra = in["upper"], rb = in["lower"], c = in["capacitance"];
  const double high = ln2 * (ra + rb) * c, low = ln2 * rb * c;
  return found({1 / (high + low), high, low, high / (high + low)},
               {"high: 0.693 × (RA + RB) × C = " + show(high, dimension::time),
                "low: 0.693 × RB × C = " + show(low, dimension::time)});
}

PointResult monostable(const Numbers& in) {
  const double seconds = std::log(3.0) * in["resistance"] * in["capacitance"];
  return found({seconds}, {"1.1 × " + show(in["resistance"], dimension::resistance) + " × " +
                           show(in["capacitance"], dimension::capacitance) + " = " + show(seconds, dimension::time)});
}

CalculationInput ohms(const char* name, const char* title, const char* meaning) {
  return {name, title, dimension::resistance, meaning};
}
const CalculationInput farads{"capacitance", "Capacitance", dimension::capacitance, "with its tolerance"};

} // namespace

std::vector<Calculation> timing() {
  return {
      {"divider",
       "Voltage divider",
       "U = U0 R2 / (R1 + R2)",
       "what a divider gives, unloaded or with a current drawn",
       {{"voltage", "Voltage", dimension::voltage, "across both", Allowed::any},
        ohms("upper", "Upper resistor", "towards the voltage"),
        ohms("lower", "Lower resistor", "towards ground"),
        {"load-current", "Current drawn", dimension::current, "from the tap", Allowed::any, "0 A"}},
       {{"voltage", "Voltage at the tap", dimension::voltage},
        {"source-resistance", "Source resistance", dimension::resistance}},
       divider,
       "circuit theory",
       {},
       {"voltage=12 V", "upper=10 kohm", "lower=6.8 kohm"}},
      {"rc-time",
       "Time of a resistor and a capacitor",
       "t = −R C ln(1 − UT / U)",
       "reset delays and the like",
       {ohms("resistance", "Resistance", "that charges"),
        farads,
        {"supply", "Supply", dimension::voltage, "behind the resistor"},
        {"threshold", "Threshold", dimension::voltage, "with its spread"}},
       {{"time", "Time", dimension::time}, {"time-constant", "Time constant", dimension::time}},
       rc,
       "circuit theory",
       {},
       {"resistance=10 kohm", "capacitance=10 uF", "supply=5 V", "threshold=1.4..1.9 V"}},
      {"timer-astable",
       "Timer chip as an oscillator",
       "f = 1 / (0.693 (RA + 2 RB) C)",
       "frequency and duty of a 555 that runs freely",
       {ohms("upper", "RA", "from supply to discharge pin"), ohms("lower", "RB", "from discharge pin to threshold"),
        farads},
       {{"frequency", "Frequency", dimension::frequency},
        {"high", "Time high", dimension::time},
        {"low", "Time low", dimension::time},
        {"duty", "Share of time high", dimension::none}},
       astable,
       "National LM555 data sheet",
       {},
       {"upper=1 kohm", "lower=10 kohm", "capacitance=0.1 uF"}},
      {"timer-monostable",
       "Timer chip as a one-shot",
       "t = 1.1 R C",
       "length of the pulse of a 555",
       {ohms("resistance", "Resistance", "that charges"), farads},
       {{"time", "Pulse", dimension::time}},
       monostable,
       "National LM555 data sheet",
       {},
       {"resistance=100 kohm", "capacitance=10 uF"}},
  };
}

} // namespace benchlore::definitions
