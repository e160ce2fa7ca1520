// The two pages that need a script: search, and the look-up of substitutes. Without one they say where to look instead.
#pragma once

#include "emit/site/page.h"

namespace benchlore {

Page search_page(const View& view);
Page substitute_page(const View& view);

} // namespace benchlore
