// Generic rendering of front matter: texts, references, lists, maps, tables of like maps.
#include "emit/site/fields_view.h"

#include "emit/site/table.h"
#include "emit/site/verdict_view.h"

#include <algorithm>

namespace benchlore {
namespace {

const Field& anything() {
  static const Field field = [] {
    Field any;
    any.type = Field::Type::any;
    return any;
  }();
  return field;
}

// The field that describes an item of a list, or an entry of a map.
const Field& inner(const Field& field, std::string_view key) {
  if (field.type == Field::Type::list || (field.type == Field::Type::map && field.free_keys))
    return field.fields.empty() ? anything() : field.fields.front();
  for (const Field& entry : field.fields)
    if (entry.name == key) return entry;
  return anything();
}

Html scalar(const View& view, const Field& field, const Node& node) {
  if (field.type == Field::Type::ref) return view.note_link(node.text);
  if (field.type == Field::Type::word) {
    if (view.schema().roles.contains(node.text)) return text(role_title(view.schema(), node.text));
    return text(spoken(node.text));
  }
  if (view.shop().find(node.text) && field.type == Field::Type::any) return view.note_link(node.text);
  return text(node.text);
}

bool all_maps(const Node& node) {
  if (node.is_list())
    return !node.items.empty() &&
           std::all_of(node.items.begin(), node.items.end(), [](const Node& item) { return item.is_map(); });
  return node.is_map() && !node.entries.empty() &&
         std::all_of(node.entries.begin(), node.entries.end(), [](const Entry& entry) { return entry.value.is_map(); });
}

bool short_items(const Node& node) {
  return std::all_of(node.items.begin(), node.items.end(),
                     [](const Node& item) { return item.is_scalar() && item.text.size() <= 28; });
}

Html joined(const View& view, const Field& field, const Node& node) {
  Html out;
  for (const Node& item : node.items) {
    if (!out.empty()) out << ", ";
    out << scalar(view, inner(field, ""), item);
  }
  return out;
}

Html map_value(const View& view, const Field& field, const Node& node) {
  std::vector<NamedValue> values;
  bool measured = field.type == Field::Type::ratings || field.type == Field::Type::stress;
  for (const Entry& entry : node.entries)
    values.push_back({measured          ? rating_title(view.schema(), entry.key)
                      : field.free_keys ? entry.key
                                        : spoken(entry.key),
                      field_value(view, inner(field, entry.key), entry.value)});
  return render(values);
}

Html list_value(const View& view, const Field& field, const Node& node) {
  if (short_items(node)) return joined(view, field, node);
  std::vector<Html> items;
  for (const Node& item : node.items) items.push_back(field_value(view, inner(field, ""), item));
  return bullets(items);
}

// Columns in the order of the schema, then of the note.
std::vector<std::string> keys_of(const Field& field, const std::vector<const Node*>& rows) {
  std::vector<std::string> keys;
  auto add = [&](const std::string& key) {
    if (std::find(keys.begin(), keys.end(), key) == keys.end()) keys.push_back(key);
  };
  if (!field.free_keys)
    for (const Field& entry : field.fields) add(entry.name);
  for (const Node* row : rows)
    for (const Entry& entry : row->entries) add(entry.key);
  return keys;
}

std::vector<Cell> cells_of(const View& view, const Field& field, const std::vector<std::string>& keys,
                           const Node& row) {
  std::vector<Cell> cells;
  for (const std::string& key : keys) {
    const Node* value = row.find(key);
    cells.push_back({value ? field_value(view, inner(field, key), *value) : Html(), {}});
  }
  return cells;
}

Html list_table(const View& view, const Field& field, const Node& node) {
  const Field& element = inner(field, "");
  std::vector<const Node*> rows;
  for (const Node& item : node.items) rows.push_back(&item);
  std::vector<std::string> keys = keys_of(element, rows);
  Table table{spoken(field.name), {}, {}, false};
  for (const std::string& key : keys) table.columns.push_back(spoken(key));
  for (const Node* item : rows) table.rows.push_back(cells_of(view, element, keys, *item));
  return render(table);
}

Html keyed_table(const View& view, const Field& field, const Node& node) {
  const Field& element = inner(field, "");
  std::vector<const Node*> rows;
  for (const Entry& entry : node.entries) rows.push_back(&entry.value);
  std::vector<std::string> keys = keys_of(element, rows);
  Table table{spoken(field.name), {"Name"}, {}, false};
  for (const std::string& key : keys) table.columns.push_back(spoken(key));
  for (const Entry& entry : node.entries) {
    std::vector<Cell> cells{{text(entry.key), {}}};
    for (Cell& cell : cells_of(view, element, keys, entry.value)) cells.push_back(std::move(cell));
    table.rows.push_back(std::move(cells));
  }
  return render(table);
}

bool short_value(const Node& node) {
  if (node.is_scalar()) return node.text.size() <= 160;
  return node.is_list() && short_items(node) && node.items.size() <= 8;
}

Html section(const View& view, const Field& field, const Node& node) {
  Html out = section_heading("field_" + safe_name(field.name), spoken(field.name));
  if (node.is_scalar()) out << "<p>";
  out << field_value(view, field, node);
  if (node.is_scalar()) out << "</p>";
  return out << "\n";
}

} // namespace

Html field_value(const View& view, const Field& field, const Node& node) {
  switch (node.shape) {
  case Node::Shape::scalar:
    return scalar(view, field, node);
  case Node::Shape::list:
    return all_maps(node) ? list_table(view, field, node) : list_value(view, field, node);
  case Node::Shape::map:
    return all_maps(node) ? keyed_table(view, field, node) : map_value(view, field, node);
  }
  return {};
}

FieldsView fields_view(const View& view, const Note& note, const std::vector<std::string>& skip) {
  const Kind* kind = view.schema().find_kind(note.kind);
  std::vector<NamedValue> facts;
  Html sections;
  for (const Entry& entry : note.front.entries) {
    if (std::find(skip.begin(), skip.end(), entry.key) != skip.end() || entry.value.is_empty()) continue;
    const Field* field = kind ? kind->field(entry.key) : nullptr;
    Field named = field ? *field : anything();
    named.name = entry.key;
    if (short_value(entry.value)) {
      facts.push_back({spoken(entry.key), field_value(view, named, entry.value)});
    } else {
      sections << section(view, named, entry.value);
    }
  }
  return {render(facts), sections};
}

} // namespace benchlore
