// Every rule of substitution with its sentence, its source and its examples; and the sources that rules cite.
#pragma once

#include "emit/site/page.h"

namespace benchlore {

Page rules_page(const View& view);
Page rule_page(const View& view, const Rule& rule);

} // namespace benchlore
