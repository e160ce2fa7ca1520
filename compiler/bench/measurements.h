// The measurements of a job, judged: against the limits that stand beside them, the rail of the machine, or the rating
// of the part at the position; with the accuracy of the shop's meters as guard band.
#pragma once

#include "link/shop.h"
#include "workings/acceptance.h"

#include <optional>
#include <string>
#include <vector>

namespace benchlore {

struct JudgedMeasurement {
  NoteId job;
  std::string what, reading, meter; // as written
  std::string where;                // board and position, as far as they are named
  std::string limits;           // as text, with where they come from; empty when there is nothing to hold it against
  std::optional<Ruling> ruling; // nothing when it could not be judged
  std::string why_not;          // then; empty when there are no limits at all
  std::string working;          // `3.1 µF ± 0.13 µF`
  std::string decides;          // what would decide an undecided one
  bool settled = false; // a part was put in at that position, or a later measurement of the same thing is accepted
  Span span;
};

// Those of the front matter, then those of `measurements` blocks in the body.
std::vector<JudgedMeasurement> judge_measurements(const Shop& shop, NoteId job);

// Accuracy as a maker writes it: `0.5% + 2`, `1 % + 5 digits`, `2%`.
struct MeterAccuracy {
  double share = 0;
  double counts = 0;
};
std::optional<MeterAccuracy> read_accuracy(std::string_view text);

// One step of the last digit of a reading as written: `5.04 V` is known to 0.01 V.
std::optional<double> last_digit(std::string_view reading, Dimension dimension);

// Reports rejected, undecided and unreadable measurements that nothing settles.
void report_measurements(const Shop& shop, Report& report);

} // namespace benchlore
