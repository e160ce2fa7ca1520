// Tables and lists of a page.
#include "emit/site/table.h"

#include "base/text.h"

#include <charconv>

namespace benchlore {
namespace {

bool used(const Table& table, std::size_t column) {
  if (column == 0) return true;
  for (const auto& row : table.rows)
    if (column < row.size() && !row[column].inside.empty()) return true;
  return false;
}

std::string number(double value) {
  char buffer[40];
  auto end = std::to_chars(buffer, buffer + sizeof buffer, value).ptr;
  return std::string(buffer, end);
}

Html head(const Table& table) {
  Html out{"<thead><tr>"};
  for (std::size_t i = 0; i < table.columns.size(); ++i)
    if (used(table, i)) out << "<th scope=\"col\">" << text(table.columns[i]) << "</th>";
  out << "</tr></thead>\n";
  return out;
}

Html row_cells(const Table& table, const std::vector<Cell>& row) {
  Html out;
  for (std::size_t i = 0; i < row.size(); ++i) {
    if (!used(table, i)) continue;
    out << (i == 0 ? Html("<th scope=\"row\"") : Html("<td"));
    if (row[i].order) out << " data-order=\"" << text(number(*row[i].order)) << "\"";
    out << ">" << row[i].inside << (i == 0 ? Html("</th>") : Html("</td>"));
  }
  return out;
}

} // namespace

Html render(const Table& table) {
  if (table.rows.empty()) return {};
  Html out{"<div class=\"wide\" role=\"group\" tabindex=\"0\" aria-label=\""};
  out << text(table.caption) << "\"><table";
  if (table.sortable) out << " class=\"sortable\"";
  out << "><caption>" << text(table.caption) << "</caption>\n" << head(table) << "<tbody>\n";
  for (const auto& row : table.rows) out << "<tr>" << row_cells(table, row) << "</tr>\n";
  out << "</tbody></table></div>\n";
  return out;
}

Html render(const std::vector<NamedValue>& values) {
  Html inside;
  for (const NamedValue& entry : values)
    if (!entry.value.empty())
      inside << "<div><dt>" << text(entry.name) << "</dt><dd>" << entry.value << "</dd></div>\n";
  if (inside.empty()) return {};
  Html out{"<dl class=\"facts\">\n"};
  return out << inside << "</dl>\n";
}

Html bullets(const std::vector<Html>& items) {
  if (items.empty()) return {};
  Html out{"<ul>\n"};
  for (const Html& item : items) out << "<li>" << item << "</li>\n";
  return out << "</ul>\n";
}

} // namespace benchlore
