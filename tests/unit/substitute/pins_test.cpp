// Lead orders as permutations, and pinouts pin by pin. The pinouts are those of the JEDEC byte-wide memories
// (JESD21-C).
#include "made_schema.h"

using namespace benchlore;

namespace {

const std::map<std::string, std::string> files = {
    {"classes/parts.yaml",
     "classes:\n  - class: part\n    title: Part\n    plural: Parts\n    meaning: has leads\n    ratings:\n"
     "      lead-order: {title: Leads, words: any, meaning: order}\n"
     "      lead-view: {title: View, words: [front-leads-down, back-leads-down, leads-towards-you], meaning: view}\n"
     "      pinout: {title: Pinout, words: any, meaning: pins}\n"},
    {"rules/rules.yaml",
     "rules:\n"
     "  - rule: order\n    form: leads\n    rating: lead-order\n    from: [part]\n    falls-short: care\n"
     "    action: cross the leads\n    because: each hole is made for one lead\n    source: maker\n    examples:\n"
     "      - passes: {original: {lead-order: EBC}}\n      - fails: {original: {lead-order: EBC}}\n"
     "      - lacks: {original: {lead-order: EBC}}\n"
     "  - rule: pinout\n    form: pins\n    rating: pinout\n    from: [part]\n    table: {VCC: [VDD], NC: [N2]}\n"
     "    falls-short: unfit\n    because: each pin meets its own track\n    source: maker\n    examples:\n"
     "      - passes: {original: {lead-order: EBC}}\n      - fails: {original: {lead-order: EBC}}\n"
     "      - lacks: {original: {lead-order: EBC}}\n"
     "  - rule: extra-pins\n    form: pins\n    rating: pinout\n    from: [part]\n    looks-for: extra\n"
     "    table: {NC: [N2]}\n    falls-short: care\n    action: tie the pin\n    because: an open input floats\n"
     "    source: maker\n    examples:\n"
     "      - passes: {original: {lead-order: EBC}}\n      - fails: {original: {lead-order: EBC}}\n"
     "      - lacks: {original: {lead-order: EBC}}\n"}};

test::Made& made() {
  static const auto schema = test::made_schema(files);
  REQUIRE_MESSAGE(schema->schema.has_value(), schema->messages());
  return *schema;
}

Reason leads(const std::string& original, const std::string& substitute) {
  return made().ask("order", "part", original, substitute);
}

constexpr const char* ebc = "lead-order: EBC\nlead-view: front-leads-down\n";

} // namespace

TEST_CASE("the same order in the same view needs nothing done") { CHECK(leads(ebc, ebc).outcome == Outcome::meets); }

TEST_CASE("an order seen from the back is the mirror image of the one seen from the front") {
  CHECK(leads(ebc, "lead-order: CBE\nlead-view: back-leads-down\n").outcome == Outcome::meets);
  CHECK(leads(ebc, "lead-order: EBC\nlead-view: back-leads-down\n").outcome == Outcome::differs);
}

TEST_CASE("a reversed order is said to fit when the part is turned round") {
  const Reason reason = leads(ebc, "lead-order: CBE\nlead-view: front-leads-down\n");
  CHECK(reason.verdict == Verdict::conditional);
  CHECK(reason.working == "hole 1 (E) takes lead 3, hole 2 (B) takes lead 2, hole 3 (C) takes lead 1; turned round, "
                          "every lead falls into its own hole");
}

TEST_CASE("the leads to cross are named when turning does not help") {
  CHECK(leads(ebc, "lead-order: ECB\nlead-view: front-leads-down\n").working ==
        "hole 1 (E) takes lead 1, hole 2 (B) takes lead 3, hole 3 (C) takes lead 2");
}

TEST_CASE("leads of another kind of part are not crossed but named") {
  const Reason reason = leads(ebc, "lead-order: [G, D, S]\nlead-view: front-leads-down\n");
  CHECK(reason.working == "the leads are not the same: G D S where the board has E B C");
}

TEST_CASE("an order without its view, or in a view that cannot be converted, is not known") {
  CHECK(leads(ebc, "lead-order: EBC\n").outcome == Outcome::not_stated);
  CHECK(leads(ebc, "lead-order: EBC\nlead-view: leads-towards-you\n").outcome == Outcome::not_stated);
}

TEST_CASE("pins that carry equal functions under other names are the same") {
  CHECK(made().ask("pinout", "part", "pinout: [A0, VCC, NC]", "pinout: [A0, VDD, NC]").outcome == Outcome::meets);
}

TEST_CASE("a function that sits on another pin is named with both pins") {
  // 27C256 and 28C256: A14 is pin 27 of the one and pin 1 of the other, where the EEPROM takes its write enable.
  const Reason reason = made().ask("pinout", "part", "pinout: [VPP, A12, A14]", "pinout: [A14, A12, WE]");
  CHECK(reason.verdict == Verdict::unfit);
  CHECK(reason.working ==
        "pin 1 is A14 instead of VPP (in conflict); pin 3 is WE instead of A14 (A14 has moved to pin 1)");
}

TEST_CASE("a function that the substitute has lost is named") {
  CHECK(made().ask("pinout", "part", "pinout: [A0, A1]", "pinout: [A0, NC]").working ==
        "pin 2 is unconnected instead of A1 (lost)");
}

TEST_CASE("a function on a pin that was unconnected is extra, and no conflict") {
  // 4164 and 41256: pin 1 of the smaller one is unconnected, of the larger one it is A8.
  CHECK(made().ask("pinout", "part", "pinout: [NC, DIN]", "pinout: [A8, DIN]").outcome == Outcome::meets);
  const Reason extra = made().ask("extra-pins", "part", "pinout: [NC, DIN]", "pinout: [A8, DIN]");
  CHECK(extra.verdict == Verdict::conditional);
  CHECK(extra.working == "pin 1 is A8 instead of unconnected");
  CHECK(made().ask("extra-pins", "part", "pinout: [NC, DIN]", "pinout: [N2, DIN]").outcome == Outcome::meets);
}

TEST_CASE("another number of pins does not fit") {
  const Reason reason = made().ask("pinout", "part", "pinout: [A0, A1]", "pinout: [A0, A1, A2]");
  CHECK(reason.verdict == Verdict::unfit);
  CHECK(reason.working == "3 pins where the original has 2");
}

TEST_CASE("a pinout that one side does not state is not known") {
  CHECK(made().ask("pinout", "part", "pinout: [A0]", "lead-order: E").outcome == Outcome::not_stated);
}
