// stock.csv: what lies in the drawers. A wrong line is reported and left out; the others count.
#include "link/csv.h"
#include "link/linking.h"

#include "base/text.h"

#include <algorithm>

namespace benchlore {
namespace {

constexpr std::size_t most_bytes = 16u << 20;
constexpr std::string_view columns[] = {"component", "quantity", "bin", "from"};

bool is_header(const CsvRow& row) {
  return row.fields.size() == std::size(columns) &&
         std::equal(row.fields.begin(), row.fields.end(), std::begin(columns),
                    [](const auto& field, std::string_view name) { return lower(field.value) == name; });
}

std::optional<int> count_of(std::string_view text) {
  if (text.empty() || text.size() > 6) return std::nullopt;
  int count = 0;
  for (char c : text) {
    if (c < '0' || c > '9') return std::nullopt;
    count = count * 10 + (c - '0');
  }
  return count;
}

void unknown_component(Linking& linking, const Located<std::string>& id) {
  std::vector<std::string> known;
  for (const auto& [name, note] : linking.shop.by_id) {
    if (linking.shop.note(note).kind == "component") known.push_back(name);
  }
  const auto near = near_names(id.value, known);
  linking.report.add(MessageKind::stock_row, id.span, "there is no component `" + id.value + "`",
                     near.empty() ? "write its note" : "use " + alternatives(near));
}

void read_line(Linking& linking, const CsvRow& row) {
  if (row.open_quote || row.fields.size() != std::size(columns)) {
    linking.report.add(MessageKind::stock_row, row.span,
                       row.open_quote ? "a quote is not closed before the comma" : "the line has not four columns",
                       "write component, quantity, bin and from");
    return;
  }
  const auto quantity = count_of(row.fields[1].value);
  if (!quantity) {
    linking.report.add(MessageKind::stock_row,
                       row.fields[1].span.begin == row.fields[1].span.end ? row.span : row.fields[1].span,
                       "`" + row.fields[1].value + "` is no quantity", "write a whole number");
    return;
  }
  const auto component = linking.shop.find(row.fields[0].value);
  if (component && linking.shop.note(*component).kind == "component") {
    linking.shop.stock.push_back({*component, *quantity, row.fields[2].value, row.fields[3].value, row.span});
  } else if (!linking.broken_ids.contains(row.fields[0].value)) {
    unknown_component(linking, row.fields[0]);
  }
}

} // namespace

void read_stock(Linking& linking) {
  const std::string path = linking.folder + "stock.csv";
  if (!linking.files.is_file(path)) return;
  const auto bytes = linking.files.read(path, most_bytes);
  const FileId file = linking.sources.add(path, bytes.value_or(""));
  if (!bytes || !valid_utf8(*bytes)) {
    linking.report.add(MessageKind::unreadable_file, {file, 0, 0},
                       "`stock.csv` cannot be read, is too large or not UTF-8",
                       "save it as UTF-8 with less than 16 megabytes");
    return;
  }
  const auto rows = read_csv(*bytes, file);
  if (rows.empty()) return;
  if (!is_header(rows.front())) {
    linking.report.add(MessageKind::stock_row, rows.front().span, "the first line does not name the columns",
                       "begin with `component,quantity,bin,from`");
    return;
  }
  for (std::size_t at = 1; at < rows.size(); ++at) read_line(linking, rows[at]);
}

} // namespace benchlore
