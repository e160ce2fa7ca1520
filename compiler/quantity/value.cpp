// The text of a value: a quantity in its canonical form, or words with commas between them.
#include "quantity/value.h"

#include "base/text.h"

namespace benchlore {

std::string to_text(const Value& value) {
  if (const auto* quantity = std::get_if<Quantity>(&value)) return to_text(*quantity);
  const auto* words = std::get_if<Words>(&value);
  return words ? join(words->items, ", ") : std::string();
}

} // namespace benchlore
