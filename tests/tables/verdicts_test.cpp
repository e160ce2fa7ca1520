// The verdict tables: each case's verdict and deciding rating, both right. Sources stand beside the cases.
#include "verdict_cases.h"

#include "base/text.h"

#include <algorithm>
#include <map>

using namespace benchlore;

namespace {

std::string reasons_of(const Judgement& judgement) {
  std::string text;
  for (const Reason& reason : judgement.reasons) {
    if (reason.outcome == Outcome::meets) continue;
    text += "\n    " + reason.rule_name + " (" + reason.rating + ") " + std::string(to_text(reason.outcome)) + " -> " +
            std::string(to_text(reason.verdict)) + ": " + reason.substitute + ", wanted " + reason.required + "; " +
            reason.action;
  }
  return text;
}

bool decides(const Judgement& judgement, const std::vector<std::string>& any_of) {
  return std::any_of(any_of.begin(), any_of.end(), [&](auto& name) {
    return std::find(judgement.deciding.begin(), judgement.deciding.end(), name) != judgement.deciding.end();
  });
}

} // namespace

TEST_CASE("each case of the verdict tables has its verdict and its deciding rating") {
  const Schema& schema = test::project_schema();
  const auto cases = test::verdict_cases();
  CHECK(cases.size() >= 100);
  for (const auto& c : cases) {
    const Judgement judgement = test::run(c, schema);
    CHECK_MESSAGE(to_text(judgement.verdict) == c.verdict, c.file << ": " << c.name << ": got "
                                                                  << to_text(judgement.verdict) << ", expected "
                                                                  << c.verdict << reasons_of(judgement));
    CHECK_MESSAGE(decides(judgement, c.deciding), c.file << ": " << c.name << ": decided by "
                                                         << join(judgement.deciding, ", ") << reasons_of(judgement));
    CHECK_MESSAGE(!c.source.empty(), c.file << ": " << c.name << " names no source");
  }
}

TEST_CASE("no case that the tables call unsafe, unfit or unknown comes out as usable") {
  const Schema& schema = test::project_schema();
  for (const auto& c : test::verdict_cases()) {
    if (c.verdict == "suitable" || c.verdict == "conditional") continue;
    CHECK_MESSAGE(test::run(c, schema).verdict < Verdict::conditional, c.name);
  }
}

TEST_CASE("every class that parts can have stands in the tables with at least two verdicts") {
  const Schema& schema = test::project_schema();
  std::map<std::string, std::map<std::string, int>> seen;
  for (const auto& c : test::verdict_cases()) ++seen[c.original_class][c.verdict];
  for (const auto& [name, made] : schema.classes) {
    if (!made.general) CHECK_MESSAGE(seen[name].size() >= 2, name);
  }
}
