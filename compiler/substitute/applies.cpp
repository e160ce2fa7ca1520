// Whether a rule has anything to say about a pair in a place: by class, role, and what the parts and the place state.
#include "substitute/applies.h"

#include "base/text.h"
#include "substitute/comparison.h"

#include <algorithm>

namespace benchlore {
namespace {

bool holds(const std::vector<std::string>& names, std::string_view name) {
  return std::find(names.begin(), names.end(), name) != names.end();
}

bool any_class(const Schema& schema, const std::vector<std::string>& classes, const Part& part) {
  return std::any_of(classes.begin(), classes.end(),
                     [&](auto& name) { return schema.is_a(part.component_class->name, name); });
}

// Roles of the rule that the original's class can play; what a part never does says nothing about it.
std::string open_roles(const Rule& rule, const Part& original) {
  std::vector<std::string> roles;
  for (const std::string& role : rule.roles) {
    if (holds(original.component_class->roles, role)) roles.push_back(role);
  }
  return join(roles, ", ");
}

const StatedValue* value_of(const WhenClause& when, const Part& original, const Part& substitute, const Where& where) {
  const Ratings& ratings = when.of == WhenClause::Of::original     ? *original.ratings
                           : when.of == WhenClause::Of::substitute ? *substitute.ratings
                                                                   : where.stress;
  const auto found = ratings.find(when.rating);
  return found == ratings.end() ? nullptr : &found->second;
}

// Nothing when the value does not tell.
std::optional<bool> clause_holds(const WhenClause& when, const StatedValue& stated) {
  if (const Words* words = std::get_if<Words>(&stated.value)) {
    const bool found =
        std::any_of(words->items.begin(), words->items.end(), [&](auto& w) { return holds(when.words, w); });
    return found != when.negate;
  }
  const Quantity& quantity = std::get<Quantity>(stated.value);
  if (!when.range || !quantity.centre()) return std::nullopt;
  const bool inside = (!when.range->low() || not_below(*quantity.centre(), *when.range->low())) &&
                      (!when.range->high() || not_above(*quantity.centre(), *when.range->high()));
  return inside;
}

} // namespace

Applies applies(const Schema& schema, const Rule& rule, const Part& original, const Part& substitute,
                const Where& where) {
  using Answer = Applies::Answer;
  Applies result;
  if (!any_class(schema, rule.from, original) || !any_class(schema, rule.to, substitute)) return result;
  if (!rule.roles.empty() && !where.role.empty() && !holds(rule.roles, where.role)) return result;
  if (!where.role.empty() && holds(rule.not_roles, where.role)) return result;
  if (!rule.roles.empty() && where.role.empty()) {
    result.only_in_role = open_roles(rule, original);
    if (result.only_in_role.empty()) return result;
  }
  const bool stress_stated = where.stress.contains(rule.stress);
  if (rule.form == RuleForm::withstands && !stress_stated) return result;
  if (rule.form == RuleForm::inside && !stress_stated && (rule.roles.empty() || where.role.empty())) return result;
  result.answer = Answer::yes;
  for (const WhenClause& when : rule.when) {
    if (when.stated) {
      if (where.stress.contains(when.rating) != *when.stated) return {};
      continue;
    }
    const StatedValue* stated = value_of(when, original, substitute, where);
    const auto held = stated == nullptr ? std::nullopt : clause_holds(when, *stated);
    if (held && !*held) return {};
    if (held) continue;
    if (when.missing_skips) return {};
    result.answer = Answer::not_stated;
    result.missing = when.rating;
  }
  return result;
}

} // namespace benchlore
