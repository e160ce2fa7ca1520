// Text made fit for HTML.
#pragma once

#include <string>
#include <string_view>

namespace benchlore {

// For text and attribute values; controls of writing direction become U+FFFD.
std::string html_escaped(std::string_view text);

// For `href` and `src`: signs that an address may not hold are percent-encoded, as the CommonMark specification shows.
std::string href_escaped(std::string_view address);

} // namespace benchlore
