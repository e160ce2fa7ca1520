// The catalogue, read back with SQLite alone.
#include "emit/catalogue/catalogue.h"

#include "emit/catalogue/statement.h"
#include "small_shop.h"

#include <fstream>
#include <sstream>

using namespace benchlore;

namespace {

std::string schema_sql() {
  std::ifstream file(std::string(BENCHLORE_ROOT) + "/schema/catalogue.sql");
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

// The rows of a query: `|` between columns, a blank between rows.
std::string ask(const std::string& path, const std::string& sql) {
  const Database database(path);
  Statement statement(database, sql);
  std::string out;
  while (statement.step()) {
    if (!out.empty()) out += ' ';
    for (int column = 0; column < sqlite3_column_count(statement.get()); ++column)
      out += (column > 0 ? "|" : "") + statement.text(column);
  }
  return out;
}

struct Written {
  test::SmallShop small;
  test::TemporaryFolder folder;
  std::string path = folder.in("catalogue.db");
  std::string error;
  explicit Written(const std::map<std::string, std::string>& notes = test::few_notes()) : small(notes) {
    if (!small.shop.by_id.contains("kestrel-main")) {
      write();
      return;
    }
    small.add_position("kestrel-main", "C201", "tantalum-10u-16v", "decoupling");
    small.add_substitute("tantalum-10u-16v", "electrolytic-47u-25v", Verdict::unsafe);
    small.judged.substitutes.back().position = &small.shop.positions.back();
    small.add_substitute("electrolytic-47u-25v", "tantalum-10u-16v", Verdict::suitable);
    small.shop.stock.push_back({small.id("tantalum-10u-16v"), 12, "A3", "", {}});
    small.report.add(MessageKind::unsafe_substitute, {FileId{0}, 4, 8}, "it's \"unsafe\"");
    small.shop.facts.name = "Bench";
    write();
  }
  void write() {
    REQUIRE_MESSAGE(write_catalogue(small.shop, small.judged, small.report, schema_sql(), path, error), error);
  }
};

} // namespace

TEST_CASE_FIXTURE(Written, "the database is sound") {
  CHECK(ask(path, "PRAGMA integrity_check") == "ok");
  CHECK(ask(path, "PRAGMA foreign_key_check") == "");
  CHECK(ask(path, "PRAGMA user_version") == "1");
  CHECK(std::stoi(ask(path, "SELECT count(*) FROM sqlite_schema WHERE type = 'index' AND sql IS NOT NULL")) > 10);
  CHECK_FALSE(std::filesystem::exists(path + ".new"));
}

TEST_CASE_FIXTURE(Written, "components, names, ratings and stock have their values") {
  CHECK(ask(path, "SELECT count(*) FROM note") == std::to_string(small.shop.notes.size()));
  CHECK(ask(path, "SELECT id FROM component WHERE class = 'bjt'") == "pn2222a");
  CHECK(ask(path, "SELECT DISTINCT component FROM name WHERE key = '2n2222a'") == "pn2222a");
  CHECK(ask(path, "SELECT component FROM name WHERE sort = 'marking' AND name = '106C'") == "tantalum-10u-16v");
  CHECK(ask(path, "SELECT component FROM rating WHERE rating = 'capacitance' AND nominal BETWEEN 9e-6 AND 11e-6") ==
        "tantalum-10u-16v");
  CHECK(ask(path,
            "SELECT unit, round(low * 1e6, 6), round(high * 1e6, 6), line FROM rating WHERE rating = 'capacitance' "
            "AND component = 'tantalum-10u-16v'") == "F|8.0|12.0|6");
  CHECK(ask(path, "SELECT in_stock FROM part WHERE id = 'tantalum-10u-16v'") == "12");
  CHECK(ask(path, "SELECT bin FROM stock") == "A3");
  CHECK(ask(path, "SELECT name FROM shop") == "Bench");
  CHECK(ask(path, "SELECT length(hash) FROM note LIMIT 1") == "16");
  CHECK(ask(path, "SELECT title FROM note WHERE file = 'components/1n4007.md'") == "1N4007");
}

TEST_CASE_FIXTURE(Written, "positions, substitutes, reasons, symptoms, links and findings") {
  CHECK(ask(path, "SELECT component, role FROM position WHERE board = 'kestrel-main' AND ref = 'C201'") ==
        "tantalum-10u-16v|decoupling");
  CHECK(ask(path, "SELECT original, deciding, ref FROM unsafe_substitute") == "tantalum-10u-16v|rated-voltage|C201");
  CHECK(ask(path, "SELECT original, in_stock FROM usable_substitute") == "electrolytic-47u-25v|12");
  CHECK(ask(path, "SELECT about, outcome, margin FROM reason WHERE substitute = 1") == "class|falls short|-0.5");
  CHECK(ask(path, "SELECT count(*) FROM condition") == "2");
  CHECK(ask(path, "SELECT fault, likelihood FROM fault_symptom WHERE symptom = 'no-picture'") ==
        "shorted-tantalum|usual");
  CHECK(ask(path, "SELECT count(*) FROM said WHERE symptom = 'no-picture'") == "2");
  CHECK(ask(path, "SELECT note FROM link WHERE target = 'kestrel-8'") == "shorted-tantalum");
  CHECK(ask(path, "SELECT rule, severity, line FROM finding") == "unsafe-substitute|unsafe|2");
}

TEST_CASE("texts with quotes, marks and statements of SQL stay texts") {
  const std::string title = "Robert'); DROP TABLE note; -- \\\"%_";
  std::map<std::string, std::string> notes{
      {"components/odd.md",
       "---\nkind: component\nclass: bjt\ntitle: \"Robert'); DROP TABLE note; --\"\nmarkings: [\"'; --\", "
       "\"" +
           std::string(10000, 'm') + "\"]\n---\n" + title + "\n"}};
  const Written written(notes);
  CHECK(ask(written.path, "SELECT count(*) FROM note") == "1");
  CHECK(ask(written.path, "SELECT title FROM note") == "Robert'); DROP TABLE note; --");
  CHECK(ask(written.path, "SELECT length(name) FROM name WHERE name LIKE 'mmm%'") == "10000");
  CHECK(ask(written.path, "PRAGMA integrity_check") == "ok");
}

TEST_CASE_FIXTURE(Written, "a second run replaces, a failed one leaves what was there") {
  write();
  CHECK(ask(path, "SELECT count(*) FROM shop") == "1");
  CHECK_FALSE(write_catalogue(small.shop, small.judged, small.report, "CREATE TABLE x (", path, error));
  CHECK_FALSE(write_catalogue(small.shop, small.judged, small.report, "CREATE TABLE x (y);", path, error));
  CHECK(error.find("was not written") != std::string::npos);
  CHECK_FALSE(write_catalogue(small.shop, small.judged, small.report, schema_sql(), "/proc/no/where", error));
  CHECK(ask(path, "SELECT count(*) FROM shop") == "1");
  CHECK_FALSE(std::filesystem::exists(path + ".new"));
}

TEST_CASE_FIXTURE(Written, "the same shop gives the same bytes") {
  auto bytes = [](const std::string& file) {
    std::ifstream in(file, std::ios::binary);
    std::ostringstream text;
    text << in.rdbuf();
    return text.str();
  };
  const std::string once = bytes(path);
  write();
  CHECK(bytes(path) == once);
}
