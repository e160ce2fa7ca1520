// The canonical text of a quantity. Numbers side by side share a unit unless one of them would get lost in it;
// digits are exact. `show_number` rounds first and then writes in the same way.
#include "quantity/display_unit.h"
#include "quantity/quantity.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>

namespace benchlore {
namespace {

constexpr std::string_view pure_ratio = "V/V"; // a pure number where a unit must stand

std::string with_unit(Decimal number, const DisplayUnit& unit) {
  std::string text = divide(number, unit.factor).value_or(number).text();
  return unit.symbol.empty() ? text : text + " " + unit.symbol;
}

std::string without_unit(Decimal number, const DisplayUnit& unit) {
  return divide(number, unit.factor).value_or(number).text();
}

// How numbers of one value are written: the unit they share, or each its own.
struct Style {
  Dimension dimension;
  bool needs_unit = false; // within a condition
  std::optional<DisplayUnit> shared = std::nullopt;
};

DisplayUnit unit_for(const Style& style, std::span<const Decimal> numbers) {
  if (style.dimension != dimension::none || !style.needs_unit) return display_unit(style.dimension, numbers);
  Decimal percent = Decimal::make(1, -2).value_or(Decimal{});
  auto fits = [&](Decimal number) { return divide(number, percent).has_value(); };
  if (std::all_of(numbers.begin(), numbers.end(), fits)) return {"%", percent};
  return {std::string(pure_ratio), Decimal::make(1, 0).value_or(Decimal{})};
}

bool lost_in(Decimal number, Decimal factor) {
  auto shown = divide(number, factor);
  return shown && !shown->zero() && order_of(*shown) < -2;
}

Style style_for(Dimension dimension, bool needs_unit, std::span<const Decimal> numbers) {
  Style style{dimension, needs_unit};
  DisplayUnit unit = unit_for(style, numbers);
  auto lost = [&](Decimal number) { return lost_in(number, unit.factor); };
  if (std::none_of(numbers.begin(), numbers.end(), lost)) style.shared = std::move(unit);
  return style;
}

std::string amount_text(const Style& style, Decimal number, bool last) {
  if (style.shared) return last ? with_unit(number, *style.shared) : without_unit(number, *style.shared);
  return with_unit(number, unit_for(style, std::array{number}));
}

std::string limits_text(const Style& style, const Quantity& quantity) {
  std::string text;
  auto append = [&](std::string_view word, const std::optional<Decimal>& number, bool last) {
    if (!number) return;
    if (!text.empty()) text += ' ';
    text.append(word).append(" ").append(amount_text(style, *number, last));
  };
  append("min", quantity.minimum, !quantity.typical && !quantity.maximum);
  append("typ", quantity.typical, !quantity.maximum);
  append("max", quantity.maximum, true);
  return text;
}

// `±20 %`, `±50 ppm`, `-10/+50 %`, `±500 mV`.
std::string tolerance_text(Decimal minus, Decimal plus, const Style& style) {
  if (minus == plus) return "±" + amount_text(style, plus, true);
  return "-" + amount_text(style, minus, false) + "/+" + amount_text(style, plus, true);
}

Style fraction_style(Decimal minus, Decimal plus) {
  Decimal larger = less(minus, plus) ? plus : minus;
  Style style{dimension::none};
  bool tiny = !larger.zero() && order_of(larger) < -4;
  auto factor = Decimal::make(1, tiny ? -6 : -2).value_or(Decimal{});
  style.shared = DisplayUnit{tiny ? "ppm" : "%", factor};
  return style;
}

std::string tolerance_text(const Quantity& quantity) {
  if (!quantity.minus || !quantity.plus) return "";
  std::array numbers{*quantity.minus, *quantity.plus};
  Dimension difference = quantity.dimension;
  if (difference == dimension::temperature) difference = dimension::temperature_difference;
  Style style =
      quantity.relative_tolerance ? fraction_style(numbers[0], numbers[1]) : style_for(difference, false, numbers);
  return " " + tolerance_text(numbers[0], numbers[1], style);
}

std::vector<Decimal> stated_numbers(const Quantity& quantity) {
  std::vector<Decimal> numbers;
  for (const auto& number : {quantity.nominal, quantity.minimum, quantity.typical, quantity.maximum}) {
    if (number) numbers.push_back(*number);
  }
  return numbers;
}

std::string value_text(const Quantity& quantity, bool needs_unit) {
  Style style = style_for(quantity.dimension, needs_unit, stated_numbers(quantity));
  if (quantity.nominal) return amount_text(style, *quantity.nominal, true) + tolerance_text(quantity);
  if (quantity.range && quantity.minimum && quantity.maximum) {
    return amount_text(style, *quantity.minimum, false) + ".." + amount_text(style, *quantity.maximum, true);
  }
  return limits_text(style, quantity);
}

std::string condition_text(const Condition& condition) {
  if (!condition.value) return condition.name;
  return condition.name + (condition.name.empty() ? "" : " ") + value_text(*condition.value, true);
}

} // namespace

std::string to_text(const Quantity& quantity) {
  std::string text = value_text(quantity, false);
  std::string_view separator = " @ ";
  for (const Condition& condition : quantity.at) {
    text.append(separator).append(condition_text(condition));
    separator = ", ";
  }
  return text;
}

std::string show_number(double si, Dimension dimension, int figures) {
  if (!std::isfinite(si)) return "?";
  std::array<char, 40> rounded{};
  std::snprintf(rounded.data(), rounded.size(), "%.*e", std::clamp(figures, 1, 15) - 1, si);
  for (char& c : rounded) {
    if (c == ',') c = '.'; // a locale may have put it there
  }
  if (auto number = Decimal::parse(rounded.data()))
    return with_unit(*number, display_unit(dimension, std::array{*number}));
  std::string base = base_units(dimension);
  return rounded.data() + (base.empty() ? "" : " " + base);
}

} // namespace benchlore
