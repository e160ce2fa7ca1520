// Ratings and stresses as a datasheet prints them.
#pragma once

#include "emit/site/page.h"
#include "emit/site/table.h"

namespace benchlore {

// Value, least, typical, greatest, condition, source; in the order of the class, only what is stated.
Html ratings_table(const View& view, const std::string& caption, const Ratings& ratings,
                   const std::vector<std::string>& order);

// `Applied voltage 12 V, …` in one cell.
Html stated_list(const View& view, const Ratings& ratings);

// One value with its order, for a column of a parametric table.
Cell value_cell(const StatedValue& stated);

} // namespace benchlore
