// How hot a junction gets. Pure functions, SI units in the types; temperatures in degrees Celsius.
#pragma once

#include "quantity/dimension.h"

namespace benchlore {

using Celsius = Measure<dimension::temperature>;
using ThermalResistance = Measure<dimension::temperature_difference / dimension::power>;

// Ambient temperature plus power times the thermal resistance of the whole path (JESD51: TJ = TA + P × RthJA).
Celsius junction_temperature(Celsius ambient, Watts power, ThermalResistance path);

// What a series regulator turns into heat: the voltage across it times the current through it.
Watts series_dissipation(Volts input, Volts output, Amperes load);

} // namespace benchlore
