// Rows about notes: the shop, the notes themselves, tags, links, faults and symptoms, findings; and what schema/ knows.
#include "emit/catalogue/rows.h"

#include <charconv>
#include <set>

namespace benchlore {
namespace {

std::string hash_of(std::string_view bytes) {
  std::uint64_t hash = 14695981039346656037ull;
  for (const char byte : bytes) hash = (hash ^ static_cast<unsigned char>(byte)) * 1099511628211ull;
  char digits[16];
  const auto end = std::to_chars(digits, digits + 16, hash, 16).ptr;
  const std::string text(digits, end);
  return std::string(16 - text.size(), '0') + text;
}

std::string_view file_of(const CatalogueRows& rows, const Note& note) {
  const Sources* sources = rows.shop.sources;
  return sources && note.file.known() ? std::string_view(sources->text(note.file)) : std::string_view{};
}

void write_tags(const CatalogueRows& rows) {
  Statement insert(rows.database, "INSERT OR IGNORE INTO tag VALUES (?, ?)");
  for (const auto& [id, note] : rows.shop.by_id)
    for (const std::string& tag : rows.shop.note(note).tags) insert.run(id, tag);
}

void write_links(const CatalogueRows& rows) {
  Statement insert(rows.database, "INSERT INTO link VALUES (?, ?, ?)");
  for (const auto& [id, target] : rows.shop.by_id) {
    if (target.index >= rows.shop.backlinks.size()) continue;
    for (const Backlink& link : rows.shop.backlinks[target.index])
      if (const auto from = rows.published(link.from)) insert.run(*from, id, stated(link.field));
  }
}

void write_sources(const CatalogueRows& rows) {
  Statement insert(rows.database, "INSERT OR REPLACE INTO source VALUES (?, ?, ?, ?, ?)");
  for (const auto& [name, source] : rows.shop.schema->sources)
    insert.run(name, source.title, stated(source.publisher), stated(source.trust), nullptr);
  for (const auto& [id, index] : rows.shop.by_id) {
    const Note& note = rows.shop.note(index);
    if (note.kind == "source")
      insert.run(id, note.title, stated(note.text("publisher")), stated(note.text("trust")), id);
  }
}

} // namespace

std::optional<std::string> CatalogueRows::published(NoteId note) const {
  if (note.index >= shop.notes.size()) return std::nullopt;
  const auto found = shop.by_id.find(shop.note(note).id);
  if (found == shop.by_id.end() || found->second != note) return std::nullopt;
  return found->first;
}

bool CatalogueRows::is_component(NoteId note) const { return published(note) && shop.note(note).kind == "component"; }

Place CatalogueRows::place(Span span) const { return shop.sources ? shop.sources->place(span) : Place{}; }

std::optional<std::string_view> stated(std::string_view text) {
  return text.empty() ? std::nullopt : std::optional(text);
}

void write_note_rows(const CatalogueRows& rows) {
  const ShopFacts& facts = rows.shop.facts;
  Statement(rows.database, "INSERT INTO shop VALUES (?, ?, ?, ?)")
      .run(stated(facts.name), stated(facts.mains_voltage), stated(facts.mains_frequency), stated(facts.wording));
  Statement insert(rows.database, "INSERT INTO note VALUES (?, ?, ?, ?, ?, ?, ?)");
  for (const auto& [id, index] : rows.shop.by_id) {
    const Note& note = rows.shop.note(index);
    const std::uint32_t line = std::max(rows.place(note.front_span).line, 1u);
    insert.run(id, note.kind, note.title, note.path, line, hash_of(file_of(rows, note)), note.plain_text);
  }
  write_tags(rows);
  write_links(rows);
}

void write_schema_rows(const CatalogueRows& rows) {
  if (!rows.shop.schema) return;
  const Schema& schema = *rows.shop.schema;
  write_sources(rows);
  Statement classes(rows.database, "INSERT INTO class VALUES (?, ?, ?, ?)");
  for (const auto& [name, entry] : schema.classes)
    classes.run(name, entry.title, stated(entry.extends), stated(entry.meaning));
  Statement roles(rows.database, "INSERT INTO role VALUES (?, ?, ?, ?)");
  for (const auto& [name, role] : schema.roles)
    roles.run(name, role.title, stated(role.meaning), static_cast<int>(role.safety));
  Statement rules(rows.database, "INSERT INTO rule VALUES (?, ?, ?, ?, ?, ?)");
  for (const Rule& rule : schema.rules)
    rules.run(rule.name, to_text(rule.form), stated(rule.rating), to_text(rule.falls_short), stated(rule.because),
              stated(rule.source));
}

void write_fault_rows(const CatalogueRows& rows) {
  Statement said(rows.database, "INSERT INTO said VALUES (?, ?)");
  Statement shows(rows.database, "INSERT INTO fault_symptom VALUES (?, ?, ?)");
  for (const auto& [id, index] : rows.shop.by_id) {
    const Note& note = rows.shop.note(index);
    if (note.kind == "symptom")
      for (const Located<std::string>& words : note.texts("also-said")) said.run(id, words.value);
    const Node* symptoms = note.kind == "fault" ? note.field("symptoms") : nullptr;
    for (const Node& item : symptoms ? symptoms->items : std::vector<Node>{}) {
      const Node *symptom = item.find("symptom"), *likelihood = item.find("likelihood");
      if (!symptom || !rows.shop.by_id.contains(symptom->text)) continue;
      shows.run(id, symptom->text, likelihood ? stated(likelihood->text) : std::nullopt);
    }
  }
}

void write_finding_rows(const CatalogueRows& rows) {
  Statement insert(rows.database, "INSERT INTO finding VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)");
  for (const Message& message : rows.report.messages()) {
    const Place place = rows.place(message.span);
    const Acceptance accepted = message.accepted.value_or(Acceptance{});
    insert.run(row(message.kind).name, to_text(message.severity), stated(message.verdict), stated(message.subject),
               stated(place.path), place.line, place.column, message.text, stated(message.way_out),
               stated(accepted.reason), stated(accepted.by), stated(accepted.date));
  }
}

} // namespace benchlore
