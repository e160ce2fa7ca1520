// Two values brought side by side, ready to be compared: the reference that counts, under the same test conditions.
#pragma once

#include "schema/part.h"
#include "substitute/verdict.h"

#include <optional>
#include <string>

namespace benchlore {

// One rule with everything that its form may look at.
struct Comparison {
  const Schema& schema;
  const Rule& rule;
  const Part& original;
  const Part& substitute;
  const Where& where;
  const RatingType* type = nullptr; // of the substitute's rating
  std::optional<Value> value;       // the substitute's, brought to the reference's conditions
  std::optional<Value> reference;
  std::string reference_name; // `applied voltage`, `the original`, `the limit`
  double factor = 1.0;
  Rule::Band band;
  std::string unusable; // why value or reference cannot be compared; empty when they can
};

// Fills in everything that the rule compares. Never fails: what is missing is said in `unusable`.
void prepare(Comparison& comparison);

// A number made comparable; equal within one part in 10^9, so that no verdict hangs on the last bit.
bool not_below(double a, double b);
bool not_above(double a, double b);
bool equal(double a, double b);

// What a form of rule finds. `required` is a sentence fragment with the reference in it.
struct Finding {
  bool met = false;
  std::string unusable;
  std::string required;
  std::optional<double> margin;
  bool by_tolerance = false;
  std::string working;
  std::string rating; // when another rating than the rule's decided
};

Finding apply_form(const Comparison& comparison);
Finding apply_computation(const Comparison& comparison);

// True when a computation of this name exists.
bool computation_known(std::string_view name);

} // namespace benchlore
