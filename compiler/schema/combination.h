// How several parts together make one: in which way, of which classes, and what becomes of each rating.
#pragma once

#include "schema/rating.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace benchlore {

// What the whole has of a rating, given what its parts have. What one part does not guarantee, the whole does not.
struct CombinationLaw {
  enum class Kind {
    sum,            // values add
    reciprocal_sum, // reciprocals add
    least,          // the least guaranteed of all
    greatest,       // the greatest
    overlap,        // what all ranges have in common
    same,           // only when all state the same
    shared,         // as much as leaves every part within its own at the worst share that tolerances allow
    current_shared, // an alternating current: shared by value at low frequencies, by resistance at high ones
  } kind = Kind::same;
  // Of `current_shared`.
  std::optional<Quantity> by_value_below, by_resistance_above;
  std::string resistance; // the rating that shares it at high frequencies
};

struct CombinationWay {
  std::string name;                 // `parallel`
  std::string title;                // `in parallel`
  std::vector<std::string> classes; // parts of one of these, all of the same
  std::string becomes;              // the class of the whole; empty: that of the parts
  int most = 4;                     // parts
  bool alike = false;               // only parts of one and the same component
  std::vector<std::string> roles;   // only in these; empty: in all
  std::string value;                // the rating that is made up; its law is `sum` or `reciprocal-sum`
  std::map<std::string, CombinationLaw, std::less<>> laws;
  std::string leakage;                 // rating from which balancing resistors are sized; empty: none are needed
  std::string balanced;                // the rated voltage that they guard
  std::vector<std::string> conditions; // what must be done
  std::string because, source;
  Span span;
};

} // namespace benchlore
