// Reads inputs, tries every combination of the ends of their intervals, and says what came out.
#include "calculations/calculation.h"

#include "base/text.h"

#include <algorithm>
#include <cmath>

namespace benchlore {
namespace {

constexpr std::size_t most_intervals = 12; // 4096 combinations

struct Given {
  const CalculationInput* input = nullptr;
  std::vector<Quantity> quantities;
};

std::string refuse_value(const CalculationInput& input, double number) {
  if (!std::isfinite(number)) return "`" + input.name + "` is no finite number";
  if (input.allowed == Allowed::positive && !(number > 0)) return "`" + input.name + "` must be above zero";
  if (input.allowed == Allowed::not_negative && number < 0) return "`" + input.name + "` must not be negative";
  return {};
}

std::string read_one(const std::string& text, Given& given) {
  const QuantityResult read = parse_quantity(text, given.input->dimension);
  if (!read.quantity) {
    const QuantityError& error = *read.error;
    return "`" + given.input->name + "`: " + error.message + (error.way_out.empty() ? "" : "; " + error.way_out);
  }
  const auto centre = read.quantity->centre();
  if (!centre) return "`" + given.input->name + "` holds no number";
  for (const auto number : {centre, read.quantity->low(), read.quantity->high()}) {
    if (!number) continue;
    if (std::string refusal = refuse_value(*given.input, *number); !refusal.empty()) return refusal;
  }
  given.quantities.push_back(*read.quantity);
  return {};
}

std::vector<std::string> names_of(const Calculation& calculation) {
  std::vector<std::string> names;
  for (const CalculationInput& input : calculation.inputs) names.push_back(input.name);
  return names;
}

std::string read_argument(const Calculation& calculation, const std::string& argument, std::vector<Given>& all) {
  const std::size_t equals = argument.find('=');
  const std::string name = argument.substr(0, equals);
  const auto given = std::find_if(all.begin(), all.end(), [&](auto& g) { return g.input->name == name; });
  if (equals == std::string::npos || given == all.end()) {
    const auto near = near_names(name, names_of(calculation));
    return "`" + argument.substr(0, 60) + "` is no input of `" + calculation.name + "`; write NAME=VALUE with " +
           alternatives(near.empty() ? names_of(calculation) : near);
  }
  if (!given->quantities.empty() && !given->input->list) return "`" + name + "` is given twice";
  return read_one(argument.substr(equals + 1), *given);
}

std::string read_inputs(const Calculation& calculation, const std::vector<std::string>& arguments,
                        std::vector<Given>& all) {
  for (const CalculationInput& input : calculation.inputs) all.push_back({&input, {}});
  for (const std::string& argument : arguments) {
    if (std::string refusal = read_argument(calculation, argument, all); !refusal.empty()) return refusal;
  }
  for (Given& given : all) {
    if (!given.quantities.empty()) continue;
    if (given.input->otherwise.empty()) return "`" + given.input->name + "` is not given: " + given.input->meaning;
    if (std::string refusal = read_one(given.input->otherwise, given); !refusal.empty()) return refusal;
  }
  return {};
}

// One number that may lie anywhere between two ends.
struct Interval {
  std::size_t given, place;
  double low, high;
};

std::vector<Interval> intervals_of(const std::vector<Given>& all) {
  std::vector<Interval> intervals;
  for (std::size_t g = 0; g < all.size(); ++g) {
    for (std::size_t place = 0; place < all[g].quantities.size(); ++place) {
      const Quantity& quantity = all[g].quantities[place];
      const double centre = *quantity.centre();
      const double low = quantity.low().value_or(centre), high = quantity.high().value_or(centre);
      if (low < high) intervals.push_back({g, place, low, high});
    }
  }
  return intervals;
}

using Points = std::vector<std::vector<double>>; // for each input

Points centres_of(const std::vector<Given>& all) {
  Points points;
  for (const Given& given : all) {
    points.emplace_back();
    for (const Quantity& quantity : given.quantities) points.back().push_back(*quantity.centre());
  }
  return points;
}

Numbers numbers_of(const std::vector<Given>& all, const Points& points) {
  Numbers numbers;
  for (std::size_t i = 0; i < all.size(); ++i) numbers.set(all[i].input->name, points[i]);
  return numbers;
}

PointResult at_point(const Calculation& calculation, const std::vector<Given>& all, const Points& points) {
  PointResult result = calculation.at(numbers_of(all, points));
  if (!result.refusal.empty()) return result;
  for (double number : result.numbers) {
    if (!std::isfinite(number)) result.refusal = "with these values there is no finite result";
  }
  return result;
}

// Widens the values by what comes out at every combination of ends.
std::string widen(const Calculation& calculation, const std::vector<Given>& all, CalculationResult& result) {
  const auto intervals = intervals_of(all);
  if (intervals.size() > most_intervals) return "too many of the values have a tolerance to try all combinations";
  if (intervals.empty()) return {};
  for (std::size_t choice = 0; choice < (std::size_t{1} << intervals.size()); ++choice) {
    Points points = centres_of(all);
    for (std::size_t i = 0; i < intervals.size(); ++i) {
      const Interval& one = intervals[i];
      points[one.given][one.place] = (choice >> i & 1) != 0 ? one.high : one.low;
    }
    const PointResult corner = at_point(calculation, all, points);
    if (!corner.refusal.empty()) return "at the end of a tolerance: " + corner.refusal;
    for (std::size_t i = 0; i < result.values.size(); ++i) {
      result.values[i].low = std::min(result.values[i].low, corner.numbers[i]);
      result.values[i].high = std::max(result.values[i].high, corner.numbers[i]);
    }
  }
  return {};
}

} // namespace

const std::vector<double>& Numbers::all(std::string_view name) const {
  static const std::vector<double> none{0.0};
  for (const auto& [known, values] : values_) {
    if (known == name) return values;
  }
  return none;
}

void Numbers::set(std::string_view name, std::vector<double> values) {
  values_.emplace_back(std::string(name), std::move(values));
}

std::string number_text(double number, Dimension dimension) {
  const bool count = dimension == dimension::none && number == std::floor(number) && std::fabs(number) < 1e15;
  return count ? std::to_string(static_cast<std::int64_t>(number)) : show_number(number, dimension);
}

std::string interval_text(const CalculationValue& value) {
  std::string text = number_text(value.value, value.dimension);
  if (value.low < value.high)
    text += " (" + number_text(value.low, value.dimension) + " to " + number_text(value.high, value.dimension) + ")";
  return text;
}

CalculationResult calculate(const Calculation& calculation, const std::vector<std::string>& arguments) {
  CalculationResult result;
  std::vector<Given> all;
  result.refusal = read_inputs(calculation, arguments, all);
  if (!result.refusal.empty()) return result;
  PointResult nominal = at_point(calculation, all, centres_of(all));
  result.refusal = nominal.refusal;
  if (!result.refusal.empty()) return result;
  for (std::size_t i = 0; i < calculation.outputs.size(); ++i) {
    const CalculationOutput& output = calculation.outputs[i];
    const double number = nominal.numbers[i];
    result.values.push_back({output.name, output.title, output.dimension, number, number, number});
  }
  result.working = std::move(nominal.working);
  result.verdict = std::move(nominal.verdict);
  for (const Given& given : all) {
    for (const Quantity& quantity : given.quantities) result.given.emplace_back(given.input->name, to_text(quantity));
  }
  result.refusal = widen(calculation, all, result);
  if (!result.refusal.empty()) result.values.clear();
  return result;
}

} // namespace benchlore
