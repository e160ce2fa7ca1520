// The pinout that a component's front matter gives, as a rating that can be judged.
#pragma once

#include "notes/note.h"

namespace benchlore {

// Makes `pinout: {1: A7, 2: A6, …}` the rating `pinout`, in the order of the pins, when the class has one and the note
// states none. Other keys (`tab`, `case`) are for the reader. Reports a gap in the numbers.
void take_pinout(Note& note, const Schema& schema, Report& report);

} // namespace benchlore
