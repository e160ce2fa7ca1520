// Whether a measured value is within its limits when the meter itself is uncertain. Pure functions.
#pragma once

#include <optional>
#include <string_view>

namespace benchlore {

enum class Ruling { accept, undecided, reject };

// What a meter may be off: a share of the reading plus so many steps of its last digit.
double meter_uncertainty(double reading, double share, double counts, double resolution);

// Guarded acceptance (ISO 14253-1; ILAC-G8): accept inside the limits less the uncertainty, reject outside the limits
// by more than it, otherwise undecided. A limit that is not there does not count.
Ruling guarded(double reading, double uncertainty, std::optional<double> low, std::optional<double> high);

std::string_view to_text(Ruling acceptance);

} // namespace benchlore
