// schema/rules/*.yaml: the rules, checked against the classes that they speak of.
#include "schema/reading.h"

#include "base/text.h"

#include <algorithm>

namespace benchlore {
namespace {

struct FormName {
  std::string_view name;
  RuleForm form;
};
constexpr FormName form_names[] = {
    {"at-least", RuleForm::at_least}, {"at-most", RuleForm::at_most},
    {"same", RuleForm::same},         {"same-or-higher", RuleForm::same_or_higher},
    {"allowed", RuleForm::allowed},   {"within", RuleForm::within},
    {"covers", RuleForm::covers},     {"inside", RuleForm::inside},
    {"fits", RuleForm::fits},         {"withstands", RuleForm::withstands},
    {"computed", RuleForm::computed}, {"leads", RuleForm::leads},
    {"pins", RuleForm::pins},
};

RuleForm form_of(SchemaReading& reading, const Node& node) {
  const std::string word = reading.text(node, "form", true);
  std::vector<std::string> known;
  for (const FormName& row : form_names) {
    if (row.name == word) return row.form;
    known.emplace_back(row.name);
  }
  reading.fault(node.span, "`" + word + "` is no form of rule", "use " + alternatives(near_names(word, known)));
  return RuleForm::same;
}

WhenClause read_when(SchemaReading& reading, const Node& node, const Rule& rule) {
  WhenClause when;
  if (!reading.check_keys(node, {"original", "substitute", "position", "is", "is-not", "range", "unstated", "stated"}))
    return when;
  const RatingType* type = nullptr;
  if (node.find("original") != nullptr) {
    when.of = WhenClause::Of::original;
    when.rating = reading.text(node, "original");
    type = rating_of(reading.schema, rule.from, when.rating);
  } else if (node.find("substitute") != nullptr) {
    when.of = WhenClause::Of::substitute;
    when.rating = reading.text(node, "substitute");
    type = rating_of(reading.schema, rule.to, when.rating);
  } else {
    when.of = WhenClause::Of::position;
    when.rating = reading.text(node, "position", true);
    type = stress_of(reading.schema, when.rating);
  }
  if (type == nullptr) reading.fault(node.span, "`" + when.rating + "` is no rating or stress here");
  when.words = reading.texts(node, node.find("is-not") != nullptr ? "is-not" : "is");
  when.negate = node.find("is-not") != nullptr;
  when.missing_skips = reading.text(node, "unstated") == "skip";
  if (node.find("stated") != nullptr) {
    when.stated = reading.flag(node, "stated");
    if (when.of != WhenClause::Of::position) reading.fault(node.span, "`stated` is only for what a position states");
  }
  if (when.missing_skips && when.of != WhenClause::Of::position) {
    reading.fault(node.span, "`unstated: skip` is only for what a position states",
                  "a part that does not state `" + when.rating + "` must not escape the rule");
  }
  if (const Node* range = node.find("range"); range != nullptr && type != nullptr) {
    when.range = reading.quantity(*range, type->dimension);
  }
  if (type != nullptr && !type->words.empty()) {
    for (const std::string& word : when.words) {
      if (std::find(type->words.begin(), type->words.end(), word) == type->words.end()) {
        reading.fault(node.span, "`" + word + "` is no word of `" + when.rating + "`",
                      "use " + alternatives(type->words));
      }
    }
  }
  return when;
}

void read_relaxed(SchemaReading& reading, const Node& node, Rule& rule) {
  if (!reading.check_keys(node, {"stress", "at-least", "factor"})) return;
  Rule::Relaxed relaxed;
  relaxed.stress = reading.text(node, "stress", true);
  const RatingType* type = stress_of(reading.schema, relaxed.stress);
  const Node* at_least = node.find("at-least");
  const Node* factor = node.find("factor");
  if (type == nullptr || at_least == nullptr || factor == nullptr) {
    return reading.fault(node.span, "`relaxed` needs a known `stress`, `at-least` and `factor`");
  }
  const auto quantity = reading.quantity(*at_least, type->dimension);
  if (!quantity) return;
  relaxed.at_least = *quantity;
  relaxed.factor = reading.number(*factor).value_or(1.0);
  rule.relaxed = relaxed;
}

// A parameter carries its own unit.
std::optional<Quantity> of_any_dimension(const Schema& schema, const std::string& text) {
  std::vector<Dimension> dimensions{dimension::none, dimension::temperature_difference};
  for (const auto& [unused, stress] : schema.stresses) dimensions.push_back(stress.dimension);
  for (Dimension dimension : dimensions) {
    if (const auto result = parse_quantity(text, dimension); result.quantity) return result.quantity;
  }
  return std::nullopt;
}

void read_values(SchemaReading& reading, const Node& node, Rule& rule, const RatingType* type) {
  if (const Node* allowance = node.find("allowance"); allowance != nullptr && type != nullptr) {
    rule.allowance = reading.quantity(*allowance, type->dimension);
  }
  if (const Node* limit = node.find("limit"); limit != nullptr && type != nullptr) {
    if (const auto value = read_value(*limit, *type, reading.sources, reading.report, MessageKind::schema_error)) {
      rule.limit = value->value;
    } else {
      reading.sound = false;
    }
  }
  if (const Node* table = node.find("table")) {
    for (const Entry& entry : table->entries) rule.table[entry.key] = reading.texts_of(entry.value);
  }
  if (const Node* parameters = node.find("parameters")) {
    for (const Entry& entry : parameters->entries) {
      const std::string text = entry.value.text;
      if (const auto quantity = of_any_dimension(reading.schema, text)) {
        rule.parameters[entry.key] = StatedValue{*quantity, entry.value.span, {}, {}};
      } else {
        reading.fault(entry.value.span, "`" + text + "` has no unit of any stress");
      }
    }
  }
}

Ratings example_ratings(SchemaReading& reading, const Node* node, std::string& class_name) {
  Ratings ratings;
  if (node == nullptr) return ratings;
  if (const Node* named = node->find("class")) class_name = named->text;
  const ComponentClass* made = reading.schema.find_class(class_name);
  if (made == nullptr) {
    reading.fault(node->span, "`" + class_name + "` is no class");
    return ratings;
  }
  for (const Entry& entry : node->entries) {
    if (entry.key == "class") continue;
    const auto type = made->ratings.find(entry.key);
    if (type == made->ratings.end()) {
      reading.fault(entry.key_span, "`" + made->name + "` has no rating `" + entry.key + "`");
      continue;
    }
    const auto value =
        read_value(entry.value, type->second, reading.sources, reading.report, MessageKind::schema_error);
    if (value) ratings[entry.key] = *value;
    reading.sound = reading.sound && value.has_value();
  }
  return ratings;
}

void read_stress(SchemaReading& reading, const Node& node, Ratings& stress) {
  for (const Entry& entry : node.entries) {
    const RatingType* type = stress_of(reading.schema, entry.key);
    if (type == nullptr) {
      reading.fault(entry.key_span, "`" + entry.key + "` is no stress");
      continue;
    }
    const auto value = read_value(entry.value, *type, reading.sources, reading.report, MessageKind::schema_error);
    if (value) stress[entry.key] = *value;
    reading.sound = reading.sound && value.has_value();
  }
}

void read_example(SchemaReading& reading, const Node& node, Rule& rule) {
  if (!node.is_map() || node.entries.size() != 1)
    return reading.fault(node.span, "an example is `passes:`, `fails:` or `lacks:`");
  RuleExample example;
  example.span = node.span;
  example.kind = node.entries.front().key;
  const Node& body = node.entries.front().value;
  if (example.kind != "passes" && example.kind != "fails" && example.kind != "lacks") {
    return reading.fault(node.span, "`" + example.kind + "` is no sort of example", "use `passes`, `fails` or `lacks`");
  }
  if (!body.is_map()) return reading.fault(body.span, "expected a map");
  reading.check_keys(body, {"original", "substitute", "stress", "role"});
  example.original_class = rule.from.front();
  example.substitute_class = rule.to.front();
  example.original = example_ratings(reading, body.find("original"), example.original_class);
  example.substitute = example_ratings(reading, body.find("substitute"), example.substitute_class);
  example.role = reading.text(body, "role");
  if (const Node* stress = body.find("stress")) read_stress(reading, *stress, example.stress);
  rule.examples.push_back(std::move(example));
}

void read_scope(SchemaReading& reading, const Node& node, Rule& rule) {
  rule.rating = reading.text(node, "rating");
  rule.from = reading.texts(node, "from");
  rule.to = node.find("to") != nullptr ? reading.texts(node, "to") : rule.from;
  rule.roles = reading.texts(node, "roles");
  rule.not_roles = reading.texts(node, "not-roles");
  rule.stress = reading.text(node, "stress");
  if (const Node* when = node.find("when")) {
    if (when->is_list()) {
      for (const Node& item : when->items) rule.when.push_back(read_when(reading, item, rule));
    } else {
      rule.when.push_back(read_when(reading, *when, rule));
    }
  }
}

void read_outcome(SchemaReading& reading, const Node& node, Rule& rule) {
  rule.falls_short = reading.shortfall(node, "falls-short", Shortfall::unfit, true);
  rule.action = reading.text(node, "action", rule.falls_short == Shortfall::care);
  rule.may_loosen = reading.flag(node, "may-loosen");
  rule.because = reading.text(node, "because", true);
  rule.source = reading.text(node, "source", true);
  rule.computation = reading.text(node, "computation", rule.form == RuleForm::computed);
}

void read_rule(SchemaReading& reading, const Node& node) {
  if (!reading.check_keys(node, {"rule",    "form",        "rating",     "from",      "to",
                                 "roles",   "not-roles",   "when",       "stress",    "factor",
                                 "relaxed", "band",        "whole",      "allowance", "limit",
                                 "table",   "computation", "parameters", "looks-for", "falls-short",
                                 "action",  "may-loosen",  "because",    "source",    "examples"})) {
    return;
  }
  Rule rule;
  rule.span = node.span;
  rule.from_shop = reading.shop;
  rule.name = reading.text(node, "rule", true);
  rule.form = form_of(reading, node);
  read_scope(reading, node, rule);
  if (rule.from.empty() || rule.to.empty()) return reading.fault(node.span, "a rule names classes in `from`");
  rule.whole = reading.flag(node, "whole");
  const std::string looks_for = reading.text(node, "looks-for");
  rule.looks_for_extra = looks_for == "extra";
  if (!looks_for.empty() && looks_for != "extra" && looks_for != "conflicts")
    reading.fault(node.span, "a rule looks for `conflicts` or `extra`");
  if (const Node* band = node.find("band")) read_band(reading, *band, rule);
  if (const Node* factor = node.find("factor")) read_factor(reading, *factor, rule);
  if (const Node* relaxed = node.find("relaxed")) read_relaxed(reading, *relaxed, rule);
  read_values(reading, node, rule, rating_of(reading.schema, rule.to, rule.rating));
  read_outcome(reading, node, rule);
  if (const Node* examples = node.find("examples")) {
    for (const Node& item : examples->items) read_example(reading, item, rule);
  }
  reading.schema.rules.push_back(std::move(rule));
}

} // namespace

std::string_view to_text(RuleForm form) {
  for (const FormName& row : form_names) {
    if (row.form == form) return row.name;
  }
  return {};
}

std::string_view to_text(Shortfall shortfall) {
  switch (shortfall) {
  case Shortfall::unsafe:
    return "unsafe";
  case Shortfall::unfit:
    return "unfit";
  case Shortfall::care:
    return "care";
  }
  return {};
}

void read_rules(SchemaReading& reading, const Node& node) {
  if (!reading.check_keys(node, {"rules", "changes"})) return;
  const Node* list = node.find("rules");
  const Node* changes = node.find("changes");
  const bool rules_fit = list == nullptr ? changes != nullptr : list->is_list();
  if (!rules_fit || (changes != nullptr && !changes->is_list()))
    return reading.fault(node.span, "expected a list of `rules`, or of `changes` in a shop's own schema");
  if (list != nullptr) {
    for (const Node& item : list->items) read_rule(reading, item);
  }
  if (changes == nullptr) return;
  if (!reading.shop) return reading.fault(changes->span, "only a shop's own schema changes rules");
  for (const Node& item : changes->items) read_change(reading, item);
}

} // namespace benchlore
