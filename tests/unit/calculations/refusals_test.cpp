// Nonsense is refused with a sentence, and nothing that is no number is ever a result.
#include "calculations/calculation.h"

#include <cmath>
#include <doctest/doctest.h>

using namespace benchlore;

namespace {

std::string refusal(const std::string& name, const std::vector<std::string>& inputs) {
  const CalculationResult result = calculate(*find_calculation(name), inputs);
  CHECK(result.values.empty());
  return result.refusal;
}

} // namespace

TEST_CASE("a negative capacitance, a bleed-down to a higher voltage and a perfect meter are refused") {
  CHECK(refusal("stored-energy", {"capacitance=-1 uF", "voltage=5 V"}) == "`capacitance` must be above zero");
  CHECK(refusal("bleed-down", {"capacitance=1 uF", "resistance=1 kohm", "from=5 V", "to=10 V"}) ==
        "`to` must be below `from`: a resistor only takes voltage away");
  CHECK(
      refusal("meter-acceptance", {"low=1", "high=2", "reading=1.5", "accuracy=0"}).starts_with("a meter without any"));
}

TEST_CASE("a number too large, an unknown, a missing and a doubled input are refused by name") {
  CHECK_FALSE(refusal("stored-energy", {"capacitance=1e400 F", "voltage=5 V"}).empty());
  CHECK(refusal("stored-energy", {"capacitance=1 uF"}).starts_with("`voltage` is not given"));
  CHECK(refusal("stored-energy", {"capacitance=1 uF", "voltage=1 V", "voltage=2 V"}) == "`voltage` is given twice");
  CHECK(refusal("stored-energy", {"capacitanc=1 uF"}).find("`capacitance`") != std::string::npos);
  CHECK(refusal("stored-energy", {"nonsense"}).find("is no input") != std::string::npos);
  CHECK(refusal("stored-energy", {"capacitance=10", "voltage=5 V"}).find("unit") != std::string::npos);
}

TEST_CASE("no nonsense makes a calculation give what is no finite number") {
  const std::vector<std::string> values{"0",          "0 V",    "-5 V",    "1e308 V", "1e-308 F", "1e300 F",  "0 ohm",
                                        "-273.15 °C", "1e18",   "0 s",     "1e-60 A", "nan",      "inf",      "",
                                        "1..0 V",     "0..0 V", "typ 5 V", "max 5 V", "\xff\xfe", "5 V ±200%"};
  std::size_t refused = 0, given = 0;
  for (const Calculation& calculation : calculations()) {
    for (std::size_t changed = 0; changed < calculation.example.size(); ++changed) {
      for (const std::string& value : values) {
        std::vector<std::string> inputs = calculation.example;
        inputs[changed] = inputs[changed].substr(0, inputs[changed].find('=') + 1) + value;
        const CalculationResult result = calculate(calculation, inputs);
        ++(result.refusal.empty() ? given : refused);
        CHECK(result.refusal.empty() != result.values.empty());
        for (const CalculationValue& one : result.values) {
          CHECK(std::isfinite(one.value));
          CHECK(std::isfinite(one.low));
          CHECK(std::isfinite(one.high));
          for (const char* bad : {"nan", "inf"}) CHECK(interval_text(one).find(bad) == std::string::npos);
        }
      }
    }
  }
  CHECK(refused > 500);
  CHECK(given > 5);
}

TEST_CASE("more parts than can be tried are refused") {
  CHECK(
      refusal("capacitors-in-parallel", std::vector<std::string>(40, "capacitance=1 uF ±10%")).find("at most eight") !=
      std::string::npos);
}
