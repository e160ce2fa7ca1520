// Shows the fields of any kind of note as schema/kinds describes them, so that a new field needs no C++.
#pragma once

#include "emit/site/page.h"

namespace benchlore {

// A value within a cell or a line.
Html field_value(const View& view, const Field& field, const Node& node);

// A section for each field of the kind that the note holds, except those named in `skip`. Short values come first, as
// one list of facts.
Html fields_view(const View& view, const Note& note, const std::vector<std::string>& skip);

} // namespace benchlore
