// Checks the values of a note's front matter against the fields that schema/ gives its kind.
#pragma once

#include "notes/note.h"

namespace benchlore {

// Where the checks read from, what they fill and where faults go.
struct FieldReading {
  Note& note;
  const Sources& sources;
  const Schema& schema;
  Report& report;
};

// Every entry of a map: known fields are checked by their type, unknown ones and missing ones are reported.
// `path` is that of the map, empty for the front matter itself.
void read_fields(FieldReading& reading, const Node& map, const std::vector<const Field*>& fields,
                 const std::string& path);

// The fields that every kind has, with the words of the schema filled in.
std::vector<Field> common_fields(const Schema& schema);

} // namespace benchlore
