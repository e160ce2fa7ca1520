// The computations of the bench, each with its formula in words, inputs, source and caution. One registry feeds the
// command, the pages and the help.
#pragma once

#include "quantity/quantity.h"

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace benchlore {

// What a number may be. Everything else is refused with a sentence.
enum class Allowed { positive, not_negative, any };

struct CalculationInput {
  std::string name;  // as it is given: `capacitance=220 uF`
  std::string title; // `Capacitance`
  Dimension dimension;
  std::string meaning;
  Allowed allowed = Allowed::positive;
  std::string otherwise = {}; // value when it is not given; empty: it must be given
  bool list = false;          // may be given several times
};

// The inputs at one point, in SI units.
class Numbers {
public:
  double operator[](std::string_view name) const { return all(name).front(); }
  const std::vector<double>& all(std::string_view name) const;
  void set(std::string_view name, std::vector<double> values);

private:
  std::vector<std::pair<std::string, std::vector<double>>> values_;
};

struct CalculationOutput {
  std::string name, title;
  Dimension dimension;
};

// What comes out at one point: a number for each output, or a sentence why there is none; and, at the nominal point,
// the steps and what follows from the result.
struct PointResult {
  std::string refusal;
  std::vector<double> numbers;
  std::vector<std::string> working;
  std::string verdict; // `undecided: …`; empty for plain numbers
};

struct Calculation {
  std::string name;    // `bleed-down`
  std::string title;   // `Bleeding a capacitor`
  std::string formula; // in words and signs
  std::string meaning; // when one wants it
  std::vector<CalculationInput> inputs;
  std::vector<CalculationOutput> outputs;
  PointResult (*at)(const Numbers&) = nullptr;
  std::string source;                // the published source, or `common practice`
  std::vector<std::string> cautions; // ids of schema/cautions.yaml
  std::vector<std::string> example;  // `capacitance=220 uF`, …
};

const std::vector<Calculation>& calculations();
const Calculation* find_calculation(std::string_view name);

// An output with the interval that the tolerances of the inputs leave open.
struct CalculationValue {
  std::string name, title;
  Dimension dimension;
  double value = 0, low = 0, high = 0;
};

// A number with its unit and a few figures; counts (whole pure numbers) with all of them.
std::string number_text(double number, Dimension dimension);
// `147 nF (134.7 nF to 159.4 nF)`, or the number alone when nothing spreads.
std::string interval_text(const CalculationValue& value);

struct CalculationResult {
  std::string refusal; // a sentence; empty when there is a result
  std::vector<CalculationValue> values;
  std::vector<std::string> working;
  std::string verdict;
  std::vector<std::pair<std::string, std::string>> given; // inputs as they were read
};

// Works out a calculation from `name=value` texts. Tolerances, limits and ranges of the inputs make intervals: the
// result is worked out at every combination of their ends. Refuses with a sentence: an unknown, missing or doubled
// input, a value that cannot be read or is not allowed, and a result that is no finite number.
CalculationResult calculate(const Calculation& calculation, const std::vector<std::string>& arguments);

} // namespace benchlore
