// The faults of a machine by how likely they are before anything is seen, with the checks that tell them apart.
#pragma once

#include "emit/site/page.h"

namespace benchlore {

// Empty when no note tells of a fault.
Html diagnosis_part(const View& view, NoteId equipment);

} // namespace benchlore
