// schema/logic-families.yaml: what all parts of a family share.
#include "schema/reading.h"

namespace benchlore {
namespace {

// The rating as a class with families defines it.
const RatingType* family_rating(const Schema& schema, const std::string& name) {
  for (const auto& [unused, made] : schema.classes) {
    const auto found = made.ratings.find(name);
    if (made.ratings.contains("family") && found != made.ratings.end()) return &found->second;
  }
  return nullptr;
}

void read_ratings(SchemaReading& reading, const Node& node, Family& family) {
  for (const Entry& entry : node.entries) {
    const RatingType* type = family_rating(reading.schema, entry.key);
    if (type == nullptr) {
      reading.fault(entry.key_span, "no class with a family has a rating `" + entry.key + "`");
      continue;
    }
    const auto value = read_value(entry.value, *type, reading.sources, reading.report, MessageKind::schema_error);
    reading.sound = reading.sound && value.has_value();
    if (value) family.ratings[entry.key] = *value;
  }
}

} // namespace

void read_families(SchemaReading& reading, const Node& node) {
  if (!reading.check_keys(node, {"families"})) return;
  const Node* list = node.find("families");
  if (list == nullptr || !list->is_list()) return reading.fault(node.span, "expected a list of `families`");
  for (const Node& item : list->items) {
    if (!reading.check_keys(item, {"family", "title", "ratings", "source"})) continue;
    Family family;
    family.name = reading.text(item, "family", true);
    family.title = reading.text(item, "title", true);
    family.source = reading.text(item, "source", true);
    if (!reading.schema.sources.contains(family.source))
      reading.fault(item.span, "family `" + family.name + "` names `" + family.source + "`, which is no source");
    if (const Node* ratings = item.find("ratings")) read_ratings(reading, *ratings, family);
    for (auto& [unused, stated] : family.ratings) stated.source = family.source;
    if (reading.schema.families.contains(family.name))
      reading.fault(item.span, "family `" + family.name + "` stands twice");
    reading.schema.families[family.name] = std::move(family);
  }
}

} // namespace benchlore
