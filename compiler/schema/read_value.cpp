// One value of a rating or stress, from a scalar, a list of words, or a map with `value`, `at` and `source`, or with
// `makers` where makers differ.
#include "base/text.h"
#include "schema/schema.h"

#include <algorithm>

namespace benchlore {
namespace {

// `X1/Y2` and `[X1, Y2]` are both two words.
std::vector<std::string> words_of(const Node& node) {
  std::vector<std::string> words;
  if (node.is_list()) {
    for (const Node& item : node.items) {
      if (item.is_scalar()) words.emplace_back(trim(item.text));
    }
    return words;
  }
  for (std::string_view piece : split(node.text, '/')) {
    if (!trim(piece).empty()) words.emplace_back(trim(piece));
  }
  return words;
}

bool known_word(const RatingType& type, const std::string& word) {
  if (type.words.empty()) return true;
  for (const std::string& known : type.words) {
    if (known == word) return true;
  }
  return false;
}

std::optional<Value> read_words(const Node& node, const RatingType& type, Report& report, MessageKind kind) {
  Words words;
  // Free words may hold a stroke (`5/8 inch`), so they are not split.
  words.items = type.words.empty() && node.is_scalar() ? std::vector<std::string>{node.text} : words_of(node);
  if (words.items.empty() || (node.is_scalar() && node.text.empty())) {
    report.add(kind, node.span, "`" + type.name + "` has no value", "write one of " + alternatives(type.words));
    return std::nullopt;
  }
  for (const std::string& word : words.items) {
    if (known_word(type, word)) continue;
    const auto near = near_names(word, type.words);
    report.add(kind, node.span, "`" + word + "` is no word for `" + type.name + "`",
               "use " + alternatives(near.empty() ? type.words : near));
    return std::nullopt;
  }
  return Value{words};
}

// The error's place inside a plain scalar is exact; in a quoted or folded one the whole value is marked.
Span error_span(const Node& node, const QuantityError& error, const Sources& sources) {
  const std::string_view written = sources.text(node.span);
  if (written != node.text || error.offset + error.length > written.size()) return node.span;
  Span span = node.span;
  span.begin += static_cast<std::uint32_t>(error.offset);
  span.end = span.begin + static_cast<std::uint32_t>(error.length > 0 ? error.length : 1);
  return span;
}

std::optional<Value> read_quantity(const Node& node, std::string_view text, const RatingType& type,
                                   const Sources& sources, Report& report, MessageKind kind) {
  const QuantityResult result = parse_quantity(text, type.dimension);
  if (result.quantity) return Value{*result.quantity};
  const QuantityError& error = *result.error;
  report.add(kind, error_span(node, error, sources), "`" + type.name + "`: " + error.message, error.way_out);
  return std::nullopt;
}

struct MapForm {
  const Node* value = nullptr;
  const Node* makers = nullptr;
  std::string at;
  std::string source;
};

std::optional<MapForm> open_map(const Node& node, const RatingType& type, Report& report, MessageKind kind) {
  MapForm form;
  for (const Entry& entry : node.entries) {
    if (entry.key == "value") {
      form.value = &entry.value;
    } else if (entry.key == "makers" && entry.value.is_map() && !entry.value.entries.empty()) {
      form.makers = &entry.value;
    } else if (entry.key == "at" && entry.value.is_scalar()) {
      form.at = entry.value.text;
    } else if (entry.key == "source" && entry.value.is_scalar()) {
      form.source = entry.value.text;
    } else {
      report.add(kind, entry.key_span, "`" + entry.key + "` is no part of a value",
                 "use `value`, `at`, `source` and `makers`");
      return std::nullopt;
    }
  }
  if ((form.value == nullptr) == (form.makers == nullptr)) {
    report.add(kind, node.span, "`" + type.name + "` needs either `value` or `makers`",
               "write `value:`, or `makers:` with a value for each maker");
    return std::nullopt;
  }
  return form;
}

std::optional<Value> read_one(const Node& node, const std::string& at, const RatingType& type, const Sources& sources,
                              Report& report, MessageKind kind) {
  if (type.form == RatingForm::words) return read_words(node, type, report, kind);
  if (node.is_scalar()) {
    const std::string text = at.empty() ? node.text : node.text + " @ " + at;
    return read_quantity(node, text, type, sources, report, kind);
  }
  report.add(kind, node.span, "`" + type.name + "` must be one value");
  return std::nullopt;
}

// What all makers together leave open: from the least to the greatest that any of them states, or all their words.
// Conditions count only where all makers state the same.
Value span_of(const std::vector<std::pair<std::string, Value>>& by_maker) {
  Value whole = by_maker.front().second;
  for (const auto& [unused, value] : by_maker) {
    if (Words* words = std::get_if<Words>(&whole)) {
      for (const std::string& item : std::get<Words>(value).items) {
        if (std::find(words->items.begin(), words->items.end(), item) == words->items.end())
          words->items.push_back(item);
      }
      continue;
    }
    Quantity& all = std::get<Quantity>(whole);
    const Quantity& one = std::get<Quantity>(value);
    if (all == one) continue;
    Quantity wider;
    wider.dimension = all.dimension;
    wider.range = all.low() && one.low() && all.high() && one.high();
    if (all.low() && one.low()) wider.minimum = Decimal::nearest(std::min(*all.low(), *one.low()));
    if (all.high() && one.high()) wider.maximum = Decimal::nearest(std::max(*all.high(), *one.high()));
    if (all.at == one.at) wider.at = all.at;
    all = std::move(wider);
  }
  return whole;
}

} // namespace

std::optional<StatedValue> read_value(const Node& node, const RatingType& type, const Sources& sources, Report& report,
                                      MessageKind kind) {
  MapForm form;
  form.value = &node;
  if (node.is_map()) {
    const auto opened = open_map(node, type, report, kind);
    if (!opened) return std::nullopt;
    form = *opened;
  }
  StatedValue stated{{}, node.span, form.source, {}};
  if (form.makers == nullptr) {
    const auto value = read_one(*form.value, form.at, type, sources, report, kind);
    if (!value) return std::nullopt;
    stated.value = *value;
    return stated;
  }
  for (const Entry& entry : form.makers->entries) {
    const auto value = read_one(entry.value, form.at, type, sources, report, kind);
    if (!value) return std::nullopt;
    stated.by_maker.emplace_back(entry.key, *value);
  }
  stated.value = span_of(stated.by_maker);
  return stated;
}

} // namespace benchlore
