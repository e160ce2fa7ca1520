// The checks go over each byte of the text at most twice, whatever the layout.
#include "record/layout.h"

namespace benchlore {

Layout::Level Layout::enter(bool flow, std::size_t column) {
  const Level outer = level_;
  if (flow) {
    ++level_.flow;
  } else {
    level_.indent = static_cast<std::ptrdiff_t>(column);
  }
  return outer;
}

bool Layout::is_blank(std::uint32_t at) const {
  const char c = marks_.at(at);
  return c == ' ' || c == '\t' || c == '\n' || c == '\r';
}

bool Layout::refuse_comment(std::uint32_t at) {
  report_.add(MessageKind::front_matter_syntax, {file_, at, at + 1}, "a `#` without a space before it",
              "put a space before a comment, or quotes around a value that holds the sign");
  return false;
}

bool Layout::check_gap(std::uint32_t from, std::uint32_t to) {
  std::uint32_t line = from; // where the last line in the gap starts
  for (std::uint32_t at = from; at < to; ++at) {
    const char c = marks_.at(at);
    if (c == '\n') line = at + 1;
    if (c == '?') {
      report_.add(MessageKind::front_matter_subset, {file_, at, at + 1}, "a key marked with `?`", "write `key: value`");
      return false;
    }
    if (c != '#') continue;
    if (at > from && !is_blank(at - 1)) return refuse_comment(at);
    if (at == from && at > marks_.begin() && !is_blank(at - 1)) return refuse_comment(at);
    while (at + 1 < to && marks_.at(at + 1) != '\n') ++at;
  }
  return line == from || level_.flow == 0 || check_start_of_line(line);
}

// The line goes on with something begun above, so it must be indented deeper than the block around that.
bool Layout::check_start_of_line(std::uint32_t start) {
  std::uint32_t at = start;
  while (marks_.at(at) == ' ') ++at;
  if (static_cast<std::ptrdiff_t>(at - start) > level_.indent) return true;
  const bool tab = marks_.at(at) == '\t';
  report_.add(MessageKind::front_matter_syntax, {file_, at, tab ? at + 1 : at},
              tab ? "a tab in the indentation"
                  : "a line that goes on with a value and is not indented deeper than its key",
              tab ? "indent with spaces" : "indent it with two more spaces");
  return false;
}

bool Layout::check_lines(Span span) {
  for (std::uint32_t at = span.begin; at < span.end; ++at) {
    if (marks_.at(at) != '\n') continue;
    std::uint32_t text = at + 1;
    while (marks_.at(text) == ' ' || marks_.at(text) == '\t') ++text;
    const bool empty = marks_.at(text) == '\n' || marks_.at(text) == '\r';
    if (!empty && !check_start_of_line(at + 1)) return false;
  }
  return true;
}

bool Layout::check_block_head(Span span) {
  for (std::uint32_t at = span.begin + 1; at < span.end && marks_.at(at) != '\n'; ++at) {
    if (marks_.at(at) != '#') continue;
    return is_blank(at - 1) || refuse_comment(at);
  }
  return true;
}

bool Layout::check_scalar(Span span, yaml_scalar_style_t style) {
  const bool block = style == YAML_LITERAL_SCALAR_STYLE || style == YAML_FOLDED_SCALAR_STYLE;
  if (block) return check_block_head(span);
  if (style != YAML_PLAIN_SCALAR_STYLE || level_.flow > 0) {
    if (!check_lines(span)) return false;
  }
  if (style != YAML_PLAIN_SCALAR_STYLE || marks_.text(span) != "-") return true;
  report_.add(MessageKind::front_matter_syntax, span, "a lone `-`", "put it in quotes if it is meant as text");
  return false;
}

} // namespace benchlore
