// The model that notes and jobs make, and what follows from what is seen.
#include "../bench/bench_shop.h"
#include "diagnosis/diagnose.h"

using namespace benchlore;
using doctest::Approx;

namespace {

std::string fault(const std::string& likelihood, const std::string& symptoms, const std::string& checks) {
  return test::note("fault", "equipment: [machine]\nlikelihood: " + likelihood + "\nsymptoms:\n" + symptoms +
                                 (checks.empty() ? "" : "checks:\n" + checks));
}

std::map<std::string, std::string, std::less<>> notes() {
  return {test::practice(),
          {"equipment/machine.md", test::note("equipment", "maker: None\n")},
          {"symptoms/no-picture.md", test::note("symptom", "")},
          {"symptoms/hum.md", test::note("symptom", "")},
          {"faults/fuse.md", fault("usual", "  - {symptom: no-picture, likelihood: certain}\n",
                                   "  - {check: fuse, bad: open, minutes: 2, risk: none}\n")},
          {"faults/ripple.md", fault("sometimes", "  - {symptom: hum, likelihood: certain}\n",
                                     "  - {check: ripple, bad: high, minutes: 6, risk: low, power: yes}\n  - {check: "
                                     "bulge, bad: seen, minutes: 6, risk: mains}\n")}};
}

struct Asked {
  test::BenchShop made;
  DiagnosisModel model;
  explicit Asked(const std::map<std::string, std::string, std::less<>>& files)
      : made(files), model(diagnosis_model(made.shop, made.id("machine"))) {}
  double probability(const Observations& observed, const std::string& id) const {
    for (const RankedCause& cause : diagnose(model, observed).causes) {
      if (model.causes[cause.cause].id == id) return cause.probability;
    }
    return -1;
  }
};

} // namespace

TEST_CASE("priors are the words of the notes, with room for what is in no note") {
  const Asked asked(notes());
  REQUIRE(asked.model.causes.size() == 3);
  const double sum = 0.75 + 0.3 + leak_weight; // Kent's words, and the leak
  CHECK(asked.probability({}, "fuse") == Approx(0.75 / sum));
  CHECK(asked.probability({}, "") == Approx(leak_weight / sum));
}

TEST_CASE("what is seen raises its cause, and what is not seen rules out a cause that always shows it") {
  const Asked asked(notes());
  CHECK(asked.probability({{"hum"}, {}, {}, false}, "ripple") > 0.8);
  CHECK(asked.probability({{}, {"no-picture"}, {}, false}, "fuse") == 0);
  CHECK(asked.probability({{}, {}, {}, false}, "ripple") == Approx(0.3 / 1.12)); // nothing known changes nothing
}

TEST_CASE("evidence that excludes every cause ends in what is in no note") {
  const Asked asked(notes());
  const Observations all{{}, {"no-picture", "hum"}, {}, false};
  CHECK(asked.probability(all, "") == Approx(1));
  CHECK(asked.model.causes[diagnose(asked.model, all).causes.front().cause].title == "something not in these notes");
}

TEST_CASE("ten jobs in which one cause recurs move it up by exactly what the prior says") {
  auto files = notes();
  for (int i = 0; i < 10; ++i)
    files["jobs/job-" + std::to_string(i) + ".md"] =
        test::note("job", "equipment: machine\nreceived: 2026-01-05\nfound: [ripple]\n");
  const Asked asked(files);
  CHECK(asked.probability({}, "ripple") == Approx((10 + prior_strength * 0.3 / 1.12) / (10 + prior_strength)));
}

TEST_CASE("nothing under power is proposed before the checks before power-on are done") {
  const Asked asked(notes());
  auto proposed = [&](bool powered) {
    std::vector<std::string> ids;
    for (const NextCheck& next : diagnose(asked.model, {{}, {}, {}, powered}).next)
      ids.push_back(asked.model.checks[next.check].id);
    return ids;
  };
  CHECK(proposed(false) == std::vector<std::string>{"fuse/1", "ripple/2"});
  CHECK(proposed(true) ==
        std::vector<std::string>{"fuse/1", "ripple/1", "ripple/2"}); // of equal ones the hazard comes last
}

TEST_CASE("a check that came out bad settles its cause, and is not proposed again") {
  const Asked asked(notes());
  const Observations checked{{}, {}, {{"fuse/1", true}}, false};
  CHECK(asked.probability(checked, "fuse") > 0.9);
  for (const NextCheck& next : diagnose(asked.model, checked).next)
    CHECK(asked.model.checks[next.check].id != "fuse/1");
  CHECK(asked.model.causes[diagnose(asked.model, checked).repairs.front()].id == "fuse");
}
