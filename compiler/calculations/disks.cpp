// Floppy disks: what a rate and a speed put on a track. Speeds are in turns per minute, rates in bits per second.
#include "calculations/definitions.h"

namespace benchlore::definitions {
namespace {

constexpr Dimension rate_dimension = dimension::information / dimension::time;
constexpr Dimension speed_dimension{.turn = 1};
constexpr double two_pi = 6.283185307179586;

PointResult track(const Numbers& in) {
  const double turns_a_second = in["speed"] / 60;
  const double bytes = in["rate"] / turns_a_second / 8;
  return found({bytes, bytes * in["tracks"] * in["heads"], in["rate"] / (two_pi * turns_a_second)},
               {show(in["rate"], rate_dimension) + " × 60 / " + show(in["speed"]) + " / 8 = " + show(bytes) +
                " bytes on a track"});
}

// Within the speed tolerance of drives, one and a half per cent.
bool usual(double rate) {
  for (double known : {125e3, 250e3, 300e3, 500e3, 1000e3}) {
    if (std::fabs(rate - known) < 0.015 * known) return true;
  }
  return false;
}

PointResult rate_at_speed(const Numbers& in) {
  const double rate = in["rate"] * in["read-speed"] / in["written-speed"];
  return found({rate},
               {show(in["rate"], rate_dimension) + " × " + show(in["read-speed"]) + " / " + show(in["written-speed"]) +
                " = " + show(rate, rate_dimension)},
               usual(rate) ? "a rate that usual controllers read" : "no rate that a usual controller reads");
}

CalculationInput speed(const char* name, const char* title, const char* meaning) {
  return {name, title, speed_dimension, meaning};
}

CalculationInput count(const char* name, const char* title, const char* meaning) {
  return {name, title, dimension::none, meaning};
}

} // namespace

std::vector<Calculation> disks() {
  const std::string source = "Linux kernel floppy driver tables; flux densities of ECMA-99, ECMA-125 and ECMA-147";
  const CalculationInput rate{"rate", "Data rate", rate_dimension, "in bits per second, such as 250 kbit/s"};
  return {
      {"track-capacity",
       "Unformatted capacity of a floppy disk",
       "bytes on a track = rate × 60 / speed / 8; flux changes per radian = rate / (2 π speed / 60)",
       "what fits on a disk, and whether a record of a drive contradicts itself",
       {rate, speed("speed", "Speed", "in turns per minute, such as 300 rpm"), count("tracks", "Tracks", "of one side"),
        count("heads", "Heads", "or sides")},
       {{"track", "Bytes on a track", dimension::none},
        {"bytes", "Bytes in all", dimension::none},
        {"flux", "Flux changes per radian", dimension::none}},
       track,
       source,
       {},
       {"rate=250 kbit/s", "speed=300 rpm", "tracks=80", "heads=2"}},
      {"rate-at-speed",
       "Data rate of a disk in a drive of another speed",
       "rate × speed now / speed when written",
       "whether a disk of one drive can be read in another",
       {rate, speed("written-speed", "Speed when written", "of the drive that wrote it"),
        speed("read-speed", "Speed now", "of the drive that reads it")},
       {{"rate", "Data rate now", rate_dimension}},
       rate_at_speed,
       source,
       {},
       {"rate=250 kbit/s", "written-speed=300 rpm", "read-speed=360 rpm"}},
  };
}

} // namespace benchlore::definitions
