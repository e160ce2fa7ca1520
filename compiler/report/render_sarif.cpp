// Findings as SARIF 2.1.0, which code hosts and editors read. SARIF has no level above error, so `unsafe` is an
// error whose properties say so.
#include "report/render.h"

#include "base/json.h"

namespace benchlore {

namespace {

std::string_view level(Severity severity) {
  return severity == Severity::unsafe ? to_text(Severity::error) : to_text(severity);
}

// The path as a relative URI; everything but unreserved characters and slashes is percent-encoded.
std::string uri(std::string_view path) {
  constexpr std::string_view digits = "0123456789ABCDEF";
  std::string out;
  for (const char c : path) {
    const bool letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
    if (letter || std::string_view("-._~/").find(c) != std::string_view::npos) {
      out += c;
    } else {
      const auto byte = static_cast<unsigned char>(c);
      ((out += '%') += digits[byte >> 4]) += digits[byte & 15];
    }
  }
  return out;
}

void write_text(JsonWriter& json, std::string_view name, std::string_view text) {
  json.key(name);
  json.object();
  json.field("text", text);
  json.end();
}

void write_severity(JsonWriter& json, Severity severity) { json.field("severity", to_text(severity)); }

void write_rule(JsonWriter& json, const KindRow& kind) {
  json.object();
  json.field("id", kind.name);
  write_text(json, "fullDescription", kind.help);
  write_text(json, "help", kind.help);
  json.key("defaultConfiguration");
  json.object();
  json.field("level", level(kind.severity));
  json.end();
  json.key("properties");
  json.object();
  write_severity(json, kind.severity);
  json.end();
  json.end();
}

void write_driver(JsonWriter& json) {
  json.key("tool");
  json.object();
  json.key("driver");
  json.object();
  json.field("name", "benchlore");
  json.key("rules");
  json.list();
  for (const KindRow& kind : message_kinds()) write_rule(json, kind);
  json.end();
  json.end();
  json.end();
}

void write_physical(JsonWriter& json, const Place& place) {
  json.key("physicalLocation");
  json.object();
  json.key("artifactLocation");
  json.object();
  json.field("uri", uri(place.path));
  json.end();
  json.key("region");
  json.object();
  json.field("startLine", place.line);
  json.field("startColumn", place.column);
  json.field("endLine", place.end_line);
  json.field("endColumn", place.end_column);
  json.end();
  json.end();
}

void write_locations(JsonWriter& json, const Message& message, const Sources& sources) {
  json.key("locations");
  json.list();
  if (message.span.file.known()) {
    json.object();
    write_physical(json, sources.place(message.span));
    json.end();
  }
  json.end();
  json.key("relatedLocations");
  json.list();
  for (const Label& label : message.labels) {
    if (!label.span.file.known()) continue;
    json.object();
    write_physical(json, sources.place(label.span));
    write_text(json, "message", label.text);
    json.end();
  }
  json.end();
}

void write_suppression(JsonWriter& json, const Acceptance& acceptance) {
  json.key("suppressions");
  json.list();
  json.object();
  json.field("kind", "inSource");
  json.field("justification", acceptance.reason + " (" + acceptance.by + ", " + acceptance.date + ")");
  json.end();
  json.end();
}

void write_properties(JsonWriter& json, const Message& message) {
  json.key("properties");
  json.object();
  write_severity(json, message.severity);
  if (!message.way_out.empty()) json.field("way_out", message.way_out);
  if (!message.subject.empty()) json.field("subject", message.subject);
  if (!message.verdict.empty()) json.field("verdict", message.verdict);
  json.end();
}

void write_result(JsonWriter& json, const Message& message, const Sources& sources) {
  const std::string way_out = message.way_out.empty() ? "" : "; to settle: " + message.way_out;
  json.object();
  json.field("ruleId", row(message.kind).name);
  json.field("ruleIndex", static_cast<std::size_t>(message.kind));
  json.field("level", level(message.severity));
  write_text(json, "message", message.text + way_out);
  write_locations(json, message, sources);
  if (message.accepted) write_suppression(json, *message.accepted);
  write_properties(json, message);
  json.end();
}

} // namespace

std::string render_sarif(const Report& report, const Sources& sources) {
  JsonWriter json;
  json.object();
  json.field("$schema", "https://json.schemastore.org/sarif-2.1.0.json");
  json.field("version", "2.1.0");
  json.key("runs");
  json.list();
  json.object();
  write_driver(json);
  json.field("columnKind", "unicodeCodePoints");
  json.key("results");
  json.list();
  for (const Message& message : report.messages()) write_result(json, message, sources);
  json.end();
  json.end();
  json.end();
  json.end();
  return json.text() + '\n';
}

} // namespace benchlore
