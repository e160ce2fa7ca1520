// Computations about drives: the geometry of a drive against the one that the machine is set up for.
#include "substitute/computed.h"

namespace benchlore::computed {
namespace {

constexpr double bytes_per_sector = 512;

std::string geometry_text(double cylinders, double heads, double sectors) {
  auto plain = [](double number) { return show(number, dimension::none); };
  return plain(cylinders) + "/" + plain(heads) + "/" + plain(sectors) + ", " +
         show(cylinders * heads * sectors * bytes_per_sector / 1e6, dimension::none) + " MB";
}

} // namespace

Finding drive_geometry(const Comparison& c) {
  const Ratings& mine = *c.substitute.ratings;
  const auto cylinders = least(mine, "cylinders"), heads = least(mine, "heads"),
             sectors = least(mine, "sectors-per-track");
  const auto type_cylinders = greatest(c.where.stress, "type-cylinders");
  const auto type_heads = greatest(c.where.stress, "type-heads");
  const auto type_sectors = greatest(c.where.stress, "type-sectors");
  if (!type_cylinders || !type_heads || !type_sectors) return unusable("the drive type of the set-up is not stated");
  if (!cylinders || !heads || !sectors) return unusable("the geometry of the substitute is not stated");
  Finding finding;
  finding.required = "cylinders and heads for " + geometry_text(*type_cylinders, *type_heads, *type_sectors);
  finding.met =
      not_below(*cylinders, *type_cylinders) && not_below(*heads, *type_heads) && equal(*sectors, *type_sectors);
  finding.margin = (*cylinders * *heads - *type_cylinders * *type_heads) / (*type_cylinders * *type_heads);
  finding.working = "the drive has " + geometry_text(*cylinders, *heads, *sectors);
  return finding;
}

} // namespace benchlore::computed
