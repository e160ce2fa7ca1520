// Capacitors: what they hold, how they empty, what they pass and how long they last.
#include "calculations/definitions.h"
#include "workings/capacitor.h"

#include <algorithm>

namespace benchlore::definitions {
namespace {

constexpr double longest_life = 131'400 * 3600.0; // 15 years in seconds; beyond it the rule of ten kelvin says nothing

PointResult energy(const Numbers& in) {
  const double c = in["capacitance"], u = in["voltage"];
  const double joules = stored_energy({c}, {u}).si, charge = c * u;
  std::string verdict;
  if (joules >= 10 || (u > 60 && charge > 45e-6))
    verdict = "dangerous: discharge it through a resistor and measure before touching anything";
  return found(
      {joules, charge},
      {"½ × " + show(c, dimension::capacitance) + " × (" + show(u, dimension::voltage) +
           ")² = " + show(joules, dimension::energy),
       show(c, dimension::capacitance) + " × " + show(u, dimension::voltage) + " = " + show(charge, dimension::charge)},
      verdict);
}

PointResult bleed(const Numbers& in) {
  const double c = in["capacitance"], r = in["resistance"], from = in["from"], to = in["to"];
  if (!(to < from)) return refused("`to` must be below `from`: a resistor only takes voltage away");
  const double tau = time_constant({r}, {c}).si, seconds = bleed_time({r}, {c}, {from}, {to}).si;
  return found({seconds, tau, from / r, from * from / r},
               {"R × C = " + show(r, dimension::resistance) + " × " + show(c, dimension::capacitance) + " = " +
                    show(tau, dimension::time),
                show(tau, dimension::time) + " × ln(" + show(from, dimension::voltage) + " / " +
                    show(to, dimension::voltage) + ") = " + show(seconds, dimension::time)},
               "measure again a minute later: some voltage comes back");
}

PointResult ripple(const Numbers& in) {
  const double volts = in["current"] / (in["ripple-frequency"] * in["capacitance"]);
  return found({volts},
               {show(in["current"], dimension::current) + " / (" + show(in["ripple-frequency"], dimension::frequency) +
                " × " + show(in["capacitance"], dimension::capacitance) + ") = " + show(volts, dimension::voltage) +
                " from peak to valley, somewhat high because charging takes time"});
}

PointResult ripple_conversion(const Numbers& in) {
  const double amperes = in["current"] * in["factor-there"] / in["factor-here"];
  return found({amperes}, {show(in["current"], dimension::current) + " × " + show(in["factor-there"]) + " / " +
                           show(in["factor-here"]) + " = " + show(amperes, dimension::current)});
}

// `with_ripple`: the endurance was tested with the full ripple current.
PointResult life(const Numbers& in, bool with_ripple) {
  const double rise = in["core-rise"] * in["ripple-ratio"] * in["ripple-ratio"];
  const double by_heat = std::exp2((in["rated-temperature"] - in["ambient"]) / 10);
  const double by_ripple = std::exp2(((with_ripple ? in["core-rise"] : 0) - rise) / 5);
  const double hours = in["endurance"] * by_heat * by_ripple;
  std::string verdict;
  if (hours > longest_life) verdict = "more than 15 years: the rule says nothing beyond";
  if (in["ripple-ratio"] > 1) verdict = "the ripple current is above the rating: not permitted, whatever the hours";
  return found({std::min(hours, longest_life)},
               {show(in["endurance"], dimension::time) + " × 2^((" +
                    show(in["rated-temperature"], dimension::temperature) + " − " +
                    show(in["ambient"], dimension::temperature) + ") / 10 K) = × " + show(by_heat),
                "core rise " + show(in["core-rise"]) + " K × " + show(in["ripple-ratio"]) + "² = " + show(rise) +
                    " K: × " + show(by_ripple)},
               verdict);
}

PointResult life_with(const Numbers& in) { return life(in, true); }
PointResult life_without(const Numbers& in) { return life(in, false); }

PointResult leakage(const Numbers& in) {
  const double cu = in["capacitance"] * in["voltage"];
  return found({std::max(0.01 * cu, 3e-6), 0.002 * cu + 3e-6},
               {"0.01 × " + show(in["capacitance"], dimension::capacitance) + " × " +
                show(in["voltage"], dimension::voltage) +
                ", at least 3 µA; and a fifth of it with 3 µA added after five minutes"});
}

PointResult touch_current_of(const Numbers& in) {
  const double amperes = touch_current({in["capacitance"]}, {in["voltage"]}, {in["frequency"]}).si;
  return found({amperes},
               {"2 π × " + show(in["frequency"], dimension::frequency) + " × " +
                show(in["capacitance"], dimension::capacitance) + " × " + show(in["voltage"], dimension::voltage) +
                " = " + show(amperes, dimension::current)},
               amperes <= 0.25e-3  ? "within 0.25 mA, the limit for apparatus without protective earth"
               : amperes <= 3.5e-3 ? "above 0.25 mA: only with a sound protective earth (limit 3.5 mA)"
                                   : "above 3.5 mA: too much even with protective earth");
}

// The share of the rated voltage that may be applied: half up to 70 °C, falling to 0.3 at 110 °C.
PointResult tantalum(const Numbers& in) {
  const double t = in["temperature"];
  if (t > 110)
    return refused("above 110 °C no share of the rated voltage is published; take another kind of capacitor");
  const double share = t <= 70 ? 0.5 : 0.5 - 0.2 * (t - 70) / 40;
  const double rated = in["voltage"] / share;
  double next = 0;
  for (double standard : {4.0, 6.3, 10.0, 16.0, 20.0, 25.0, 35.0, 50.0}) {
    if (next == 0 && rated <= standard * (1 + 1e-9)) next = standard;
  }
  return found(
      {rated, share},
      {show(in["voltage"], dimension::voltage) + " / " + show(share) + " = " + show(rated, dimension::voltage)},
      next == 0 ? "no tantalum is rated so high: take an aluminium part"
                : "take at least " + show(next, dimension::voltage) + "; on a stiff rail one step more");
}

PointResult esr(const Numbers& in) {
  const double ohms = in["dissipation-factor"] / (6.283185307179586 * in["frequency"] * in["capacitance"]);
  return found({ohms},
               {show(in["dissipation-factor"]) + " / (2 π × " + show(in["frequency"], dimension::frequency) + " × " +
                show(in["capacitance"], dimension::capacitance) + ") = " + show(ohms, dimension::resistance)});
}

const CalculationInput capacitance{"capacitance", "Capacitance", dimension::capacitance,
                                   "of the capacitor, with its tolerance if it counts"};

CalculationInput volts(const char* name, const char* title, const char* meaning) {
  return {name, title, dimension::voltage, meaning};
}

std::vector<CalculationInput> life_inputs(const char* endurance) {
  return {{"endurance", "Endurance", dimension::time, endurance},
          {"rated-temperature", "Rated temperature", dimension::temperature, "temperature of that test", Allowed::any},
          {"ambient", "Temperature around the part", dimension::temperature, "in use", Allowed::any},
          {"ripple-ratio", "Ripple current over its rating", dimension::none, "1 at full ripple current",
           Allowed::not_negative, "1"},
          {"core-rise", "Rise of the core at full ripple", dimension::temperature_difference, "5 K for most parts",
           Allowed::not_negative, "5 K"}};
}

} // namespace

std::vector<Calculation> capacitors() {
  const std::vector<std::string> charged{"charged-capacitor"};
  return {
      {"stored-energy",
       "Energy and charge in a capacitor",
       "E = ½ C U²; Q = C U",
       "how dangerous a charged capacitor is",
       {capacitance, volts("voltage", "Voltage", "across the capacitor")},
       {{"energy", "Energy", dimension::energy}, {"charge", "Charge", dimension::charge}},
       energy,
       "circuit theory; 45 µC and 60 V as quoted from IEC 61010-1 and IEC 60950",
       charged,
       {"capacitance=220 uF", "voltage=325 V"}},
      {"bleed-down",
       "Discharging a capacitor",
       "t = R C ln(U0 / U1)",
       "how long a resistor needs, and what it must bear",
       {capacitance,
        {"resistance", "Resistance", dimension::resistance, "of the bleeder or discharge resistor"},
        volts("from", "From", "voltage at the start"),
        volts("to", "To", "voltage at which one may stop, such as 10 V")},
       {{"time", "Time", dimension::time},
        {"time-constant", "Time constant", dimension::time},
        {"first-current", "Current at the start", dimension::current},
        {"first-power", "Power at the start", dimension::power}},
       bleed,
       "circuit theory",
       charged,
       {"capacitance=220 uF", "resistance=2.2 kohm", "from=325 V", "to=10 V"}},
      {"ripple-voltage",
       "Ripple of a smoothing capacitor",
       "ΔU = I / (f C)",
       "whether the valley stays above what the regulator needs",
       {{"current", "Load current", dimension::current, "drawn from the capacitor"},
        capacitance,
        {"ripple-frequency", "Ripple frequency", dimension::frequency,
         "100 Hz behind a bridge on 50 Hz mains, 50 Hz behind one diode"}},
       {{"ripple", "Ripple from peak to valley", dimension::voltage}},
       ripple,
       "circuit theory; common textbook formula of the capacitor-input rectifier",
       charged,
       {"current=1 A", "capacitance=4700 uF", "ripple-frequency=100 Hz"}},
      {"ripple-current-conversion",
       "Ripple current at another frequency or temperature",
       "I2 = I1 × factor2 / factor1",
       "to compare a rating at 100 kHz with one at 100 Hz; the factors stand in the maker's table",
       {{"current", "Rated ripple current", dimension::current, "as stated"},
        {"factor-here", "Factor where it is stated", dimension::none,
         "from the table, at the stated frequency or temperature"},
        {"factor-there", "Factor where it is wanted", dimension::none, "from the same table"}},
       {{"current", "Ripple current there", dimension::current}},
       ripple_conversion,
       "Vishay doc. 28325: multipliers by frequency",
       charged,
       {"current=1.3 A", "factor-here=1", "factor-there=0.6"}},
      {"electrolytic-life",
       "Life of an electrolytic, tested with ripple",
       "L = L0 × 2^((T0 − T)/10 K) × 2^((ΔT0 − ΔT)/5 K); ΔT = ΔT0 (I/I0)²",
       "how long a part will last where it sits, when its endurance is stated with full ripple current",
       life_inputs("hours of the test, made with full ripple current"),
       {{"life", "Life", dimension::time}},
       life_with,
       "rule of ten kelvin: Rubycon technical note; ripple term from memory of maker notes",
       charged,
       {"endurance=2000 h", "rated-temperature=105 °C", "ambient=65 °C"}},
      {"electrolytic-life-without-ripple",
       "Life of an electrolytic, tested without ripple",
       "L = L0 × 2^((T0 − T)/10 K) × 2^(−ΔT/5 K)",
       "the same when the endurance is stated without ripple current",
       life_inputs("hours of the test, made without ripple current"),
       {{"life", "Life", dimension::time}},
       life_without,
       "DB Lectro life sheet; Rubycon technical note",
       charged,
       {"endurance=2000 h", "rated-temperature=105 °C", "ambient=65 °C"}},
      {"leakage-limit",
       "Leakage limit of an electrolytic",
       "after 2 min: 0.01 C U, at least 3 µA; after 5 min: 0.002 C U + 3 µA",
       "what a new part may leak at its rated voltage; an old one is re-formed first",
       {capacitance, volts("voltage", "Rated voltage", "at which it is measured")},
       {{"two-minutes", "Limit after two minutes", dimension::current},
        {"five-minutes", "Limit after five minutes", dimension::current}},
       leakage,
       "Vishay doc. 28309",
       charged,
       {"capacitance=100 uF", "voltage=25 V"}},
      {"touch-current",
       "Touch current through line-to-earth capacitors",
       "I = 2 π f C U",
       "what flows through a person who touches the case while the protective earth is open",
       {{"capacitance", "Capacitance to touchable metal", dimension::capacitance, "sum of all of it, with tolerance"},
        volts("voltage", "Mains voltage", "at its highest, 253 V on 230 V mains"),
        {"frequency", "Mains frequency", dimension::frequency, "50 Hz or 60 Hz"}},
       {{"current", "Touch current", dimension::current}},
       touch_current_of,
       "circuit theory; limits as quoted from IEC 60950 and IEC 60990",
       {"mains", "suppression-capacitor"},
       {"capacitance=9.4 nF ±20%", "voltage=253 V", "frequency=50 Hz"}},
      {"tantalum-margin",
       "Rated voltage of a solid tantalum",
       "U_R ≥ U / share; share 0.5 up to 70 °C, falling to 0.3 at 110 °C",
       "which rated voltage a solid tantalum needs where it sits",
       {volts("voltage", "Applied voltage", "direct voltage with the peak of the ripple"),
        {"temperature", "Temperature", dimension::temperature, "around the part", Allowed::any, "25 °C"}},
       {{"rated-voltage", "Least rated voltage", dimension::voltage},
        {"share", "Share that may be applied", dimension::none}},
       tantalum,
       "MIL-STD-975M Appendix A as transcribed",
       charged,
       {"voltage=12 V", "temperature=85 °C"}},
      {"series-resistance",
       "Series resistance from the dissipation factor",
       "ESR = tan δ / (2 π f C)",
       "the greatest series resistance that the stated loss allows",
       {capacitance,
        {"dissipation-factor", "Dissipation factor", dimension::none, "tan δ as stated"},
        {"frequency", "Frequency", dimension::frequency, "of the measurement, 100 Hz or 120 Hz"}},
       {{"resistance", "Series resistance", dimension::resistance}},
       esr,
       "Vishay doc. 28309",
       charged,
       {"capacitance=1000 uF", "dissipation-factor=0.16", "frequency=120 Hz"}},
  };
}

} // namespace benchlore::definitions
