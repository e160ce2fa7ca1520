// A shop's own schema adds and tightens; it loosens only where a rule permits, and that shows on every verdict.
#include "made_schema.h"
#include "substitute/examples.h"

using namespace benchlore;

namespace {

const std::string examples = "    examples:\n"
                             "      - passes: {substitute: {rated-voltage: 40 V}, stress: {applied-voltage: 12 V}}\n"
                             "      - fails: {substitute: {rated-voltage: 12 V}, stress: {applied-voltage: 12 V}}\n"
                             "      - lacks: {stress: {applied-voltage: 12 V}}\n";

std::string voltage_rule(const std::string& name, const std::string& more) {
  return "  - rule: " + name + "\n    form: withstands\n    rating: rated-voltage\n    from: [tantalum-capacitor]\n" +
         "    stress: applied-voltage\n    factor: 2\n    falls-short: unsafe\n" + more +
         "    because: it burns\n    source: maker\n" + examples;
}

const std::map<std::string, std::string> project = {
    {"rules/rules.yaml", "rules:\n" + voltage_rule("hard", "") + voltage_rule("soft", "    may-loosen: yes\n")}};

std::string change(const std::string& text) {
  return "changes:\n  - {rule: " + text + ", because: measured here, by: the bench, date: 2026-05-01}\n";
}

auto with(const std::string& shop_rules) { return test::made_schema(project, {{"rules/own.yaml", shop_rules}}); }

} // namespace

TEST_CASE("a shop tightens any rule, and the verdict says so") {
  const auto made = with(change("hard, factor: 3"));
  REQUIRE_MESSAGE(made->schema.has_value(), made->messages());
  const Reason reason = made->ask("hard", "tantalum-capacitor", "", "rated-voltage: 25 V", "applied-voltage: 10 V");
  CHECK(reason.verdict == Verdict::unsafe);
  CHECK(reason.changed == "tightened by this shop to factor 3 (measured here; the bench, 2026-05-01)");
}

TEST_CASE("a shop loosens a rule only where that says it may be") {
  CHECK_FALSE(with(change("hard, factor: 1.5"))->schema.has_value());
  CHECK(with(change("hard, factor: 1.5"))->messages().find("may not be loosened") != std::string::npos);
  CHECK_FALSE(with(change("hard, falls-short: unfit"))->schema.has_value());
  CHECK_FALSE(with(change("hard, falls-short: care, action: look"))->schema.has_value());
  const auto made = with(change("soft, factor: 1.5"));
  REQUIRE_MESSAGE(made->schema.has_value(), made->messages());
  CHECK(made->ask("soft", "tantalum-capacitor", "", "rated-voltage: 16 V", "applied-voltage: 10 V").outcome ==
        Outcome::meets);
}

TEST_CASE("a loosened rule shows on every verdict that it takes part in, met or not") {
  const auto made = with(change("soft, factor: 1.5"));
  REQUIRE(made->schema.has_value());
  const Ratings ratings = made->ratings("tantalum-capacitor", "rated-voltage: 35 V");
  const Part part{"a", "a", made->schema->find_class("tantalum-capacitor"), &ratings};
  const Judgement judgement = judge(*made->schema, part, part, {"", "", made->stress("applied-voltage: 10 V")});
  CHECK(judgement.verdict == Verdict::suitable);
  REQUIRE(loosened_rules(judgement).size() == 1);
  CHECK(loosened_rules(judgement).front() ==
        "soft: loosened by this shop to factor 1.5 (measured here; the bench, 2026-05-01)");
  CHECK(to_json(judgement, part, part, {}).find("loosened by this shop") != std::string::npos);
}

TEST_CASE("loosening one role by tightening another is loosening") {
  CHECK_FALSE(with(change("hard, factor: {decoupling: 1, otherwise: 5}"))->schema.has_value());
}

TEST_CASE("a change that names no rule, changes nothing or gives no reason is refused") {
  CHECK_FALSE(with(change("hart, factor: 3"))->schema.has_value());
  CHECK(with(change("hart, factor: 3"))->messages().find("hard") != std::string::npos);
  CHECK_FALSE(with(change("hard"))->schema.has_value());
  CHECK_FALSE(with("changes:\n  - {rule: hard, factor: 3}\n")->schema.has_value());
}

TEST_CASE("the project's own schema changes no rules") {
  auto files = project;
  files["rules/zz.yaml"] = change("hard, factor: 3");
  CHECK_FALSE(test::made_schema(files)->schema.has_value());
}

TEST_CASE("a shop adds classes, rules and words, and cannot define a class or a rule again") {
  const auto made = test::made_schema(
      project, {{"classes/own.yaml", "classes:\n  - class: bead\n    title: Bead\n    plural: Beads\n"
                                     "    extends: tantalum-capacitor\n    meaning: an old bead\n"},
                {"rules/own.yaml", "rules:\n" + voltage_rule("own", "")},
                {"stresses.yaml", "stresses:\n  - {stress: own-stress, title: Own, unit: V, meaning: own}\n"}});
  REQUIRE_MESSAGE(made->schema.has_value(), made->messages());
  CHECK(made->schema->is_a("bead", "capacitor"));
  CHECK(made->schema->find_rule("own")->from_shop);
  CHECK(made->schema->stresses.contains("own-stress"));
  CHECK_FALSE(with("rules:\n" + voltage_rule("hard", ""))->schema.has_value());
  CHECK_FALSE(test::made_schema(project, {{"classes/own.yaml", "classes:\n  - class: bjt\n    title: T\n"
                                                               "    plural: T\n    meaning: again\n"}})
                  ->schema.has_value());
}

TEST_CASE("a shop's rule whose own examples come out otherwise stops the run") {
  std::string wrong = "rules:\n" + voltage_rule("own", "");
  wrong.replace(wrong.find("rated-voltage: 40 V"), 19, "rated-voltage: 14 V");
  const auto made = with(wrong);
  REQUIRE_MESSAGE(made->schema.has_value(), made->messages());
  Report report;
  CHECK_FALSE(run_shop_examples(*made->schema, report));
  CHECK(report.messages().front().text.find("`own`, example `passes`") != std::string::npos);
}

TEST_CASE("a shop takes no caution away and does not say how parts combine") {
  auto files = project;
  files["cautions.yaml"] = "cautions:\n  - {caution: heat, title: Heat, wording: it burns, source: maker}\n";
  CHECK(test::made_schema(files)->schema.has_value());
  CHECK_FALSE(
      test::made_schema(
          files, {{"cautions.yaml", "cautions:\n  - {caution: heat, title: Heat, wording: nothing, source: maker}\n"}})
          ->schema.has_value());
  CHECK_FALSE(test::made_schema(files, {{"combinations.yaml", "combinations: []\n"}})->schema.has_value());
}
