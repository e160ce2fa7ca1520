// Supplies on the bench: drops, loads, limits, and the lamp in series with the mains.
#include "calculations/definitions.h"

#include <algorithm>

namespace benchlore::definitions {
namespace {

PointResult drop(const Numbers& in) {
  const double each = in["current"] / in["contacts"];
  const double volts = each * in["resistance"];
  return found({volts, volts * each},
               {show(in["current"], dimension::current) + " / " + show(in["contacts"]) + " contacts × " +
                show(in["resistance"], dimension::resistance) + " = " + show(volts, dimension::voltage)});
}

PointResult lamp(const Numbers& in) {
  const double u = in["mains"], p = in["lamp-power"];
  const double ohms = u * u / p;
  return found({ohms, p / u, p / 4},
               {"(" + show(u, dimension::voltage) + ")² / " + show(p, dimension::power) + " = " +
                    show(ohms, dimension::resistance) + " when hot",
                "a load of constant power can take at most a quarter of the lamp's"},
               "the machine behind the lamp is live: a lamp limits, it does not isolate; a cold lamp limits much less");
}

PointResult dummy(const Numbers& in) {
  const double power = in["voltage"] * in["current"];
  return found({in["voltage"] / in["current"], power, 2 * power},
               {show(in["voltage"], dimension::voltage) + " / " + show(in["current"], dimension::current) + " = " +
                show(in["voltage"] / in["current"], dimension::resistance)},
               "it gets hot enough to burn; take the next lower preferred value");
}

PointResult limit(const Numbers& in) {
  const double running = 1.2 * in["running"], starting = std::max(running, 1.1 * in["starting"]);
  return found({starting, running},
               {"1.2 × " + show(in["running"], dimension::current) + " = " + show(running, dimension::current),
                "a tenth above the start: " + show(1.1 * in["starting"], dimension::current)},
               in["starting"] > in["running"] ? "set the first for the start, then turn down to the second" : "");
}

} // namespace

std::vector<Calculation> supplies() {
  return {
      {"connector-drop",
       "Drop across a connector",
       "U = I R / n",
       "what plugs and wires take away from a rail",
       {{"current", "Current", dimension::current, "of the rail"},
        {"resistance", "Resistance of one contact", dimension::resistance,
         "with its wire; 10 mohm is good, 50 mohm is bad"},
        {"contacts", "Contacts in parallel", dimension::none, "that share the current", Allowed::positive, "1"}},
       {{"drop", "Drop", dimension::voltage}, {"power", "Heat in one contact", dimension::power}},
       drop,
       "Ohm's law",
       {},
       {"current=10 A", "resistance=20 mohm"}},
      {"lamp-limiter",
       "Lamp in series with the mains",
       "R = U² / P; most into the load P / 4",
       "which lamp protects a first switching-on",
       {{"mains", "Mains voltage", dimension::voltage, "230 V or 120 V"},
        {"lamp-power", "Power of the lamp", dimension::power, "of a filament lamp; others do not limit"}},
       {{"resistance", "Resistance when hot", dimension::resistance},
        {"current", "Current into a short circuit", dimension::current},
        {"most-power", "Most that a load can take", dimension::power}},
       lamp,
       "circuit theory (a fixed resistance gives at most U² / 4R); cold lamps as measured by pa3fwm.nl, technote 29a",
       {"mains"},
       {"mains=230 V", "lamp-power=60 W"}},
      {"dummy-load",
       "Dummy load for a supply",
       "R = U / I; take twice P = U I",
       "a resistor that gives a switching supply its least load",
       {{"voltage", "Voltage", dimension::voltage, "of the rail"},
        {"current", "Current", dimension::current, "that it must draw at least"}},
       {{"resistance", "Resistance", dimension::resistance},
        {"power", "Heat", dimension::power},
        {"rating", "Rating to buy", dimension::power}},
       dummy,
       "Ohm's law; twice the power is common practice",
       {"hot-work"},
       {"voltage=5 V", "current=2 A"}},
      {"bench-supply-limit",
       "Current limit of a bench supply",
       "1.2 × running; for a start 1.1 × starting",
       "where to set the limit before the lead is plugged in",
       {{"running", "Running current", dimension::current, "expected"},
        {"starting", "Starting current", dimension::current, "with motors; the running current when there are none",
         Allowed::positive}},
       {{"limit", "Limit for the start", dimension::current},
        {"running-limit", "Limit afterwards", dimension::current}},
       limit,
       "common practice",
       {},
       {"running=0.6 A", "starting=0.9 A"}},
  };
}

} // namespace benchlore::definitions
