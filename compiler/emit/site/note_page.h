// The page of one note: cautions first, then what its kind is about, its body, and what mentions it.
#pragma once

#include "emit/site/gathered.h"
#include "emit/site/page.h"

namespace benchlore {

Page note_page(const View& view, const Gathered& gathered, NoteId id);

// The parts that only one kind has; empty for the others. `before` stands over the body, `after` under it.
struct KindParts {
  Html before, after;
  std::vector<std::string> shown; // fields that need no generic rendering any more
};
KindParts component_parts(const View& view, const Gathered& gathered, NoteId id);
KindParts board_parts(const View& view, const Gathered& gathered, NoteId id);
KindParts equipment_parts(const View& view, const Gathered& gathered, NoteId id);
KindParts symptom_parts(const View& view, const Gathered& gathered, NoteId id);
KindParts procedure_parts(const View& view, const Gathered& gathered, NoteId id);

} // namespace benchlore
