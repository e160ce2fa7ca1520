// The recap list of a machine, and the record of a data rescue.
#include "bench/parts_list.h"
#include "bench/rescue.h"

#include "bench_shop.h"

using namespace benchlore;

namespace {

std::string electrolytic(const std::string& voltage, const std::string& more = "") {
  return test::note("component", "class: aluminium-electrolytic\nratings: {capacitance: 100 uF ±20%, rated-voltage: " +
                                     voltage + ", temperature: -40..105 °C, lead-spacing: 5 mm}\n" + more);
}

std::unique_ptr<test::BenchShop> machine() {
  return std::make_unique<test::BenchShop>(std::map<std::string, std::string, std::less<>>{
      test::practice(),
      {"components/old.md", electrolytic("16 V", "failure-modes:\n  - {mode: dried out, likelihood: usual}\n  - {mode: "
                                                 "\"leaks, badly\", likelihood: rare}\n")},
      {"components/new.md", electrolytic("25 V")},
      {"components/low.md", electrolytic("6.3 V")},
      {"components/resistor.md", test::note("component", "class: film-resistor\nratings: {resistance: 1 kohm ±5%}\n")},
      {"boards/main.md",
       test::note(
           "board",
           "positions:\n  C1: {component: old, role: decoupling, stress: {applied-voltage: 5 V}}\n"
           "  C2: {component: old, role: decoupling, stress: {applied-voltage: 12 V}}\n  R1: {component: resistor}\n")},
      {"equipment/machine.md", test::note("equipment", "boards: [main]\n")},
      {"stock.csv", "component,quantity,bin,from\nnew,1,C2,\nold,4,C9,\n"}});
}

std::string job(const std::string& fields) {
  return test::note("job", "equipment: machine\nreceived: 2026-01-05\n" + fields);
}

std::unique_ptr<test::BenchShop> rescue_shop(const std::string& fields) {
  return std::make_unique<test::BenchShop>(std::map<std::string, std::string, std::less<>>{
      test::practice(),
      {"equipment/machine.md", test::note("equipment", "maker: None\n")},
      {"jobs/job.md", job(fields)},
      {"components/disk.md",
       test::note("component", "class: hard-drive\nratings: {interface: st-506, cylinders: 615}\n")}});
}

} // namespace

TEST_CASE("positions are grouped by component, and the count is that of the boards") {
  const auto made = machine();
  const auto lines = parts_list(made->shop, made->id("machine"), "");
  REQUIRE(lines.size() == 2);
  CHECK(lines[0].positions.size() + lines[1].positions.size() == 3);
  CHECK(lines[0].risk == "dried out (usual)");
}

TEST_CASE("what is chosen is usable at every one of the positions, and what is missing is counted") {
  const auto made = machine();
  const auto lines = parts_list(made->shop, made->id("machine"), "capacitor");
  REQUIRE(lines.size() == 1);
  REQUIRE(lines[0].chosen.has_value());
  CHECK(made->shop.note(*lines[0].chosen).id == "new"); // the 6.3 V part does at C1 and not at C2
  CHECK(lines[0].verdict == Verdict::suitable);
  CHECK(lines[0].in_stock == 1);
  CHECK(lines[0].bin == "C2");
  CHECK(lines[0].to_order == 1);
}

TEST_CASE("comma-separated values are quoted, and none can be taken for a formula") {
  const auto made = machine();
  auto lines = parts_list(made->shop, made->id("machine"), "capacitor");
  lines[0].risk = "=1+1, \"quoted\"";
  const std::string csv = parts_csv(made->shop, lines);
  CHECK(csv.starts_with("component,title,class,count,positions,risk,substitute,verdict,in stock,bin,to order\r\n"));
  CHECK(csv.find("\"'=1+1, \"\"quoted\"\"\"") != std::string::npos);
}

TEST_CASE("a rescue is summed up, and what no range names is not yet tried") {
  const auto made =
      rescue_shop("rescue:\n  sectors: 720\n  hash: abc\n  ranges:\n    - {from: 0, sectors: 240, state: read}\n"
                  "    - {from: 240, sectors: 2, state: unreadable}\n    - {from: 300, sectors: 100, state: read}\n");
  const auto rescue = rescue_of(made->shop, made->id("job"));
  REQUIRE(rescue.has_value());
  CHECK(rescue->read == 340);
  CHECK(rescue->unreadable == 2);
  CHECK(rescue->untried == 378);
  CHECK(rescue->faults.empty());
}

TEST_CASE("three bad sectors of a double-sided disk of 720 leave 99.583 % read") { // (720 - 3) / 720
  const auto made =
      rescue_shop("rescue:\n  sectors: 720\n  ranges:\n    - {from: 0, sectors: 240, state: read}\n    - {from: 240, "
                  "sectors: 2, state: unreadable}\n"
                  "    - {from: 242, sectors: 477, state: read}\n    - {from: 719, sectors: 1, state: unreadable}\n");
  const auto rescue = rescue_of(made->shop, made->id("job"));
  CHECK(100.0 * static_cast<double>(rescue->read) / static_cast<double>(rescue->total) ==
        doctest::Approx(99.583).epsilon(0.00001));
}

TEST_CASE("overlaps and ranges beyond the end of the medium are found") {
  const auto made = rescue_shop("rescue:\n  sectors: 100\n  ranges:\n    - {from: 0, sectors: 60, state: read}\n    - "
                                "{from: 50, sectors: 80, state: unreadable}\n");
  const auto rescue = rescue_of(made->shop, made->id("job"));
  REQUIRE(rescue->faults.size() == 2);
  CHECK(rescue->faults[0] == "the range 50 to 129 overlaps the one before it");
  CHECK(rescue->read + rescue->unreadable + rescue->untried == 100);
}

TEST_CASE("a job that mends or exchanges a drive before its copy is noted gets a finding") {
  auto reported = [](const std::string& fields) {
    const auto made = rescue_shop(fields);
    report_rescues(made->shop, made->report);
    return test::message_of(made->report, MessageKind::rescue_missing) != nullptr;
  };
  const std::string work = "fitted:\n  - {component: disk, in-place-of: disk}\n";
  CHECK(reported(work));
  CHECK(reported(work + "rescue: {sectors: 100}\n"));
  CHECK_FALSE(
      reported(work + "rescue:\n  sectors: 100\n  hash: abc\n  ranges:\n    - {from: 0, sectors: 100, state: read}\n"));
  CHECK_FALSE(reported(""));
}
