// Drive types: the sourced tables of schema/drive-types.yaml against sectors and bytes as those tables print them, and
// which type fits a drive.
#include "bench/drive_types.h"

#include "support.h"

using namespace benchlore;

namespace {

const DriveType& type(const std::string& name) {
  const DriveType* found = find_type(test::project_schema(), name);
  REQUIRE_MESSAGE(found != nullptr, name);
  return *found;
}

std::int64_t bytes(const std::string& name) {
  const DriveType& one = type(name);
  return Geometry{one.cylinders, one.heads, one.sectors}.total() * 512;
}

struct Fit {
  Geometry drive;
  std::string best; // names of the types that share the first place
  double lost;      // per cent
};

} // namespace

TEST_CASE("the types of the original AT firmware hold what its table prints") { // AT technical reference, March 1986
  const std::pair<const char*, std::int64_t> rows[] = {
      {"at-original:1", 10653696},  {"at-original:2", 21411840},  {"at-original:3", 32117760},
      {"at-original:4", 65454080},  {"at-original:5", 49090560},  {"at-original:6", 21411840},
      {"at-original:7", 32169984},  {"at-original:8", 31900160},  {"at-original:9", 117504000},
      {"at-original:10", 21411840}, {"at-original:11", 37209600}, {"at-original:12", 52093440},
      {"at-original:13", 21307392}, {"at-original:14", 44660224}, {"at-original:16", 21307392},
      {"at-original:17", 42519040}, {"at-original:18", 59526656}, {"at-original:19", 62390272},
      {"at-original:20", 31900160}, {"at-original:21", 44660224}, {"at-original:22", 31900160},
      {"at-original:23", 10653696}};
  for (const auto& [name, size] : rows) CHECK_MESSAGE(bytes(name) == size, name);
  CHECK(find_type(test::project_schema(), "at-original:15") == nullptr);
  CHECK(type("at-original:2").precompensation == "300");
  CHECK(type("at-original:6").precompensation == "never");
  CHECK(type("at-original:16").precompensation == "always");
}

TEST_CASE(
    "the types that a later firmware added hold what its table prints") { // techhelpmanual.com, AT BIOS hard disk types
  const std::pair<const char*, std::int64_t> rows[] = {
      {"at-later:24", 21307392}, {"at-later:25", 10653696}, {"at-later:26", 21307392},
      {"at-later:27", 42527744}, {"at-later:28", 42083840}, {"at-later:29", 10653696},
      {"at-later:30", 21272576}, {"at-later:31", 44599296}, {"at-later:32", 44520960}};
  for (const auto& [name, size] : rows) CHECK_MESSAGE(bytes(name) == size, name);
}

TEST_CASE("the best type is the one that loses least of the drive") { // worked out from the original table, 17 sectors
  Schema original = test::project_schema();
  original.drive_types.resize(1);
  const Fit fits[] = {{{615, 4, 17}, "2", 0},      {{612, 4, 17}, "16", 0},    {{820, 6, 17}, "3", 25.00},
                      {{1024, 8, 17}, "4", 8.20},  {{977, 7, 17}, "18", 0},    {{989, 5, 17}, "17", 1.213},
                      {{1024, 5, 17}, "17", 4.59}, {{697, 5, 17}, "2", 29.41}, {{640, 6, 17}, "3", 3.91},
                      {{1024, 9, 17}, "4", 18.40}};
  for (const Fit& fit : fits) {
    CAPTURE(fit.best);
    const auto found = fitting_types(original, fit.drive, false);
    REQUIRE_FALSE(found.empty());
    CHECK(std::to_string(found.front().type->number) == fit.best);
    CHECK(found.front().lost * 100 == doctest::Approx(fit.lost).epsilon(0.001));
  }
  CHECK(fitting_types(original, {305, 4, 17}, false).empty());
}

TEST_CASE("a drive that translates takes any type that is not larger than it") {
  const auto found = fitting_types(test::project_schema(), {977, 5, 17}, true);
  REQUIRE_FALSE(found.empty());
  CHECK(found.front().lost == 0);
  CHECK(found.size() > fitting_types(test::project_schema(), {977, 5, 17}, false).size());
}

TEST_CASE("a type of more heads or sectors warns of sectors not found, and one of fewer of wrong data") {
  const Geometry drive{615, 4, 17};
  CHECK(wrong_type(drive, type("at-original:2")).empty());
  REQUIRE(wrong_type(drive, type("at-original:3")).size() == 1);
  CHECK(wrong_type(drive, type("at-original:3")).front().find("sectors not found") != std::string::npos);
  DriveType dense = type("at-original:2");
  dense.sectors = 26;
  CHECK(wrong_type(drive, dense).front() == "the type asks for 26 sectors and the track has 17: sectors not found");
  CHECK(wrong_type({615, 6, 17}, type("at-original:2")).front().find("without an error") != std::string::npos);
}

TEST_CASE("a geometry is three numbers") {
  CHECK(read_geometry("615/4/17")->total() == 41820);
  CHECK(read_geometry("977 5 17")->heads == 5);
  CHECK_FALSE(read_geometry("615/4").has_value());
  CHECK_FALSE(read_geometry("615/0/17").has_value());
  CHECK_FALSE(read_geometry("99999999999/4/17").has_value());
  CHECK_FALSE(read_geometry("a/b/c").has_value());
}
