// Chooses the reference of a rule and brings the substitute's value to the reference's test conditions.
//
// A condition that only one side states makes the two incomparable, and so does a condition that neither states where
// the rating asks for it: a ripple current at 100 kHz looks twice as good as the same current at 100 Hz.
#include "substitute/comparison.h"

#include <algorithm>
#include <cmath>

namespace benchlore {
namespace {

constexpr double tolerance = 1e-9;

const StatedValue* stated(const Ratings& ratings, std::string_view name) {
  const auto found = ratings.find(name);
  return found == ratings.end() ? nullptr : &found->second;
}

const RatingType* type_of(const Part& part, std::string_view rating) {
  const auto found = part.component_class->ratings.find(rating);
  return found == part.component_class->ratings.end() ? nullptr : &found->second;
}

// Where makers of the original differ, the one that asks most of the substitute counts.
Value worst_reference(const Comparison& c, const StatedValue& original) {
  Value worst = original.value;
  const bool upward = c.rule.form == RuleForm::at_least;
  if (!upward && c.rule.form != RuleForm::at_most) return worst;
  for (const auto& [unused, value] : original.by_maker) {
    const Quantity* one = std::get_if<Quantity>(&value);
    const Quantity* most = std::get_if<Quantity>(&worst);
    if (one == nullptr || most == nullptr) return original.value;
    const auto a = upward ? one->low() : one->high();
    const auto b = upward ? most->low() : most->high();
    if (!a) return original.value; // one maker guarantees nothing on the side that counts
    if (!b || (upward ? *a > *b : *a < *b)) worst = value;
  }
  return worst;
}

void choose_reference(Comparison& c) {
  if (!c.rule.stress.empty()) {
    if (const StatedValue* stress = stated(c.where.stress, c.rule.stress)) {
      c.reference = stress->value;
      const auto type = c.schema.stresses.find(c.rule.stress);
      c.reference_name = type == c.schema.stresses.end() ? c.rule.stress : type->second.title;
      return;
    }
  }
  if (c.rule.limit) {
    c.reference = *c.rule.limit;
    c.reference_name = "fixed limit";
    return;
  }
  c.reference_name = "the original";
  if (const StatedValue* value = stated(*c.original.ratings, c.rule.rating)) c.reference = worst_reference(c, *value);
}

void choose_factor(Comparison& c) {
  c.factor = c.rule.factor;
  c.band = c.rule.band;
  if (const auto found = c.rule.factor_by_role.find(c.where.role); found != c.rule.factor_by_role.end())
    c.factor = found->second;
  if (const auto found = c.rule.band_by_role.find(c.where.role); found != c.rule.band_by_role.end())
    c.band = found->second;
  if (!c.rule.relaxed) return;
  const StatedValue* stress = stated(c.where.stress, c.rule.relaxed->stress);
  const Quantity* quantity = stress == nullptr ? nullptr : std::get_if<Quantity>(&stress->value);
  const auto needed = c.rule.relaxed->at_least.centre();
  if (quantity != nullptr && quantity->low() && needed && not_below(*quantity->low(), *needed))
    c.factor = c.rule.relaxed->factor;
}

const Condition* condition_of(const Quantity& quantity, const std::string& name) {
  if (name == "frequency") return quantity.condition(dimension::frequency);
  if (name == "temperature") return quantity.condition(dimension::temperature);
  return quantity.condition(name);
}

std::optional<double> condition_value(const Condition& condition) {
  return condition.value ? condition.value->centre() : std::nullopt;
}

bool same_condition(const Condition& a, const Condition& b) {
  const auto x = condition_value(a);
  const auto y = condition_value(b);
  if (!x || !y) return !x && !y;
  return equal(*x, *y);
}

// The factor of a table at a value: between two rows the smaller or the greater of both, as the caller needs.
std::optional<double> factor_at(const Conversion& conversion, double at, bool smaller) {
  const auto& rows = conversion.rows;
  if (rows.empty() || at < rows.front().at * (1 - tolerance) || at > rows.back().at * (1 + tolerance))
    return std::nullopt;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    if (equal(rows[i].at, at)) return rows[i].factor;
    if (i + 1 < rows.size() && at > rows[i].at && at < rows[i + 1].at) {
      return smaller ? std::min(rows[i].factor, rows[i + 1].factor) : std::max(rows[i].factor, rows[i + 1].factor);
    }
  }
  return std::nullopt;
}

bool conversion_applies(const Conversion& conversion, const Part& part) {
  if (conversion.when_rating.empty()) return true;
  const StatedValue* value = stated(*part.ratings, conversion.when_rating);
  const Quantity* quantity = value == nullptr ? nullptr : std::get_if<Quantity>(&value->value);
  if (quantity == nullptr || !quantity->centre() || !conversion.when_value) return false;
  return not_below(*quantity->centre(), *conversion.when_value->low()) &&
         not_above(*quantity->centre(), *conversion.when_value->high());
}

void scale(std::optional<Decimal>& number, double factor) {
  if (number) number = Decimal::nearest(number->value() * factor);
}

// The quantity as it would be under the other condition; nothing when no table of its class says.
std::optional<Quantity> convert(const Quantity& quantity, const Part& part, const RatingType& type,
                                const std::string& name, double from, double to) {
  for (const Conversion& conversion : type.conversions) {
    if (conversion.condition != name || !conversion_applies(conversion, part)) continue;
    const auto there = factor_at(conversion, to, true);
    const auto here = factor_at(conversion, from, false);
    if (!there || !here) continue;
    Quantity result = quantity;
    const double factor = *there / *here;
    for (auto* number : {&result.nominal, &result.minimum, &result.typical, &result.maximum}) scale(*number, factor);
    if (!result.relative_tolerance) {
      scale(result.minus, factor);
      scale(result.plus, factor);
    }
    return result;
  }
  return std::nullopt;
}

// Brings the substitute's quantity to one condition of the reference; says why when it cannot.
std::string align(Quantity& value, const Quantity& reference, const Comparison& c, const std::string& name) {
  const Condition* mine = condition_of(value, name);
  const Condition* theirs = condition_of(reference, name);
  if (mine == nullptr && theirs == nullptr) return "neither side states the test condition `" + name + "`";
  if (mine == nullptr) return "the substitute's value does not state the test condition `" + name + "`";
  if (theirs == nullptr) return "the reference does not state the test condition `" + name + "`";
  if (same_condition(*mine, *theirs)) return {};
  const auto from = condition_value(*mine);
  const auto to = condition_value(*theirs);
  const auto converted = from && to ? convert(value, c.substitute, *c.type, name, *from, *to) : std::nullopt;
  if (!converted) return "the values are stated under other conditions (`" + name + "`)";
  value = *converted;
  return {};
}

// A span over makers counts with its worst end where the form looks at one end; elsewhere makers must agree.
bool makers_matter(const Comparison& c, const StatedValue* value) {
  if (value == nullptr) return false;
  const auto form = c.rule.form;
  if (form == RuleForm::at_least || form == RuleForm::at_most || form == RuleForm::withstands ||
      form == RuleForm::inside || form == RuleForm::fits) {
    return false;
  }
  return std::any_of(value->by_maker.begin(), value->by_maker.end(),
                     [&](auto& one) { return !(one.second == value->value); });
}

void align_conditions(Comparison& c) {
  auto* value = std::get_if<Quantity>(&*c.value);
  const auto* reference = std::get_if<Quantity>(&*c.reference);
  if (value == nullptr || reference == nullptr) {
    if ((value == nullptr) != (reference == nullptr)) c.unusable = "the two values are of different sorts";
    return;
  }
  if (value->dimension != reference->dimension) {
    c.unusable = "the two values are of different sorts";
    return;
  }
  for (const std::string& name : c.type->compare_at) {
    c.unusable = align(*value, *reference, c, name);
    if (!c.unusable.empty()) return;
  }
}

} // namespace

bool equal(double a, double b) { return std::fabs(a - b) <= tolerance * std::max(std::fabs(a), std::fabs(b)); }
bool not_below(double a, double b) { return a >= b || equal(a, b); }
bool not_above(double a, double b) { return a <= b || equal(a, b); }

void prepare(Comparison& c) {
  choose_factor(c);
  choose_reference(c);
  c.type = type_of(c.substitute, c.rule.rating);
  if (c.type == nullptr) {
    c.unusable = "the substitute's class has no `" + c.rule.rating + "`";
    return;
  }
  if (const StatedValue* value = stated(*c.substitute.ratings, c.rule.rating)) c.value = value->value;
  if (!c.value && !c.reference)
    c.unusable = "neither side states it";
  else if (!c.value)
    c.unusable = "the substitute does not state it";
  else if (!c.reference)
    c.unusable = "the original does not state it";
  else if (makers_matter(c, stated(*c.substitute.ratings, c.rule.rating)) ||
           makers_matter(c, stated(*c.original.ratings, c.rule.rating)))
    c.unusable = "makers state different values; say whose part it is";
  else
    align_conditions(c);
}

} // namespace benchlore
