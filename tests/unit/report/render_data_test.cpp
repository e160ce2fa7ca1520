// JSON and SARIF, whole where that is short.
#include "report/render.h"

#include <doctest/doctest.h>

using namespace benchlore;

namespace {

struct Bench {
  Sources sources;
  Report report;
  Bench() {
    const FileId file = sources.add("boards/µ a.md", "fits: tube-9\n");
    Message& message = report.add(MessageKind::unsafe_substitute, {file, 6, 12}, "too \"hot\"", "take it out",
                                  {{{file, 0, 4}, "declared here"}});
    message.subject = "tube-1";
    message.verdict = "unsafe";
    report.add(MessageKind::schema_error, {}, "x").accepted = Acceptance{"known", "rk", "2024-05-01"};
  }
};

bool holds(const std::string& text, std::string_view part) { return text.find(part) != std::string::npos; }

} // namespace

TEST_CASE("JSON has every field of a finding, the counts and the version of the format") {
  const Bench bench;
  const std::string json = render_json(bench.report, bench.sources);
  CHECK(json.starts_with(R"({"format":"benchlore-findings","version":1,"findings":[{"rule":"unsafe-substitute",)"
                         R"("severity":"unsafe","file":"boards/µ a.md","line":1,"column":7,"end_line":1,)"
                         R"("end_column":13,"message":"too \"hot\"","help":"The declared)"));
  CHECK(holds(json,
              R"("way_out":"take it out","subject":"tube-1","verdict":"unsafe","related":[{"file":"boards/µ a.md",)"
              R"("line":1,"column":1,"message":"declared here"}]},)"));
  CHECK(holds(json, R"("accepted":{"by":"rk","date":"2024-05-01","reason":"known"},"related":[]}])"));
  CHECK(json.ends_with(R"(],"counts":{"unsafe":1,"error":0,"warning":0,"note":0,"accepted":1}})"
                       "\n"));
}

TEST_CASE("SARIF calls unsafe an error whose properties say unsafe") {
  const Bench bench;
  const std::string sarif = render_sarif(bench.report, bench.sources);
  CHECK(sarif.starts_with(R"({"$schema":"https://json.schemastore.org/sarif-2.1.0.json","version":"2.1.0","runs":[{)"
                          R"("tool":{"driver":{"name":"benchlore","rules":[{"id":"unreadable-file")"));
  CHECK(holds(sarif, R"("level":"error","message":{"text":"too \"hot\"; to settle: take it out"},"locations":[{)"
                     R"("physicalLocation":{"artifactLocation":{"uri":"boards/%C2%B5%20a.md"},"region":{"startLine":1,)"
                     R"("startColumn":7,"endLine":1,"endColumn":13}}}])"));
  CHECK(holds(sarif, R"("properties":{"severity":"unsafe","way_out":"take it out","subject":"tube-1")"));
  CHECK(holds(sarif, R"(},"message":{"text":"declared here"}}])"));
}

TEST_CASE("SARIF suppresses what is accepted, with the reason") {
  const Bench bench;
  const std::string sarif = render_sarif(bench.report, bench.sources);
  CHECK(holds(sarif, R"("locations":[],"relatedLocations":[],"suppressions":[{"kind":"inSource",)"
                     R"x("justification":"known (rk, 2024-05-01)"}])x"));
}

TEST_CASE("the rule index of a SARIF result leads to its rule") {
  const Bench bench;
  const auto index = static_cast<std::size_t>(MessageKind::unsafe_substitute);
  CHECK(message_kinds()[index].name == "unsafe-substitute");
  CHECK(holds(render_sarif(bench.report, bench.sources), "\"ruleIndex\":" + std::to_string(index) + ","));
}
