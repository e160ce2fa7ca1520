// Tables of ratings. Numbers are shown with the digits that the note states.
#include "emit/site/ratings_view.h"

#include "emit/site/verdict_view.h"

#include <algorithm>

namespace benchlore {
namespace {

constexpr int all_figures = 12;

Html number(const std::optional<Decimal>& value, Dimension dimension) {
  return value ? text(show_number(value->value(), dimension, all_figures)) : Html();
}

Html conditions(const Quantity& quantity) {
  Html out;
  for (const Condition& condition : quantity.at) {
    if (!out.empty()) out << ", ";
    out << text(condition.name);
    if (condition.value) out << (condition.name.empty() ? Html() : Html(" ")) << text(to_text(*condition.value));
  }
  return out;
}

// Nominal value with its tolerance; limits have their own columns.
Html nominal(const Quantity& quantity) {
  if (!quantity.nominal) return {};
  Quantity alone = quantity;
  alone.at.clear();
  alone.minimum = alone.typical = alone.maximum = std::nullopt;
  return text(to_text(alone));
}

std::vector<Cell> quantity_row(const Quantity& quantity) {
  return {{nominal(quantity), {}},
          {number(quantity.minimum, quantity.dimension), {}},
          {number(quantity.typical, quantity.dimension), {}},
          {number(quantity.maximum, quantity.dimension), {}},
          {conditions(quantity), {}}};
}

std::vector<Cell> row(const View& view, const std::string& name, const StatedValue& stated) {
  std::vector<Cell> cells{{text(rating_title(view.schema(), name)), {}}};
  if (const auto* quantity = std::get_if<Quantity>(&stated.value)) {
    for (Cell& cell : quantity_row(*quantity)) cells.push_back(std::move(cell));
  } else {
    cells.push_back({text(to_text(stated.value)), {}});
    cells.resize(6);
  }
  cells.push_back({view.source_link(stated.source), {}});
  return cells;
}

} // namespace

Html ratings_table(const View& view, const std::string& caption, const Ratings& ratings,
                   const std::vector<std::string>& order) {
  Table table{caption, {"Rating", "Value", "Min", "Typ", "Max", "At", "Source"}, {}, false};
  for (const std::string& name : order)
    if (auto found = ratings.find(name); found != ratings.end()) table.rows.push_back(row(view, name, found->second));
  for (const auto& [name, stated] : ratings)
    if (std::find(order.begin(), order.end(), name) == order.end()) table.rows.push_back(row(view, name, stated));
  return render(table);
}

Html stated_list(const View& view, const Ratings& ratings) {
  Html out;
  for (const auto& [name, stated] : ratings) {
    if (!out.empty()) out << ", ";
    out << text(rating_title(view.schema(), name)) << " " << text(to_text(stated.value));
  }
  return out;
}

Cell value_cell(const StatedValue& stated) {
  Cell cell{text(to_text(stated.value)), {}};
  if (const auto* quantity = std::get_if<Quantity>(&stated.value)) cell.order = quantity->centre();
  return cell;
}

} // namespace benchlore
