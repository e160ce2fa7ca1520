// Bands and factors of rules, and what a shop's own schema changes about them.
#include "schema/reading.h"

#include "base/text.h"

#include <algorithm>
#include <set>

namespace benchlore {
namespace {

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

double factor_in(const Rule& rule, const std::string& role) {
  const auto found = rule.factor_by_role.find(role);
  return found == rule.factor_by_role.end() ? rule.factor : found->second;
}

Rule::Band band_in(const Rule& rule, const std::string& role) {
  const auto found = rule.band_by_role.find(role);
  return found == rule.band_by_role.end() ? rule.band : found->second;
}

// Every role that either of them names, and the empty one for all others.
std::set<std::string> roles_of(const Rule& a, const Rule& b) {
  std::set<std::string> roles{""};
  for (const Rule* rule : {&a, &b}) {
    for (const auto& [role, unused] : rule->factor_by_role) roles.insert(role);
    for (const auto& [role, unused] : rule->band_by_role) roles.insert(role);
  }
  return roles;
}

// A factor multiplies what is asked for: the greater one asks for more where the value must be at least so much, and
// for less where it must be at most so much.
bool factor_loosens(const Rule& old, double before, double after) {
  const bool upward = old.form == RuleForm::at_least || old.form == RuleForm::withstands;
  return upward ? after < before : after > before;
}

bool loosens(const Rule& old, const Rule& changed) {
  if (changed.falls_short > old.falls_short) return true; // unsafe is the first
  for (const std::string& role : roles_of(old, changed)) {
    if (factor_loosens(old, factor_in(old, role), factor_in(changed, role))) return true;
    const Rule::Band before = band_in(old, role), after = band_in(changed, role);
    if (after.below > before.below || after.above > before.above) return true;
  }
  if (!old.allowance || !changed.allowance) return changed.allowance.has_value();
  return *changed.allowance->centre() > *old.allowance->centre();
}

// A change without `roles` of its own speaks of every role: what was said by role before goes.
void apply(SchemaReading& reading, const Node& node, Rule& rule) {
  if (const Node* factor = node.find("factor")) {
    rule.factor_by_role.clear();
    read_factor(reading, *factor, rule);
  }
  if (const Node* band = node.find("band")) {
    rule.band_by_role.clear();
    read_band(reading, *band, rule);
  }
  if (const Node* allowance = node.find("allowance")) {
    const RatingType* type = rating_of(reading.schema, rule.to, rule.rating);
    if (type != nullptr) rule.allowance = reading.quantity(*allowance, type->dimension);
    if (rule.allowance && !rule.allowance->centre()) reading.fault(allowance->span, "an allowance is one value");
  }
  rule.falls_short = reading.shortfall(node, "falls-short", rule.falls_short, false);
  if (node.find("action") != nullptr) rule.action = reading.text(node, "action");
}

std::string what_changed(const Node& node) {
  std::string text;
  for (const char* key : {"factor", "band", "allowance", "falls-short"}) {
    const Node* found = node.find(key);
    if (found == nullptr) continue;
    std::string value = found->text;
    for (const Entry& entry : found->entries) value += (value.empty() ? "" : ", ") + entry.key + " " + entry.value.text;
    text += (text.empty() ? "" : "; ") + std::string(key) + " " + value;
  }
  return text;
}

} // namespace

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

void read_change(SchemaReading& reading, const Node& node) {
  if (!reading.check_keys(node,
                          {"rule", "factor", "band", "allowance", "falls-short", "action", "because", "by", "date"}))
    return;
  const std::string name = reading.text(node, "rule", true);
  const std::string because = reading.text(node, "because", true), by = reading.text(node, "by", true),
                    date = reading.text(node, "date", true);
  auto& rules = reading.schema.rules;
  const auto rule = std::find_if(rules.begin(), rules.end(), [&](auto& r) { return r.name == name; });
  if (rule == rules.end()) {
    std::vector<std::string> known;
    for (const Rule& one : rules) known.push_back(one.name);
    return reading.fault(node.span, "there is no rule `" + name + "` to change",
                         "use " + alternatives(near_names(name, known)));
  }
  const std::string what = what_changed(node);
  if (what.empty())
    return reading.fault(node.span, "nothing is changed", "give `factor`, `band`, `allowance` or `falls-short`");
  Rule changed = *rule;
  apply(reading, node, changed);
  if (changed.falls_short == Shortfall::care && changed.action.empty())
    return reading.fault(node.span, "a rule that asks for care needs an `action`");
  const bool looser = loosens(*rule, changed);
  if (looser && !rule->may_loosen) {
    return reading.fault(node.span, "rule `" + name + "` may not be loosened",
                         "only a rule that says `may-loosen` can be; tighten it or leave it as it is");
  }
  changed.loosened = rule->loosened || looser;
  changed.changed = std::string(looser ? "loosened" : "tightened") + " by this shop to " + what + " (" + because +
                    "; " + by + ", " + date + ")";
  *rule = std::move(changed);
}

} // namespace benchlore
