// The body of a note: links with their places, headings with their anchors, plain text.
#pragma once

#include "notes/note.h"

namespace benchlore {

// Fills links, headings and plain text of a note from its body span.
void read_body(Note& note, const Sources& sources, Report& report);

// The text with controls of writing direction made visible as U+FFFD: they make a line read other than it is.
std::string without_bidi(std::string_view text);

} // namespace benchlore
