// Rows of a CSV text (RFC 4180) with the place of each field.
#pragma once

#include "report/span.h"

#include <string>
#include <string_view>
#include <vector>

namespace benchlore {

struct CsvRow {
  std::vector<Located<std::string>> fields;
  Span span;
  bool open_quote = false; // a quote that is never closed, or text after a closing quote
};

// Reads the whole file; blank lines are left out.
std::vector<CsvRow> read_csv(std::string_view text, FileId file);

} // namespace benchlore
