// From what is seen, not seen and checked to ranked causes and the next best check.
#pragma once

#include "diagnosis/model.h"

#include <string>
#include <vector>

namespace benchlore {

struct Observations {
  std::vector<std::string> seen, not_seen;           // ids of symptoms; what is in neither is unknown
  std::vector<std::pair<std::string, bool>> checked; // id of a check, and whether it came out bad
  bool powered = false;                              // the checks before power-on are done
};

struct RankedCause {
  std::size_t cause = 0; // place in the model
  double probability = 0;
};

struct NextCheck {
  std::size_t check = 0; // place in the model
  double gain = 0;       // bits
  double per_minute = 0;
  double chance_of_bad = 0;
};

struct Diagnosis {
  std::vector<RankedCause> causes;  // most probable first, then in the model's order
  std::vector<NextCheck> next;      // most bits per minute first; those with a hazard last among equals
  std::vector<std::size_t> repairs; // places of causes, when one is probable enough to begin
  double expected_minutes = 0;      // of that order
};

inline constexpr double probable_enough = 0.8;

Diagnosis diagnose(const DiagnosisModel& model, const Observations& observed);

} // namespace benchlore
