// The examples that every rule carries, run.
#pragma once

#include "schema/schema.h"

#include <string>

namespace benchlore {

// What is wrong with an example, in a sentence; empty when it comes out as it says.
std::string example_fault(const Schema& schema, const Rule& rule, const RuleExample& example);

// Reports every example of the shop's own rules that does not come out as it says; false when one did not.
bool run_shop_examples(const Schema& schema, Report& report);

} // namespace benchlore
