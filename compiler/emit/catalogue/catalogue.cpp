// Makes the database: tables, rows, indexes, a check of what refers to what, and then its place.
#include "emit/catalogue/catalogue.h"

#include "emit/catalogue/rows.h"

#include <filesystem>

namespace benchlore {
namespace {

namespace fs = std::filesystem;

// Runs the statements of the schema, and hands back those that make indexes.
std::string make_tables(Database& database, std::string_view sql) {
  std::string later;
  while (!sql.empty()) {
    const char* tail = nullptr;
    Statement statement(database, sql, &tail);
    const std::string_view one = sql.substr(0, static_cast<std::size_t>(tail - sql.data()));
    sql.remove_prefix(one.size());
    if (statement.empty()) break;
    if (one.find("CREATE INDEX") != std::string_view::npos)
      later += one;
    else
      statement.run();
  }
  return later;
}

void write_rows(const CatalogueRows& rows) {
  write_note_rows(rows);
  write_schema_rows(rows);
  write_component_rows(rows);
  write_position_rows(rows);
  write_substitute_rows(rows);
  write_fault_rows(rows);
  write_finding_rows(rows);
}

void check_references(const Database& database) {
  Statement check(database, "PRAGMA foreign_key_check");
  if (check.step()) throw std::runtime_error("a row of `" + check.text(0) + "` names none of `" + check.text(2) + "`");
}

void write_database(const Shop& shop, const JudgedShop& judged, const Report& report, std::string_view sql,
                    const std::string& path) {
  Database database(path);
  database.run("PRAGMA journal_mode = OFF; PRAGMA synchronous = OFF; PRAGMA foreign_keys = OFF; BEGIN");
  const std::string indexes = make_tables(database, sql);
  write_rows({database, shop, judged, report});
  database.run(indexes);
  check_references(database);
  database.run("COMMIT");
}

} // namespace

bool write_catalogue(const Shop& shop, const JudgedShop& judged, const Report& report, std::string_view schema_sql,
                     const std::string& path, std::string& error) {
  const std::string beside = path + ".new";
  try {
    if (const fs::path folder = fs::path(path).parent_path(); !folder.empty()) fs::create_directories(folder);
    fs::remove(beside);
    write_database(shop, judged, report, schema_sql, beside);
    fs::rename(beside, path);
    return true;
  } catch (const std::exception& fault) {
    error = std::string("the catalogue was not written: ") + fault.what();
  }
  std::error_code ignored;
  fs::remove(beside, ignored);
  return false;
}

} // namespace benchlore
