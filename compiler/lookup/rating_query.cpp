// Reads one value, or two ends with their units, and asks the rating's slot for it.
#include "lookup/rating_query.h"

#include "base/text.h"
#include "quantity/quantity.h"
#include "quantity/unit.h"

#include <algorithm>

namespace benchlore {
namespace {

constexpr double slack = 1e-9; // so that a stated value finds itself whatever its unit's prefix

struct Range {
  std::optional<double> low, high;
};

// One end of a range; the unit of the other end may stand for both (`10..47 uF`).
std::optional<Quantity> end_of(std::string_view text, std::string_view other, Dimension dimension, std::string& error) {
  QuantityResult result = parse_quantity(trim(text), dimension);
  if (!result.quantity && !trim(other).empty()) {
    const std::size_t unit = other.find_last_of("0123456789");
    if (unit != std::string_view::npos)
      if (auto again = parse_quantity(std::string(trim(text)) + std::string(other.substr(unit + 1)), dimension);
          again.quantity)
        return again.quantity;
  }
  if (result.error) error = result.error->message + (result.error->way_out.empty() ? "" : "; ") + result.error->way_out;
  return result.quantity;
}

std::optional<Range> read_range(std::string_view text, Dimension dimension, std::string& error) {
  const std::size_t dots = text.find("..");
  if (dots == std::string_view::npos) {
    const std::optional<Quantity> value = end_of(text, {}, dimension, error);
    if (!value) return std::nullopt;
    return Range{value->low(), value->high()};
  }
  const std::string_view left = trim(text.substr(0, dots)), right = trim(text.substr(dots + 2));
  Range range;
  if (!left.empty()) {
    const std::optional<Quantity> low = end_of(left, right, dimension, error);
    if (!low) return std::nullopt;
    range.low = low->centre();
  }
  if (!right.empty()) {
    const std::optional<Quantity> high = end_of(right, {}, dimension, error);
    if (!high) return std::nullopt;
    range.high = high->centre();
  }
  return range;
}

Xapian::Query range_query(std::uint32_t slot, const Range& range) {
  auto end = [](double value, double side) {
    return Xapian::sortable_serialise(value + side * slack * std::max(value, -value));
  };
  if (range.low && range.high) return {Xapian::Query::OP_VALUE_RANGE, slot, end(*range.low, -1), end(*range.high, 1)};
  if (range.low) return {Xapian::Query::OP_VALUE_GE, slot, end(*range.low, -1)};
  if (range.high) return {Xapian::Query::OP_VALUE_LE, slot, end(*range.high, 1)};
  return Xapian::Query::MatchNothing;
}

} // namespace

std::optional<Xapian::Query> rating_query(std::string_view rating, std::string_view text, const RatingSlots& slots,
                                          std::string& error) {
  std::vector<Xapian::Query> choices;
  std::string fault;
  const auto [first, last] = slots.equal_range(rating);
  for (auto entry = first; entry != last; ++entry) {
    const auto& [unit, slot] = entry->second;
    if (unit.empty()) choices.emplace_back(rating_term(rating, text));
    const bool pure = unit.empty() || unit == "none";
    const std::optional<Unit> known = pure ? std::optional(Unit{}) : parse_unit(unit);
    if (!known) continue;
    if (const auto range = read_range(text, known->dimension, fault)) choices.push_back(range_query(slot, *range));
  }
  if (choices.empty()) {
    error = "`" + std::string(rating) + ":" + std::string(text) + "`: " + fault;
    return std::nullopt;
  }
  return Xapian::Query(Xapian::Query::OP_OR, choices.begin(), choices.end());
}

} // namespace benchlore
