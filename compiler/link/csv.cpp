// A field in quotes may hold commas, line ends and doubled quotes; others are trimmed of white space.
#include "link/csv.h"

#include "base/text.h"

#include <algorithm>

namespace benchlore {
namespace {

struct Reading {
  std::string_view text;
  FileId file;
  std::size_t at = 0;

  bool at_end() const { return at >= text.size(); }
  bool at_line_end() const { return at_end() || text[at] == '\n' || text[at] == '\r'; }
  Span span(std::size_t begin, std::size_t end) const {
    return {file, static_cast<std::uint32_t>(begin), static_cast<std::uint32_t>(end)};
  }
};

Located<std::string> quoted_field(Reading& reading, bool& open) {
  const std::size_t begin = reading.at++;
  std::string value;
  for (open = true; !reading.at_end(); ++reading.at) {
    if (reading.text[reading.at] != '"') {
      value += reading.text[reading.at];
    } else if (reading.at + 1 < reading.text.size() && reading.text[reading.at + 1] == '"') {
      value += reading.text[reading.at++];
    } else {
      ++reading.at;
      open = false;
      break;
    }
  }
  const std::size_t end = reading.at;
  while (!reading.at_line_end() && reading.text[reading.at] != ',') open = reading.text[reading.at++] != ' ' || open;
  return {value, reading.span(begin, end)};
}

Located<std::string> plain_field(Reading& reading) {
  const std::size_t begin = reading.at;
  const std::size_t end = std::min(reading.text.find_first_of(",\r\n", begin), reading.text.size());
  reading.at = end;
  const std::string_view value = trim(reading.text.substr(begin, end - begin));
  const std::size_t from = value.empty() ? begin : static_cast<std::size_t>(value.data() - reading.text.data());
  return {std::string(value), reading.span(from, from + value.size())};
}

CsvRow read_row(Reading& reading) {
  CsvRow row;
  const std::size_t begin = reading.at;
  for (;;) {
    const bool quoted = !reading.at_end() && reading.text[reading.at] == '"';
    bool open = false;
    row.fields.push_back(quoted ? quoted_field(reading, open) : plain_field(reading));
    row.open_quote = row.open_quote || open;
    if (reading.at_line_end()) break;
    ++reading.at; // the comma
  }
  row.span = reading.span(begin, reading.at);
  while (!reading.at_end() && reading.at_line_end()) ++reading.at;
  return row;
}

} // namespace

std::vector<CsvRow> read_csv(std::string_view text, FileId file) {
  std::vector<CsvRow> rows;
  Reading reading{text, file, text.starts_with("\xEF\xBB\xBF") ? std::size_t{3} : std::size_t{0}};
  while (!reading.at_end() && reading.at_line_end()) ++reading.at;
  while (!reading.at_end()) rows.push_back(read_row(reading));
  return rows;
}

} // namespace benchlore
