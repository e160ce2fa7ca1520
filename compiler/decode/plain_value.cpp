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

// Resistors leave out the unit: `4.7k`.
constexpr auto ohm_letters = std::to_array<std::pair<std::string_view, std::string_view>>(
    {{"k", "kohm"}, {"K", "kohm"}, {"M", "Mohm"}, {"R", "ohm"}});

template <class Rows>
std::optional<std::string> with_unit_of(const Rows& rows, std::string_view end, std::string_view text) {
  for (const auto& [written, modern] : rows) {
    if (end.ends_with(written)) return std::string(text.substr(0, text.size() - written.size())) + std::string(modern);
  }
  return std::nullopt;
}

std::string with_modern_unit(std::string_view text) {
  std::optional<std::string> modern = with_unit_of(old_units, lower(text), text);
  if (!modern && text.find('.') != std::string_view::npos) modern = with_unit_of(ohm_letters, text, text);
  const std::string written = modern ? *modern : std::string(text);
  return written.starts_with('.') ? "0" + written : written;
}

void add(const Quantity& quantity, const Kind& kind, int rank, Drafts& out) {
  constexpr std::string_view reason = "a number and its unit";
  Draft draft = kind.part == Part::other
                    ? rating_draft(system_name, *quantity.nominal, kind.dimension, rank, std::string(reason))
                    : value_draft(system_name, kind.part, *quantity.nominal, rank, std::string(reason));
  if (!kind.fact.empty()) draft.facts.emplace_back(kind.fact);
  if (quantity.minus && quantity.plus && quantity.relative_tolerance)
    draft.tolerance = ToleranceCode{*quantity.minus, *quantity.plus};
  out.push_back(std::move(draft));
}

// `2A` and `1H` may be voltage codes, `12A` and `01F` EIA-96, `107A` and `106V` tantalum chips.
bool may_be_code(std::string_view text, const Quantity& quantity) {
  const bool digits_and_letter = text.size() <= 4 && all_digits(text.substr(0, text.size() - 1));
  const bool usual = quantity.dimension == dimension::voltage && usual_voltage(*quantity.nominal);
  return digits_and_letter && (text.size() == 2 || !usual);
}

// One number and nothing else: no range, no limits, no test conditions.
bool plain(const Quantity& quantity) {
  return quantity.nominal && !quantity.nominal->negative() && !quantity.range && quantity.at.empty() &&
         !quantity.minimum && !quantity.maximum;
}

} // namespace

void read_plain_value(std::string_view text, Drafts& out) {
  if (all_digits(text) || read_value_code(text, CodedThing::resistance)) return; // `4p7C` too is a letter code
  if (const auto farads = read_value_code(text, CodedThing::capacitance); farads && !text.ends_with('F')) return;
  const std::string modern = with_modern_unit(text);
  for (const Kind& kind : kinds) {
    const QuantityResult result = parse_quantity(modern, kind.dimension);
    if (result.quantity && plain(*result.quantity))
      add(*result.quantity, kind, may_be_code(text, *result.quantity) ? rank_open : 85, out);
  }
}

} // namespace benchlore
