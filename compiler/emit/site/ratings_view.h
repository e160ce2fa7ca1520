// Ratings and stresses as a datasheet prints them.
#pragma once

#include "emit/site/page.h"
#include "emit/site/table.h"

namespace benchlore {

// Value, least, typical, greatest, condition, source; in the order of the class, only what is stated.
Html ratings_table(const View& view, const Note& note);

// `Applied voltage 12 V, …` in one cell: stresses, or ratings of a class when one is named.
Html stated_list(const View& view, const Ratings& ratings, std::string_view class_name = {});

// One value with its order, for a column of a parametric table.
Cell value_cell(const StatedValue& stated);

} // namespace benchlore
