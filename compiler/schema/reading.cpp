// Helpers for reading schema files strictly.
#include "schema/reading.h"

#include "base/text.h"
#include "quantity/unit.h"

namespace benchlore {

void SchemaReading::fault(Span span, std::string message, std::string way_out) {
  report.add(MessageKind::schema_error, span, std::move(message), std::move(way_out));
  sound = false;
}

bool SchemaReading::check_keys(const Node& node, std::initializer_list<std::string_view> allowed) {
  if (!node.is_map()) {
    fault(node.span, "expected a map of keys and values");
    return false;
  }
  const std::vector<std::string> known(allowed.begin(), allowed.end());
  for (const Entry& entry : node.entries) {
    bool found = false;
    for (const std::string& name : known) found = found || name == entry.key;
    if (!found) {
      const auto near = near_names(entry.key, known);
      fault(entry.key_span, "unknown key `" + entry.key + "`", "use " + alternatives(near.empty() ? known : near));
    }
  }
  return true;
}

std::string SchemaReading::text(const Node& map, std::string_view key, bool required) {
  const Node* node = map.find(key);
  if (node == nullptr || node->is_empty()) {
    if (required) fault(map.span, "`" + std::string(key) + "` is missing", "add `" + std::string(key) + ":`");
    return {};
  }
  if (!node->is_scalar()) {
    fault(node->span, "`" + std::string(key) + "` must be one text");
    return {};
  }
  return node->text;
}

bool SchemaReading::flag(const Node& map, std::string_view key) {
  const std::string word = text(map, key);
  if (word.empty() || word == "no" || word == "false") return false;
  if (word == "yes" || word == "true") return true;
  fault(map.find(key)->span, "`" + word + "` is no flag", "write `yes` or `no`");
  return false;
}

std::vector<std::string> SchemaReading::texts_of(const Node& node) {
  std::vector<std::string> result;
  if (node.is_scalar()) {
    if (!node.is_empty()) result.push_back(node.text);
    return result;
  }
  for (const Node& item : node.items) {
    if (item.is_scalar()) {
      result.push_back(item.text);
    } else {
      fault(item.span, "expected a word");
    }
  }
  if (node.is_map()) fault(node.span, "expected a list of words");
  return result;
}

std::vector<std::string> SchemaReading::texts(const Node& map, std::string_view key) {
  const Node* node = map.find(key);
  return node == nullptr ? std::vector<std::string>{} : texts_of(*node);
}

std::optional<double> SchemaReading::number(const Node& node) {
  const auto decimal = node.is_scalar() ? Decimal::parse(node.text) : std::nullopt;
  if (!decimal) {
    fault(node.span, "`" + node.text + "` is no number");
    return std::nullopt;
  }
  return decimal->value();
}

std::optional<Quantity> SchemaReading::quantity(const Node& node, Dimension expected) {
  if (!node.is_scalar()) {
    fault(node.span, "expected a value with its unit");
    return std::nullopt;
  }
  const QuantityResult result = parse_quantity(node.text, expected);
  if (result.error) fault(node.span, result.error->message, result.error->way_out);
  return result.quantity;
}

Dimension SchemaReading::dimension(const std::string& unit, Span span) {
  if (unit.empty() || unit == "none") return dimension::none;
  const auto parsed = parse_unit(unit);
  if (!parsed) fault(span, "unknown unit `" + unit + "`");
  return parsed ? parsed->dimension : dimension::none;
}

Shortfall SchemaReading::shortfall(const Node& map, std::string_view key, Shortfall otherwise, bool required) {
  const std::string word = text(map, key, required);
  if (word == "unsafe") return Shortfall::unsafe;
  if (word == "unfit") return Shortfall::unfit;
  if (word == "care") return Shortfall::care;
  if (!word.empty()) fault(map.find(key)->span, "`" + word + "` is no shortfall", "use `unsafe`, `unfit` or `care`");
  return otherwise;
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

} // namespace benchlore
