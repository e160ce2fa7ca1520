// What the bench works out for a page: the supply budget and the recap list of a machine, the measurements and the data
// rescue of a job.
#pragma once

#include "bench/budget.h"
#include "bench/rescue.h"
#include "emit/site/note_page.h"

namespace benchlore {

// Empty when the machine lists no supply.
Html supply_part(const View& view, NoteId equipment);
Html recap_part(const View& view, NoteId equipment);

KindParts job_parts(const View& view, const Gathered& gathered, NoteId id);

// Drawings; their numbers stand in a table or a sentence beside them.
Html supply_chart(const Budget& budget);
Html rescue_strip(const Rescue& rescue);

} // namespace benchlore
