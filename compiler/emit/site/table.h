// A table for a bench: columns in which nothing is stated are left out, and a wide one scrolls by itself.
#pragma once

#include "emit/site/html.h"

#include <optional>
#include <string>
#include <vector>

namespace benchlore {

struct Cell {
  Html inside;
  std::optional<double> order; // what a numeric column is sorted by
};

struct Table {
  std::string caption;
  std::vector<std::string> columns; // the first one names the row
  std::vector<std::vector<Cell>> rows;
  bool sortable = false;
};

Html render(const Table& table);

// Names and values as a definition list; entries without a value are left out.
struct NamedValue {
  std::string name;
  Html value;
};
Html render(const std::vector<NamedValue>& values);

// `<ul>`; empty when there is nothing to list.
Html bullets(const std::vector<Html>& items);

} // namespace benchlore
