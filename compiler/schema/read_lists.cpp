// The single-file lists of schema/: roles, stresses, cautions, likelihood words, sources, synonyms.
#include "schema/reading.h"

#include "base/text.h"

namespace benchlore {
namespace {

// The items of the one list that the file holds under this key.
const std::vector<Node>& items(SchemaReading& reading, const Node& node, std::string_view key) {
  static const std::vector<Node> none;
  reading.check_keys(node, {key});
  const Node* list = node.find(key);
  if (list == nullptr || !list->is_list()) {
    reading.fault(node.span, "expected a list of `" + std::string(key) + "`");
    return none;
  }
  return list->items;
}

// A threshold is on a rating or a stress; its dimension is that of the stress, or of the first class's rating.
std::optional<Dimension> dimension_of(const Schema& schema, const std::string& name) {
  if (const auto stress = schema.stresses.find(name); stress != schema.stresses.end()) return stress->second.dimension;
  for (const auto& [unused, made] : schema.classes) {
    if (const auto rating = made.ratings.find(name); rating != made.ratings.end()) return rating->second.dimension;
  }
  return std::nullopt;
}

void read_threshold(SchemaReading& reading, const Node& node, Caution& caution) {
  if (!reading.check_keys(node, {"rating", "stress", "at-least"})) return;
  Caution::Threshold threshold;
  threshold.rating = reading.text(node, node.find("rating") != nullptr ? "rating" : "stress", true);
  const auto dimension = dimension_of(reading.schema, threshold.rating);
  const Node* value = node.find("at-least");
  if (!dimension || value == nullptr)
    return reading.fault(node.span, "`" + threshold.rating + "` is no rating or stress");
  const auto quantity = reading.quantity(*value, *dimension);
  if (!quantity) return;
  threshold.at_least = *quantity;
  caution.thresholds.push_back(threshold);
}

} // namespace

void read_roles(SchemaReading& reading, const Node& node) {
  for (const Node& item : items(reading, node, "roles")) {
    if (!reading.check_keys(item, {"role", "title", "meaning", "safety", "cautions"})) continue;
    Role role;
    role.name = reading.text(item, "role", true);
    role.title = reading.text(item, "title", true);
    role.meaning = reading.text(item, "meaning", true);
    role.safety = reading.flag(item, "safety");
    role.cautions = reading.texts(item, "cautions");
    if (reading.schema.roles.contains(role.name)) reading.fault(item.span, "role `" + role.name + "` stands twice");
    reading.schema.roles[role.name] = std::move(role);
  }
}

void read_stresses(SchemaReading& reading, const Node& node) {
  for (const Node& item : items(reading, node, "stresses")) {
    Node type = item;
    const std::string name = reading.text(item, "stress", true);
    std::erase_if(type.entries, [](const Entry& entry) { return entry.key == "stress"; });
    if (reading.schema.stresses.contains(name)) reading.fault(item.span, "stress `" + name + "` stands twice");
    reading.schema.stresses[name] = read_rating_type(reading, name, type);
  }
}

void read_cautions(SchemaReading& reading, const Node& node) {
  for (const Node& item : items(reading, node, "cautions")) {
    if (!reading.check_keys(item, {"caution", "title", "wording", "source", "classes", "roles", "tags", "thresholds"}))
      continue;
    Caution caution;
    caution.name = reading.text(item, "caution", true);
    caution.title = reading.text(item, "title", true);
    caution.wording = reading.text(item, "wording", true);
    caution.source = reading.text(item, "source", true);
    caution.classes = reading.texts(item, "classes");
    caution.roles = reading.texts(item, "roles");
    caution.tags = reading.texts(item, "tags");
    if (const Node* list = item.find("thresholds")) {
      for (const Node& threshold : list->items) read_threshold(reading, threshold, caution);
    }
    if (reading.schema.cautions.contains(caution.name))
      reading.fault(item.span, "caution `" + caution.name + "` stands twice");
    reading.schema.cautions[caution.name] = std::move(caution);
  }
}

void read_likelihood(SchemaReading& reading, const Node& node) {
  reading.check_keys(node, {"likelihood", "scale", "source"});
  const Node* map = node.find("likelihood");
  if (map == nullptr || !map->is_map()) return reading.fault(node.span, "expected a map `likelihood`");
  for (const Entry& entry : map->entries) {
    const auto number = reading.number(entry.value);
    if (number && (*number < 0 || *number > 1)) reading.fault(entry.value.span, "a probability lies between 0 and 1");
    if (number) reading.schema.likelihood[entry.key] = *number;
  }
}

void read_sources(SchemaReading& reading, const Node& node) {
  for (const Node& item : items(reading, node, "sources")) {
    if (!reading.check_keys(item, {"source", "title", "publisher", "trust"})) continue;
    SourceEntry source;
    source.name = reading.text(item, "source", true);
    source.title = reading.text(item, "title", true);
    source.publisher = reading.text(item, "publisher");
    source.trust = reading.text(item, "trust", true);
    if (source.trust != "published" && source.trust != "common-practice" && source.trust != "from-memory") {
      reading.fault(item.span, "trust `" + source.trust + "`", "use `published`, `common-practice` or `from-memory`");
    }
    if (reading.schema.sources.contains(source.name))
      reading.fault(item.span, "source `" + source.name + "` stands twice");
    reading.schema.sources[source.name] = std::move(source);
  }
}

void read_synonyms(SchemaReading& reading, const Node& node) {
  for (const Node& item : items(reading, node, "synonyms")) {
    auto words = reading.texts_of(item);
    for (std::string& word : words) word = lower(word);
    if (words.size() < 2) reading.fault(item.span, "a group of synonyms has at least two words");
    reading.schema.synonyms.push_back(std::move(words));
  }
}

} // namespace benchlore
