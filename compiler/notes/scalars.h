// Checks of the field types that are one scalar.
#pragma once

#include "notes/fields.h"

namespace benchlore {

void check_text(FieldReading& reading, const Field& field, const Node& node, const std::string& path);
void check_word(FieldReading& reading, const Field& field, const Node& node, const std::string& path);
void check_flag(FieldReading& reading, const Field& field, const Node& node, const std::string& path);
void check_count(FieldReading& reading, const Field& field, const Node& node, const std::string& path);
void check_date(FieldReading& reading, const Field& field, const Node& node, const std::string& path);

} // namespace benchlore
