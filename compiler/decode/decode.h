// What a marking printed on a part can mean: every reading that the published codes allow, the likeliest first.
#pragma once

#include "quantity/dimension.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace benchlore {

// Fractions of the value, both not negative: 0.1 and 0.5 for -10/+50 %.
struct ReadTolerance {
  double minus = 0;
  double plus = 0;
};

struct Reading {
  std::string code;            // the system of marking: `IEC 60062 letter code`
  std::string marking;         // what was read by it: the whole text, or one word of it
  std::optional<double> value; // in SI units; nothing where a code tells no number or sources disagree on it
  Dimension dimension;         // of the value
  std::optional<ReadTolerance> tolerance;
  std::string text; // what it means, for a person
  std::string why;  // the reason, and what speaks for it or against it
  int rank = 0;     // 1 to 99, the likelier the higher: an order and no probability
};

// A longer text is no marking: `decode` reads nothing in it.
inline constexpr std::size_t longest_marking = 120; // bytes

// The readings of any bytes, best first; the same text always gives the same list. Names of colours are read together
// as bands; other words as one marking with its parts (`104K 50V`) and each for itself.
std::vector<Reading> decode(std::string_view text);

} // namespace benchlore
