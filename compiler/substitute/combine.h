// The best combinations of up to four parts that may take the place of one: exact, by value first and then judged.
#pragma once

#include "substitute/combined.h"
#include "substitute/verdict.h"

#include <vector>

namespace benchlore {

struct CombinationSource {
  Part part;
  int available = 4; // how many may be used
};

struct Combination {
  std::vector<const CombinationWay*> ways; // inner first; two for strings in parallel
  std::vector<std::size_t> parts;          // places in the list of sources, ascending
  CombinedPart whole;
  std::int64_t deviation = 0; // of the nominal value from the original's, in parts per 10^9 of the smaller one
  Judgement judgement;
};

struct CombinationSearch {
  std::vector<Combination> found; // fewest parts first, then closest, then in order of ways and sources
  std::size_t judged = 0;
  bool complete = true; // false when so many were tried in vain that the search was given up
};

// The `limit` best usable combinations of each number of parts. Usable is conditional or better; since every
// combination asks for something to be done, none is better than conditional.
CombinationSearch find_combinations(const Schema& schema, const Part& original,
                                    const std::vector<CombinationSource>& sources, const Where& where,
                                    std::size_t limit);

// One combination, judged; nothing when it cannot be made. `ways` and `parts` as in Combination.
std::optional<Combination> judge_combination(const Schema& schema, const Part& original,
                                             const std::vector<CombinationSource>& sources,
                                             std::vector<const CombinationWay*> ways, std::vector<std::size_t> parts,
                                             const Where& where);

// How a combination is said: `2 × a and b in parallel`.
std::string combination_text(const Combination& combination, const std::vector<CombinationSource>& sources);

} // namespace benchlore
