// Logic levels and loads, pull-ups, and the time that a memory may take.
#include "workings/logic.h"
#include "calculations/definitions.h"

#include <algorithm>
#include <cstdint>

namespace benchlore::definitions {
namespace {

PointResult margin(const Numbers& in) {
  const double high = high_noise_margin({in["output-high"]}, {in["input-high"]}).si;
  const double low = low_noise_margin({in["input-low"]}, {in["output-low"]}).si;
  auto part = [](double a, double b, double difference) {
    return show(a, dimension::voltage) + " − " + show(b, dimension::voltage) + " = " +
           show(difference, dimension::voltage);
  };
  return found({high, low},
               {"high: " + part(in["output-high"], in["input-high"], high),
                "low: " + part(in["input-low"], in["output-low"], low)},
               high < 0 || low < 0       ? "not guaranteed: a level does not reach the threshold"
               : high < 0.4 || low < 0.3 ? "little: 0.4 V high and 0.3 V low are the least of ordinary TTL"
                                         : "enough");
}

PointResult loads(const Numbers& in) {
  const std::int64_t low = fan_out({in["output-low"]}, {in["input-low"]}),
                     high = fan_out({in["output-high"]}, {in["input-high"]});
  const std::int64_t count = std::min(low, high);
  if (count == INT64_MAX) return refused("the inputs take no current: no number sets a limit");
  auto say = [](std::int64_t n) { return n == INT64_MAX ? std::string("no limit") : std::to_string(n); };
  return found({static_cast<double>(count)}, {"low: " + say(low) + "; high: " + say(high)});
}

PointResult pull_up(const Numbers& in) {
  const double leak = in["outputs"] * in["leakage"] + in["inputs"] * in["input-high-current"];
  const double spare = in["sink-current"] - in["inputs"] * in["input-low-current"];
  const double greatest_rest = in["supply"] - in["high-level"], least_rest = in["supply"] - in["low-level"];
  if (!(spare > 0)) return refused("the inputs take more than the output can sink: no resistor is left for it");
  if (!(greatest_rest > 0) || !(leak > 0))
    return refused("the wanted high level is not below the supply, or nothing leaks");
  const double most = greatest_rest / leak, least = least_rest / spare;
  return found(
      {least, most, 2.2 * most * in["capacitance"]},
      {"least: (" + show(in["supply"], dimension::voltage) + " − " + show(in["low-level"], dimension::voltage) +
           ") / " + show(spare, dimension::current) + " = " + show(least, dimension::resistance),
       "most: (" + show(in["supply"], dimension::voltage) + " − " + show(in["high-level"], dimension::voltage) +
           ") / " + show(leak, dimension::current) + " = " + show(most, dimension::resistance)},
      least > most ? "no value does: the least is above the most" : "");
}

PointResult window(const Numbers& in) {
  const double left = in["cycle"] - in["address-delay"] - in["data-setup"] - in["decoding"];
  if (!(left > 0)) return refused("the delays take the whole cycle: no memory is fast enough");
  const double time = in["access-time"];
  const double slack = left - time, wanted = std::max(0.1 * time, 15e-9);
  return found(
      {left, slack},
      {show(in["cycle"], dimension::time) + " − " + show(in["address-delay"], dimension::time) + " − " +
           show(in["data-setup"], dimension::time) + " − " + show(in["decoding"], dimension::time) + " = " +
           show(left, dimension::time),
       show(left, dimension::time) + " − " + show(time, dimension::time) + " leaves " + show(slack, dimension::time)},
      slack < 0 ? "too slow"
      : slack < wanted
          ? "works on paper with less than " + show(wanted, dimension::time) + " to spare: take a faster part"
          : "fast enough");
}

CalculationInput level(const char* name, const char* title, const char* meaning) {
  return {name, title, dimension::voltage, meaning};
}
CalculationInput current(const char* name, const char* title, const char* meaning, const char* otherwise = "") {
  return {name, title, dimension::current, meaning, Allowed::not_negative, otherwise};
}
CalculationInput delay(const char* name, const char* title, const char* meaning, const char* otherwise = "") {
  return {name, title, dimension::time, meaning, Allowed::not_negative, otherwise};
}

} // namespace

std::vector<Calculation> logic() {
  return {
      {"noise-margin",
       "Noise margin between two logic parts",
       "high: UOH − UIH; low: UIL − UOL",
       "whether an output surely drives an input",
       {level("output-high", "Least high output", "UOH of the driver"),
        level("output-low", "Greatest low output", "UOL of the driver"),
        level("input-high", "High threshold", "UIH of the receiver"),
        level("input-low", "Low threshold", "UIL of the receiver")},
       {{"high", "High margin", dimension::voltage}, {"low", "Low margin", dimension::voltage}},
       margin,
       "definition in TI SN74LS00 data sheet SDLS025 terms",
       {},
       {"output-high=2.7 V", "output-low=0.5 V", "input-high=2 V", "input-low=0.8 V"}},
      {"fan-out",
       "How many inputs an output drives",
       "the lesser of IOH / IIH and IOL / IIL",
       "whether one more input is too many",
       {current("output-high", "High output current", "IOH, as an amount"),
        current("output-low", "Low output current", "IOL"),
        current("input-high", "High input current", "IIH of one input"),
        current("input-low", "Low input current", "IIL of one input, as an amount")},
       {{"inputs", "Inputs", dimension::none}},
       loads,
       "TI SN74LS00 data sheet SDLS025",
       {},
       {"output-high=0.4 mA", "output-low=8 mA", "input-high=20 uA", "input-low=0.4 mA"}},
      {"pull-up",
       "Pull-up of open-collector outputs",
       "Rmin = (U − UOL) / (IOL − m IIL); Rmax = (U − UOH) / (n I_leak + m IIH)",
       "between which values a pull-up works, and how slow it makes the line",
       {{"supply", "Supply", dimension::voltage, "with its range"},
        level("high-level", "High level wanted", "at the inputs"),
        level("low-level", "Low output", "of the output that pulls"),
        {"outputs", "Outputs", dimension::none, "that hang on the line"},
        current("leakage", "Leakage of one output", "when off"),
        {"inputs", "Inputs", dimension::none, "that hang on the line", Allowed::not_negative},
        current("input-high-current", "High input current", "of one input"),
        current("input-low-current", "Low input current", "of one input, as an amount"),
        current("sink-current", "Sink current", "of one output"),
        {"capacitance", "Capacitance of the line", dimension::capacitance, "for the rise time", Allowed::not_negative,
         "50 pF"}},
       {{"least", "Least resistance", dimension::resistance},
        {"most", "Greatest resistance", dimension::resistance},
        {"rise-time", "Rise time at the greatest resistance", dimension::time}},
       pull_up,
       "National DM74LS12 and Fairchild DM7407 data sheets (pull-up equations)",
       {},
       {"supply=5 V ±5%", "high-level=2.7 V", "low-level=0.5 V", "outputs=3", "leakage=0.1 mA", "inputs=4",
        "input-high-current=20 uA", "input-low-current=0.4 mA", "sink-current=8 mA"}},
      {"access-time",
       "Time that a memory may take",
       "window = cycle − address delay − data set-up − decoding",
       "whether a memory is fast enough",
       {delay("cycle", "Cycle", "from address out to data in, such as 1 us at 1 MHz"),
        delay("address-delay", "Address delay", "until the processor's address is there"),
        delay("data-setup", "Data set-up", "before the processor takes the data"),
        delay("decoding", "Decoding", "of address decoders and buffers", "0 ns"),
        delay("access-time", "Access time", "of the memory at its slowest")},
       {{"window", "Window", dimension::time}, {"slack", "Slack", dimension::time}},
       window,
       "common practice; delays as the processor's data sheet states them",
       {},
       {"cycle=1000 ns", "address-delay=225 ns", "data-setup=100 ns", "decoding=41 ns", "access-time=450 ns"}},
  };
}

} // namespace benchlore::definitions
