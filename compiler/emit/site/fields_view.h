// Shows the fields of any kind of note as schema/kinds describes them, so that a new field needs no C++.
#pragma once

#include "emit/site/page.h"

namespace benchlore {

// A value within a cell or a line.
Html field_value(const View& view, const Field& field, const Node& node);

// The fields of a note except those named in `skip`: short values as one list of facts, a section for each longer one.
struct FieldsView {
  Html facts, sections;
};
FieldsView fields_view(const View& view, const Note& note, const std::vector<std::string>& skip);

} // namespace benchlore
