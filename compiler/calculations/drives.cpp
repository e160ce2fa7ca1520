// Cylinders, heads and sectors.
#include "calculations/definitions.h"

namespace benchlore::definitions {
namespace {

constexpr double largest = 4294967296.0; // sectors; beyond it nothing of the time goes

bool whole(double number) { return number == std::floor(number) && number < largest; }

std::string check_geometry(const Numbers& in) {
  for (const char* name : {"cylinders", "heads", "sectors"}) {
    if (!whole(in[name])) return std::string("`") + name + "` must be a whole number";
  }
  return {};
}

PointResult capacity(const Numbers& in) {
  if (auto why = check_geometry(in); !why.empty()) return refused(std::move(why));
  const double sectors = in["cylinders"] * in["heads"] * in["sectors"], bytes = sectors * in["sector-size"];
  return found({sectors, bytes},
               {show(in["cylinders"]) + " × " + show(in["heads"]) + " × " + show(in["sectors"]) + " = " +
                    std::to_string(static_cast<std::int64_t>(sectors)) + " sectors",
                std::to_string(static_cast<std::int64_t>(bytes)) + " bytes, " + show(bytes / 1048576) + " MiB"},
               in["cylinders"] > 1024 ? "more than 1024 cylinders: an old set-up cannot address all of it" : "");
}

PointResult to_lba(const Numbers& in) {
  const double heads = in["heads"], sectors = in["sectors"];
  if (!whole(heads) || !whole(sectors) || !whole(in["cylinder"]) || !whole(in["head"]) || !whole(in["sector"]))
    return refused("cylinders, heads and sectors are whole numbers");
  if (in["head"] >= heads) return refused("`head` counts from 0 and must be below `heads`");
  if (in["sector"] < 1 || in["sector"] > sectors) return refused("`sector` counts from 1 to `sectors`");
  const double lba = (in["cylinder"] * heads + in["head"]) * sectors + in["sector"] - 1;
  return found({lba},
               {"(" + show(in["cylinder"]) + " × " + show(heads) + " + " + show(in["head"]) + ") × " + show(sectors) +
                " + " + show(in["sector"]) + " − 1 = " + std::to_string(static_cast<std::int64_t>(lba))});
}

PointResult from_lba(const Numbers& in) {
  const double heads = in["heads"], sectors = in["sectors"], lba = in["block"];
  if (!whole(heads) || !whole(sectors) || !whole(lba)) return refused("block, heads and sectors are whole numbers");
  const double cylinder = std::floor(lba / (heads * sectors));
  const double rest = lba - cylinder * heads * sectors;
  const double head = std::floor(rest / sectors);
  return found({cylinder, head, rest - head * sectors + 1},
               {"block " + std::to_string(static_cast<std::int64_t>(lba)) + " with " + show(heads) + " heads and " +
                show(sectors) + " sectors"});
}

CalculationInput count(const char* name, const char* title, const char* meaning, Allowed allowed = Allowed::positive) {
  return {name, title, dimension::none, meaning, allowed};
}

} // namespace

std::vector<Calculation> drives() {
  const std::string source = "\"How It Works: CHS Translation\" version 4a; ATA-3, annex B";
  return {
      {"drive-capacity",
       "Capacity of a drive from its geometry",
       "cylinders × heads × sectors × bytes in a sector",
       "what a drive type holds",
       {count("cylinders", "Cylinders", "of the drive or type"), count("heads", "Heads", "of the drive or type"),
        count("sectors", "Sectors", "in a track"),
        count("sector-size", "Bytes in a sector", "512 unless the system is odd")},
       {{"sectors", "Sectors", dimension::none}, {"bytes", "Bytes", dimension::none}},
       capacity,
       source,
       {},
       {"cylinders=615", "heads=4", "sectors=17", "sector-size=512"}},
      {"chs-to-block",
       "Cylinder, head and sector to block",
       "block = (c × heads + h) × sectors + s − 1",
       "where a place of the old counting lies in the new one",
       {count("cylinder", "Cylinder", "from 0", Allowed::not_negative),
        count("head", "Head", "from 0", Allowed::not_negative), count("sector", "Sector", "from 1"),
        count("heads", "Heads", "of the geometry in use"),
        count("sectors", "Sectors", "in a track of the geometry in use")},
       {{"block", "Block", dimension::none}},
       to_lba,
       source,
       {},
       {"cylinder=614", "head=3", "sector=17", "heads=4", "sectors=17"}},
      {"block-to-chs",
       "Block to cylinder, head and sector",
       "the same, backwards",
       "which track a bad block lies on",
       {count("block", "Block", "from 0", Allowed::not_negative), count("heads", "Heads", "of the geometry in use"),
        count("sectors", "Sectors", "in a track of the geometry in use")},
       {{"cylinder", "Cylinder", dimension::none},
        {"head", "Head", dimension::none},
        {"sector", "Sector", dimension::none}},
       from_lba,
       source,
       {},
       {"block=1000", "heads=4", "sectors=17"}},
  };
}

} // namespace benchlore::definitions
