// Findings as data: what kind, where, what was found, what would settle it. They become text at the end.
#pragma once

#include "report/span.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace benchlore {

// Worst first. `unsafe` is kept for what can injure, burn or destroy.
enum class Severity { unsafe, error, warning, note };

std::string_view to_text(Severity severity);

// The registered kinds; `kinds.inc` is the one place that lists them with their help.
enum class MessageKind {
#define KIND(id, name, severity, help) id,
#include "report/kinds.inc"
#undef KIND
};

struct KindRow {
  MessageKind kind;
  std::string_view name; // as printed: `broken-link`
  Severity severity;
  std::string_view help; // a paragraph on what it means and what to do
};

const KindRow& row(MessageKind kind);
std::span<const KindRow> message_kinds();

struct Label {
  Span span;
  std::string text;
};

// A finding that the shop has looked at and lives with.
struct Acceptance {
  std::string reason;
  std::string by;
  std::string date;
};

struct Message {
  MessageKind kind{};
  Severity severity{};
  Span span;
  std::string text;          // what was found; lower case, no full stop
  std::string way_out;       // what would settle it
  std::vector<Label> labels; // other places it has to do with
  std::optional<Acceptance> accepted;
  std::string subject; // id of the note it is about, when it is about one
  std::string verdict; // the verdict's word, for findings about a substitute
};

// Collects messages; reporting never fails.
class Report {
public:
  Message& add(MessageKind kind, Span span, std::string text, std::string way_out = {}, std::vector<Label> labels = {});
  const std::vector<Message>& messages() const { return messages_; }
  std::vector<Message>& messages() { return messages_; }
  bool has(Severity at_least) const; // an accepted message does not count
  std::size_t count(Severity severity) const;

  // Unsafe first, then by severity, file path, place, kind and text; accepted ones after all others.
  void sort(const Sources& sources);

private:
  std::vector<Message> messages_;
};

} // namespace benchlore
