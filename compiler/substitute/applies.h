// Whether a rule has anything to say about a pair in a place.
#pragma once

#include "schema/part.h"

#include <string>

namespace benchlore {

struct Applies {
  enum class Answer { no, yes, not_stated } answer = Answer::no;
  std::string missing;      // the rating or stress that would have told
  std::string only_in_role; // no role was given, and the rule counts only in these
};

Applies applies(const Schema& schema, const Rule& rule, const Part& original, const Part& substitute,
                const Where& where);

} // namespace benchlore
