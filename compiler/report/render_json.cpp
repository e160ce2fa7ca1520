// Findings for other programs; the format carries its name and version.
#include "report/render.h"

#include "base/json.h"

#include <algorithm>

namespace benchlore {

namespace {

void write_place(JsonWriter& json, const Place& place) {
  json.field("file", place.path);
  json.field("line", place.line);
  json.field("column", place.column);
}

void write_related(JsonWriter& json, const std::vector<Label>& labels, const Sources& sources) {
  json.key("related");
  json.list();
  for (const Label& label : labels) {
    json.object();
    write_place(json, sources.place(label.span));
    json.field("message", label.text);
    json.end();
  }
  json.end();
}

void write_acceptance(JsonWriter& json, const Acceptance& acceptance) {
  json.key("accepted");
  json.object();
  json.field("by", acceptance.by);
  json.field("date", acceptance.date);
  json.field("reason", acceptance.reason);
  json.end();
}

void write_finding(JsonWriter& json, const Message& message, const Sources& sources) {
  const Place place = sources.place(message.span);
  json.object();
  json.field("rule", row(message.kind).name);
  json.field("severity", to_text(message.severity));
  write_place(json, place);
  json.field("end_line", place.end_line);
  json.field("end_column", place.end_column);
  json.field("message", message.text);
  json.field("help", row(message.kind).help);
  json.field("way_out", message.way_out);
  json.field("subject", message.subject);
  json.field("verdict", message.verdict);
  if (message.accepted) write_acceptance(json, *message.accepted);
  write_related(json, message.labels, sources);
  json.end();
}

void write_counts(JsonWriter& json, const Report& report) {
  json.key("counts");
  json.object();
  for (const Severity severity : {Severity::unsafe, Severity::error, Severity::warning, Severity::note}) {
    json.field(to_text(severity), report.count(severity));
  }
  const auto& all = report.messages();
  const auto accepted =
      std::count_if(all.begin(), all.end(), [](const Message& one) { return one.accepted.has_value(); });
  json.field("accepted", static_cast<std::size_t>(accepted));
  json.end();
}

} // namespace

std::string render_json(const Report& report, const Sources& sources) {
  JsonWriter json;
  json.object();
  json.field("format", "benchlore-findings");
  json.field("version", 1);
  json.key("findings");
  json.list();
  for (const Message& message : report.messages()) write_finding(json, message, sources);
  json.end();
  write_counts(json, report);
  json.end();
  return json.text() + '\n';
}

} // namespace benchlore
