// schema/classes/*.yaml: families of parts, their ratings, and which class may stand in for which.
#include "schema/reading.h"

#include "base/text.h"
#include "quantity/dimension.h"

#include <algorithm>

namespace benchlore {
namespace {

Dimension condition_dimension(std::string_view condition) {
  return condition == "temperature" ? dimension::temperature : dimension::frequency;
}

void read_factors(SchemaReading& reading, const Node& factors, Conversion& conversion) {
  for (const Entry& entry : factors.entries) {
    const auto at = parse_quantity(entry.key, condition_dimension(conversion.condition));
    const auto factor = reading.number(entry.value);
    if (!at.quantity || !at.quantity->nominal || !factor || *factor <= 0) {
      reading.fault(entry.key_span, "`" + entry.key + "` is no row of a conversion", "write `100 Hz: 0.5`");
      continue;
    }
    conversion.rows.push_back({at.quantity->nominal->value(), *factor});
  }
  std::sort(conversion.rows.begin(), conversion.rows.end(), [](auto& a, auto& b) { return a.at < b.at; });
}

Conversion read_conversion(SchemaReading& reading, const Node& node) {
  Conversion conversion;
  if (!reading.check_keys(node, {"condition", "when", "factors", "source"})) return conversion;
  conversion.condition = reading.text(node, "condition", true);
  conversion.source = reading.text(node, "source", true);
  if (conversion.condition != "frequency" && conversion.condition != "temperature") {
    reading.fault(node.span, "a conversion is by `frequency` or `temperature`");
  }
  if (const Node* factors = node.find("factors")) read_factors(reading, *factors, conversion);
  if (const Node* when = node.find("when")) {
    reading.check_keys(*when, {"rating", "range"});
    conversion.when_rating = reading.text(*when, "rating", true);
    const auto unit_text = reading.text(*when, "range", true);
    // The range carries its own unit; the dimension is that of the unit at its end.
    for (Dimension d : {dimension::capacitance, dimension::voltage, dimension::none, dimension::resistance}) {
      const auto result = parse_quantity(unit_text, d);
      if (result.quantity && !conversion.when_value) conversion.when_value = result.quantity;
    }
    if (!conversion.when_value) reading.fault(when->span, "`" + unit_text + "` is no range");
  }
  return conversion;
}

StandIn read_stand_in(SchemaReading& reading, const Node& node) {
  StandIn stand_in;
  if (!reading.check_keys(node, {"class", "roles", "because", "source"})) return stand_in;
  stand_in.substitute = reading.text(node, "class", true);
  stand_in.roles = reading.texts(node, "roles");
  stand_in.because = reading.text(node, "because", true);
  stand_in.source = reading.text(node, "source", true);
  return stand_in;
}

void read_class(SchemaReading& reading, const Node& node) {
  if (!reading.check_keys(node, {"class", "title", "plural", "meaning", "extends", "general", "roles", "cautions",
                                 "ratings", "stand-ins", "otherwise", "otherwise-because"})) {
    return;
  }
  ComponentClass made;
  made.span = node.span;
  made.name = reading.text(node, "class", true);
  made.title = reading.text(node, "title", true);
  made.plural = reading.text(node, "plural", true);
  made.meaning = reading.text(node, "meaning", true);
  made.extends = reading.text(node, "extends");
  made.general = reading.flag(node, "general");
  made.roles = reading.texts(node, "roles");
  made.cautions = reading.texts(node, "cautions");
  made.otherwise = reading.shortfall(node, "otherwise", Shortfall::unfit, false);
  made.otherwise_because = reading.text(node, "otherwise-because");
  if (const Node* ratings = node.find("ratings")) {
    for (const Entry& entry : ratings->entries) {
      made.ratings[entry.key] = read_rating_type(reading, entry.key, entry.value);
      made.order.push_back(entry.key);
    }
  }
  if (const Node* list = node.find("stand-ins")) {
    for (const Node& item : list->items) made.stand_ins.push_back(read_stand_in(reading, item));
  }
  if (reading.schema.classes.contains(made.name)) {
    reading.fault(node.span, "class `" + made.name + "` is defined twice");
  }
  reading.schema.classes[made.name] = std::move(made);
}

// Copies what the parent has into the child, parents first; a loop of parents is cut by the depth.
void inherit(SchemaReading& reading, ComponentClass& child, std::vector<std::string>& done, int depth) {
  if (std::find(done.begin(), done.end(), child.name) != done.end()) return;
  done.push_back(child.name);
  if (child.extends.empty()) return;
  const auto found = reading.schema.classes.find(child.extends);
  if (found == reading.schema.classes.end() || depth > 8) {
    reading.fault(child.span, "class `" + child.name + "` extends `" + child.extends + "`, which is no class");
    return;
  }
  ComponentClass& parent = found->second;
  inherit(reading, parent, done, depth + 1);
  for (const auto& [name, type] : parent.ratings) child.ratings.try_emplace(name, type);
  std::vector<std::string> order = parent.order;
  for (const std::string& name : child.order) {
    if (std::find(order.begin(), order.end(), name) == order.end()) order.push_back(name);
  }
  child.order = std::move(order);
  if (child.cautions.empty()) child.cautions = parent.cautions;
  if (child.roles.empty()) child.roles = parent.roles;
}

void check_names(SchemaReading& reading, const ComponentClass& made) {
  const Schema& schema = reading.schema;
  auto need = [&](bool found, const std::string& name, std::string_view what) {
    if (!found)
      reading.fault(made.span, "class `" + made.name + "` names `" + name + "`, which is no " + std::string(what));
  };
  for (const std::string& role : made.roles) need(schema.roles.contains(role), role, "role");
  for (const std::string& caution : made.cautions) need(schema.cautions.contains(caution), caution, "caution");
  for (const StandIn& stand_in : made.stand_ins) {
    need(schema.classes.contains(stand_in.substitute), stand_in.substitute, "class");
    need(schema.sources.contains(stand_in.source), stand_in.source, "source");
    for (const std::string& role : stand_in.roles) need(schema.roles.contains(role), role, "role");
  }
  for (const auto& [name, type] : made.ratings) {
    for (const Conversion& conversion : type.conversions) {
      need(schema.sources.contains(conversion.source), conversion.source, "source");
      need(conversion.when_rating.empty() || made.ratings.contains(conversion.when_rating), conversion.when_rating,
           "rating");
    }
  }
}

} // namespace

RatingType read_rating_type(SchemaReading& reading, std::string name, const Node& node) {
  RatingType type;
  type.name = std::move(name);
  if (!reading.check_keys(node, {"title", "unit", "words", "meaning", "compare-at", "convert"})) return type;
  type.title = reading.text(node, "title", true);
  type.meaning = reading.text(node, "meaning", true);
  type.unit = reading.text(node, "unit");
  type.dimension = reading.dimension(type.unit, node.span);
  type.compare_at = reading.texts(node, "compare-at");
  const Node* words = node.find("words");
  if (words != nullptr) type.form = RatingForm::words;
  if (words != nullptr && !(words->is_scalar() && words->text == "any")) type.words = reading.texts_of(*words);
  if (words == nullptr && node.find("unit") == nullptr) reading.fault(node.span, "a rating has a `unit` or `words`");
  if (const Node* list = node.find("convert")) {
    for (const Node& item : list->items) type.conversions.push_back(read_conversion(reading, item));
  }
  return type;
}

void read_classes(SchemaReading& reading, const Node& node) {
  if (!reading.check_keys(node, {"classes"})) return;
  const Node* list = node.find("classes");
  if (list == nullptr || !list->is_list()) return reading.fault(node.span, "expected a list of `classes`");
  for (const Node& item : list->items) read_class(reading, item);
}

void finish_classes(SchemaReading& reading) {
  std::vector<std::string> done;
  for (auto& [name, made] : reading.schema.classes) inherit(reading, made, done, 0);
  for (const auto& [name, made] : reading.schema.classes) check_names(reading, made);
}

} // namespace benchlore
