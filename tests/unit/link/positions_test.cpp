// Positions of boards, and the cautions that follow from them.
#include "link/shop.h"
#include "unit/notes/small_schema.h"

using namespace benchlore;
using namespace benchlore::test;

namespace {

struct Bench {
  Sources sources;
  Report report;
  Shop shop;
  Bench() {
    const MemoryFiles files({
        {"sheet.md", "---\nkind: source\ntitle: S\n---\n"},
        {"x2.md", "---\nkind: component\ntitle: X2\nclass: safety-capacitor\nsources: sheet\n---\n"},
        {"main.md", "---\nkind: board\ntitle: Main\npositions:\n  C1: {component: x2, role: mains, polarity: none}\n"
                    "  C2: {stress: {applied-voltage: 12 kV}}\n---\n"},
        {"small.md", "---\nkind: board\ntitle: Small\npositions: {R1: {stress: {applied-voltage: 5 V}}}\n---\n"},
        {"set.md", "---\nkind: equipment\ntitle: Set\nboards: [main, small]\n---\n"},
        {"dead.md", "---\nkind: symptom\ntitle: Dead\n---\n"},
        {"fault.md", "---\nkind: fault\ntitle: F\nequipment: [set]\nsymptoms: [{symptom: dead}]\n"
                     "cause: {board: main, position: C1, component: x2}\n---\n"},
        {"clean.md", "---\nkind: procedure\ntitle: C\ntags: [cleaning]\nsteps: [{do: wipe, cautions: [mains]}]\n---\n"},
    });
    shop = link_shop(files, "", small_schema(), sources, report);
  }
  std::vector<std::string> cautions(std::string_view id) const {
    std::vector<std::string> names;
    for (const Caution* caution : cautions_for(shop, *shop.find(id))) names.push_back(caution->name);
    return names;
  }
};

} // namespace

TEST_CASE("positions are typed and found by board, part and designator") {
  const Bench bench;
  CHECK(kinds_of(bench.report) == Kinds{});
  const Position* position = bench.shop.position("main", "C1");
  REQUIRE(position != nullptr);
  CHECK(position->name(bench.shop) == "main:C1");
  CHECK(position->component == *bench.shop.find("x2"));
  CHECK(bench.shop.positions_of(position->component).size() == 1);
  CHECK(bench.shop.positions_on(*bench.shop.find("main")).size() == 2);
  CHECK(bench.shop.where(*bench.shop.position("main", "C2")).stress.contains("applied-voltage"));
  CHECK(bench.shop.position("main", "C9") == nullptr);
  CHECK_FALSE(bench.shop.position("main", "C2")->component.known());
}

TEST_CASE("cautions follow from classes, roles, tags, fields and thresholds") {
  const Bench bench;
  using Names = std::vector<std::string>;
  CHECK(bench.cautions("x2") == Names{"charged", "mains"});
  CHECK(bench.cautions("main") == Names{"charged", "eht", "mains"});
  CHECK(bench.cautions("small") == Names{});
  CHECK(bench.cautions("set") == Names{"charged", "eht", "mains"});
  CHECK(bench.cautions("fault") == Names{"charged", "mains"});
  CHECK(bench.cautions("clean") == Names{"mains", "solvent"});
  CHECK(bench.cautions("dead") == Names{});
}
