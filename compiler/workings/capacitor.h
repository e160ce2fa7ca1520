// What capacitors do that the bench must know before it touches them. Pure functions, SI units in the types.
#pragma once

#include "quantity/dimension.h"

namespace benchlore {

// R.m.s. current through a capacitor on alternating voltage: 2 π f C U (IEC 60990 measures it; circuit theory).
Amperes touch_current(Farads capacitance, Volts voltage, Hertz frequency);

// R C: the time in which the voltage falls to 37 %.
Seconds time_constant(Ohms resistance, Farads capacitance);

// Time until a capacitor has bled from one voltage to a lower one: R C ln(U0/U1). Zero when there is nothing to bleed.
Seconds bleed_time(Ohms resistance, Farads capacitance, Volts from, Volts to);

// Energy in a charged capacitor: half C U squared.
Joules stored_energy(Farads capacitance, Volts voltage);

// The greatest share of the string's voltage that one of `count` equal capacitors in series can see before resistors
// level it: one at the low end of its tolerance, the others at the high end.
Volts worst_series_share(Volts string, int count, double low_fraction, double high_fraction);

} // namespace benchlore
