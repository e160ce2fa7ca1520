// Names that rules use must exist, and every rule shows by three examples what it does.
#include "schema/reading.h"

#include <algorithm>

namespace benchlore {
namespace {

void check_rule(SchemaReading& reading, const Rule& rule) {
  const Schema& schema = reading.schema;
  auto need = [&](bool found, const std::string& name, std::string_view what) {
    if (!found)
      reading.fault(rule.span, "rule `" + rule.name + "` names `" + name + "`, which is no " + std::string(what));
  };
  for (const auto* list : {&rule.from, &rule.to}) {
    for (const std::string& name : *list) need(schema.classes.contains(name), name, "class");
  }
  for (const auto* list : {&rule.roles, &rule.not_roles}) {
    for (const std::string& name : *list) need(schema.roles.contains(name), name, "role");
  }
  for (const auto& [name, unused] : rule.band_by_role) need(schema.roles.contains(name), name, "role");
  for (const auto& [name, unused] : rule.factor_by_role) need(schema.roles.contains(name), name, "role");
  need(schema.sources.contains(rule.source), rule.source, "source");
  if (!rule.rating.empty() || rule.form != RuleForm::computed) {
    need(rating_of(schema, rule.to, rule.rating) != nullptr, rule.rating, "rating of the substitute's class");
  }
  if (!rule.stress.empty()) need(stress_of(schema, rule.stress) != nullptr, rule.stress, "stress");
  if ((rule.form == RuleForm::withstands || rule.form == RuleForm::inside) && rule.stress.empty()) {
    reading.fault(rule.span, "rule `" + rule.name + "` needs a `stress`");
  }
}

void check_examples(SchemaReading& reading, const Rule& rule) {
  for (std::string_view kind : {"passes", "fails", "lacks"}) {
    const bool found = std::any_of(rule.examples.begin(), rule.examples.end(), [&](auto& e) { return e.kind == kind; });
    if (!found) reading.fault(rule.span, "rule `" + rule.name + "` has no example that `" + std::string(kind) + "`");
  }
}

} // namespace

void check_rules(SchemaReading& reading) {
  std::vector<std::string> names;
  for (const Rule& rule : reading.schema.rules) {
    check_rule(reading, rule);
    check_examples(reading, rule);
    if (std::find(names.begin(), names.end(), rule.name) != names.end()) {
      reading.fault(rule.span, "rule `" + rule.name + "` stands twice");
    }
    names.push_back(rule.name);
  }
}

} // namespace benchlore
