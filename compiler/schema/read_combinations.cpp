// schema/combinations.yaml: the ways in which several parts make one.
#include "schema/reading.h"

#include "base/text.h"

#include <algorithm>

namespace benchlore {
namespace {

using Law = CombinationLaw::Kind;

struct LawName {
  std::string_view name;
  Law kind;
};
constexpr LawName law_names[] = {
    {"sum", Law::sum},         {"reciprocal-sum", Law::reciprocal_sum},
    {"least", Law::least},     {"greatest", Law::greatest},
    {"overlap", Law::overlap}, {"same", Law::same},
    {"shared", Law::shared},   {"current-shared", Law::current_shared},
};

CombinationLaw read_law(SchemaReading& reading, const Node& node) {
  CombinationLaw law;
  std::string name = node.text;
  if (node.is_map()) {
    reading.check_keys(node, {"law", "by-value-below", "by-resistance-above", "resistance"});
    name = reading.text(node, "law", true);
    law.resistance = reading.text(node, "resistance", true);
    if (const Node* low = node.find("by-value-below"))
      law.by_value_below = reading.quantity(*low, dimension::frequency);
    if (const Node* high = node.find("by-resistance-above"))
      law.by_resistance_above = reading.quantity(*high, dimension::frequency);
  }
  std::vector<std::string> known;
  for (const LawName& row : law_names) {
    known.emplace_back(row.name);
    if (row.name == name) law.kind = row.kind;
  }
  if (std::find(known.begin(), known.end(), name) == known.end())
    reading.fault(node.span, "`" + name + "` is no law of combination", "use " + alternatives(known));
  const bool complete = law.by_value_below && law.by_resistance_above && !law.resistance.empty();
  if (law.kind == Law::current_shared && !complete)
    reading.fault(node.span, "`current-shared` needs `by-value-below`, `by-resistance-above` and `resistance`");
  return law;
}

void check_way(SchemaReading& reading, const CombinationWay& way) {
  const Schema& schema = reading.schema;
  auto need = [&](bool found, const std::string& name, std::string_view what) {
    if (!found)
      reading.fault(way.span, "combination `" + way.name + "` names `" + name + "`, which is no " + std::string(what));
  };
  for (const std::string& name : way.classes) need(schema.classes.contains(name), name, "class");
  if (!way.becomes.empty()) need(schema.classes.contains(way.becomes), way.becomes, "class");
  for (const std::string& role : way.roles) need(schema.roles.contains(role), role, "role");
  need(schema.sources.contains(way.source), way.source, "source");
  for (const auto& [rating, law] : way.laws) need(rating_of(schema, way.classes, rating) != nullptr, rating, "rating");
  const auto value = way.laws.find(way.value);
  const bool adds =
      value != way.laws.end() && (value->second.kind == Law::sum || value->second.kind == Law::reciprocal_sum);
  if (!adds) reading.fault(way.span, "the `value` of a combination has the law `sum` or `reciprocal-sum`");
  if (way.most < 2 || way.most > 4) reading.fault(way.span, "a combination has two to four parts");
  if (way.conditions.empty()) reading.fault(way.span, "a combination says what must be done, in `conditions`");
}

} // namespace

void read_combinations(SchemaReading& reading, const Node& node) {
  if (!reading.check_keys(node, {"combinations"})) return;
  if (reading.shop)
    return reading.fault(node.span, "a shop does not say how parts combine",
                         "what becomes of a voltage or a power when parts are joined is no matter of the house");
  const Node* list = node.find("combinations");
  if (list == nullptr || !list->is_list()) return reading.fault(node.span, "expected a list of `combinations`");
  for (const Node& item : list->items) {
    if (!reading.check_keys(item, {"way", "title", "classes", "becomes", "most", "alike", "roles", "value", "laws",
                                   "leakage", "balanced", "conditions", "because", "source"}))
      continue;
    CombinationWay way;
    way.span = item.span;
    way.name = reading.text(item, "way", true);
    way.title = reading.text(item, "title", true);
    way.classes = reading.texts(item, "classes");
    way.becomes = reading.text(item, "becomes");
    if (const Node* most = item.find("most")) way.most = static_cast<int>(reading.number(*most).value_or(0));
    way.alike = reading.flag(item, "alike");
    way.roles = reading.texts(item, "roles");
    way.value = reading.text(item, "value", true);
    way.leakage = reading.text(item, "leakage");
    way.balanced = reading.text(item, "balanced", !way.leakage.empty());
    way.conditions = reading.texts(item, "conditions");
    way.because = reading.text(item, "because", true);
    way.source = reading.text(item, "source", true);
    if (const Node* laws = item.find("laws")) {
      for (const Entry& entry : laws->entries) way.laws[entry.key] = read_law(reading, entry.value);
    }
    check_way(reading, way);
    reading.schema.combinations.push_back(std::move(way));
  }
}

} // namespace benchlore
