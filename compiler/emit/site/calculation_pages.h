// The calculations: a list of them, and a page for each with its formula and a worked example.
#pragma once

#include "calculations/calculation.h"
#include "emit/site/page.h"

namespace benchlore {

Page calculations_page(const View& view);
Page calculation_page(const View& view, const Calculation& calculation);
std::string calculation_path(const Calculation& calculation);

} // namespace benchlore
