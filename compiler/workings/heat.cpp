// Heat; each formula stands in its header.
#include "workings/heat.h"

namespace benchlore {

Celsius junction_temperature(Celsius ambient, Watts power, ThermalResistance path) {
  return {ambient.si + (power * path).si};
}

Watts series_dissipation(Volts input, Volts output, Amperes load) { return (input - output) * load; }

} // namespace benchlore
