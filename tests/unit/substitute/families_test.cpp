// Families and makers. Levels and currents are those of the data sheets named in schema/logic-families.yaml's sources:
// 74LS of SDLS025, 74HC at 4.5 V of the HCMOS family characteristics.
#include "made_schema.h"

using namespace benchlore;

namespace {

const std::map<std::string, std::string> files = {
    {"classes/parts.yaml",
     "classes:\n  - class: gate\n    title: Gate\n    plural: Gates\n    meaning: a gate\n    ratings:\n"
     "      family: {title: Family, words: any, meaning: family}\n"
     "      delay: {title: Delay, unit: s, meaning: how slow}\n"
     "      input-high-voltage: {title: VIH, unit: V, meaning: high}\n"
     "      input-low-voltage: {title: VIL, unit: V, meaning: low}\n"
     "      output-high-voltage: {title: VOH, unit: V, meaning: high}\n"
     "      output-low-voltage: {title: VOL, unit: V, meaning: low}\n"
     "      input-high-current: {title: IIH, unit: A, meaning: high}\n"
     "      input-low-current: {title: IIL, unit: A, meaning: low}\n"
     "      output-high-current: {title: IOH, unit: A, meaning: high}\n"
     "      output-low-current: {title: IOL, unit: A, meaning: low}\n"},
    {"stresses.yaml", "stresses:\n  - {stress: driven-by, title: Driven by, words: any, meaning: families}\n"
                      "  - {stress: drives, title: Drives, words: any, meaning: families}\n"
                      "  - {stress: sink-current, title: Sink, unit: A, meaning: more}\n"
                      "  - {stress: applied-voltage, title: Applied, unit: V, meaning: how high}\n"},
    {"logic-families.yaml",
     "families:\n"
     "  - family: 74LS\n    title: Low-power Schottky\n    source: maker\n    ratings: {input-high-voltage: min 2.0 V, "
     "input-low-voltage: max 0.8 V, output-high-voltage: min 2.7 V, output-low-voltage: max 0.5 V, input-high-current: "
     "max 20 uA, input-low-current: max 0.4 mA, output-high-current: 0.4 mA, output-low-current: 8 mA}\n"
     "  - family: 74HC\n    title: High-speed CMOS\n    source: maker\n    ratings: {input-high-voltage: min 3.15 V, "
     "input-low-voltage: max 1.35 V, output-high-voltage: min 3.84 V, output-low-voltage: max 0.33 V, "
     "input-high-current: max 1 uA, input-low-current: max 1 uA, output-high-current: 4 mA, output-low-current: 4 "
     "mA}\n"},
    {"rules/rules.yaml",
     "rules:\n"
     "  - rule: margin\n    form: computed\n    computation: noise-margin\n    from: [gate]\n"
     "    parameters: {least-high: 0.4 V, least-low: 0.3 V}\n    falls-short: unfit\n    because: levels\n"
     "    source: maker\n    examples: [{passes: {}}, {fails: {}}, {lacks: {}}]\n"
     "  - rule: load\n    form: computed\n    computation: fan-out\n    from: [gate]\n    falls-short: unfit\n"
     "    because: currents\n    source: maker\n    examples: [{passes: {}}, {fails: {}}, {lacks: {}}]\n"
     "  - rule: low-current\n    form: at-least\n    rating: output-low-current\n    from: [gate]\n"
     "    falls-short: unfit\n    because: currents\n    source: maker\n"
     "    examples: [{passes: {}}, {fails: {}}, {lacks: {}}]\n"
     "  - rule: speed\n    form: at-most\n    rating: delay\n    from: [gate]\n    falls-short: unfit\n"
     "    because: time\n    source: maker\n    examples: [{passes: {}}, {fails: {}}, {lacks: {}}]\n"
     "  - rule: equal-speed\n    form: same\n    rating: delay\n    from: [gate]\n    falls-short: unfit\n"
     "    because: time\n    source: maker\n    examples: [{passes: {}}, {fails: {}}, {lacks: {}}]\n"}};

test::Made& made() {
  static const auto schema = test::made_schema(files);
  REQUIRE_MESSAGE(schema->schema.has_value(), schema->messages());
  return *schema;
}

Reason ask(const std::string& rule, const std::string& substitute, const std::string& stress) {
  return made().ask(rule, "gate", "", substitute, stress);
}

} // namespace

TEST_CASE("a part takes from its family what it does not state itself") {
  const Reason reason = made().ask("low-current", "gate", "family: 74HC", "family: 74LS");
  CHECK(reason.outcome == Outcome::meets);
  CHECK(reason.substitute == "8 mA");
  CHECK(made().ask("low-current", "gate", "family: 74HC", "family: 74LS\noutput-low-current: 3 mA").outcome ==
        Outcome::falls_short);
  CHECK(made().ask("low-current", "gate", "family: 74HC", "family: 74XX").outcome == Outcome::not_stated);
}

TEST_CASE("an LS output does not reach the high threshold of an HC input") {
  const Reason reason = ask("margin", "family: 74HC", "driven-by: 74LS");
  CHECK(reason.verdict == Verdict::unfit);
  CHECK(reason.working == "from 74LS: high 2.7 V − 3.15 V = -450 mV, low 1.35 V − 500 mV = 850 mV");
  CHECK(ask("margin", "family: 74LS", "driven-by: 74HC").outcome == Outcome::meets);
  CHECK(ask("margin", "family: 74LS", "driven-by: [74LS, 74HC]\ndrives: 74LS x3").outcome == Outcome::meets);
}

TEST_CASE("an LS output carries twenty LS inputs and not one more") {
  CHECK(ask("load", "family: 74LS", "drives: 74LS x20").outcome == Outcome::meets);
  CHECK(ask("load", "family: 74LS", "drives: 74LS x21").outcome == Outcome::falls_short);
  CHECK(ask("load", "family: 74LS", "drives: [74LS x10, 74LS x10]\nsink-current: 1 mA").outcome ==
        Outcome::falls_short);
  CHECK(ask("load", "family: 74HC", "drives: 74LS x10").outcome == Outcome::meets);
  CHECK(ask("load", "family: 74HC", "drives: 74LS x11").outcome == Outcome::falls_short);
}

TEST_CASE("a neighbour of an unknown family, or a place that names none, leaves the margin unknown") {
  CHECK(ask("margin", "family: 74HC", "driven-by: 74XX").outcome == Outcome::not_stated);
  CHECK(ask("margin", "family: 74HC", "driven-by: 74LS x0").outcome == Outcome::not_stated);
  CHECK(ask("margin", "family: 74HC", "").outcome == Outcome::not_stated);
  CHECK(ask("load", "family: 74HC", "").outcome == Outcome::not_stated);
}

TEST_CASE("where makers differ the worst counts on each side") {
  const std::string differ = "delay: {makers: {one: max 10 ns, other: max 15 ns}}";
  CHECK(made().ask("speed", "gate", "delay: max 12 ns", differ).outcome == Outcome::falls_short);
  CHECK(made().ask("speed", "gate", "delay: max 15 ns", differ).outcome == Outcome::meets);
  CHECK(made().ask("speed", "gate", differ, "delay: max 12 ns").outcome == Outcome::falls_short);
  CHECK(made().ask("speed", "gate", differ, "delay: max 10 ns").outcome == Outcome::meets);
  CHECK(made().ask("equal-speed", "gate", differ, "delay: max 15 ns").outcome == Outcome::not_stated);
}
