// Destinations of links in a body.
#pragma once

#include "notes/note.h"

namespace benchlore {

// The scheme in lower case, or empty.
std::string scheme_of(std::string_view raw);

// A link of this destination, with target and anchor taken apart.
BodyLink body_link(std::string_view raw, bool image, Span span);

} // namespace benchlore
