// schema/drive-types.yaml: what set-ups know under a number.
#include "schema/reading.h"

namespace benchlore {
namespace {

int whole(SchemaReading& reading, const Node& map, std::string_view key) {
  const std::string text = reading.text(map, key, true);
  const auto number = Decimal::parse(text);
  if (!number || number->negative() || number->exponent() < 0 || number->value() > 65535) {
    reading.fault(map.span, "`" + std::string(key) + "` must be a whole number up to 65535");
    return 0;
  }
  return static_cast<int>(number->value());
}

DriveType read_type(SchemaReading& reading, const Node& node) {
  DriveType type;
  if (!reading.check_keys(node, {"type", "cylinders", "heads", "sectors", "precompensation", "landing"})) return type;
  type.number = whole(reading, node, "type");
  type.cylinders = whole(reading, node, "cylinders");
  type.heads = whole(reading, node, "heads");
  type.sectors = whole(reading, node, "sectors");
  type.precompensation = reading.text(node, "precompensation", true);
  type.landing = whole(reading, node, "landing");
  if (type.cylinders == 0 || type.heads == 0 || type.sectors == 0) reading.fault(node.span, "a type has a geometry");
  return type;
}

} // namespace

void read_drive_types(SchemaReading& reading, const Node& node) {
  if (!reading.check_keys(node, {"tables"})) return;
  const Node* list = node.find("tables");
  if (list == nullptr || !list->is_list()) return reading.fault(node.span, "expected a list of `tables`");
  for (const Node& item : list->items) {
    if (!reading.check_keys(item, {"table", "title", "meaning", "source", "types"})) continue;
    DriveTypeTable table;
    table.name = reading.text(item, "table", true);
    table.title = reading.text(item, "title", true);
    table.meaning = reading.text(item, "meaning");
    table.source = reading.text(item, "source", true);
    if (!reading.schema.sources.contains(table.source))
      reading.fault(item.span, "table `" + table.name + "` names `" + table.source + "`, which is no source");
    if (const Node* types = item.find("types")) {
      for (const Node& type : types->items) table.types.push_back(read_type(reading, type));
    }
    reading.schema.drive_types.push_back(std::move(table));
  }
}

} // namespace benchlore
