// Preferred values (IEC 60063).
#pragma once

#include <span>

namespace benchlore {

// Values of one decade times 100 (E3 to E24 times 10 are given times 100 too): 100, 220, 470 for E3.
// Series 3, 6, 12, 24, 48, 96, 192; another number gives an empty span.
std::span<const int> preferred_values(int series);

} // namespace benchlore
