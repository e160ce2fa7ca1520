// How a value is weighed: preferred values (IEC 60063) speak for a reading, values that no such part has against it.
#include "decode/draft.h"

#include "base/text.h"
#include "quantity/preferred.h"
#include "quantity/quantity.h"

#include <algorithm>
#include <array>

namespace benchlore {
namespace {

// The ranges in which such parts are usual on a bench, in SI units; from memory.
struct PartRow {
  Part part;
  std::string_view name;
  Dimension dimension;
  Decimal least;
  Decimal greatest;
};

PartRow row_of(Part part) {
  switch (part) {
  case Part::resistor:
    return {part, "resistor", dimension::resistance, decimal(1, -3), decimal(1, 8)};
  case Part::potentiometer:
    return {part, "potentiometer", dimension::resistance, decimal(10), decimal(1, 7)};
  case Part::capacitor:
    return {part, "capacitor", dimension::capacitance, decimal(1, -13), decimal(1)};
  case Part::inductor:
    return {part, "inductor", dimension::inductance, decimal(1, -9), decimal(1)};
  case Part::other:
    break;
  }
  return {part, "", dimension::none, {}, {}};
}

// Fine series are made for resistors; a coil or capacitor of such a value is rare.
int series_weight(int series, Part part) {
  if (series == 0) return -25;
  if (series <= 12) return 12;
  if (series == 24) return 8;
  return part == Part::resistor ? (series <= 96 ? 4 : -4) : -12;
}

void weigh(Draft& draft, const PartRow& row) {
  const std::string shown = show_number(draft.value->value(), draft.dimension, 6);
  if (draft.value->zero()) return;
  const int series = coarsest_series(*draft.value);
  draft.rank += series_weight(series, draft.part);
  add_reason(draft, shown + (series == 0 ? " is no preferred value"
                                         : " is a preferred value of series E" + std::to_string(series)));
  if (!less(*draft.value, row.least) && !less(row.greatest, *draft.value)) return;
  draft.rank -= 30;
  add_reason(draft, "hardly any " + std::string(row.name) + " has such a value");
}

} // namespace

Decimal decimal(std::int64_t digits, int exponent) { return Decimal::make(digits, exponent).value_or(Decimal{}); }

bool all_digits(std::string_view text) {
  return !text.empty() && std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

int coarsest_series(Decimal value) {
  if (value.zero() || value.negative()) return 0;
  const auto figures = multiply(value, decimal(1, 2 - order_of(value))); // 100 to 999 and a fraction
  constexpr std::array series{3, 6, 12, 24, 48, 96, 192};
  for (int name : series) {
    for (int preferred : preferred_values(name)) {
      if (figures == decimal(preferred)) return name;
    }
  }
  return 0;
}

Draft value_draft(std::string_view code, Part part, Decimal si, int rank, std::string reason) {
  const PartRow row = row_of(part);
  Draft draft = rating_draft(code, si, row.dimension, rank, std::move(reason));
  draft.part = part;
  weigh(draft, row);
  return draft;
}

Draft rating_draft(std::string_view code, Decimal si, Dimension dimension, int rank, std::string reason) {
  Draft draft = fact_draft(code, rank, std::move(reason));
  draft.value = si;
  draft.dimension = dimension;
  return draft;
}

Draft fact_draft(std::string_view code, int rank, std::string reason) {
  Draft draft;
  draft.code = code;
  draft.rank = rank;
  add_reason(draft, std::move(reason));
  return draft;
}

Draft fact_draft(std::string_view code, std::string fact, int rank, std::string reason) {
  Draft draft = fact_draft(code, rank, std::move(reason));
  draft.facts.push_back(std::move(fact));
  return draft;
}

void add_reason(Draft& draft, std::string reason) { draft.reasons.push_back(std::move(reason)); }

std::string number_text(const Draft& draft) {
  if (!draft.value) return "";
  Quantity quantity;
  quantity.dimension = draft.dimension;
  quantity.nominal = draft.value;
  if (draft.tolerance) {
    quantity.minus = draft.spread.value_or(draft.tolerance->minus);
    quantity.plus = draft.spread.value_or(draft.tolerance->plus);
    quantity.relative_tolerance = !draft.spread;
  }
  return to_text(quantity);
}

Reading finished(const Draft& draft, std::string_view marking) {
  std::vector<std::string> parts;
  const bool told = draft.dimension == dimension::information; // its facts say the capacity in their own way
  for (const std::string& piece : {std::string(row_of(draft.part).name), told ? "" : number_text(draft)}) {
    if (!piece.empty()) parts.push_back(piece);
  }
  parts.insert(parts.end(), draft.facts.begin(), draft.facts.end());
  Reading reading{draft.code,
                  std::string(marking),
                  std::nullopt,
                  draft.dimension,
                  std::nullopt,
                  join(parts, ", "),
                  join(draft.reasons, "; "),
                  std::clamp(draft.rank, 1, 99)};
  if (draft.value) reading.value = draft.value->value();
  if (draft.tolerance) reading.tolerance = {draft.tolerance->minus.value(), draft.tolerance->plus.value()};
  return reading;
}

} // namespace benchlore
