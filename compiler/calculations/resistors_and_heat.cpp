// Resistors at their limits, and heat.
#include "calculations/definitions.h"
#include "workings/heat.h"

#include <algorithm>

namespace benchlore::definitions {
namespace {

constexpr Dimension thermal_resistance = dimension::temperature_difference / dimension::power;

PointResult resistor_limits(const Numbers& in) {
  const double t = in["temperature"], top = in["greatest-temperature"];
  if (!(top > 70)) return refused("`greatest-temperature` must be above 70 °C, where the rated power is given");
  const double share = t <= 70 ? 1.0 : std::max(0.0, (top - t) / (top - 70));
  const double power = in["power"] * share;
  const double by_power = std::sqrt(power * in["resistance"]);
  const double voltage = std::min(by_power, in["limiting-voltage"]);
  return found({power, 0.6 * power, voltage},
               {"share of the rated power at " + show(t, dimension::temperature) + ": " + show(share),
                "√(P R) = " + show(by_power, dimension::voltage) + ", limiting voltage " +
                    show(in["limiting-voltage"], dimension::voltage)},
               by_power > in["limiting-voltage"] ? "the limiting voltage decides, not the power" : "");
}

PointResult regulator(const Numbers& in) {
  const double input = in["input"], output = in["output"];
  if (input < output) return refused("`input` must not be below `output`: a series regulator only takes voltage away");
  const double power = series_dissipation({input}, {output}, {in["current"]}).si + input * in["own-current"];
  const double junction = junction_temperature({in["ambient"]}, {power}, {in["thermal-resistance"]}).si;
  const double limit = in["greatest-junction"];
  const char* verdict = junction > limit        ? "too hot: it needs a heatsink or less voltage across it"
                        : junction > limit - 25 ? "less than 25 K below the limit: fit a heatsink"
                                                : "at least 25 K below the limit";
  return found({power, junction},
               {"(" + show(input, dimension::voltage) + " − " + show(output, dimension::voltage) + ") × " +
                    show(in["current"], dimension::current) + " + " + show(input, dimension::voltage) + " × " +
                    show(in["own-current"], dimension::current) + " = " + show(power, dimension::power),
                show(in["ambient"], dimension::temperature) + " + " + show(power, dimension::power) + " × " +
                    show(in["thermal-resistance"], thermal_resistance) + " = " +
                    show(junction, dimension::temperature)},
               verdict);
}

PointResult heatsink(const Numbers& in) {
  const double whole = (in["junction"] - in["ambient"]) / in["power"];
  const double sink = whole - in["junction-to-case"] - in["case-to-sink"];
  if (!(in["junction"] > in["ambient"])) return refused("`junction` must be above `ambient`: heat flows downhill");
  if (!(sink > 0)) return refused("no heatsink is good enough: the part itself and its washer take up the whole rise");
  return found({sink},
               {"(" + show(in["junction"], dimension::temperature) + " − " +
                show(in["ambient"], dimension::temperature) + ") / " + show(in["power"], dimension::power) + " = " +
                show(whole, thermal_resistance) + "; less " + show(in["junction-to-case"], thermal_resistance) +
                " and " + show(in["case-to-sink"], thermal_resistance)});
}

CalculationInput temperature(const char* name, const char* title, const char* meaning, const char* otherwise = "") {
  return {name, title, dimension::temperature, meaning, Allowed::any, otherwise};
}

} // namespace

std::vector<Calculation> resistors_and_heat() {
  return {
      {"resistor-limits",
       "Power and voltage that a resistor bears",
       "P(T) = P70 (Tmax − T) / (Tmax − 70 °C); U ≤ √(P R) and ≤ Umax",
       "what a resistor bears where it is hot, and whether its limiting voltage comes first",
       {{"resistance", "Resistance", dimension::resistance, "rated"},
        {"power", "Rated power", dimension::power, "at 70 °C"},
        {"limiting-voltage", "Limiting voltage", dimension::voltage, "of the body"},
        temperature("temperature", "Temperature around it", "in use"),
        temperature("greatest-temperature", "Highest temperature", "at which nothing is left", "155 °C")},
       {{"power", "Power that it bears", dimension::power},
        {"usable-power", "Power for a long life (0.6)", dimension::power},
        {"voltage", "Voltage that it bears", dimension::voltage}},
       resistor_limits,
       "IEC 60115 derating line as makers print it; 0.6: MIL-STD-975M as transcribed",
       {},
       {"resistance=1 Mohm", "power=0.25 W", "limiting-voltage=250 V", "temperature=40 °C"}},
      {"regulator",
       "Heat of a linear regulator",
       "P = (Uin − Uout) I + Uin Iq; TJ = TA + RthJA P",
       "whether a regulator needs a heatsink",
       {{"input", "Input voltage", dimension::voltage, "at its highest"},
        {"output", "Output voltage", dimension::voltage, "of the regulator"},
        {"current", "Load current", dimension::current, "at its highest"},
        {"own-current", "Own current", dimension::current, "that the regulator takes itself", Allowed::not_negative,
         "8 mA"},
        {"thermal-resistance", "Thermal resistance to the air", thermal_resistance,
         "65 K/W for a bare TO-220, 180 K/W for a TO-92"},
        temperature("ambient", "Temperature around it", "inside the machine"),
        temperature("greatest-junction", "Highest junction temperature", "of the data sheet", "125 °C")},
       {{"power", "Heat", dimension::power}, {"junction", "Junction temperature", dimension::temperature}},
       regulator,
       "JESD51 (TJ = TA + RthJA P); National LM340/LM78XX data sheet",
       {"hot-work"},
       {"input=9 V", "output=5 V", "current=0.5 A", "thermal-resistance=65 K/W", "ambient=40 °C"}},
      {"heatsink",
       "Heatsink for a part",
       "RthSA = (TJ − TA) / P − RthJC − RthCS",
       "how good a heatsink must be",
       {{"power", "Heat", dimension::power, "that the part makes"},
        temperature("junction", "Junction temperature aimed at", "25 K below the limit is common practice"),
        temperature("ambient", "Temperature around it", "inside the machine"),
        {"junction-to-case", "Junction to case", thermal_resistance, "of the data sheet", Allowed::not_negative},
        {"case-to-sink", "Case to heatsink", thermal_resistance, "0.5 K/W with paste, 1 K/W with a pad",
         Allowed::not_negative, "0.5 K/W"}},
       {{"thermal-resistance", "Greatest thermal resistance of the heatsink", thermal_resistance}},
       heatsink,
       "JESD51",
       {"hot-work"},
       {"power=2.07 W", "junction=110 °C", "ambient=45 °C", "junction-to-case=5 K/W"}},
  };
}

} // namespace benchlore::definitions
