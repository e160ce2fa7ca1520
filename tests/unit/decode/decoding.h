// What the tests of decoding ask: is this value among the readings, is it the first, what does it say.
#pragma once

#include "decode/decode.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

namespace benchlore {

inline bool same_number(double a, double b) { return std::abs(a - b) <= 1e-9 * std::abs(b); }

struct Decoded {
  std::string text;
  double si;
};

inline bool reads_as(const Reading& reading, Dimension dimension, double si) {
  return reading.dimension == dimension && reading.value && same_number(*reading.value, si);
}

// The reading of this value, the best of several; nothing when there is none.
inline std::optional<Reading> reading_of(std::string_view text, Dimension dimension, double si) {
  for (const Reading& reading : decode(text)) {
    if (reads_as(reading, dimension, si)) return reading;
  }
  return std::nullopt;
}

inline Reading first_reading(std::string_view text) {
  const auto readings = decode(text);
  return readings.empty() ? Reading{} : readings.front();
}

inline bool says(std::string_view text, std::string_view words) {
  const auto readings = decode(text);
  return std::any_of(readings.begin(), readings.end(),
                     [&](const Reading& r) { return r.text.find(words) != std::string::npos; });
}

inline void check_read(const std::vector<Decoded>& rows, Dimension dimension) {
  for (const Decoded& row : rows) CHECK_MESSAGE(reading_of(row.text, dimension, row.si).has_value(), row.text);
}

inline void check_first(const std::vector<Decoded>& rows, Dimension dimension) {
  for (const Decoded& row : rows)
    CHECK_MESSAGE(reads_as(first_reading(row.text), dimension, row.si), row.text, ": ", first_reading(row.text).text);
}

} // namespace benchlore
