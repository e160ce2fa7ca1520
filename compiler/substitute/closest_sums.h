// Sums of two to four of a set of numbers that lie closest to a wanted sum, without trying them all.
#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

namespace benchlore {

struct ClosestSum {
  std::int64_t deviation = 0;        // from the wanted sum, in parts per 10^9 of the smaller one
  std::vector<std::uint32_t> places; // of the numbers, ascending; a number may be used again
};

// By deviation, then by places. `numbers` are above zero, ascending and all different; at most `most` are returned.
std::vector<ClosestSum> closest_sums(const std::vector<double>& numbers, double wanted, std::size_t count,
                                     std::size_t most);

// How far two numbers above zero lie apart, in parts per 10^9 of the smaller one.
std::int64_t deviation_of(double a, double b);

} // namespace benchlore
