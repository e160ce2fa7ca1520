// Several parts as one: what adds, and how it is shared.
#include "calculations/definitions.h"

#include <algorithm>
#include <numeric>

namespace benchlore::definitions {
namespace {

constexpr std::size_t most_parts = 8;

double sum(const std::vector<double>& values) { return std::accumulate(values.begin(), values.end(), 0.0); }

double reciprocal_sum(const std::vector<double>& values) {
  return 1 /
         std::accumulate(values.begin(), values.end(), 0.0, [](double total, double one) { return total + 1 / one; });
}

std::string joined(const std::vector<double>& values, Dimension dimension, const char* sign) {
  std::string text;
  for (double value : values) text += (text.empty() ? "" : sign) + show(value, dimension);
  return text;
}

PointResult too_many() { return refused("at most eight parts can be combined here"); }

PointResult capacitors_in_parallel(const Numbers& in) {
  const auto& parts = in.all("capacitance");
  if (parts.size() > most_parts) return too_many();
  return found({sum(parts)},
               {joined(parts, dimension::capacitance, " + ") + " = " + show(sum(parts), dimension::capacitance)});
}

PointResult capacitors_in_series(const Numbers& in) {
  const auto& parts = in.all("capacitance");
  if (parts.size() > most_parts) return too_many();
  const double whole = reciprocal_sum(parts), smallest = *std::min_element(parts.begin(), parts.end());
  const double share = in["voltage"] * whole / smallest;
  return found({whole, share}, {"1 / (1/" + joined(parts, dimension::capacitance, " + 1/") +
                                    ") = " + show(whole, dimension::capacitance),
                                "the smallest part takes " + show(in["voltage"], dimension::voltage) + " × " +
                                    show(whole, dimension::capacitance) + " / " +
                                    show(smallest, dimension::capacitance) + " = " + show(share, dimension::voltage)});
}

PointResult resistors_in_series(const Numbers& in) {
  const auto& parts = in.all("resistance");
  if (parts.size() > most_parts) return too_many();
  const double whole = sum(parts), greatest = *std::max_element(parts.begin(), parts.end());
  const double current = in["voltage"] / whole;
  return found({whole, current * greatest, current * current * greatest},
               {joined(parts, dimension::resistance, " + ") + " = " + show(whole, dimension::resistance),
                "the greatest part takes " + show(current * greatest, dimension::voltage) + " and turns " +
                    show(current * current * greatest, dimension::power) + " into heat"});
}

PointResult resistors_in_parallel(const Numbers& in) {
  const auto& parts = in.all("resistance");
  if (parts.size() > most_parts) return too_many();
  const double whole = reciprocal_sum(parts), smallest = *std::min_element(parts.begin(), parts.end());
  const double power = in["voltage"] * in["voltage"] / smallest;
  return found({whole, power},
               {"1 / (1/" + joined(parts, dimension::resistance, " + 1/") + ") = " + show(whole, dimension::resistance),
                "the smallest part takes most: (" + show(in["voltage"], dimension::voltage) + ")² / " +
                    show(smallest, dimension::resistance) + " = " + show(power, dimension::power)});
}

CalculationInput parts_of(const char* name, const char* title, Dimension dimension) {
  return {name, title, dimension, "value of each part; give it once for each", Allowed::positive, "", true};
}

const CalculationInput voltage{"voltage",
                               "Voltage across all",
                               dimension::voltage,
                               "voltage across the whole, to see how it is shared",
                               Allowed::not_negative,
                               "0 V"};

} // namespace

std::vector<Calculation> combinations() {
  const std::string source = "Kirchhoff's and Ohm's laws (circuit theory)";
  return {
      {"capacitors-in-parallel",
       "Capacitors in parallel",
       "C = C1 + C2 + …",
       "several capacitors in place of one; the lowest rated voltage counts",
       {parts_of("capacitance", "Capacitance", dimension::capacitance)},
       {{"capacitance", "Capacitance of the whole", dimension::capacitance}},
       capacitors_in_parallel,
       source,
       {"charged-capacitor"},
       {"capacitance=100 nF ±10%", "capacitance=47 nF ±5%"}},
      {"capacitors-in-series",
       "Capacitors in series",
       "1/C = 1/C1 + 1/C2 + …; the voltage divides by 1/C",
       "several capacitors that share a voltage; electrolytics need balancing resistors as well, since leakage decides "
       "later",
       {parts_of("capacitance", "Capacitance", dimension::capacitance), voltage},
       {{"capacitance", "Capacitance of the whole", dimension::capacitance},
        {"greatest-voltage", "Voltage across the smallest part", dimension::voltage}},
       capacitors_in_series,
       source,
       {"charged-capacitor"},
       {"capacitance=100 uF ±20%", "capacitance=100 uF ±20%", "voltage=400 V"}},
      {"resistors-in-series",
       "Resistors in series",
       "R = R1 + R2 + …; voltage and power divide by R",
       "several resistors in place of one, for more voltage or power",
       {parts_of("resistance", "Resistance", dimension::resistance), voltage},
       {{"resistance", "Resistance of the whole", dimension::resistance},
        {"greatest-voltage", "Voltage across the greatest part", dimension::voltage},
        {"greatest-power", "Power in the greatest part", dimension::power}},
       resistors_in_series,
       source,
       {},
       {"resistance=220 kohm ±5%", "resistance=220 kohm ±5%", "voltage=330 V"}},
      {"resistors-in-parallel",
       "Resistors in parallel",
       "1/R = 1/R1 + 1/R2 + …; power divides by 1/R",
       "several resistors in place of one, for more power or a value that is not in the drawer",
       {parts_of("resistance", "Resistance", dimension::resistance), voltage},
       {{"resistance", "Resistance of the whole", dimension::resistance},
        {"greatest-power", "Power in the smallest part", dimension::power}},
       resistors_in_parallel,
       source,
       {},
       {"resistance=10 ohm ±5%", "resistance=15 ohm ±5%", "voltage=3 V"}},
  };
}

} // namespace benchlore::definitions
