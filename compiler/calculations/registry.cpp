// All calculations, in the order in which they are listed.
#include "calculations/definitions.h"

namespace benchlore {

const std::vector<Calculation>& calculations() {
  static const std::vector<Calculation> all = [] {
    std::vector<Calculation> made;
    for (auto list : {definitions::combinations(), definitions::capacitors(), definitions::resistors_and_heat(),
                      definitions::semiconductors(), definitions::logic(), definitions::timing(),
                      definitions::supplies(), definitions::drives(), definitions::disks(), definitions::meters()}) {
      for (Calculation& one : list) made.push_back(std::move(one));
    }
    return made;
  }();
  return all;
}

const Calculation* find_calculation(std::string_view name) {
  for (const Calculation& one : calculations()) {
    if (one.name == name) return &one;
  }
  return nullptr;
}

} // namespace benchlore
