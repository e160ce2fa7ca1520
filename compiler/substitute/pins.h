// Which lead or pin does what: orders of leads as permutations, pinouts pin by pin.
#pragma once

#include "substitute/comparison.h"

namespace benchlore {

// Met when every lead of the substitute falls into its own hole. Reads `lead-view` beside the rule's rating: front and
// back are mirror images of each other; nothing else is converted.
Finding leads(const Comparison& comparison);

// Met when no pin is moved, in conflict or lost (or, when the rule looks for extra functions, when no pin has one
// that the original left unconnected). The pins that differ are named in the working.
Finding pins(const Comparison& comparison);

} // namespace benchlore
