// Every rule of schema/ carries three examples; each must come out as it says.
#include "substitute/verdict.h"
#include "support.h"

using namespace benchlore;

namespace {

Reason run(const Schema& schema, const Rule& rule, const RuleExample& example) {
  const Part original{"original", "original", schema.find_class(example.original_class), &example.original};
  const Part substitute{"substitute", "substitute", schema.find_class(example.substitute_class), &example.substitute};
  const Where where{"", example.role.empty() && !rule.roles.empty() ? rule.roles.front() : example.role,
                    example.stress};
  auto reason = ask_rule(schema, rule, original, substitute, where);
  CHECK_MESSAGE(reason.has_value(), rule.name << " " << example.kind << ": the rule does not apply to its own example");
  return reason.value_or(Reason{});
}

Verdict expected(Shortfall shortfall) {
  return shortfall == Shortfall::unsafe  ? Verdict::unsafe
         : shortfall == Shortfall::unfit ? Verdict::unfit
                                         : Verdict::conditional;
}

} // namespace

TEST_CASE("every rule passes, fails and lacks data as its examples say") {
  const Schema& schema = test::project_schema();
  CHECK(schema.rules.size() > 60);
  for (const Rule& rule : schema.rules) {
    for (const RuleExample& example : rule.examples) {
      CAPTURE(rule.name);
      CAPTURE(example.kind);
      const Reason reason = run(schema, rule, example);
      if (example.kind == "passes") CHECK(reason.outcome == Outcome::meets);
      if (example.kind == "lacks") CHECK(reason.outcome == Outcome::not_stated);
      if (example.kind == "fails") CHECK(reason.outcome != Outcome::meets);
      if (example.kind == "fails") CHECK(reason.outcome != Outcome::not_stated);
      if (example.kind == "fails") CHECK(reason.verdict == expected(rule.falls_short));
    }
  }
}

TEST_CASE("every rule and stand-in cites a source that schema/sources.yaml knows") {
  const Schema& schema = test::project_schema();
  for (const Rule& rule : schema.rules) CHECK_MESSAGE(schema.sources.contains(rule.source), rule.name);
  for (const auto& [name, made] : schema.classes) {
    for (const StandIn& stand_in : made.stand_ins) CHECK_MESSAGE(schema.sources.contains(stand_in.source), name);
  }
}
