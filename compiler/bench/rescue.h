// The state of a data rescue as a job records it: which ranges of a medium are read, unreadable or not yet tried.
#pragma once

#include "link/shop.h"

#include <cstdint>
#include <string>
#include <vector>

namespace benchlore {

enum class RescueState { read, unreadable, untried };

struct RescueRange {
  std::int64_t begin = 0, end = 0; // sectors, end not included
  RescueState state = RescueState::untried;
  Span span;
};

struct Rescue {
  std::int64_t total = 0;          // sectors of the medium
  std::vector<RescueRange> ranges; // ascending; what no range names is not yet tried
  std::int64_t read = 0, unreadable = 0, untried = 0;
  std::string tool, hash, copy;
  std::int64_t passes = 0;
  std::vector<std::string> faults; // overlaps, ranges beyond the end, a total that is missing
};

// Nothing when the job has no `rescue`.
std::optional<Rescue> rescue_of(const Shop& shop, NoteId job);

// Reports faults of the tables, and jobs that put in a drive, or mend one, before a copy is noted.
void report_rescues(const Shop& shop, Report& report);

std::string_view to_text(RescueState state);

} // namespace benchlore
