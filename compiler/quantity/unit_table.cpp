// The units of the bench, each with its exact factor and the prefixes that people write with it.
// Left out on purpose: decibels (a logarithm is no factor), inch ounces, oersted (no decimal factor), months.
#include "quantity/unit.h"

#include <algorithm>
#include <array>
#include <utility>

namespace benchlore {
namespace {

using namespace dimension;

constexpr std::string_view small_and_large = "fpnumkMGT";
constexpr std::string_view large = "kMGT";
constexpr Dimension force = energy / length;
constexpr Dimension noise_root{.root_hertz = 1};

UnitRow row(std::string_view symbol, Dimension dimension, std::int64_t digits, int exponent,
            std::string_view prefixes) {
  return {symbol, dimension, Decimal::make(digits, exponent).value_or(Decimal{}), prefixes};
}

std::vector<UnitRow> electric_rows() {
  return {row("V", voltage, 1, 0, small_and_large),
          row("A", current, 1, 0, small_and_large),
          row("ohm", resistance, 1, 0, small_and_large),
          row("Ω", resistance, 1, 0, small_and_large),
          row("\u2126", resistance, 1, 0, small_and_large),
          row("S", inverse(resistance), 1, 0, small_and_large),
          row("F", capacitance, 1, 0, small_and_large),
          row("H", inductance, 1, 0, small_and_large),
          row("Hz", frequency, 1, 0, small_and_large),
          row("rtHz", noise_root, 1, 0, ""),
          row("√Hz", noise_root, 1, 0, ""),
          row("W", power, 1, 0, small_and_large),
          row("VA", power, 1, 0, small_and_large),
          row("J", energy, 1, 0, small_and_large),
          row("Wh", energy, 3600, 0, small_and_large),
          row("C", charge, 1, 0, small_and_large),
          row("Ah", charge, 3600, 0, small_and_large),
          row("A2s", current * current * time, 1, 0, ""),
          row("A²s", current * current * time, 1, 0, "")};
}

std::vector<UnitRow> other_rows() {
  return {row("s", time, 1, 0, "fpnum"),
          row("min", time, 60, 0, ""),
          row("h", time, 3600, 0, ""),
          row("d", time, 86400, 0, ""),
          row("year", time, 31557600, 0, ""), // 365.25 days
          row("m", length, 1, 0, "pnumck"),
          row("in", length, 254, -4, ""),
          row("g", mass, 1, -3, "numk"),
          row("N", force, 1, 0, "umkM"),
          row("Pa", force / (length * length), 1, 0, "mkMG"),
          row("K", temperature_difference, 1, 0, "um"),
          row("°C", temperature, 1, 0, ""),
          row("degC", temperature, 1, 0, ""),
          row("\u2103", temperature, 1, 0, ""),
          row("%", none, 1, -2, ""),
          row("ppm", none, 1, -6, ""),
          row("rpm", Dimension{.turn = 1}, 1, 0, ""),
          row("tpi", Dimension{.track = 1}, 1, 0, "")};
}

std::vector<UnitRow> information_rows() {
  std::vector<UnitRow> rows{row("bit", information, 1, 0, large), row("B", information, 8, 0, large)};
  constexpr std::array<std::pair<std::string_view, std::string_view>, 3> names{
      {{"Kibit", "KiB"}, {"Mibit", "MiB"}, {"Gibit", "GiB"}}};
  std::int64_t size = 1024;
  for (const auto& [bits, bytes] : names) {
    rows.push_back(row(bits, information, size, 0, ""));
    rows.push_back(row(bytes, information, 8 * size, 0, ""));
    size *= 1024;
  }
  return rows;
}

struct Usual {
  Dimension dimension;
  std::vector<std::string> texts;
};

const std::vector<Usual>& usual_units() {
  static const std::vector<Usual> rows{{capacitance, {"pF", "nF", "uF"}},
                                       {resistance, {"ohm", "kohm", "Mohm", "mohm"}},
                                       {inductance, {"uH", "mH", "nH"}},
                                       {voltage, {"V", "mV", "kV"}},
                                       {current, {"A", "mA", "uA"}},
                                       {power, {"W", "mW", "VA"}},
                                       {frequency, {"Hz", "kHz", "MHz"}},
                                       {energy, {"J", "mJ", "Wh"}},
                                       {charge, {"nC", "C", "mAh"}},
                                       {time, {"h", "s", "ms", "us", "ns"}},
                                       {length, {"mm", "m", "in"}},
                                       {mass, {"g", "kg"}},
                                       {temperature, {"°C"}},
                                       {information, {"bit", "B", "KiB", "MiB"}},
                                       {information / time, {"kbit/s", "Mbit/s"}},
                                       {voltage / time, {"V/us"}},
                                       {current / time, {"A/us"}},
                                       {inverse(temperature_difference), {"ppm/K", "%/K"}},
                                       {temperature_difference / power, {"K/W"}},
                                       {power / temperature_difference, {"mW/K"}},
                                       {voltage / temperature_difference, {"mV/K"}},
                                       {resistance / voltage, {"kohm/V"}},
                                       {voltage / noise_root, {"nV/rtHz"}},
                                       {none, {"%", "ppm"}}};
  return rows;
}

} // namespace

std::span<const UnitRow> units() {
  static const std::vector<UnitRow> rows = [] {
    std::vector<UnitRow> all = electric_rows();
    for (const std::vector<UnitRow>& more : {other_rows(), information_rows()}) {
      all.insert(all.end(), more.begin(), more.end());
    }
    return all;
  }();
  return rows;
}

std::vector<std::string> units_for(Dimension dimension) {
  for (const Usual& usual : usual_units()) {
    if (usual.dimension == dimension) return usual.texts;
  }
  for (const UnitRow& unit : units()) {
    if (unit.dimension == dimension) return {std::string(unit.symbol)};
  }
  return {base_units(dimension)};
}

} // namespace benchlore
