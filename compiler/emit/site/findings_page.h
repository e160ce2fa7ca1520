// The report of findings as a page, and one finding as an item of a list.
#pragma once

#include "emit/site/page.h"

namespace benchlore {

Page findings_page(const View& view);

Html finding_view(const View& view, const Message& message);

} // namespace benchlore
