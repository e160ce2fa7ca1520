// Values with their unit, as cans, crystals and old parts print them.
// source: the units of compiler/quantity; MFD and MF for microfarads, MMFD and MMF for picofarads from memory.
#include "base/text.h"
#include "decode/families.h"
#include "quantity/quantity.h"

#include <array>
#include <utility>

namespace benchlore {
namespace {

constexpr std::string_view system_name = "value with its unit";

struct Kind {
  Dimension dimension;
  Part part;
  std::string_view fact;
};
constexpr auto kinds = std::to_array<Kind>({{dimension::capacitance, Part::capacitor, ""},
                                            {dimension::resistance, Part::resistor, ""},
                                            {dimension::inductance, Part::inductor, ""},
                                            {dimension::voltage, Part::other, "voltage"},
                                            {dimension::frequency, Part::other, "frequency of a crystal or resonator"},
                                            {dimension::power, Part::other, "power"},
                                            {dimension::current, Part::other, "current"},
                                            {dimension::temperature, Part::other, "temperature limit"}});

// Old names of units, written at the end of the number; longest first.
constexpr auto old_units = std::to_array<std::pair<std::string_view, std::string_view>>(
    {{"mmfd", "pF"}, {"mmf", "pF"}, {"mfd", "uF"}, {"mf", "uF"}, {"vdc", "V"}, {"vac", "V"}, {"wv", "V"}});

std::string with_modern_unit(std::string_view text) {
  const std::string small = lower(text);
  for (const auto& [old, modern] : old_units) {
    if (!small.ends_with(old)) continue;
    std::string number(text.substr(0, text.size() - old.size()));
    return (number.starts_with(".") ? "0" : "") + number + std::string(modern);
  }
  return (text.starts_with(".") ? "0" : "") + std::string(text);
}

void add(const Quantity& quantity, const Kind& kind, Drafts& out) {
  constexpr std::string_view reason = "a number and its unit";
  Draft draft = kind.part == Part::other
                    ? rating_draft(system_name, *quantity.nominal, kind.dimension, 85, std::string(reason))
                    : value_draft(system_name, kind.part, *quantity.nominal, 85, std::string(reason));
  if (!kind.fact.empty()) draft.facts.emplace_back(kind.fact);
  if (quantity.minus && quantity.plus && quantity.relative_tolerance)
    draft.tolerance = ToleranceCode{*quantity.minus, *quantity.plus};
  out.push_back(std::move(draft));
}

// One number and nothing else: no range, no limits, no test conditions.
bool plain(const Quantity& quantity) {
  return quantity.nominal && !quantity.nominal->negative() && !quantity.range && quantity.at.empty() &&
         !quantity.minimum && !quantity.maximum;
}

} // namespace

void read_plain_value(std::string_view text, Drafts& out) {
  if (text.empty() || text.back() == 'F' ? false : all_digits(text)) return;
  Drafts coded;
  read_letter_code(text, coded);
  if (!coded.empty()) return;
  const std::string modern = with_modern_unit(text);
  for (const Kind& kind : kinds) {
    const QuantityResult result = parse_quantity(modern, kind.dimension);
    if (result.quantity && plain(*result.quantity)) add(*result.quantity, kind, out);
  }
}

} // namespace benchlore
