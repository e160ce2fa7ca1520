// The cautions at the top of a page.
#pragma once

#include "emit/site/page.h"

namespace benchlore {

// Empty when there are none. Says that local codes come first.
Html cautions_view(const View& view, const std::vector<const Caution*>& cautions);

} // namespace benchlore
