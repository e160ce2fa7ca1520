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

std::vector<Cell> row(const View& view, const std::string& title, const StatedValue& stated) {
  std::vector<Cell> cells{{text(title), {}}};
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

Html ratings_table(const View& view, const Note& note) {
  const ComponentClass* found = view.schema().find_class(note.class_name);
  std::vector<std::string> order = found ? found->order : std::vector<std::string>();
  for (const auto& [name, stated] : note.ratings)
    if (std::find(order.begin(), order.end(), name) == order.end()) order.push_back(name);
  Table table{"Ratings of " + note.title, {"Rating", "Value", "Min", "Typ", "Max", "At", "Source"}, {}, false};
  for (const std::string& name : order)
    if (auto stated = note.ratings.find(name); stated != note.ratings.end())
      table.rows.push_back(row(view, rating_title(view.schema(), name, note.class_name), stated->second));
  return render(table);
}

Html stated_list(const View& view, const Ratings& ratings, std::string_view class_name) {
  Html out;
  for (const auto& [name, stated] : ratings) {
    if (!out.empty()) out << ", ";
    out << text(class_name.empty() ? stress_title(view.schema(), name) : rating_title(view.schema(), name, class_name))
        << " " << text(to_text(stated.value));
  }
  return out;
}

Cell value_cell(const StatedValue& stated) {
  Cell cell{text(to_text(stated.value)), {}};
  if (const auto* quantity = std::get_if<Quantity>(&stated.value)) cell.order = quantity->centre();
  return cell;
}

} // namespace benchlore
