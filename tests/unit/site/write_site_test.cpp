// A small shop made in memory becomes a site: hostile titles stay text, every page is there, links lead somewhere.
#include "emit/site/site.h"

#include <doctest/doctest.h>
#include <string>

using namespace benchlore;

namespace {

Schema small_schema() {
  Schema schema;
  schema.kinds["component"] = {"component", "Component", "Components", "components", "a part", {}};
  schema.kinds["symptom"] = {"symptom", "Symptom", "Symptoms", "symptoms", "what is seen", {}};
  ComponentClass film;
  film.name = "film-capacitor";
  film.title = "Film capacitor";
  film.plural = "Film capacitors";
  schema.classes["film-capacitor"] = film;
  return schema;
}

Note plain_note(std::string id, std::string kind, std::string title) {
  Note note;
  note.id = id;
  note.kind = std::move(kind);
  note.title = std::move(title);
  note.path = note.kind + "/" + id + ".md";
  note.front.shape = Node::Shape::map;
  return note;
}

Entry entry(std::string key, std::string value) {
  Entry out;
  out.key = std::move(key);
  out.value.text = std::move(value);
  return out;
}

struct Bench {
  Schema schema = small_schema();
  Sources sources;
  Report report;
  JudgedShop judged;
  Shop shop;
  MemoryFiles site{{{"templates/page.html", "<title>{{title}}</title><main>{{main}}</main>"},
                    {"styles/a.css", "a{}"},
                    {"styles/b.css", "b{}"},
                    {"scripts/x.js", "1"}}};
  MemoryFiles content{{{"pictures/a.png", "png"}, {"evil.html", "<script>"}}};
  MemoryFiles out;

  Bench() {
    shop.schema = &schema;
    shop.sources = &sources;
    add(plain_note("cap", "component", "<script>alert(1)</script>"));
    add(plain_note("hum", "symptom", "Hums \"loudly\""));
    shop.notes[0].class_name = "film-capacitor";
    shop.notes[1].front.entries.push_back(entry("also-said", "<img src=x onerror=y>"));
    shop.attachments = {"evil.html", "pictures/a.png"};
  }

  void add(Note note) {
    note.file = sources.add(note.path, "");
    note.body_span.file = note.file;
    shop.by_id[note.id] = NoteId{static_cast<std::uint32_t>(shop.notes.size())};
    shop.notes.push_back(std::move(note));
    shop.backlinks.emplace_back();
  }

  bool write() {
    TermsOf terms = [](NoteId) { return NoteTerms{{{"capacitor", 2}, {"1n4007", 1}}, {"capacitors"}}; };
    return write_site({shop, judged, report, sources, site, content, terms}, out);
  }
};

std::string page(const Bench& bench, const std::string& path) { return bench.out.read(path).value_or(""); }

} // namespace

TEST_CASE("every page of a small shop is written") {
  Bench bench;
  REQUIRE(bench.write());
  for (const char* path :
       {"index.html", "search.html", "substitute.html", "notes.html", "findings.html", "rules.html", "notes/cap.html",
        "notes/hum.html", "kinds/component.html", "classes/film-capacitor.html", "assets/x.js", "data/meta.js",
        "data/terms/0.js", "data/words/0.js", "data/notes/0.js", "files/pictures/a.png"})
    CHECK_MESSAGE(bench.out.is_file(path), path);
  CHECK(page(bench, "assets/style.css") == "a{}\nb{}\n");
  CHECK(page(bench, "data/meta.js").find("\"count\":2") != std::string::npos);
}

TEST_CASE("mark-up in a note stays text on every page") {
  Bench bench;
  REQUIRE(bench.write());
  for (const std::string& path : bench.out.list("")) {
    std::string bytes = page(bench, path);
    CHECK_MESSAGE(bytes.find("<script>alert") == std::string::npos, path);
    CHECK_MESSAGE(bytes.find("<img src=x") == std::string::npos, path);
  }
  CHECK(page(bench, "notes/cap.html").find("&lt;script&gt;alert(1)&lt;/script&gt;") != std::string::npos);
}

TEST_CASE("what a browser might run is not published") {
  Bench bench;
  REQUIRE(bench.write());
  CHECK_FALSE(bench.out.is_file("files/evil.html"));
}

TEST_CASE("a broken note is listed and not published") {
  Bench bench;
  bench.shop.notes[1].broken = true;
  bench.shop.by_id.erase("hum");
  REQUIRE(bench.write());
  CHECK_FALSE(bench.out.is_file("notes/hum.html"));
  CHECK(page(bench, "findings.html").find("symptom/hum.md") != std::string::npos);
}

TEST_CASE("an unsafe finding comes first, an accepted one apart") {
  Bench bench;
  bench.report.add(MessageKind::broken_link, {}, "a `link` is broken").severity = Severity::error;
  bench.report.add(MessageKind::unsafe_substitute, {}, "it may <burn>").severity = Severity::unsafe;
  Message& accepted = bench.report.add(MessageKind::unsafe_substitute, {}, "lived with");
  accepted.severity = Severity::unsafe;
  accepted.accepted = Acceptance{"tested", "R. Moss", "2026-01-02"};
  REQUIRE(bench.write());
  std::string findings = page(bench, "findings.html");
  CHECK(findings.find("it may &lt;burn&gt;") < findings.find("a <code>link</code> is broken"));
  CHECK(findings.find("the_accepted") < findings.find("lived with"));
  CHECK(page(bench, "index.html").find("lived with") == std::string::npos);
}

TEST_CASE("without its template nothing is written") {
  Bench bench;
  bench.site = MemoryFiles{};
  CHECK_FALSE(bench.write());
}
