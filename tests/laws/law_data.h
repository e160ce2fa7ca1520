// The pairs that the laws are tried on: every case of the verdict tables, and every pair of demonstration components of
// one class.
#pragma once

#include "../tables/verdict_cases.h"
#include "compile/compile.h"

#include <vector>

namespace benchlore::test {

struct Pair {
  std::string name;
  const ComponentClass* original_class;
  const ComponentClass* substitute_class;
  Ratings original, substitute;
  Where where;
};

inline Judgement judge_pair(const Pair& pair) {
  return judge(project_schema(), {"original", "original", pair.original_class, &pair.original},
               {"substitute", "substitute", pair.substitute_class, &pair.substitute}, pair.where);
}

inline const Compiled& demonstration() {
  static const std::unique_ptr<Compiled> compiled = [] {
    Failure failure;
    return compile({std::string(BENCHLORE_ROOT) + "/content", std::string(BENCHLORE_ROOT) + "/schema"}, failure);
  }();
  REQUIRE(compiled != nullptr);
  return *compiled;
}

inline void add_demonstration_pairs(std::vector<Pair>& pairs) {
  const Shop& shop = demonstration().shop;
  const Schema& schema = project_schema();
  for (const auto& [a, first] : shop.by_id) {
    for (const auto& [b, second] : shop.by_id) {
      const Note& x = shop.note(first);
      const Note& y = shop.note(second);
      if (x.kind != "component" || y.kind != "component") continue;
      const ComponentClass* from = schema.find_class(x.class_name);
      const ComponentClass* to = schema.find_class(y.class_name);
      if (from == nullptr || to == nullptr) continue;
      pairs.push_back({a + " by " + b, from, to, x.ratings, y.ratings, {}});
      for (const Position* position : shop.positions_of(first))
        pairs.push_back(
            {a + " by " + b + " at " + position->ref, from, to, x.ratings, y.ratings, shop.where(*position)});
    }
  }
}

inline std::vector<Pair> law_pairs() {
  std::vector<Pair> pairs;
  const Schema& schema = project_schema();
  for (const VerdictCase& c : verdict_cases()) {
    if (!c.combination.empty()) continue; // of one part only
    pairs.push_back({c.name, schema.find_class(c.original_class), schema.find_class(c.substitute_class), c.original,
                     c.substitute, c.where});
  }
  add_demonstration_pairs(pairs);
  return pairs;
}

} // namespace benchlore::test
