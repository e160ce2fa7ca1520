// The judgement: may this class stand in at all, what does each rule say, and what follows from the worst of it.
#include "base/text.h"
#include "substitute/applies.h"
#include "substitute/comparison.h"
#include "substitute/family.h"
#include "substitute/verdict.h"

#include <algorithm>

namespace benchlore {
namespace {

std::string stated_text(const Part& part, const std::string& rating) {
  const auto found = part.ratings->find(rating);
  return found == part.ratings->end() ? "not stated" : to_text(found->second.value);
}

Reason start_reason(const Rule& rule, const Part& original, const Part& substitute) {
  Reason reason;
  reason.rule = &rule;
  reason.rule_name = rule.name;
  reason.rating = rule.rating.empty() ? rule.computation : rule.rating;
  reason.original = stated_text(original, rule.rating);
  reason.substitute = stated_text(substitute, rule.rating);
  reason.because = rule.because;
  reason.source = rule.source;
  reason.changed = rule.changed;
  return reason;
}

void not_stated(Reason& reason, const Rule& rule, const std::string& why) {
  reason.outcome = Outcome::not_stated;
  reason.verdict = rule.falls_short == Shortfall::care ? Verdict::conditional : Verdict::unknown;
  reason.action = "find out `" + reason.rating + "`: " + why;
  if (rule.falls_short == Shortfall::care) reason.action += "; until then: " + rule.action;
}

void settle(Reason& reason, const Rule& rule, const Finding& finding) {
  reason.required = finding.required;
  reason.margin = finding.margin;
  reason.by_tolerance = finding.by_tolerance;
  reason.working = finding.working;
  if (!finding.rating.empty()) reason.rating = finding.rating;
  if (!finding.unusable.empty()) return not_stated(reason, rule, finding.unusable);
  if (finding.met) {
    reason.outcome = Outcome::meets;
    return;
  }
  reason.verdict = verdict_of(rule.falls_short);
  reason.outcome = rule.falls_short == Shortfall::care ? Outcome::differs : Outcome::falls_short;
  reason.action = rule.action;
  if (finding.by_tolerance)
    reason.action +=
        reason.action.empty() ? "the nominal value would do; the tolerance decides" : " (the tolerance decides)";
}

// What counts only in some roles, when no role was given: where it could hurt, only the role can tell, so the verdict
// is unknown whether the rule falls short or a value is missing; otherwise it is a condition.
void bound_to_roles(Reason& reason, const Rule& rule, const std::string& roles) {
  if (roles.empty() || reason.outcome == Outcome::meets) return;
  reason.only_in_role = roles;
  const std::string as_it_is = "not as it is (" + std::string(to_text(reason.verdict)) + ")";
  reason.action = "as " + roles + ": " + (reason.action.empty() ? as_it_is : reason.action);
  if (rule.falls_short == Shortfall::unsafe) reason.action = "say in which role it sits; " + reason.action;
  reason.verdict = rule.falls_short == Shortfall::unsafe ? Verdict::unknown : Verdict::conditional;
}

Reason class_reason(const Part& original, const Part& substitute) {
  Reason reason;
  reason.rule_name = "class";
  reason.rating = "class";
  reason.original = original.component_class->title;
  reason.substitute = substitute.component_class->title;
  return reason;
}

Reason refused_class(const Part& original, const Part& substitute, std::string required) {
  Reason reason = class_reason(original, substitute);
  const ComponentClass& made = *original.component_class;
  reason.outcome = Outcome::falls_short;
  reason.verdict = verdict_of(made.otherwise);
  reason.required = std::move(required);
  reason.because = made.otherwise_because.empty()
                       ? "no class file says that this family may take the place of the other"
                       : made.otherwise_because;
  reason.source = "common-practice";
  return reason;
}

// Whether a part of this class may be thought of at all.
Reason judge_class(const Schema& schema, const Part& original, const Part& substitute, const Where& where) {
  const ComponentClass& made = *original.component_class;
  Reason reason = class_reason(original, substitute);
  reason.required = made.title + ", or a class that may stand in for it";
  if (schema.is_a(substitute.component_class->name, made.name)) return reason;
  for (const StandIn& stand_in : made.stand_ins) {
    if (!schema.is_a(substitute.component_class->name, stand_in.substitute)) continue;
    reason.because = stand_in.because;
    reason.source = stand_in.source;
    const auto& roles = stand_in.roles;
    if (roles.empty() || std::find(roles.begin(), roles.end(), where.role) != roles.end()) return reason;
    if (!where.role.empty()) return refused_class(original, substitute, "only as " + join(roles, ", "));
    reason.outcome = Outcome::differs;
    reason.verdict = made.otherwise == Shortfall::unsafe ? Verdict::unknown : Verdict::conditional;
    reason.action = "only as " + join(roles, ", ");
    if (made.otherwise == Shortfall::unsafe) reason.action = "say in which role it sits; " + reason.action;
    return reason;
  }
  return refused_class(original, substitute, reason.required);
}

bool worse(const Reason& a, const Reason& b) { return a.verdict < b.verdict; }

void add_once(std::vector<std::string>& list, const std::string& item) {
  if (!item.empty() && std::find(list.begin(), list.end(), item) == list.end()) list.push_back(item);
}

// `judged`: by a rule at least, since the class alone is no judgement.
void conclude(Judgement& judgement, bool judged) {
  std::stable_sort(judgement.reasons.begin(), judgement.reasons.end(), worse);
  judgement.verdict = judgement.reasons.front().verdict;
  if (!judged && judgement.verdict >= Verdict::conditional) judgement.verdict = Verdict::unknown;
  for (const Reason& reason : judgement.reasons) {
    if (reason.verdict != judgement.verdict) continue;
    if (judgement.verdict != Verdict::suitable || reason.rule != nullptr) add_once(judgement.deciding, reason.rating);
    if (judgement.verdict != Verdict::suitable) add_once(judgement.conditions, reason.action);
  }
  if (!judged && judgement.deciding.empty()) judgement.deciding.push_back("class");
  if (!judged && judgement.verdict == Verdict::unknown) judgement.conditions.push_back("no rule judges this pair");
}

// A rule that looks at the place, and not only from part to part.
bool looks_at_place(const Rule& rule, const Where& where) {
  return rule.form == RuleForm::computed || (!rule.stress.empty() && where.stress.contains(rule.stress));
}

// The parts are whole already: their families are in their ratings.
std::optional<Reason> ask(const Schema& schema, const Rule& rule, const Part& original, const Part& substitute,
                          const Where& where) {
  const Applies answer = applies(schema, rule, original, substitute, where);
  if (answer.answer == Applies::Answer::no) return std::nullopt;
  Reason reason = start_reason(rule, original, substitute);
  if (answer.answer == Applies::Answer::not_stated) {
    reason.rating = answer.missing;
    not_stated(reason, rule, "it decides whether the rule applies");
  } else {
    Comparison comparison{schema, rule, original, substitute, where, nullptr, {}, {}, {}, 1.0, {}, {}};
    prepare(comparison);
    settle(reason, rule, apply_form(comparison));
  }
  bound_to_roles(reason, rule, answer.only_in_role);
  return reason;
}

std::vector<Reason> judge_whole_in_place(const Schema& schema, const Part& part, const Where& where) {
  std::vector<Reason> reasons;
  for (const Rule& rule : schema.rules) {
    if (!looks_at_place(rule, where)) continue;
    auto reason = ask(schema, rule, part, part, where);
    const bool counts = reason && (reason->outcome == Outcome::falls_short || reason->outcome == Outcome::differs);
    if (counts && reason->only_in_role.empty()) reasons.push_back(std::move(*reason));
  }
  std::stable_sort(reasons.begin(), reasons.end(), worse);
  return reasons;
}

} // namespace

std::optional<Reason> ask_rule(const Schema& schema, const Rule& rule, const Part& original, const Part& substitute,
                               const Where& where) {
  const WholePart o(schema, original), s(schema, substitute);
  return ask(schema, rule, o.part(), s.part(), where);
}

std::vector<Reason> judge_in_place(const Schema& schema, const Part& part, const Where& where) {
  return judge_whole_in_place(schema, WholePart(schema, part).part(), where);
}

Judgement judge(const Schema& schema, const Part& original, const Part& substitute, const Where& where) {
  return judge(schema, original, substitute, where, {});
}

Judgement judge(const Schema& schema, const Part& as_original, const Part& as_substitute, const Where& where,
                const std::vector<Reason>& further) {
  const WholePart whole_original(schema, as_original), whole_substitute(schema, as_substitute);
  const Part& original = whole_original.part();
  const Part& substitute = whole_substitute.part();
  Judgement judgement;
  judgement.reasons.push_back(judge_class(schema, original, substitute, where));
  if (judgement.reasons.front().outcome != Outcome::falls_short) {
    schema.each_rule(original.component_class->name, [&](const Rule& rule) {
      if (auto reason = ask(schema, rule, original, substitute, where)) judgement.reasons.push_back(std::move(*reason));
    });
  }
  const bool judged = judgement.reasons.size() > 1;
  judgement.reasons.insert(judgement.reasons.end(), further.begin(), further.end());
  conclude(judgement, judged);
  judgement.original_reasons = judge_whole_in_place(schema, original, where);
  return judgement;
}

} // namespace benchlore
