// Measurements of jobs; the ruling is guarded acceptance as in ISO 14253-1.
#include "bench/measurements.h"

#include "bench_shop.h"

using namespace benchlore;
using doctest::Approx;

namespace {

std::unique_ptr<test::BenchShop> shop_with(const std::string& measurements, const std::string& body = "Text.\n",
                                           const std::string& more = "") {
  return std::make_unique<test::BenchShop>(std::map<std::string, std::string, std::less<>>{
      test::practice(),
      {"components/c100.md",
       test::note("component",
                  "class: aluminium-electrolytic\nratings: {capacitance: 100 uF ±20%, rated-voltage: 25 V}\n")},
      {"boards/main.md", test::note("board", "positions:\n  C1: {component: c100, role: decoupling}\n")},
      {"equipment/machine.md",
       test::note("equipment", "boards: [main]\nsupply:\n  rails:\n    +5V: {voltage: 5 V ±5%, current: 2 A}\n")},
      {"jobs/job.md", test::note("job",
                                 "equipment: machine\nreceived: 2026-01-05\n" +
                                     (measurements.empty() ? "" : "measurements:\n" + measurements) + more,
                                 body)}});
}

JudgedMeasurement only(const test::BenchShop& made) {
  const auto all = judge_measurements(made.shop, made.id("job"));
  REQUIRE(all.size() == 1);
  return all.front();
}

Ruling ruling(const std::string& value) {
  const auto judged = only(*shop_with("  - {what: C1, board: main, position: C1, value: " + value + ", meter: lcr}\n"));
  REQUIRE_MESSAGE(judged.ruling.has_value(), judged.why_not);
  return *judged.ruling;
}

} // namespace

TEST_CASE("a part at a position is held against its own value and tolerance") {
  CHECK(ruling("84.0 uF") == Ruling::accept);    // 84.0 - 1.34 is above 80
  CHECK(ruling("80.9 uF") == Ruling::undecided); // 80.9 ± 1.31
  CHECK(ruling("77.0 uF") == Ruling::reject);    // 77.0 + 1.27 is below 80
}

TEST_CASE("a rail is held against its own window, and stated limits against themselves") {
  const auto rail = only(*shop_with("  - {what: rail, rail: +5V, value: 5.02 V, meter: dmm}\n"));
  CHECK(rail.ruling == Ruling::accept);
  CHECK(rail.working == "5.02 V ± 45.1 mV"); // 0.5 % + 2 counts
  CHECK(only(*shop_with("  - {what: rail, rail: +5V, value: 4.76 V, meter: dmm}\n")).ruling == Ruling::undecided);
  CHECK(only(*shop_with("  - {what: rail, rail: +5V, value: 4.69 V, meter: dmm}\n")).ruling == Ruling::reject);
  CHECK(only(*shop_with("  - {what: leak, limits: max 25 uA, value: 26.2 uA, meter: dmm}\n")).ruling == Ruling::reject);
}

TEST_CASE("an undecided measurement says what would decide it") {
  CHECK(only(*shop_with("  - {what: C1, board: main, position: C1, value: 80.9 uF, meter: lcr}\n")).decides ==
        "a meter that is right within 900 nF");
}

TEST_CASE("without a meter, or with one that the shop does not have, nothing is ruled") {
  CHECK(only(*shop_with("  - {what: C1, board: main, position: C1, value: 84 uF}\n")).why_not.starts_with("no meter"));
  CHECK(
      only(*shop_with("  - {what: C1, board: main, position: C1, value: 84 uF, meter: new}\n")).why_not.find("`new`") !=
      std::string::npos);
  CHECK(only(*shop_with("  - {what: odd, value: 84 uF, meter: lcr}\n")).why_not.empty()); // no limits at all
}

TEST_CASE("rows of a measurements block in the body are judged as well") {
  const auto made = shop_with(
      "", "```measurements\nwhat    limit            reading   meter\n+5 V    4.75..5.25 V     5.04 V    dmm\n"
          "+5 V hot    4.75..5.25 V     4.60 V    dmm\n```\n");
  const auto all = judge_measurements(made->shop, made->id("job"));
  REQUIRE(all.size() == 2);
  CHECK(all[0].ruling == Ruling::accept);
  CHECK(all[1].ruling == Ruling::reject);
  CHECK(made->sources.text(all[1].span).starts_with("+5 V hot"));
}

TEST_CASE("a rejected measurement is reported until a part is put in there or a later one is accepted") {
  const std::string bad = "  - {what: C1, board: main, position: C1, value: 40 uF, meter: lcr}\n";
  auto reported = [](test::BenchShop& made) {
    report_measurements(made.shop, made.report);
    return test::message_of(made.report, MessageKind::measurement_rejected) != nullptr;
  };
  CHECK(reported(*shop_with(bad)));
  CHECK_FALSE(reported(*shop_with(bad + "  - {what: C1, board: main, position: C1, value: 101 uF, meter: lcr}\n")));
  CHECK_FALSE(reported(*shop_with(bad, "Text.\n", "fitted:\n  - {board: main, position: C1, component: c100}\n")));
}

TEST_CASE("the last digit of a reading is what its meter resolves") {
  CHECK(*last_digit("5.04 V", dimension::voltage) == Approx(0.01));
  CHECK(*last_digit("101 uF", dimension::capacitance) == Approx(1e-6));
  CHECK(*last_digit("-12.1 V", dimension::voltage) == Approx(0.1));
  CHECK_FALSE(last_digit("much", dimension::voltage).has_value());
}

TEST_CASE("an accuracy is a share and counts") {
  CHECK(read_accuracy("0.5% + 2")->counts == 2);
  CHECK(read_accuracy("±1 % + 5 digits")->share == Approx(0.01));
  CHECK(read_accuracy("2%")->counts == 0);
  CHECK_FALSE(read_accuracy("good").has_value());
  CHECK_FALSE(read_accuracy("-1%").has_value());
}
