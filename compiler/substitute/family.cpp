// Ratings that a part does not state itself come from its family's entry; its own always count first.
#include "substitute/family.h"

namespace benchlore {
namespace {

const Family* family_of(const Schema& schema, const Part& part) {
  const auto stated = part.ratings->find("family");
  if (stated == part.ratings->end()) return nullptr;
  const Words* words = std::get_if<Words>(&stated->second.value);
  if (words == nullptr || words->items.size() != 1) return nullptr;
  const auto found = schema.families.find(words->items.front());
  return found == schema.families.end() ? nullptr : &found->second;
}

} // namespace

WholePart::WholePart(const Schema& schema, const Part& part) : part_(part) {
  const Family* family = family_of(schema, part);
  if (family == nullptr) return;
  ratings_ = *part.ratings;
  for (const auto& [name, value] : family->ratings) {
    if (part.component_class->ratings.contains(name)) ratings_.try_emplace(name, value);
  }
  part_.ratings = &ratings_;
}

} // namespace benchlore
