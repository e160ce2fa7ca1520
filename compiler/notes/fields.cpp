// One function for each type of field. A record is at most sixteen levels deep, so recursion is bounded.
#include "notes/fields.h"

#include "base/text.h"
#include "notes/scalars.h"

#include <algorithm>

namespace benchlore {
namespace {

using Check = void (*)(FieldReading&, const Field&, const Node&, const std::string& path);

void read_value_of(FieldReading& reading, const Field& field, const Node& node, const std::string& path);

void no_form(FieldReading& reading, const Node& node, const std::string& path, std::string_view form) {
  reading.report.add(
      MessageKind::wrong_type, node.span,
      node.is_empty() ? "`" + path + "` has no value" : "`" + path + "` does not hold " + std::string(form),
      node.is_empty() ? "write " + std::string(form) + ", or take the field out" : "write " + std::string(form));
}

void check_words(FieldReading& reading, const Field& field, const Node& node, const std::string& path) {
  if (!node.is_list()) return check_text(reading, field, node, path);
  for (const Node& item : node.items) check_text(reading, field, item, path);
}

void check_quantity(FieldReading& reading, const Field& field, const Node& node, const std::string&) {
  RatingType type;
  type.name = field.name;
  type.dimension = field.dimension;
  type.unit = field.unit;
  read_value(node, type, reading.sources, reading.report);
}

void check_ref(FieldReading& reading, const Field& field, const Node& node, const std::string& path) {
  if (!node.is_scalar() || node.text.empty()) return no_form(reading, node, path, "the id of a note");
  reading.note.references.push_back({path, node.text, field.refers_to, node.span});
}

void check_list(FieldReading& reading, const Field& field, const Node& node, const std::string& path) {
  if (field.fields.empty()) return;
  const Field& element = field.fields.front();
  const bool single = element.type != Field::Type::map && element.type != Field::Type::list;
  if (node.is_list()) {
    for (const Node& item : node.items) read_value_of(reading, element, item, path);
  } else if (single && node.is_scalar() && !node.is_empty()) {
    read_value_of(reading, element, node, path);
  } else {
    no_form(reading, node, path, "a list");
  }
}

void check_map(FieldReading& reading, const Field& field, const Node& node, const std::string& path) {
  if (!node.is_map()) return no_form(reading, node, path, "keys with values");
  if (field.free_keys) {
    for (const Entry& entry : node.entries) read_value_of(reading, field.fields.front(), entry.value, path);
    return;
  }
  std::vector<const Field*> fields;
  for (const Field& part : field.fields) fields.push_back(&part);
  read_fields(reading, node, fields, path);
}

template <class Types> std::vector<std::string> names_of(const Types& types) {
  std::vector<std::string> names;
  for (const auto& [name, unused] : types) names.push_back(name);
  return names;
}

using Types = std::map<std::string, RatingType, std::less<>>;

void unknown_value(FieldReading& reading, const Entry& entry, const Types& types, MessageKind kind,
                   const std::string& of) {
  const auto known = names_of(types);
  const auto near = near_names(entry.key, known);
  reading.report.add(kind, entry.key_span, "`" + entry.key + "` is no " + of,
                     near.empty() ? "the schema lists them" : "use " + alternatives(near));
}

// Values by name, each of the type that the class or stresses.yaml gives it.
Ratings stated_values(FieldReading& reading, const Node& node, const Types& types, MessageKind unknown,
                      const std::string& of, const std::string& path) {
  Ratings values;
  for (const Entry& entry : node.entries) {
    const auto type = types.find(entry.key);
    if (type == types.end()) {
      unknown_value(reading, entry, types, unknown, of);
      continue;
    }
    const auto value = read_value(entry.value, type->second, reading.sources, reading.report);
    if (!value) continue;
    if (const Node* source = entry.value.find("source"); source != nullptr && !value->source.empty()) {
      reading.note.references.push_back({path + ".source", value->source, {"source"}, source->span});
    }
    values[entry.key] = *value;
  }
  return values;
}

void check_ratings(FieldReading& reading, const Field&, const Node& node, const std::string& path) {
  if (!node.is_map()) return no_form(reading, node, path, "ratings with their values");
  const ComponentClass* made = reading.schema.find_class(reading.note.class_name);
  if (made == nullptr) return; // the class itself is reported
  reading.note.ratings =
      stated_values(reading, node, made->ratings, MessageKind::unknown_rating, "rating of `" + made->name + "`", path);
}

void check_stress(FieldReading& reading, const Field&, const Node& node, const std::string& path) {
  if (!node.is_map()) return no_form(reading, node, path, "stresses with their values");
  stated_values(reading, node, reading.schema.stresses, MessageKind::unknown_word, "stress", path);
}

void check_any(FieldReading&, const Field&, const Node&, const std::string&) {}

struct Row {
  Field::Type type;
  Check check;
};

constexpr Row checks[] = {
    {Field::Type::text, check_text},         {Field::Type::words, check_words},     {Field::Type::word, check_word},
    {Field::Type::flag, check_flag},         {Field::Type::count, check_count},     {Field::Type::date, check_date},
    {Field::Type::quantity, check_quantity}, {Field::Type::ref, check_ref},         {Field::Type::list, check_list},
    {Field::Type::map, check_map},           {Field::Type::ratings, check_ratings}, {Field::Type::stress, check_stress},
    {Field::Type::any, check_any},
};

void read_value_of(FieldReading& reading, const Field& field, const Node& node, const std::string& path) {
  for (const Row& row : checks) {
    if (row.type == field.type) return row.check(reading, field, node, path);
  }
}

const Field* find_field(const std::vector<const Field*>& fields, std::string_view name) {
  const auto found =
      std::find_if(fields.begin(), fields.end(), [name](const Field* field) { return field->name == name; });
  return found == fields.end() ? nullptr : *found;
}

void unknown_field(FieldReading& reading, const Entry& entry, const std::vector<const Field*>& fields,
                   const std::string& path) {
  std::vector<std::string> known;
  for (const Field* field : fields) known.push_back(field->name);
  auto near = near_names(entry.key, known);
  if (near.empty() && known.size() <= 8) near = known;
  const std::string where = path.empty() ? "a field of `" + reading.note.kind + "`" : "a part of `" + path + "`";
  reading.report.add(MessageKind::unknown_field, entry.key_span, "`" + entry.key + "` is not " + where,
                     near.empty() ? "take it out, or move it into the body" : "use " + alternatives(near));
}

} // namespace

void read_fields(FieldReading& reading, const Node& map, const std::vector<const Field*>& fields,
                 const std::string& path) {
  for (const Entry& entry : map.entries) {
    const Field* field = find_field(fields, entry.key);
    if (field == nullptr) {
      unknown_field(reading, entry, fields, path);
    } else {
      read_value_of(reading, *field, entry.value, path.empty() ? entry.key : path + "." + entry.key);
    }
  }
  for (const Field* field : fields) {
    if (!field->required || map.find(field->name) != nullptr) continue;
    const std::string name = path.empty() ? field->name : path + "." + field->name;
    const Span place = path.empty() ? Span{map.span.file, map.span.begin, map.span.begin} : map.span;
    reading.report.add(MessageKind::missing_field, place, "`" + name + "` is missing",
                       field->meaning.empty() ? "add it" : "add it: " + field->meaning);
  }
}

} // namespace benchlore
