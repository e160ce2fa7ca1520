// Which types of a firmware fit a drive, what is lost, and what goes wrong under a type that does not fit.
#pragma once

#include "schema/schema.h"

#include <cstdint>
#include <string>
#include <vector>

namespace benchlore {

struct Geometry {
  int cylinders = 0, heads = 0, sectors = 0;
  std::int64_t total() const { return std::int64_t{cylinders} * heads * sectors; }
};

struct FittingType {
  const DriveTypeTable* table = nullptr;
  const DriveType* type = nullptr;
  double lost = 0; // share of the drive that is not used
};

// `615/4/17`, or with commas, strokes or blanks; nothing when it is none.
std::optional<Geometry> read_geometry(std::string_view text);

// Types whose cylinders and heads the drive has and whose sectors are the same, most sectors first, then by table and
// number. For drives that take up any geometry (`translates`) only the total counts.
std::vector<FittingType> fitting_types(const Schema& schema, const Geometry& drive, bool translates);

// What goes wrong when the drive is run under this type; worst first, empty when it fits exactly.
std::vector<std::string> wrong_type(const Geometry& drive, const DriveType& type);

// `at-original:2`; null when there is none.
const DriveType* find_type(const Schema& schema, std::string_view name);

} // namespace benchlore
