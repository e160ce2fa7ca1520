// schema/kinds/*.yaml: the fields of a kind of note.
#include "schema/reading.h"

#include "base/text.h"

namespace benchlore {
namespace {

struct TypeName {
  std::string_view name;
  Field::Type type;
};
constexpr TypeName type_names[] = {
    {"text", Field::Type::text},         {"words", Field::Type::words},     {"word", Field::Type::word},
    {"flag", Field::Type::flag},         {"count", Field::Type::count},     {"date", Field::Type::date},
    {"quantity", Field::Type::quantity}, {"ref", Field::Type::ref},         {"list", Field::Type::list},
    {"map", Field::Type::map},           {"ratings", Field::Type::ratings}, {"stress", Field::Type::stress},
    {"any", Field::Type::any},
};

std::optional<Field::Type> type_of(SchemaReading& reading, const Node& node) {
  const std::string word = reading.text(node, "type", true);
  std::vector<std::string> known;
  for (const TypeName& row : type_names) {
    if (row.name == word) return row.type;
    known.emplace_back(row.name);
  }
  reading.fault(node.span, "`" + word + "` is no type of field", "use " + alternatives(near_names(word, known)));
  return std::nullopt;
}

Field read_field(SchemaReading& reading, std::string name, const Node& node);

void read_fields(SchemaReading& reading, const Node& map, std::vector<Field>& fields) {
  for (const Entry& entry : map.entries) fields.push_back(read_field(reading, entry.key, entry.value));
}

void read_parts(SchemaReading& reading, const Node& node, Field& field) {
  if (const Node* of = node.find("of")) {
    field.fields.push_back(read_field(reading, field.name, *of));
    field.free_keys = field.type == Field::Type::map;
  }
  if (const Node* fields = node.find("fields")) read_fields(reading, *fields, field.fields);
  if (field.type == Field::Type::list && field.fields.size() != 1) reading.fault(node.span, "a list needs one `of`");
}

Field read_field(SchemaReading& reading, std::string name, const Node& node) {
  Field field;
  field.name = std::move(name);
  if (!reading.check_keys(node, {"type", "required", "meaning", "unit", "choices", "to", "of", "fields"})) return field;
  field.type = type_of(reading, node).value_or(Field::Type::any);
  field.required = reading.flag(node, "required");
  field.meaning = reading.text(node, "meaning");
  field.unit = reading.text(node, "unit");
  field.dimension = reading.dimension(field.unit, node.span);
  field.choices = reading.texts(node, "choices");
  field.refers_to = reading.texts(node, "to");
  read_parts(reading, node, field);
  return field;
}

// `choices: likelihood` names the words of another file of schema/.
void fill_choices(const Schema& schema, Field& field) {
  auto names_of = [&field](const auto& map) {
    field.choices.clear();
    for (const auto& [name, unused] : map) field.choices.push_back(name);
  };
  if (field.choices.size() == 1) {
    const std::string list = field.choices.front();
    if (list == "likelihood") names_of(schema.likelihood);
    if (list == "roles") names_of(schema.roles);
    if (list == "cautions") names_of(schema.cautions);
    if (list == "classes") names_of(schema.classes);
  }
  for (Field& part : field.fields) fill_choices(schema, part);
}

} // namespace

void read_kind(SchemaReading& reading, const Node& node) {
  if (!reading.check_keys(node, {"kind", "title", "plural", "folder", "meaning", "fields"})) return;
  Kind kind;
  kind.name = reading.text(node, "kind", true);
  kind.title = reading.text(node, "title", true);
  kind.plural = reading.text(node, "plural", true);
  kind.folder = reading.text(node, "folder");
  kind.meaning = reading.text(node, "meaning", true);
  if (const Node* fields = node.find("fields")) read_fields(reading, *fields, kind.fields);
  for (Field& field : kind.fields) fill_choices(reading.schema, field);
  reading.schema.kinds[kind.name] = std::move(kind);
}

} // namespace benchlore
