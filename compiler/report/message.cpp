// The table of kinds, and the report: a plain list that is put in order once everything has been said.
#include "report/message.h"

#include <algorithm>
#include <array>
#include <tuple>

namespace benchlore {

namespace {

constexpr auto table = std::to_array<KindRow>({
#define KIND(id, name, severity, help) {MessageKind::id, name, Severity::severity, help},
#include "report/kinds.inc"
#undef KIND
});

} // namespace

std::string_view to_text(Severity severity) {
  switch (severity) {
  case Severity::unsafe:
    return "unsafe";
  case Severity::error:
    return "error";
  case Severity::warning:
    return "warning";
  case Severity::note:
    return "note";
  }
  return "note";
}

const KindRow& row(MessageKind kind) { return table[static_cast<std::size_t>(kind)]; }

std::span<const KindRow> message_kinds() { return table; }

Message& Report::add(MessageKind kind, Span span, std::string text, std::string way_out, std::vector<Label> labels) {
  Message message;
  message.kind = kind;
  message.severity = row(kind).severity;
  message.span = span;
  message.text = std::move(text);
  message.way_out = std::move(way_out);
  message.labels = std::move(labels);
  messages_.push_back(std::move(message));
  return messages_.back();
}

bool Report::has(Severity at_least) const {
  return std::any_of(messages_.begin(), messages_.end(),
                     [&](const Message& message) { return !message.accepted && message.severity <= at_least; });
}

std::size_t Report::count(Severity severity) const {
  const auto counts = [&](const Message& message) { return !message.accepted && message.severity == severity; };
  return static_cast<std::size_t>(std::count_if(messages_.begin(), messages_.end(), counts));
}

void Report::sort(const Sources& sources) {
  const auto rank = [&](const Message& message) {
    return std::tuple<bool, Severity, std::string_view, std::uint32_t, std::uint32_t, std::string_view,
                      std::string_view>(message.accepted.has_value(), message.severity, sources.path(message.span.file),
                                        message.span.begin, message.span.end, row(message.kind).name, message.text);
  };
  std::stable_sort(messages_.begin(), messages_.end(),
                   [&](const Message& left, const Message& right) { return rank(left) < rank(right); });
}

} // namespace benchlore
