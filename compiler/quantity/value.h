// What a rating or a stress may hold: a quantity, words (grades, lead orders, kinds), or counts.
#pragma once

#include "quantity/quantity.h"

#include <string>
#include <variant>
#include <vector>

namespace benchlore {

struct Words {
  std::vector<std::string> items; // one or several: a part marked `X1/Y2` has two
  bool operator==(const Words&) const = default;
};

using Value = std::variant<Quantity, Words>;

std::string to_text(const Value& value);

} // namespace benchlore
