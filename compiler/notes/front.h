// Where the front matter of a note lies, and its reading.
#pragma once

#include "notes/note.h"

namespace benchlore {

// Sets front and body spans; false (and a message) when the text does not begin with front matter.
bool find_front(Note& note, const Sources& sources, Report& report);

// Reads and checks the front matter between the spans that find_front set.
void read_front(Note& note, const Sources& sources, const Schema& schema, Report& report);

} // namespace benchlore
