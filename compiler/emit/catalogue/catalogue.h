// The parts catalogue: a SQLite database with the tables of schema/catalogue.sql.
#pragma once

#include "substitute/judged.h"

#include <string>
#include <string_view>

namespace benchlore {

// Writes the database beside the path, in one transaction with the indexes last, and puts it in its place whole. False,
// with what went wrong, when that failed; what was there before then stays.
bool write_catalogue(const Shop& shop, const JudgedShop& judged, const Report& report, std::string_view schema_sql,
                     const std::string& path, std::string& error);

} // namespace benchlore
