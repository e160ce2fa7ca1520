// Writes the rows of the catalogue, one function a part of the shop.
#pragma once

#include "emit/catalogue/statement.h"
#include "substitute/judged.h"

namespace benchlore {

// What all the writers need: where rows go, and what they are about.
struct CatalogueRows {
  const Database& database;
  const Shop& shop;
  const JudgedShop& judged;
  const Report& report;

  // The id of a note that has a row (a broken one has none).
  std::optional<std::string> published(NoteId note) const;
  bool is_component(NoteId note) const;
  Place place(Span span) const;
};

void write_schema_rows(const CatalogueRows& rows);
void write_note_rows(const CatalogueRows& rows);
void write_component_rows(const CatalogueRows& rows);
void write_position_rows(const CatalogueRows& rows);
void write_substitute_rows(const CatalogueRows& rows);
void write_fault_rows(const CatalogueRows& rows);
void write_finding_rows(const CatalogueRows& rows);

// The text, or NULL when it is empty.
std::optional<std::string_view> stated(std::string_view text);

// Writes one rating or stress; `owner` are the values of the first columns.
template <class... Owner> void write_value(Statement& insert, const CatalogueRows& rows, const StatedValue& value,
                                           const std::string& unit, const Owner&... owner) {
  const Place place = rows.place(value.span);
  auto number = [](const std::optional<Decimal>& decimal) {
    return decimal ? std::optional(decimal->value()) : std::nullopt;
  };
  const std::string text = to_text(value.value);
  if (const Quantity* quantity = std::get_if<Quantity>(&value.value)) {
    const std::size_t at = text.find(" @ ");
    const std::string_view conditions = at == std::string::npos ? "" : std::string_view(text).substr(at + 3);
    insert.run(owner..., text, unit, number(quantity->nominal), number(quantity->minimum), number(quantity->typical),
               number(quantity->maximum), quantity->low(), quantity->high(), stated(conditions), stated(value.source),
               stated(place.path), place.line);
  } else {
    insert.run(owner..., text, nullptr, nullptr, nullptr, nullptr, nullptr, nullptr, nullptr, nullptr,
               stated(value.source), stated(place.path), place.line);
  }
}

} // namespace benchlore
