// Diodes and transistors with the resistors beside them.
#include "calculations/definitions.h"

#include <algorithm>

namespace benchlore::definitions {
namespace {

PointResult led(const Numbers& in) {
  const double rest = in["supply"] - in["forward-voltage"] - in["switch-voltage"];
  if (!(rest > 0)) return refused("the supply does not reach the forward voltage: no resistor makes it light");
  const double ohms = rest / in["current"];
  return found({ohms, rest * in["current"]},
               {"(" + show(in["supply"], dimension::voltage) + " − " + show(in["forward-voltage"], dimension::voltage) +
                " − " + show(in["switch-voltage"], dimension::voltage) + ") / " +
                show(in["current"], dimension::current) + " = " + show(ohms, dimension::resistance)},
               "take the next higher preferred value, and twice the power");
}

PointResult zener(const Numbers& in) {
  const double across = in["supply"] - in["zener-voltage"];
  if (!(across > 0)) return refused("the supply is not above the Zener voltage");
  const double through = across / in["resistance"], left = through - in["load-current"];
  return found({left, in["zener-voltage"] * std::max(0.0, left), across * through},
               {"(" + show(in["supply"], dimension::voltage) + " − " + show(in["zener-voltage"], dimension::voltage) +
                    ") / " + show(in["resistance"], dimension::resistance) + " = " + show(through, dimension::current) +
                    " through the resistor",
                show(through, dimension::current) + " − " + show(in["load-current"], dimension::current) + " = " +
                    show(left, dimension::current) + " through the Zener diode"},
               left <= 0 ? "the load takes everything: the voltage is not held"
                         : "compare this current with the one at which the diode is specified");
}

PointResult base_drive(const Numbers& in) {
  const double base = in["collector-current"] / in["forced-gain"];
  const double rest = in["drive-voltage"] - in["base-voltage"];
  if (!(rest > 0)) return refused("the drive voltage does not reach the base voltage");
  return found({rest / base, base},
               {show(in["collector-current"], dimension::current) + " / " + show(in["forced-gain"]) + " = " +
                    show(base, dimension::current) + " of base current",
                "(" + show(in["drive-voltage"], dimension::voltage) + " − " +
                    show(in["base-voltage"], dimension::voltage) + ") / " + show(base, dimension::current) + " = " +
                    show(rest / base, dimension::resistance)},
               "see that the output ahead can give that current while it keeps that voltage");
}

} // namespace

std::vector<Calculation> semiconductors() {
  return {
      {"led-resistor",
       "Resistor for an LED",
       "R = (U − UF − U_switch) / I",
       "the series resistor of a light-emitting diode",
       {{"supply", "Supply", dimension::voltage, "of the LED"},
        {"forward-voltage", "Forward voltage", dimension::voltage, "1.8 V red, 2 V green, 3.2 V blue or white"},
        {"switch-voltage", "Voltage of the switch", dimension::voltage, "that the driving output keeps",
         Allowed::not_negative, "0 V"},
        {"current", "Current", dimension::current, "through the LED; no more than the output can sink"}},
       {{"resistance", "Resistance", dimension::resistance}, {"power", "Heat in the resistor", dimension::power}},
       led,
       "circuit theory",
       {},
       {"supply=12 V", "forward-voltage=2 V", "switch-voltage=0.9 V", "current=20 mA"}},
      {"zener-dropper",
       "Zener diode behind a resistor",
       "IZ = (U − UZ) / R − I_load; P = UZ IZ",
       "current and heat of a Zener diode, and whether it still holds its voltage",
       {{"supply", "Supply", dimension::voltage, "with its range"},
        {"zener-voltage", "Zener voltage", dimension::voltage, "with its tolerance"},
        {"resistance", "Series resistor", dimension::resistance, "rated"},
        {"load-current", "Load current", dimension::current, "with its range", Allowed::not_negative, "0 A"}},
       {{"zener-current", "Current through the diode", dimension::current},
        {"zener-power", "Heat in the diode", dimension::power},
        {"resistor-power", "Heat in the resistor", dimension::power}},
       zener,
       "circuit theory",
       {},
       {"supply=10.8..13.2 V", "zener-voltage=5.1 V ±5%", "resistance=220 ohm", "load-current=0..20 mA"}},
      {"base-resistor",
       "Base resistor of a switching transistor",
       "IB = IC / forced gain; R = (U − UBE) / IB",
       "the resistor that switches a transistor fully on",
       {{"collector-current", "Collector current", dimension::current, "of the load"},
        {"forced-gain", "Forced gain", dimension::none, "10 as data sheets test it, 20 for a small relay",
         Allowed::positive, "10"},
        {"drive-voltage", "Drive voltage", dimension::voltage, "of the output ahead while it gives that current"},
        {"base-voltage", "Base voltage", dimension::voltage, "base to emitter when on", Allowed::positive, "0.95 V"}},
       {{"resistance", "Resistance", dimension::resistance}, {"base-current", "Base current", dimension::current}},
       base_drive,
       "NTE 2N3904 data sheet (saturation at a forced gain of 10)",
       {},
       {"collector-current=60 mA", "forced-gain=20", "drive-voltage=3.84 V"}},
  };
}

} // namespace benchlore::definitions
