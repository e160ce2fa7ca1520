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
    {"computed", RuleForm::computed},
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

// The definition of a rating as the first of these classes has it; null when none does.
const RatingType* rating_of(const Schema& schema, const std::vector<std::string>& classes, const std::string& name) {
  for (const std::string& class_name : classes) {
    const ComponentClass* made = schema.find_class(class_name);
    if (made == nullptr) continue;
    const auto found = made->ratings.find(name);
    if (found != made->ratings.end()) return &found->second;
  }
  return nullptr;
}

const RatingType* stress_of(const Schema& schema, const std::string& name) {
  const auto found = schema.stresses.find(name);
  return found == schema.stresses.end() ? nullptr : &found->second;
}

std::optional<Rule::Band> band_of(SchemaReading& reading, const Node& node) {
  const std::string text = node.text;
  const std::size_t dots = text.find("..");
  auto part = [](std::string_view piece) -> std::optional<double> {
    piece = trim(piece);
    if (!piece.empty() && piece.back() == '%') piece.remove_suffix(1);
    if (!piece.empty() && piece.front() == '+') piece.remove_prefix(1);
    const auto number = Decimal::parse(trim(piece));
    return number ? std::optional<double>(number->value() / 100) : std::nullopt;
  };
  const auto below = dots == std::string::npos ? std::nullopt : part(text.substr(0, dots));
  const auto above = dots == std::string::npos ? std::nullopt : part(text.substr(dots + 2));
  if (!below || !above || *below > *above) {
    reading.fault(node.span, "`" + text + "` is no band", "write `-20..+100%`");
    return std::nullopt;
  }
  return Rule::Band{-*below, *above};
}

void read_band(SchemaReading& reading, const Node& node, Rule& rule) {
  if (node.is_scalar()) {
    if (const auto band = band_of(reading, node)) rule.band = *band;
    return;
  }
  bool otherwise = false;
  for (const Entry& entry : node.entries) {
    const auto band = band_of(reading, entry.value);
    if (!band) continue;
    if (entry.key == "otherwise") {
      rule.band = *band;
      otherwise = true;
    } else {
      rule.band_by_role[entry.key] = *band;
    }
  }
  if (!otherwise && rule.roles.empty()) reading.fault(node.span, "a band by role needs `otherwise`");
}

void read_factor(SchemaReading& reading, const Node& node, Rule& rule) {
  if (node.is_scalar()) {
    rule.factor = reading.number(node).value_or(1.0);
    return;
  }
  for (const Entry& entry : node.entries) {
    const double factor = reading.number(entry.value).value_or(1.0);
    if (entry.key == "otherwise") {
      rule.factor = factor;
    } else {
      rule.factor_by_role[entry.key] = factor;
    }
  }
}

WhenClause read_when(SchemaReading& reading, const Node& node, const Rule& rule) {
  WhenClause when;
  if (!reading.check_keys(node, {"original", "substitute", "position", "is", "is-not", "range", "unstated"}))
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
      bool read = false; // a parameter carries its own unit
      for (const auto& [unused, stress] : reading.schema.stresses) {
        if (read || stress.form != RatingForm::quantity) continue;
        const auto result = parse_quantity(text, stress.dimension);
        if (!result.quantity) continue;
        rule.parameters[entry.key] = StatedValue{*result.quantity, entry.value.span, {}};
        read = true;
      }
      if (!read) reading.fault(entry.value.span, "`" + text + "` has no unit of any stress");
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
  if (!reading.check_keys(node, {"rule",        "form",      "rating",     "from",    "to",          "roles",
                                 "not-roles",   "when",      "stress",     "factor",  "relaxed",     "band",
                                 "whole",       "allowance", "limit",      "table",   "computation", "parameters",
                                 "falls-short", "action",    "may-loosen", "because", "source",      "examples"})) {
    return;
  }
  Rule rule;
  rule.span = node.span;
  rule.name = reading.text(node, "rule", true);
  rule.form = form_of(reading, node);
  read_scope(reading, node, rule);
  if (rule.from.empty() || rule.to.empty()) return reading.fault(node.span, "a rule names classes in `from`");
  rule.whole = reading.flag(node, "whole");
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
  if (!reading.check_keys(node, {"rules"})) return;
  const Node* list = node.find("rules");
  if (list == nullptr || !list->is_list()) return reading.fault(node.span, "expected a list of `rules`");
  for (const Node& item : list->items) read_rule(reading, item);
}

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
