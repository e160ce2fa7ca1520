// Builds the tree from libyaml's events, refusing at the event where something is not of the subset. Recursion
// goes as deep as the record, which RecordLimits bounds.
#include "record/record.h"

#include "record/checks.h"
#include "record/events.h"
#include "record/layout.h"

#include <map>
#include <utility>

namespace benchlore {

namespace {

using Keys = std::map<std::string, Span, std::less<>>;

class Reader {
public:
  Reader(const Sources& sources, Span region, Report& report, const RecordLimits& limits)
      : region_(region), report_(report), limits_(limits), parser_(sources.text(region)), marks_(sources, region),
        layout_(marks_, region, report), last_end_(region.begin) {}

  std::optional<Node> record() {
    Node node = empty_record();
    if (!next()) return std::nullopt; // the start of the stream
    if (!next()) return std::nullopt;
    if (is(YAML_STREAM_END_EVENT)) return node;
    if (!document_start() || !next() || !value(node, 1)) return std::nullopt;
    if (!next() || !next() || !last_document()) return std::nullopt;
    return node.is_empty() ? empty_record() : std::move(node);
  }

private:
  bool is(yaml_event_type_t type) const { return event_.raw.type == type; }
  Span event_span() const { return marks_.span(event_.raw.start_mark, event_.raw.end_mark); }

  bool next() {
    yaml_event_delete(&event_.raw);
    if (!yaml_parser_parse(&parser_.raw, &event_.raw)) {
      report_fault(parser_.raw, marks_, report_);
      return false;
    }
    const Span span = event_span();
    const std::uint32_t from = std::exchange(last_end_, std::max(last_end_, span.end));
    if (layout_.check_gap(from, span.begin)) return true;
    yaml_event_delete(&event_.raw);
    return false;
  }

  bool refuse(Span span, std::string text, std::string way_out, std::vector<Label> labels = {}) {
    report_.add(MessageKind::front_matter_subset, span, std::move(text), std::move(way_out), std::move(labels));
    return false;
  }

  Node empty_record() const {
    Node node;
    node.shape = Node::Shape::map;
    node.span = {region_.file, region_.begin, region_.begin};
    return node;
  }

  bool document_start() {
    const auto& start = event_.raw.data.document_start;
    if (!start.version_directive && start.tag_directives.start == start.tag_directives.end) return true;
    return refuse(marks_.word(event_.raw.start_mark), "a `%` directive", "take it out; there is one form of record");
  }

  bool last_document() {
    if (is(YAML_STREAM_END_EVENT)) return true;
    return refuse(marks_.word(event_.raw.start_mark), "a second document", "keep one record in one note");
  }

  // A value from the event at hand; `depth` counts the lists and maps it would make with those around it.
  bool value(Node& node, std::size_t depth) {
    if (is(YAML_ALIAS_EVENT)) {
      return refuse(event_span(), "an alias `*`",
                    "write the value out here; a value that begins with `*` takes quotes");
    }
    if (!plain_start()) return false;
    if (is(YAML_SCALAR_EVENT)) return scalar(node);
    if (depth > limits_.depth) return too_deep();
    return is(YAML_SEQUENCE_START_EVENT) ? list(node, depth) : map(node, depth);
  }

  // Refuses what can stand before a value: an anchor or a tag.
  bool plain_start() {
    const auto& data = event_.raw.data;
    const bool scalar = is(YAML_SCALAR_EVENT), list = is(YAML_SEQUENCE_START_EVENT);
    const auto* anchor = scalar ? data.scalar.anchor : list ? data.sequence_start.anchor : data.mapping_start.anchor;
    const auto* tag = scalar ? data.scalar.tag : list ? data.sequence_start.tag : data.mapping_start.tag;
    if (!anchor && !tag) return true;
    const Span span = marks_.word(event_.raw.start_mark);
    if (marks_.at(span.begin) == '&') {
      return refuse(span, "an anchor `&`",
                    "take it out and repeat the value where it is meant; or put the value in quotes");
    }
    return refuse(span, "a tag `!`",
                  "take it out; the field decides how its value is read; or put the value in quotes");
  }

  bool too_deep() {
    report_.add(MessageKind::front_matter_limit, marks_.character(event_.raw.start_mark),
                "the record is nested deeper than " + std::to_string(limits_.depth) + " levels",
                "write it flatter; no field needs this");
    return false;
  }

  bool scalar(Node& node) {
    const auto& data = event_.raw.data.scalar;
    node.shape = Node::Shape::scalar;
    node.text.assign(reinterpret_cast<const char*>(data.value), data.length);
    node.quoted = data.style != YAML_PLAIN_SCALAR_STYLE;
    node.span = event_span();
    while (node.span.end > node.span.begin && is_blank(marks_.at(node.span.end - 1))) --node.span.end;
    if (!layout_.check_scalar(node.span, data.style)) return false;
    if (node.text.find('\0') == std::string::npos) return true;
    return refuse(node.span, "an escape for the character 0", "take it out");
  }

  static bool is_blank(char c) { return c == ' ' || c == '\t' || c == '\n' || c == '\r'; }

  bool list(Node& node, std::size_t depth) {
    node.shape = Node::Shape::list;
    node.span = event_span();
    const bool flow = event_.raw.data.sequence_start.style == YAML_FLOW_SEQUENCE_STYLE;
    const auto outer = layout_.enter(flow, event_.raw.start_mark.column);
    while (next() && !is(YAML_SEQUENCE_END_EVENT)) {
      if (!value(node.items.emplace_back(), depth + 1)) return false;
      node.span.end = std::max(node.span.end, node.items.back().span.end);
    }
    layout_.leave(outer);
    return close(node, YAML_SEQUENCE_END_EVENT, flow);
  }

  bool map(Node& node, std::size_t depth) {
    node.shape = Node::Shape::map;
    node.span = event_span();
    const bool flow = event_.raw.data.mapping_start.style == YAML_FLOW_MAPPING_STYLE;
    if (flow && marks_.at(node.span.begin) == '?') return layout_.check_gap(node.span.begin, node.span.begin + 1);
    const auto outer = layout_.enter(flow, event_.raw.start_mark.column);
    Keys keys;
    while (next() && !is(YAML_MAPPING_END_EVENT)) {
      Entry& entry = node.entries.emplace_back();
      if (!key(entry, keys) || !next() || !value(entry.value, depth + 1)) return false;
      if (entry.value.is_empty()) entry.value.span = after_key(entry.key_span);
      node.span.end = std::max(node.span.end, entry.value.span.end);
    }
    layout_.leave(outer);
    return close(node, YAML_MAPPING_END_EVENT, flow);
  }

  // The end of a block lies at whatever comes next, so only brackets and braces set the end of a span.
  bool close(Node& node, yaml_event_type_t end, bool flow) {
    if (!is(end)) return false; // the loop ended on a fault, which has been reported
    if (flow && event_.raw.end_mark.index > event_.raw.start_mark.index) node.span.end = event_span().end;
    return true;
  }

  // Where a missing value would begin: behind the colon, if there is one.
  Span after_key(Span key) const {
    std::uint32_t at = key.end;
    while (is_blank(marks_.at(at)) && at < marks_.end()) ++at;
    const std::uint32_t end = marks_.at(at) == ':' ? at + 1 : key.end;
    return {key.file, end, end};
  }

  bool key(Entry& entry, Keys& keys) {
    Node node;
    const bool complex = is(YAML_SEQUENCE_START_EVENT) || is(YAML_MAPPING_START_EVENT);
    if (complex && plain_start()) {
      return refuse(marks_.character(event_.raw.start_mark), "a list or map as a key", "use a plain word as key");
    }
    if (complex || !value(node, 1)) return false;
    if (node.is_empty()) return refuse(node.span, "an entry without a key", "write `key: value`");
    if (node.text == "<<" && !node.quoted) {
      return refuse(node.span, "a merge key `<<`", "write out the entries that it stands for");
    }
    const auto [first, fresh] = keys.emplace(node.text, node.span);
    if (!fresh) {
      return refuse(node.span, "the key `" + node.text + "` is already there", "keep one of the two",
                    {{first->second, "first written here"}});
    }
    entry.key = std::move(node.text);
    entry.key_span = node.span;
    return true;
  }

  Span region_;
  Report& report_;
  const RecordLimits& limits_;
  Parser parser_;
  Event event_;
  Marks marks_;
  Layout layout_;
  std::uint32_t last_end_; // of the events so far
};

Span cut_to_file(const Sources& sources, Span region) {
  const auto size = static_cast<std::uint32_t>(sources.text(region.file).size());
  region.end = std::min(region.end, size);
  region.begin = std::min(region.begin, region.end);
  if (sources.text(region).starts_with("\xEF\xBB\xBF")) region.begin += 3; // the mark that some editors put first
  return region;
}

} // namespace

const Node* Node::find(std::string_view key) const {
  for (const Entry& entry : entries) {
    if (entry.key == key) return &entry.value;
  }
  return nullptr;
}

std::optional<Node> read_record(const Sources& sources, Span region, Report& report, RecordLimits limits) {
  const Span inside = cut_to_file(sources, region);
  if (!check_text(sources, inside, report, limits)) return std::nullopt;
  return Reader(sources, inside, report, limits).record();
}

std::string text_in(const Node& map, std::string_view key) {
  const Node* node = map.find(key);
  return node != nullptr && node->is_scalar() ? node->text : std::string();
}

} // namespace benchlore
