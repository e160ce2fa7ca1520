// Findings for a person at a terminal: a head line, what was found, the line with a mark, and the way out.
#include "report/render.h"

#include "base/text.h"
#include "report/shown.h"

#include <algorithm>

namespace benchlore {

namespace {

constexpr std::size_t excerpt_points = 100;

class TextRenderer {
public:
  TextRenderer(const Sources& sources, bool colour) : sources_(sources), colour_(colour) {}

  void message(const Message& message) {
    head(message);
    out_ += "  " + shown(message.text) + '\n';
    source_line(message.span, '^', paint(message.severity));
    for (const Label& label : message.labels) second_place(label);
    if (!message.way_out.empty()) out_ += "  to settle: " + shown(message.way_out) + '\n';
    if (message.accepted) acceptance(*message.accepted);
    out_ += '\n';
  }

  void summary(const Report& report) {
    std::size_t accepted = 0;
    for (const Message& message : report.messages()) accepted += message.accepted ? 1 : 0;
    out_ += std::to_string(report.count(Severity::unsafe)) + " unsafe, " + counted(report, Severity::error) + ", " +
            counted(report, Severity::warning) + ", " + counted(report, Severity::note);
    if (accepted > 0) out_ += ", " + std::to_string(accepted) + " accepted";
    out_ += '\n';
  }

  std::string take() { return std::move(out_); }

private:
  static std::string counted(const Report& report, Severity severity) {
    const std::size_t count = report.count(severity);
    return std::to_string(count) + ' ' + std::string(to_text(severity)) + (count == 1 ? "" : "s");
  }

  static std::string_view paint(Severity severity) {
    switch (severity) {
    case Severity::unsafe:
      return "\x1b[1;37;41m";
    case Severity::error:
      return "\x1b[1;31m";
    case Severity::warning:
      return "\x1b[1;33m";
    case Severity::note:
      return "\x1b[1;36m";
    }
    return "";
  }

  void painted(std::string_view paint, std::string_view text) {
    if (colour_) out_ += paint;
    out_ += text;
    if (colour_) out_ += "\x1b[0m";
  }

  void head(const Message& message) {
    painted(paint(message.severity), to_text(message.severity));
    (out_ += ' ') += row(message.kind).name;
    if (message.span.file.known()) out_ += ' ' + place_text(message.span);
    out_ += '\n';
  }

  std::string place_text(Span span) const {
    const Place place = sources_.place(span);
    return shown(place.path) + ':' + std::to_string(place.line) + ':' + std::to_string(place.column);
  }

  // The line that the span begins in; a span over several lines is marked to the end of the first.
  void source_line(Span span, char mark, std::string_view paint) {
    const std::string_view line = sources_.line_of(span);
    if (trim(line).empty()) return;
    const auto start = static_cast<std::size_t>(line.data() - sources_.text(span.file).data());
    const Excerpt cut = excerpt(line, span.begin - start, span.end - start, excerpt_points);
    const std::string number = std::to_string(sources_.place(span).line);
    const std::size_t margin = std::max<std::size_t>(number.size(), 4) + 2;
    out_ += std::string(margin - number.size(), ' ') + number + " | " + cut.line + '\n';
    out_ += std::string(margin, ' ') + " | " + std::string(cut.before, ' ');
    painted(paint, std::string(cut.width, mark));
    out_ += '\n';
  }

  void second_place(const Label& label) {
    out_ += "  " + shown(label.text);
    if (label.span.file.known()) out_ += ": " + place_text(label.span);
    out_ += '\n';
    source_line(label.span, '-', "\x1b[1;34m");
  }

  void acceptance(const Acceptance& acceptance) {
    out_ += "  accepted by " + shown(acceptance.by) + " on " + shown(acceptance.date) + ": " +
            shown(acceptance.reason) + '\n';
  }

  const Sources& sources_;
  bool colour_;
  std::string out_;
};

} // namespace

std::string render_text(const Report& report, const Sources& sources, bool colour) {
  TextRenderer renderer(sources, colour);
  for (const bool accepted : {false, true}) {
    for (const Message& message : report.messages()) {
      if (message.accepted.has_value() == accepted) renderer.message(message);
    }
  }
  renderer.summary(report);
  return renderer.take();
}

} // namespace benchlore
