// Examples of rules: a rule whose own examples come out otherwise is not what its writer meant.
#include "substitute/examples.h"

#include "substitute/verdict.h"

namespace benchlore {

std::string example_fault(const Schema& schema, const Rule& rule, const RuleExample& example) {
  const Part original{"original", "original", schema.find_class(example.original_class), &example.original};
  const Part substitute{"substitute", "substitute", schema.find_class(example.substitute_class), &example.substitute};
  const bool anywhere = !example.role.empty() || rule.roles.empty();
  const Where where{"", anywhere ? example.role : rule.roles.front(), example.stress};
  const auto reason = ask_rule(schema, rule, original, substitute, where);
  if (!reason) return "the rule does not apply to its own example";
  const std::string got(to_text(reason->outcome));
  const bool not_stated = reason->outcome == Outcome::not_stated;
  if (example.kind == "passes") return reason->outcome == Outcome::meets ? "" : "it should pass, but " + got;
  if (example.kind == "lacks") return not_stated ? "" : "something should be not stated, but it " + got;
  if (reason->outcome == Outcome::meets || not_stated) return "it should fail, but " + got;
  const Verdict wanted = verdict_of(rule.falls_short);
  if (reason->verdict == wanted) return {};
  return "it should be " + std::string(to_text(wanted)) + ", but is " + std::string(to_text(reason->verdict));
}

bool run_shop_examples(const Schema& schema, Report& report) {
  bool sound = true;
  for (const Rule& rule : schema.rules) {
    if (!rule.from_shop) continue;
    for (const RuleExample& example : rule.examples) {
      const std::string fault = example_fault(schema, rule, example);
      if (fault.empty()) continue;
      report.add(MessageKind::schema_error, example.span,
                 "rule `" + rule.name + "`, example `" + example.kind + "`: " + fault, "mend the rule or the example");
      sound = false;
    }
  }
  return sound;
}

} // namespace benchlore
