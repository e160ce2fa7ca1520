// What the engine judges: a part, and the place where it sits.
#pragma once

#include "schema/schema.h"

#include <string>

namespace benchlore {

// A component's class with its stated ratings. The pointers are never null when a part is judged.
struct Part {
  std::string id;
  std::string title;
  const ComponentClass* component_class = nullptr;
  const Ratings* ratings = nullptr;
};

// Where the part sits. Without a role, what depends on one is said as a condition.
struct Where {
  std::string position; // `main-board:C201`, for the reader only
  std::string role;
  Ratings stress;
};

} // namespace benchlore
