// Several words of one marking read together: a value, and around it voltage, tolerance, dielectric, power.
#pragma once

#include "decode/draft.h"

namespace benchlore {

struct ReadWord {
  std::string text;
  Drafts drafts;
};

// The readings of all words as one part: a value among them that every other word qualifies.
Drafts read_joined(const std::vector<ReadWord>& words);

} // namespace benchlore
