// Small shops in memory, linked: what resolves, what is reported, what is held back.
#include "link/shop.h"
#include "unit/notes/small_schema.h"

using namespace benchlore;
using namespace benchlore::test;

namespace {

MemoryFiles folder(const std::vector<std::pair<std::string, std::string>>& files) {
  MemoryFiles made;
  for (const auto& [path, text] : files) made.write("content/" + path, text);
  return made;
}

struct Linked {
  Sources sources;
  Report report;
  Shop shop;
  explicit Linked(const MemoryFiles& files) { shop = link_shop(files, "content", small_schema(), sources, report); }
  std::string_view marked(std::size_t at = 0) const { return sources.text(report.messages().at(at).span); }
  const std::string& way_out(std::size_t at = 0) const { return report.messages().at(at).way_out; }
};

std::string part(const std::string& more = "") {
  return "---\nkind: component\ntitle: Part\nclass: film-capacitor\nsources: [sheet]\n" + more + "---\n";
}

std::string page(const std::string& body) { return "---\nkind: page\ntitle: P\n---\n" + body; }

const std::string sheet = "---\nkind: source\ntitle: Sheet\n---\n";

} // namespace

TEST_CASE("fields and bodies are resolved, and the target knows who names it") {
  const Linked linked(folder({{"sheet.md", sheet},
                              {"parts/a.md", part("substitutes: [{component: b, roles: [smoothing], note: bend}]\n")},
                              {"parts/b.md", part() + "# Legs\n\nSee [a](a.md) and [here](#legs).\n"}}));
  CHECK(kinds_of(linked.report) == Kinds{});
  const NoteId a = *linked.shop.find("a"), b = *linked.shop.find("b");
  REQUIRE(linked.shop.backlinks[b.index].size() == 1);
  CHECK(linked.shop.backlinks[b.index][0].field == "substitutes.component");
  REQUIRE(linked.shop.backlinks[a.index].size() == 1);
  CHECK(linked.shop.backlinks[a.index][0].field.empty());
  REQUIRE(linked.shop.substitutes.at(a).size() == 1);
  CHECK(linked.shop.substitutes.at(a)[0].component == b);
  CHECK(linked.shop.substitutes.at(a)[0].roles == std::vector<std::string>{"smoothing"});
}

TEST_CASE("names that lead nowhere or to another kind are reported with near ones") {
  const Linked linked(
      folder({{"sheet.md", sheet}, {"film-1u.md", part()}, {"x.md", part("substitutes: [{component: film-1n}]\n")}}));
  CHECK(kinds_of(linked.report) == Kinds{"unresolved-reference"});
  CHECK(linked.marked() == "film-1n");
  CHECK(linked.way_out().find("film-1u") != std::string::npos);
  const Linked other(folder({{"sheet.md", sheet}, {"x.md", part("substitutes: [{component: sheet}]\n")}}));
  CHECK(kinds_of(other.report) == Kinds{"unresolved-reference"});
}

TEST_CASE("what names a broken note is held back") {
  const Linked linked(folder({{"sheet.md", sheet},
                              {"a.md", part("ratings: {capacitance: 10}\n")},
                              {"b.md", part("substitutes: [{component: a}]\n") + "[a](a.md#x)\n"},
                              {"stock.csv", "component,quantity,bin,from\na,1,,\n"}}));
  CHECK(kinds_of(linked.report) == Kinds{"bad-quantity"});
  CHECK(linked.shop.notes.size() == 3);
  CHECK_FALSE(linked.shop.find("a"));
  CHECK(linked.shop.find("b"));
}

TEST_CASE("an id that stands twice breaks the second note and shows the first") {
  const Linked linked(folder({{"a/x.md", page("")}, {"b/X.md", page("")}}));
  REQUIRE(kinds_of(linked.report) == Kinds{"duplicate-id"});
  CHECK(linked.report.messages()[0].labels.size() == 1);
  CHECK(linked.shop.notes.size() == 2);
  CHECK(linked.shop.notes[1].broken);
  CHECK(linked.shop.by_id.size() == 1);
}

TEST_CASE("each way in which a link can fail has its message, and marks the link") {
  struct Row {
    std::string link, kind;
  };
  const Row rows[] = {{"[a](other.md)", "broken-link"},
                      {"[a](There.md)", "link-case"},
                      {"[a](there.md#nowhere)", "missing-anchor"},
                      {"[a](../../x.md)", "link-outside"},
                      {"[a](/x.md)", "link-outside"},
                      {"![a](x.png)", "missing-image"},
                      {"[a](javascript:x)", "unsafe-link"},
                      {"![a](https://e.org/x.png)", "unsafe-link"},
                      {"![a](Pic.png)", "link-case"},
                      {"[a](%2e%2e/%2e%2e/x)", "link-outside"}};
  for (const Row& row : rows) {
    CAPTURE(row.link);
    const Linked linked(folder(
        {{"p/one.md", page("text\n  " + row.link + "\n")}, {"p/there.md", page("# Head\n")}, {"p/pic.png", "x"}}));
    CHECK(kinds_of(linked.report) == Kinds{row.kind});
    CHECK(linked.marked() == row.link);
  }
}

TEST_CASE("only files that sound notes link to are published") {
  const Linked linked(folder({{"p.md", page("![a](img/a.png) [b](b%20c.pdf) [s](stock.csv)\n")},
                              {"img/a.png", "x"},
                              {"b c.pdf", "x"},
                              {"secret.txt", "x"},
                              {"stock.csv", ""}}));
  CHECK(kinds_of(linked.report) == Kinds{});
  CHECK(linked.shop.attachments == std::vector<std::string>{"b c.pdf", "img/a.png"});
}

TEST_CASE("parts are found by marking, alias and number, however they are spaced") {
  const Linked linked(folder({{"sheet.md", sheet},
                              {"a.md", part("markings: ['104']\ncross-reference: [{house: X, number: 12-345}]\n")},
                              {"b.md", part("markings: ['104']\naliases: [MKT 100]\n")}}));
  CHECK(kinds_of(linked.report) == Kinds{});
  CHECK(linked.shop.named("104").size() == 2);
  CHECK(linked.shop.named("12 345") == std::vector<NoteId>{*linked.shop.find("a")});
  CHECK(linked.shop.named("mkt-100") == std::vector<NoteId>{*linked.shop.find("b")});
}

TEST_CASE("a shared number is ambiguous, and values under it may disagree") {
  const Linked linked(folder({{"sheet.md", sheet},
                              {"a.md", part("aliases: [K1]\nratings: {capacitance: 1 uF ±5%}\n")},
                              {"b.md", part("aliases: [k-1]\nratings: {capacitance: 2 uF ±5%}\n")}}));
  CHECK(kinds_of(linked.report) == Kinds{"ambiguous-name", "value-disagreement"});
}

TEST_CASE("a component without a source is noted") {
  const Linked linked(folder({{"a.md", "---\nkind: component\ntitle: A\nclass: film-capacitor\n---\n"}}));
  CHECK(kinds_of(linked.report) == Kinds{"source-missing"});
}

TEST_CASE("stock is read by RFC 4180, and a wrong line loses no other") {
  const Linked linked(
      folder({{"sheet.md", sheet},
              {"film.md", part()},
              {"stock.csv", "component,quantity,bin,from\r\nfilm,3,\"A, \"\"top\"\"\",lot\r\nfilm,x,,\r\nfilm,2\r\n"
                            "flim,1,,\r\nfilm,4,B,\"open\r\n"}}));
  CHECK(kinds_of(linked.report) == Kinds{"stock-row", "stock-row", "stock-row", "stock-row"});
  CHECK(linked.marked(0) == "x");
  CHECK(linked.marked(2) == "flim");
  REQUIRE(linked.shop.stock.size() == 1);
  CHECK(linked.shop.stock[0].bin == "A, \"top\"");
  CHECK(linked.shop.in_stock(*linked.shop.find("film")) == 3);
  const Linked headless(folder({{"stock.csv", "film,3,,\n"}}));
  CHECK(kinds_of(headless.report) == Kinds{"stock-row"});
}

TEST_CASE("shop.yaml gives the shop's facts and refuses other keys") {
  const Linked linked(folder(
      {{"shop.yaml", "name: Bench\nmains: {voltage: 230 V, frequency: 50 Hz}\nmeters: [{name: DMM, accuracy: 0.5%}]\n"
                     "wording: Mind.\ncolour: red\n"}}));
  CHECK(kinds_of(linked.report) == Kinds{"unknown-field"});
  CHECK(linked.shop.facts.mains_voltage == "230 V");
  CHECK(linked.shop.facts.meters.size() == 1);
}

TEST_CASE("files of the shop's own schema are no notes") {
  CHECK(Linked(folder({{"schema/README.md", "x"}, {"schema/kinds/a.yaml", "x"}})).shop.notes.empty());
}
