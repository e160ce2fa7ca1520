// Supply budgets. The currents are those of an invented machine; sums and limits are added up by hand beside them.
#include "bench/budget.h"

#include "bench_shop.h"

using namespace benchlore;
using doctest::Approx;

namespace {

// Board 5.0 A; four cards 1.0 A and 0.1 A; two floppy drives 0.5 A and 0.5 A (0.9 A); two disks 0.8 A and 0.9 A (2.2
// A).
std::string machine(const std::string& rails, const std::string& more = "") {
  return test::note("equipment",
                    "supply:\n  rails:\n" + rails +
                        "loads:\n"
                        "  - {module: board, rail: +5V, running: 5.0 A}\n"
                        "  - {module: cards, rail: +5V, running: 4.0 A}\n"
                        "  - {module: cards, rail: +12V, running: 0.4 A}\n"
                        "  - {module: floppies, rail: +5V, running: 1.0 A}\n"
                        "  - {module: floppy one, rail: +12V, running: 0.5 A, start-up: 0.9 A}\n"
                        "  - {module: floppy two, rail: +12V, running: 0.5 A, start-up: 0.9 A}\n"
                        "  - {module: disks, rail: +5V, running: 1.6 A}\n"
                        "  - {module: disk one, rail: +12V, running: 0.9 A, start-up: 2.2 A, component: disk}\n"
                        "  - {module: disk two, rail: +12V, running: 0.9 A, start-up: 2.2 A}\n" +
                        more);
}

const std::string wide =
    "    +5V: {voltage: 5 V, current: 15 A, minimum-load: 1 A}\n    +12V: {voltage: 12 V, current: 4.2 A}\n";

std::string disk(const std::string& ratings, const std::string& more = "") {
  return test::note("component", "class: hard-drive\nratings:\n  interface: st-506\n" + ratings + more);
}

std::unique_ptr<test::BenchShop> shop_with(const std::string& rails) {
  return std::make_unique<test::BenchShop>(std::map<std::string, std::string, std::less<>>{
      test::practice(),
      {"equipment/machine.md", machine(rails)},
      {"components/disk.md", disk("  start-current-12v: max 2.2 A\n", "substitutes:\n  - component: thirsty\n")},
      {"components/thirsty.md",
       disk("  running-current-5v: max 0.9 A\n  running-current-12v: max 1.8 A\n  start-current-12v: max 4.5 A\n")}});
}

const RailBudget& rail(const Budget& budget, const std::string& name) {
  for (const RailBudget& one : budget.rails) {
    if (one.rail == name) return one;
  }
  FAIL(name);
  return budget.rails.front();
}

bool has(const Budget& budget, BudgetTrouble trouble) {
  for (const BudgetFinding& finding : budget.findings) {
    if (finding.trouble == trouble) return true;
  }
  return false;
}

} // namespace

TEST_CASE("running and starting currents add up rail by rail") {
  const auto made = shop_with(wide);
  const auto budget = budget_of(made->shop, made->id("machine"));
  REQUIRE(budget.has_value());
  CHECK(rail(*budget, "+5V").running == Approx(11.6));
  CHECK(rail(*budget, "+12V").running == Approx(3.2));
  CHECK(rail(*budget, "+12V").starting == Approx(6.6));  // 0.4 + 2 x 0.9 + 2 x 2.2
  CHECK(rail(*budget, "+12V").staggered == Approx(4.5)); // 3.2 + 1.3
  CHECK(budget->running_power == Approx(11.6 * 5 + 3.2 * 12));
}

TEST_CASE("amperes of one rail decide where watts alone would have passed") {
  const auto made = shop_with(wide);
  const auto budget = budget_of(made->shop, made->id("machine"));
  CHECK(has(*budget, BudgetTrouble::starting_too_high));
  CHECK(budget->findings.front().text == "rail `+12V`: 6.6 A when starting of 4.2 A, 2.4 A too much");
  CHECK(budget->findings.front().unfit());
}

TEST_CASE("drives that start one after the other may do where they do not all at once") {
  const auto made =
      shop_with("    +5V: {voltage: 5 V, current: 15 A}\n    +12V: {voltage: 12 V, current: 4.2 A, peak: 5 A}\n");
  const auto budget = budget_of(made->shop, made->id("machine"));
  CHECK(has(*budget, BudgetTrouble::start_in_turn));
  CHECK_FALSE(has(*budget, BudgetTrouble::starting_too_high));
}

TEST_CASE("a rail below its least load asks for a dummy load that is worked out") {
  const auto made = shop_with(
      "    +5V: {voltage: 5 V, current: 15 A}\n    +12V: {voltage: 12 V, current: 9 A, minimum-load: 4.2 A}\n");
  const auto budget = budget_of(made->shop, made->id("machine"));
  REQUIRE(has(*budget, BudgetTrouble::load_too_low));
  CHECK(budget->findings.back().way_out ==
        "a dummy load of 12 Ω makes up for it; it gets hot"); // 12 V / (4.2 A - 3.2 A)
}

TEST_CASE("a rail above four fifths of its rating is tight") {
  const auto made = shop_with("    +5V: {voltage: 5 V, current: 14 A}\n    +12V: {voltage: 12 V, current: 9 A}\n");
  CHECK(has(*budget_of(made->shop, made->id("machine")), BudgetTrouble::little_to_spare));
}

TEST_CASE("a module that is exchanged takes its currents from its ratings, and what it does not state is said") {
  const auto made = shop_with("    +5V: {voltage: 5 V, current: 15 A}\n    +12V: {voltage: 12 V, current: 9 A}\n");
  const auto budget = budget_of(made->shop, made->id("machine"), {{"disk one", made->id("thirsty")}});
  CHECK(rail(*budget, "+12V").running == Approx(3.2 - 0.9 + 1.8));
  CHECK(rail(*budget, "+12V").starting == Approx(6.6 - 2.2 + 4.5));
  CHECK(rail(*budget, "+5V").running == Approx(11.6 + 0.9));
  CHECK(has(*budget_of(made->shop, made->id("machine"), {{"disk one", made->id("disk")}}),
            BudgetTrouble::load_not_stated));
}

TEST_CASE(
    "a declared substitute whose start current exceeds the reserve is an unfit finding with rail, sum and shortfall") {
  const auto made =
      shop_with("    +5V: {voltage: 5 V, current: 15 A}\n    +12V: {voltage: 12 V, current: 4.2 A, peak: 6.6 A}\n");
  report_budgets(made->shop, made->report);
  const Message* message = test::message_of(made->report, MessageKind::supply_overload);
  REQUIRE(message != nullptr);
  CHECK(message->verdict == "unfit");
  CHECK(message->text ==
        "`machine` with `thirsty` as disk one: rail `+12V`: 8.9 A when starting of 6.6 A, 2.3 A too much");
  CHECK(made->sources.text(message->span) == "thirsty");
}
