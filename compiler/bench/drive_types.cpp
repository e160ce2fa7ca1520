// Drive types against drives: the numbers of the geometry are compared, never the number of the type.
#include "bench/drive_types.h"

#include "base/text.h"

#include <algorithm>

namespace benchlore {
namespace {

constexpr int most = 65536;

} // namespace

std::optional<Geometry> read_geometry(std::string_view text) {
  int numbers[3] = {0, 0, 0};
  int at = 0;
  bool inside = false;
  for (char c : text) {
    if (c >= '0' && c <= '9') {
      if (!inside && ++at > 3) return std::nullopt;
      inside = true;
      int& number = numbers[at - 1];
      number = number * 10 + (c - '0');
      if (number > most) return std::nullopt;
    } else if (c == '/' || c == ',' || c == ' ' || c == 'x') {
      inside = false;
    } else {
      return std::nullopt;
    }
  }
  const Geometry geometry{numbers[0], numbers[1], numbers[2]};
  return at == 3 && geometry.total() > 0 ? std::optional(geometry) : std::nullopt;
}

std::vector<FittingType> fitting_types(const Schema& schema, const Geometry& drive, bool translates) {
  std::vector<FittingType> fitting;
  for (const DriveTypeTable& table : schema.drive_types) {
    for (const DriveType& type : table.types) {
      const Geometry asked{type.cylinders, type.heads, type.sectors};
      const bool native =
          type.cylinders <= drive.cylinders && type.heads <= drive.heads && type.sectors == drive.sectors;
      if (translates ? asked.total() > drive.total() : !native) continue;
      fitting.push_back({&table, &type, 1 - static_cast<double>(asked.total()) / static_cast<double>(drive.total())});
    }
  }
  std::stable_sort(fitting.begin(), fitting.end(), [](auto& a, auto& b) { return a.lost < b.lost; });
  return fitting;
}

std::vector<std::string> wrong_type(const Geometry& drive, const DriveType& type) {
  std::vector<std::string> troubles;
  auto more = [](int number, const char* what) { return std::to_string(number) + " " + what; };
  if (type.heads < drive.heads)
    troubles.push_back("the type has " + more(type.heads, "heads") + " and the drive " + std::to_string(drive.heads) +
                       ": every sector beyond the first cylinder is looked for in the wrong place; data that are there "
                       "read wrong, without an error");
  if (type.sectors < drive.sectors)
    troubles.push_back("the type has " + more(type.sectors, "sectors") + " and the track " +
                       std::to_string(drive.sectors) +
                       ": data that are there are looked for in the wrong place; wrong data, without an error");
  if (type.sectors > drive.sectors)
    troubles.push_back("the type asks for " + more(type.sectors, "sectors") + " and the track has " +
                       std::to_string(drive.sectors) + ": sectors not found");
  if (type.heads > drive.heads)
    troubles.push_back("the type asks for " + more(type.heads, "heads") + " and the drive has " +
                       std::to_string(drive.heads) + ": sectors not found, or errors of seeking");
  if (type.cylinders > drive.cylinders)
    troubles.push_back("the type asks for " + more(type.cylinders, "cylinders") + " and the drive has " +
                       std::to_string(drive.cylinders) +
                       ": it fails near the end of the disk, and the carriage may run into its stop");
  if (type.cylinders < drive.cylinders)
    troubles.push_back(more(drive.cylinders - type.cylinders, "cylinders") + " are not used");
  return troubles;
}

const DriveType* find_type(const Schema& schema, std::string_view name) {
  const std::size_t colon = name.find(':');
  if (colon == std::string_view::npos) return nullptr;
  const auto number = Decimal::parse(name.substr(colon + 1));
  for (const DriveTypeTable& table : schema.drive_types) {
    if (table.name != name.substr(0, colon) || !number) continue;
    for (const DriveType& type : table.types) {
      if (type.number == static_cast<int>(number->value())) return &type;
    }
  }
  return nullptr;
}

} // namespace benchlore
