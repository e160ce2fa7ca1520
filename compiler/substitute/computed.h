// The computations that a rule may ask for by name, and what they share. They take ratings and stresses by name and
// know no class.
#pragma once

#include "substitute/comparison.h"

namespace benchlore::computed {

Finding unusable(std::string why);
const Quantity* quantity(const Ratings& ratings, std::string_view name);
// The one word that is stated; empty when none or several are.
std::string word(const Ratings& ratings, std::string_view name);
// The greatest and the least value that is guaranteed; nothing when that is not stated.
std::optional<double> greatest(const Ratings& ratings, std::string_view name);
std::optional<double> least(const Ratings& ratings, std::string_view name);
std::optional<double> parameter(const Rule& rule, std::string_view name);
std::string show(double si, Dimension dimension);

// capacitors.cpp
Finding touch(const Comparison& comparison);
Finding discharge(const Comparison& comparison);
Finding series_sharing(const Comparison& comparison);
Finding hot_voltage_share(const Comparison& comparison);
Finding stored(const Comparison& comparison);

// logic.cpp
Finding noise_margin(const Comparison& comparison);
Finding fan_out(const Comparison& comparison);
Finding access_time_budget(const Comparison& comparison);
Finding refresh_rate(const Comparison& comparison);

// power.cpp
Finding junction_temperature(const Comparison& comparison);
Finding output_capacitor(const Comparison& comparison);
Finding charge_current(const Comparison& comparison);

// drives.cpp
Finding drive_geometry(const Comparison& comparison);

} // namespace benchlore::computed
