// Rows about parts: components, their names and ratings, stock, positions, substitutes with their reasons.
#include "base/text.h"
#include "emit/catalogue/rows.h"

namespace benchlore {
namespace {

void write_name(Statement& insert, const std::string& id, std::string_view sort, std::string_view name,
                std::optional<std::string_view> house = {}) {
  if (!name.empty()) insert.run(id, sort, house, name, type_key(name));
}

void write_names(Statement& insert, const std::string& id, const Note& note) {
  write_name(insert, id, "id", id);
  write_name(insert, id, "title", note.title);
  for (const auto& marking : note.texts("markings")) write_name(insert, id, "marking", marking.value);
  for (const auto& alias : note.texts("aliases")) write_name(insert, id, "alias", alias.value);
  const Node* numbers = note.field("cross-reference");
  if (!numbers) return;
  for (const Node& item : numbers->items) {
    const Node *house = item.find("house"), *number = item.find("number");
    if (number)
      write_name(insert, id, "cross-reference", number->text, house ? stated(house->text) : std::nullopt);
    else if (item.is_scalar())
      write_name(insert, id, "cross-reference", item.text);
  }
}

void write_ratings(Statement& insert, const CatalogueRows& rows, const std::string& id, const Note& note) {
  const ComponentClass* known = rows.shop.schema ? rows.shop.schema->find_class(note.class_name) : nullptr;
  for (const auto& [name, value] : note.ratings) {
    const bool typed = known && known->ratings.contains(name);
    write_value(insert, rows, value, typed ? known->ratings.find(name)->second.unit : std::string{}, id, name);
  }
}

void write_stock(const CatalogueRows& rows) {
  Statement insert(rows.database, "INSERT INTO stock VALUES (?, ?, ?, ?, ?)");
  for (const StockLine& line : rows.shop.stock)
    if (rows.is_component(line.component))
      insert.run(*rows.published(line.component), line.quantity, stated(line.bin), stated(line.from),
                 rows.place(line.span).line);
}

void write_reasons(Statement& insert, std::int64_t substitute, const std::vector<Reason>& reasons) {
  int number = 0;
  for (const Reason& reason : reasons) {
    const auto rule = reason.rule ? stated(reason.rule->name) : std::nullopt;
    insert.run(substitute, ++number, rule, reason.rule_name, stated(reason.rating), to_text(reason.outcome),
               to_text(reason.verdict), stated(reason.original), stated(reason.substitute), stated(reason.required),
               reason.margin, static_cast<int>(reason.by_tolerance), stated(reason.working), stated(reason.action),
               stated(reason.only_in_role), stated(reason.because), stated(reason.source));
  }
}

} // namespace

void write_component_rows(const CatalogueRows& rows) {
  Statement components(rows.database, "INSERT INTO component VALUES (?, ?, ?, ?, ?, ?, ?)");
  Statement names(rows.database, "INSERT INTO name VALUES (?, ?, ?, ?, ?)");
  Statement ratings(rows.database, "INSERT INTO rating VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)");
  std::map<NoteId, int> in_stock;
  for (const StockLine& line : rows.shop.stock) in_stock[line.component] += line.quantity;
  for (const auto& [id, index] : rows.shop.by_id) {
    const Note& note = rows.shop.note(index);
    if (note.kind != "component") continue;
    const bool known = rows.shop.schema && rows.shop.schema->find_class(note.class_name);
    components.run(id, known ? stated(note.class_name) : std::nullopt, stated(note.text("maker")),
                   stated(note.text("package")), stated(note.text("price")), stated(note.text("availability")),
                   in_stock[index]);
    write_names(names, id, note);
    write_ratings(ratings, rows, id, note);
  }
  write_stock(rows);
}

void write_position_rows(const CatalogueRows& rows) {
  Statement positions(rows.database, "INSERT INTO position VALUES (?, ?, ?, ?, ?, ?, ?, ?)");
  Statement stresses(rows.database, "INSERT INTO stress VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)");
  for (const Position& position : rows.shop.positions) {
    const auto board = rows.published(position.board);
    if (!board) continue;
    const Place place = rows.place(position.span);
    const auto part = rows.is_component(position.component) ? rows.published(position.component) : std::nullopt;
    positions.run(*board, position.ref, part, stated(position.role), stated(position.polarity), stated(position.note),
                  stated(place.path), place.line);
    for (const auto& [name, value] : position.stress) {
      const bool typed = rows.shop.schema && rows.shop.schema->stresses.contains(name);
      const std::string unit = typed ? rows.shop.schema->stresses.find(name)->second.unit : std::string{};
      write_value(stresses, rows, value, unit, *board, position.ref, name);
    }
  }
}

void write_substitute_rows(const CatalogueRows& rows) {
  Statement substitutes(rows.database, "INSERT INTO substitute VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)");
  Statement reasons(rows.database, "INSERT INTO reason VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)");
  Statement conditions(rows.database, "INSERT INTO condition VALUES (?, ?, ?)");
  std::int64_t id = 0;
  for (const JudgedSubstitute& judged : rows.judged.substitutes) {
    if (!rows.is_component(judged.original) || !rows.is_component(judged.substitute)) continue;
    const auto board = judged.position ? rows.published(judged.position->board) : std::nullopt;
    const auto ref = board ? std::optional(judged.position->ref) : std::nullopt;
    const Place place = rows.place(judged.span);
    const Judgement& judgement = judged.judgement;
    substitutes.run(++id, *rows.published(judged.original), *rows.published(judged.substitute),
                    stated(join(judged.roles, ", ")), stated(judged.where.role), board, ref, to_text(judgement.verdict),
                    stated(join(judgement.deciding, ", ")), stated(place.path), place.line);
    write_reasons(reasons, id, judgement.reasons);
    int number = 0;
    for (const std::string& condition : judgement.conditions) conditions.run(id, ++number, condition);
  }
}

} // namespace benchlore
