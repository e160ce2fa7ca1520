// Several parts joined into one: what the whole guarantees, and what must be done to join them.
#pragma once

#include "schema/part.h"

#include <optional>
#include <string>
#include <vector>

namespace benchlore {

struct CombinedPart {
  const ComponentClass* component_class = nullptr;
  Ratings ratings;
  double value = 0;                    // of the rating that is made up, SI, nominal
  std::vector<double> shares;          // greatest share of each part, by its weight
  std::vector<std::string> conditions; // balancing resistors included
};

// The whole of these parts, in the order given; nothing when the way does not take them or the value cannot be made
// up or one part brings next to nothing. A rating that one part does not guarantee, or states under another condition,
// is not stated of the whole.
std::optional<CombinedPart> combine(const Schema& schema, const CombinationWay& way, const std::vector<Part>& parts,
                                    const Where& where);

// The way of this name that takes parts of this class; null when there is none.
const CombinationWay* find_way(const Schema& schema, std::string_view name, std::string_view class_name);

// Whether the way takes a part of this class.
bool takes(const CombinationWay& way, std::string_view class_name);

// What one part brings to the made-up value: the value itself, or its reciprocal; nothing when it states none.
std::optional<double> weight_of(const CombinationWay& way, const Part& part);

} // namespace benchlore
