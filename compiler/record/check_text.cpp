// What is refused before libyaml sees it: too much text, other encodings, control characters, and the line ends
// of YAML 1.1 that YAML 1.2 reads as ordinary characters.
#include "record/checks.h"

#include "base/text.h"

#include <cstdio>

namespace benchlore {

namespace {

bool is_utf16(std::string_view text) { return text.starts_with("\xFE\xFF") || text.starts_with("\xFF\xFE"); }

bool is_control(char32_t point) {
  return (point < 0x20 && point != '\t' && point != '\n' && point != '\r') || (point >= 0x7F && point < 0xA0) ||
         (point & 0xFFFE) == 0xFFFE;
}

std::string name_of(char32_t point) {
  char buffer[16];
  std::snprintf(buffer, sizeof buffer, "U+%04X", static_cast<unsigned>(point));
  return buffer;
}

void refuse_bytes(Report& report, Span span) {
  report.add(MessageKind::front_matter_syntax, span, "this is not UTF-8 text",
             "save the file as UTF-8; if a sign was lost in an earlier copy, type it anew");
}

// True when the character may stand in a record.
bool check_point(Report& report, Span span, char32_t point) {
  if (point == bad_point) {
    refuse_bytes(report, span);
  } else if (point == 0x85 || point == 0x2028 || point == 0x2029) {
    report.add(MessageKind::front_matter_subset, span, "the line separator " + name_of(point),
               "replace it by an ordinary line end");
  } else if (is_control(point)) {
    report.add(MessageKind::front_matter_syntax, span, "the control character " + name_of(point), "delete it");
  } else if (point == 0xFEFF) {
    report.add(MessageKind::front_matter_syntax, span, "a byte order mark (U+FEFF) in the middle of the text",
               "delete it; it is left over from joining two files");
  } else {
    return true;
  }
  return false;
}

} // namespace

bool check_text(const Sources& sources, Span region, Report& report, const RecordLimits& limits) {
  const std::string_view text = sources.text(region);
  if (is_utf16(text)) {
    report.add(MessageKind::front_matter_syntax, {region.file, region.begin, region.begin + 2},
               "the text is UTF-16, not UTF-8", "save the file as UTF-8");
    return false;
  }
  if (text.size() > limits.bytes) {
    const auto at = region.begin + static_cast<std::uint32_t>(limits.bytes);
    report.add(MessageKind::front_matter_limit, {region.file, at, at},
               "the record is longer than " + std::to_string(limits.bytes / 1024) + " KiB",
               "move the long part into the body of the note; is the closing `---` missing?");
    return false;
  }
  for (std::size_t at = 0; at < text.size();) {
    const auto begin = region.begin + static_cast<std::uint32_t>(at);
    const char32_t point = next_point(text, at);
    if (!check_point(report, {region.file, begin, region.begin + static_cast<std::uint32_t>(at)}, point)) return false;
  }
  return true;
}

} // namespace benchlore
