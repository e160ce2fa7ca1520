// The judgement of a substitute, with everything that it rests on.
#pragma once

#include "schema/part.h"

#include <optional>
#include <string>
#include <vector>

namespace benchlore {

// Worst first, so that the smaller one counts.
enum class Verdict { unsafe, unfit, unknown, conditional, suitable };

enum class Outcome { meets, falls_short, differs, not_stated };

std::string_view to_text(Verdict verdict);
std::string_view to_text(Outcome outcome);

// What a rule that is not met leads to.
Verdict verdict_of(Shortfall shortfall);

// What one rule (or the choice of class) says.
struct Reason {
  const Rule* rule = nullptr; // null for the choice of class
  std::string rule_name;
  std::string rating; // name of what decides
  Outcome outcome{};
  Verdict verdict = Verdict::suitable; // what this reason alone would lead to
  std::string original;                // the value on each side, as stated; `not stated`
  std::string substitute;
  std::string required;         // the relation in words, with the reference: `at least 24 V (2 × 12 V applied)`
  std::optional<double> margin; // substitute over what is required, less one; negative when short
  bool by_tolerance = false;    // turns on the tolerance
  std::string working;          // of a computed check
  std::string action;           // what must be done or found out
  std::string only_in_role;     // set when no role was given and this counts only there
  std::string because;
  std::string source;
  std::string changed; // how the shop changed the rule; empty as delivered
};

struct Judgement {
  Verdict verdict = Verdict::unknown;
  std::vector<std::string> deciding;   // ratings that led to the verdict
  std::vector<Reason> reasons;         // worst first, then in rule order
  std::vector<std::string> conditions; // what must be done, for a conditional verdict, or found out, for an unknown one
  std::vector<Reason> original_reasons; // rules that the original itself does not meet where it sits
};

// What the verdict owes to rules that the shop loosened: `rule: how and why`, for each.
std::vector<std::string> loosened_rules(const Judgement& judgement);

// Judges a substitute for an original. Pure: no files, no clock, no globals.
Judgement judge(const Schema& schema, const Part& original, const Part& substitute, const Where& where);

// The same with reasons of the caller's own, such as what must be done to join several parts into one.
Judgement judge(const Schema& schema, const Part& original, const Part& substitute, const Where& where,
                const std::vector<Reason>& further);

// What the position itself does to the part that it carries: the rules against stress only.
std::vector<Reason> judge_in_place(const Schema& schema, const Part& part, const Where& where);

// What one rule says of a pair in a place; nothing when it does not apply.
std::optional<Reason> ask_rule(const Schema& schema, const Rule& rule, const Part& original, const Part& substitute,
                               const Where& where);

// The judgement as a JSON object: `format`, `version`, `verdict`, `deciding`, `reasons`, `conditions`,
// `original_reasons`.
std::string to_json(const Judgement& judgement, const Part& original, const Part& substitute, const Where& where);

} // namespace benchlore
