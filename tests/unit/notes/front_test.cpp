// Front matter: where it lies, fields by kind, each type's faults at their place.
#include "unit/notes/small_schema.h"

using namespace benchlore;
using namespace benchlore::test;

namespace {

std::string component(const std::string& more, const std::string& body = "") {
  return "---\nkind: component\ntitle: Part\nclass: film-capacitor\n" + more + "---\n" + body;
}

} // namespace

TEST_CASE("a component is read with its ratings, references and tags") {
  const ReadNote read(
      component("ratings:\n  capacitance: 100 nF ±10%\n  rated-voltage: {value: 63 V, source: sheet}\n"
                "tags: [film, box]\nsources: [sheet]\nsubstitutes:\n  - component: other\n    roles: smoothing\n"));
  CHECK(kinds_of(read.report) == Kinds{});
  CHECK_FALSE(read.note.broken);
  CHECK(read.note.id == "one");
  CHECK(read.note.class_name == "film-capacitor");
  CHECK(read.note.ratings.size() == 2);
  CHECK(read.note.tags == std::vector<std::string>{"film", "box"});
  REQUIRE(read.note.references.size() == 3);
  CHECK(read.note.references[0].field == "ratings.source");
  CHECK(read.note.references[2].field == "substitutes.component");
  CHECK(read.sources.text(read.note.references[2].span) == "other");
}

TEST_CASE("a byte order mark and CRLF line ends are no fault") {
  const ReadNote read("\xEF\xBB\xBF---\r\nkind: page\r\ntitle: Start\r\n---\r\n# Hello\r\n");
  CHECK(kinds_of(read.report) == Kinds{});
  CHECK(read.note.title == "Start");
  CHECK(read.sources.text(read.note.body_span) == "# Hello\r\n");
}

TEST_CASE("faults of front matter are reported at the narrowest place") {
  struct Row {
    std::string more, kind, marked;
  };
  const Row rows[] = {
      {"ratngs: {}\n", "unknown-field", "ratngs"},
      {"ratings: {capacitence: 1 uF}\n", "unknown-rating", "capacitence"},
      {"ratings: {capacitance: 10}\n", "bad-quantity", "10"},
      {"price:\n", "wrong-type", ""},
      {"markings: {a: b}\n", "wrong-type", "{a: b}"},
      {"availability: currant\n", "unknown-word", "currant"},
      {"substitutes: [{roles: [smoothing]}]\n", "missing-field", "{roles: [smoothing]}"},
      {"substitutes: [{component: x, roles: [smothing]}]\n", "unknown-word", "smothing"},
      {"cautions: [mians]\n", "unknown-word", "mians"},
      {"accepts: [{finding: x, reason: y, by: z, date: 2024-02-30}]\n", "wrong-type", "2024-02-30"},
  };
  for (const Row& row : rows) {
    CAPTURE(row.more);
    const ReadNote read(component(row.more));
    CHECK(kinds_of(read.report) == Kinds{row.kind});
    CHECK(read.marked() == row.marked);
    CHECK(read.note.broken);
    CHECK(read.report.messages().front().subject == "one");
  }
}

TEST_CASE("a note without sound front matter says so once") {
  CHECK(kinds_of(ReadNote("# Hello\n").report) == Kinds{"front-matter-missing"});
  CHECK(kinds_of(ReadNote("").report) == Kinds{"front-matter-missing"});
  CHECK(kinds_of(ReadNote("---\nkind: page\n").report) == Kinds{"front-matter-missing"});
  CHECK(kinds_of(ReadNote("---\nkind: pgae\ntitle: x\nfoo: 1\n---\n").report) == Kinds{"unknown-kind"});
  CHECK(kinds_of(ReadNote("---\ntitle: x\n---\n").report) == Kinds{"missing-field"});
  CHECK(kinds_of(ReadNote("---\nkind: page\n---\n").report) == Kinds{"missing-field"});
  CHECK(kinds_of(ReadNote("---\nkind: component\ntitle: x\nclass: film\nratings: {a: 1}\n---\n").report) ==
        Kinds{"unknown-class"});
  CHECK(kinds_of(ReadNote("---\nkind: component\ntitle: x\nclass: capacitor\n---\n").report) == Kinds{"unknown-class"});
}

TEST_CASE("positions of a board are read by free keys, with their stresses") {
  const ReadNote read(
      "---\nkind: board\ntitle: Main\npositions:\n  C1: {component: a, role: mains, stress: {applied-voltage: 230 V}}\n"
      "  C2: {component: b, stress: {aplied: 1 V}}\n---\n");
  CHECK(kinds_of(read.report) == Kinds{"unknown-word"});
  REQUIRE(read.note.references.size() == 2);
  CHECK(read.note.references[1].field == "positions.component");
}

TEST_CASE("counts, flags and dates are strict") {
  const std::string job = "---\nkind: job\ntitle: J\nequipment: e\nreceived: ";
  CHECK(kinds_of(ReadNote(job + "2024-02-29\nminutes: 90\ncome-back: no\n---\n").report) == Kinds{});
  CHECK(kinds_of(ReadNote(job + "29.2.2024\nminutes: 1h\ncome-back: maybe\n---\n").report) ==
        Kinds{"wrong-type", "wrong-type", "wrong-type"});
}

TEST_CASE("a pinout is a rating in the order of its pins") {
  const ReadNote read(component("pinout: {2: A, 1: K, tab: K, 3: NC}\n"));
  CHECK(kinds_of(read.report) == Kinds{});
  REQUIRE(read.note.ratings.contains("pinout"));
  CHECK(std::get<Words>(read.note.ratings.at("pinout").value).items == std::vector<std::string>{"K", "A", "NC"});
}

TEST_CASE("a pinout with a gap is reported and not judged") {
  const ReadNote read(component("pinout: {1: K, 3: A}\n"));
  CHECK(kinds_of(read.report) == Kinds{"wrong-type"});
  CHECK_FALSE(read.note.ratings.contains("pinout"));
}
