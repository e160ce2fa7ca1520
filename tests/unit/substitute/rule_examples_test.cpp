// Every rule of schema/ carries three examples; each must come out as it says.
#include "substitute/examples.h"
#include "support.h"

using namespace benchlore;

TEST_CASE("every rule passes, fails and lacks data as its examples say") {
  const Schema& schema = test::project_schema();
  CHECK(schema.rules.size() > 60);
  for (const Rule& rule : schema.rules) {
    for (const RuleExample& example : rule.examples) {
      const std::string fault = example_fault(schema, rule, example);
      CHECK_MESSAGE(fault.empty(), rule.name << ", " << example.kind << ": " << fault);
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
