// Names of dimensions for messages, from one table; a dimension without a name is told by its base units.
#include "quantity/dimension.h"

#include <array>
#include <utility>

namespace benchlore {
namespace {

using namespace dimension;

struct Named {
  Dimension dimension;
  std::string_view name;
};

constexpr auto names = std::to_array<Named>({
    {none, "a pure number"},
    {length, "length"},
    {length * length, "area"},
    {length * length * length, "volume"},
    {mass, "mass"},
    {time, "time"},
    {frequency, "frequency"},
    {current, "current"},
    {temperature, "temperature"},
    {temperature_difference, "temperature difference"},
    {voltage, "voltage"},
    {resistance, "resistance"},
    {inverse(resistance), "conductance"},
    {capacitance, "capacitance"},
    {inductance, "inductance"},
    {power, "power"},
    {energy, "energy"},
    {charge, "charge"},
    {information, "information"},
    {information / time, "data rate"},
    {energy / length, "force"},
    {energy / (length * length * length), "pressure"},
    {length / time, "speed"},
    {voltage / time, "voltage slope"},
    {current / time, "current slope"},
    {inverse(temperature_difference), "temperature coefficient"},
    {temperature_difference / power, "thermal resistance"},
    {power / temperature_difference, "power derating"},
    {voltage / temperature_difference, "voltage per kelvin"},
    {current * current * time, "fusing integral"},
    {resistance / voltage, "resistance per volt"},
    {{.turn = 1}, "speed of rotation"},
    {{.track = 1}, "track density"},
    {voltage / Dimension{.root_hertz = 1}, "noise voltage density"},
    {current / Dimension{.root_hertz = 1}, "noise current density"},
});

void append_base(std::string& text, std::string_view unit, int exponent) {
  if (exponent == 0) return;
  if (!text.empty()) text += '*';
  text += unit;
  if (exponent != 1) text += '^' + std::to_string(exponent);
}

} // namespace

std::string base_units(Dimension d) {
  const std::array<std::pair<std::string_view, int>, 10> parts{{{"kg", d.kilogram},
                                                                {"m", d.metre},
                                                                {"s", d.second},
                                                                {"A", d.ampere},
                                                                {"K", d.kelvin},
                                                                {"°C", d.celsius},
                                                                {"bit", d.bit},
                                                                {"rpm", d.turn},
                                                                {"tpi", d.track},
                                                                {"rtHz", d.root_hertz}}};
  std::string text;
  for (const auto& [unit, exponent] : parts) append_base(text, unit, exponent);
  return text;
}

std::string describe(Dimension d) {
  for (const Named& row : names) {
    if (row.dimension == d) return std::string(row.name);
  }
  return "`" + base_units(d) + "`";
}

} // namespace benchlore
