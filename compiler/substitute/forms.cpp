// One short function for each form of rule, and the table that names them. No class of component is named here.
#include "base/text.h"
#include "substitute/comparison.h"
#include "substitute/pins.h"

#include <algorithm>
#include <cmath>

namespace benchlore {
namespace {

const Quantity& quantity(const std::optional<Value>& value) { return std::get<Quantity>(*value); }
const Words& words(const std::optional<Value>& value) { return std::get<Words>(*value); }

std::string factor_text(double factor) { return show_number(factor, dimension::none) + " × "; }

// `at least 24 V (2 × 12 V, Applied voltage)`.
std::string requirement(const Comparison& c, std::string_view relation, double bound, double reference) {
  std::string text = std::string(relation) + " " + show_number(bound, c.type->dimension) + " (";
  if (!equal(c.factor, 1.0)) text += factor_text(c.factor) + show_number(reference, c.type->dimension) + ", ";
  return text + c.reference_name + ")";
}

Finding unusable(std::string why) {
  Finding finding;
  finding.unusable = std::move(why);
  return finding;
}

const char* side_missing(const Quantity& q) {
  return q.only_typical() ? "is stated only as typical" : "is not guaranteed on the side that counts";
}

// The reference counts with its greatest value against a stress, and with its guaranteed least as a part's rating.
std::optional<double> reference_for_at_least(const Comparison& c) {
  const Quantity& q = quantity(c.reference);
  return c.reference_name == "the original" ? q.low() : q.high();
}

Finding at_least(const Comparison& c) {
  const Quantity& value = quantity(c.value);
  const auto reference = reference_for_at_least(c);
  if (!value.low()) return unusable(std::string("the substitute's value ") + side_missing(value));
  if (!reference) return unusable("the reference " + std::string(side_missing(quantity(c.reference))));
  Finding finding;
  const double bound = *reference * c.factor;
  finding.met = not_below(*value.low(), bound);
  finding.by_tolerance = !finding.met && value.nominal && not_below(value.nominal->value(), bound);
  if (bound != 0) finding.margin = (*value.low() - bound) / std::fabs(bound);
  finding.required = requirement(c, "at least", bound, *reference);
  return finding;
}

std::optional<double> reference_for_at_most(const Comparison& c) {
  const Quantity& q = quantity(c.reference);
  return c.reference_name == "the original" ? q.high() : q.low() ? q.low() : q.high();
}

Finding at_most(const Comparison& c) {
  const Quantity& value = quantity(c.value);
  const auto reference = reference_for_at_most(c);
  if (!value.high()) return unusable(std::string("the substitute's value ") + side_missing(value));
  if (!reference) return unusable("the reference " + std::string(side_missing(quantity(c.reference))));
  Finding finding;
  const double bound = *reference * c.factor;
  finding.met = not_above(*value.high(), bound);
  finding.by_tolerance = !finding.met && value.nominal && not_above(value.nominal->value(), bound);
  if (bound != 0) finding.margin = (bound - *value.high()) / std::fabs(bound);
  finding.required = requirement(c, "at most", bound, *reference);
  return finding;
}

Finding same_quantity(const Comparison& c) {
  const Quantity& a = quantity(c.value);
  const Quantity& b = quantity(c.reference);
  if (a.only_typical() || b.only_typical()) return unusable("a value is stated only as typical");
  Finding finding;
  const double allowed = c.rule.allowance && c.rule.allowance->centre() ? *c.rule.allowance->centre() : 0.0;
  auto near = [allowed](std::optional<double> x, std::optional<double> y) {
    if (!x || !y) return !x && !y;
    return equal(*x, *y) || std::fabs(*x - *y) <= allowed * (1 + 1e-9);
  };
  finding.met = a.nominal && b.nominal ? near(a.nominal->value(), b.nominal->value())
                                       : near(a.low(), b.low()) && near(a.high(), b.high());
  finding.required = "equal to " + to_text(*c.reference) + " (" + c.reference_name + ")";
  if (allowed > 0) finding.required += " within " + show_number(allowed, c.type->dimension);
  return finding;
}

Finding same_words(const Comparison& c) {
  auto sorted = [](std::vector<std::string> items) {
    std::sort(items.begin(), items.end());
    return items;
  };
  Finding finding;
  finding.met = sorted(words(c.value).items) == sorted(words(c.reference).items);
  finding.required = "the same as " + to_text(*c.reference) + " (" + c.reference_name + ")";
  return finding;
}

Finding same(const Comparison& c) { return std::holds_alternative<Words>(*c.value) ? same_words(c) : same_quantity(c); }

// Place of a word among the grades, lowest first.
std::optional<std::size_t> grade(const RatingType& type, const std::string& word) {
  const auto found = std::find(type.words.begin(), type.words.end(), word);
  if (found == type.words.end()) return std::nullopt;
  return static_cast<std::size_t>(found - type.words.begin());
}

Finding same_or_higher(const Comparison& c) {
  Finding finding;
  finding.required = "the grade " + to_text(*c.reference) + " or higher (" + c.reference_name + ")";
  std::optional<std::size_t> least, needed;
  for (const std::string& word : words(c.value).items) {
    const auto place = grade(*c.type, word);
    if (place && (!least || *place < *least)) least = place;
  }
  for (const std::string& word : words(c.reference).items) {
    const auto place = grade(*c.type, word);
    if (place && (!needed || *place > *needed)) needed = place;
  }
  if (!least || !needed) return unusable("a grade is not one of the known ones");
  finding.met = *least >= *needed;
  return finding;
}

// Each word of the reference that the table knows must be met by a word of the substitute.
Finding allowed(const Comparison& c) {
  Finding finding;
  bool any = false;
  finding.met = true;
  for (const std::string& word : words(c.reference).items) {
    const auto row = c.rule.table.find(word);
    if (row == c.rule.table.end()) continue;
    any = true;
    const auto& good = row->second;
    const auto& mine = words(c.value).items;
    finding.met = finding.met && std::any_of(mine.begin(), mine.end(), [&](auto& w) {
                    return std::find(good.begin(), good.end(), w) != good.end();
                  });
    finding.required += (finding.required.empty() ? "for " : "; for ") + word + " one of " + join(good, ", ");
  }
  if (any) return finding;
  finding.met = false;
  finding.required = "a class made for this place; " + to_text(*c.reference) + " is none";
  return finding;
}

// A band may be open at one end: then only the other end is worth saying.
std::string band_text(const Comparison& c) {
  auto percent = [](double fraction) { return show_number(fraction * 100, dimension::none) + " %"; };
  const std::string of = " of " + to_text(*c.reference) + " (" + c.reference_name + ")";
  if (c.band.above >= 100) return "not less than " + percent(1 - c.band.below) + of;
  if (c.band.below >= 1) return "not more than " + percent(1 + c.band.above) + of;
  return "within -" + percent(c.band.below) + "/+" + percent(c.band.above) + of;
}

// The whole interval inside the reference's own interval, widened by the band; both tolerances must be stated.
Finding within_whole(const Comparison& c) {
  const Quantity& value = quantity(c.value);
  const Quantity& reference = quantity(c.reference);
  auto bounded = [](const Quantity& q) { return q.tolerance_stated() || (q.minimum && q.maximum); };
  if (!bounded(value) || !bounded(reference)) return unusable("a tolerance that counts here is not stated");
  Finding finding;
  finding.required = "its whole spread " + band_text(c);
  const double low = *reference.low() - std::fabs(*reference.low()) * c.band.below;
  const double high = *reference.high() + std::fabs(*reference.high()) * c.band.above;
  finding.met = not_below(*value.low(), low) && not_above(*value.high(), high);
  finding.by_tolerance = !finding.met && value.nominal && not_below(value.nominal->value(), low) &&
                         not_above(value.nominal->value(), high);
  return finding;
}

Finding within_nominal(const Comparison& c) {
  const Quantity& value = quantity(c.value);
  const Quantity& reference = quantity(c.reference);
  if (value.only_typical() || reference.only_typical()) return unusable("a value is stated only as typical");
  const auto mine = value.centre();
  const auto theirs = reference.centre();
  if (!mine || !theirs) return unusable("a value is not stated on both sides");
  Finding finding;
  finding.required = band_text(c);
  finding.met = not_below(*mine, *theirs * (1 - c.band.below)) && not_above(*mine, *theirs * (1 + c.band.above));
  const bool spreads = value.tolerance_stated() && reference.tolerance_stated() && value.low() && value.high();
  if (finding.met && spreads) {
    finding.met = not_below(*value.low(), *reference.low() * (1 - c.band.below)) &&
                  not_above(*value.high(), *reference.high() * (1 + c.band.above));
    finding.by_tolerance = !finding.met;
  }
  return finding;
}

Finding within(const Comparison& c) { return c.rule.whole ? within_whole(c) : within_nominal(c); }

// Every word of the reference is among the substitute's.
Finding covers_words(const Comparison& c) {
  const auto& mine = words(c.value).items;
  const auto& wanted = words(c.reference).items;
  Finding finding;
  finding.met = std::all_of(wanted.begin(), wanted.end(),
                            [&](auto& word) { return std::find(mine.begin(), mine.end(), word) != mine.end(); });
  finding.required = "all of " + to_text(*c.reference) + " (" + c.reference_name + ")";
  return finding;
}

Finding covers(const Comparison& c) {
  if (std::holds_alternative<Words>(*c.value)) return covers_words(c);
  const Quantity& value = quantity(c.value);
  const Quantity& reference = quantity(c.reference);
  if (!value.low() || !value.high()) return unusable("the substitute's range is not stated at both ends");
  if (!reference.low() || !reference.high()) return unusable("the reference range is not stated at both ends");
  Finding finding;
  finding.met = not_above(*value.low(), *reference.low()) && not_below(*value.high(), *reference.high());
  finding.required = "covering " + to_text(*c.reference) + " (" + c.reference_name + ")";
  return finding;
}

Finding inside(const Comparison& c) {
  const Quantity& value = quantity(c.value);
  const Quantity& window = quantity(c.reference);
  if (!window.low() && !window.high()) return unusable("the window is not stated");
  if (window.low() && !value.low()) return unusable("the substitute's least value is not guaranteed");
  if (window.high() && !value.high()) return unusable("the substitute's greatest value is not guaranteed");
  Finding finding;
  finding.met = (!window.low() || not_below(*value.low(), *window.low())) &&
                (!window.high() || not_above(*value.high(), *window.high()));
  finding.required = "inside " + to_text(*c.reference) + " (" + c.reference_name + ")";
  return finding;
}

Finding fits(const Comparison& c) {
  const Quantity& value = quantity(c.value);
  const auto reference = quantity(c.reference).high();
  if (!value.high() || !reference) return unusable("a dimension is not stated");
  const double room = c.rule.allowance && c.rule.allowance->centre() ? *c.rule.allowance->centre() : 0.0;
  Finding finding;
  finding.met = not_above(*value.high(), *reference + room);
  finding.required =
      "not greater than " + show_number(*reference + room, c.type->dimension) + " (" + c.reference_name + ")";
  return finding;
}

struct FormRow {
  RuleForm form;
  enum class Sort { quantity, words, either } sort;
  Finding (*apply)(const Comparison&);
};

constexpr FormRow forms[] = {
    {RuleForm::at_least, FormRow::Sort::quantity, at_least},
    {RuleForm::at_most, FormRow::Sort::quantity, at_most},
    {RuleForm::same, FormRow::Sort::either, same},
    {RuleForm::same_or_higher, FormRow::Sort::words, same_or_higher},
    {RuleForm::allowed, FormRow::Sort::words, allowed},
    {RuleForm::within, FormRow::Sort::quantity, within},
    {RuleForm::covers, FormRow::Sort::either, covers},
    {RuleForm::inside, FormRow::Sort::quantity, inside},
    {RuleForm::fits, FormRow::Sort::quantity, fits},
    {RuleForm::withstands, FormRow::Sort::quantity, at_least},
    {RuleForm::leads, FormRow::Sort::words, leads},
    {RuleForm::pins, FormRow::Sort::words, pins},
};

bool right_sort(FormRow::Sort sort, const Comparison& c) {
  if (c.value->index() != c.reference->index()) return false;
  const bool is_words = std::holds_alternative<Words>(*c.value);
  return sort == FormRow::Sort::either || (sort == FormRow::Sort::words) == is_words;
}

} // namespace

Finding apply_form(const Comparison& c) {
  if (c.rule.form == RuleForm::computed) return apply_computation(c);
  if (!c.unusable.empty()) return unusable(c.unusable);
  for (const FormRow& row : forms) {
    if (row.form != c.rule.form) continue;
    if (!right_sort(row.sort, c)) return unusable("the two values are of different sorts");
    return row.apply(c);
  }
  return unusable("the rule has no form");
}

} // namespace benchlore
