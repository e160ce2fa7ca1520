// One fault at a time: the cause is a variable, every symptom and check hangs on it alone.
#include "diagnosis/diagnose.h"

#include "diagnosis/decisions.h"
#include "diagnosis/network.h"

#include <algorithm>

namespace benchlore {
namespace {

constexpr std::size_t yes = 1;

double symptom_given(const CauseModel& cause, const std::string& symptom) {
  if (cause.id.empty()) return leak_symptom;
  const auto found = cause.symptoms.find(symptom);
  return found == cause.symptoms.end() ? false_alarm : found->second;
}

double bad_given(const DiagnosisModel& model, const CheckModel& check, std::size_t cause) {
  if (model.causes[cause].id.empty()) return leak_check;
  return std::find(check.causes.begin(), check.causes.end(), cause) != check.causes.end() ? check_right
                                                                                          : 1 - check_right;
}

const CheckModel* find_check(const DiagnosisModel& model, const std::string& id) {
  const auto found = std::find_if(model.checks.begin(), model.checks.end(), [&](auto& c) { return c.id == id; });
  return found == model.checks.end() ? nullptr : &*found;
}

// The network of the cause and of everything that was observed.
struct Observed {
  Network network;
  std::size_t cause;
  Network::Evidence evidence;

  explicit Observed(const DiagnosisModel& model) : cause(network.variable(model.causes.size())) {
    std::vector<double> priors;
    for (const CauseModel& one : model.causes) priors.push_back(one.prior);
    network.table(cause, {}, priors);
  }

  template <typename Given> void add(const DiagnosisModel& model, bool value, Given given) {
    const std::size_t variable = network.variable(2);
    std::vector<double> rows;
    for (std::size_t i = 0; i < model.causes.size(); ++i) {
      const double p = given(i);
      rows.push_back(1 - p);
      rows.push_back(p);
    }
    network.table(variable, {cause}, rows);
    evidence[variable] = value ? yes : 0;
  }
};

std::vector<double> posterior_of(const DiagnosisModel& model, const Observations& observed) {
  Observed made(model);
  auto symptom = [&](const std::string& id, bool seen) {
    made.add(model, seen, [&](std::size_t cause) { return symptom_given(model.causes[cause], id); });
  };
  for (const std::string& id : observed.seen) symptom(id, true);
  for (const std::string& id : observed.not_seen) symptom(id, false);
  for (const auto& [id, bad] : observed.checked) {
    if (const CheckModel* check = find_check(model, id))
      made.add(model, bad, [&](std::size_t cause) { return bad_given(model, *check, cause); });
  }
  const auto found = made.network.posterior(made.cause, made.evidence);
  if (found) return *found;
  std::vector<double> leak(model.causes.size(), 0); // nothing that is known can be: what is left is the unknown
  leak.back() = 1;
  return leak;
}

int hazard(const CheckModel& check) {
  return check.risk == "mains" || check.risk == "eht" || check.risk == "charged" ? 1 : 0;
}

bool done(const Observations& observed, const std::string& id) {
  return std::any_of(observed.checked.begin(), observed.checked.end(), [&](auto& c) { return c.first == id; });
}

std::vector<NextCheck> next_checks(const DiagnosisModel& model, const Observations& observed,
                                   const std::vector<double>& causes) {
  std::vector<NextCheck> next;
  for (std::size_t i = 0; i < model.checks.size(); ++i) {
    const CheckModel& check = model.checks[i];
    if (done(observed, check.id) || (check.power && !observed.powered)) continue;
    std::vector<std::vector<double>> outcomes;
    double chance = 0;
    for (std::size_t cause = 0; cause < causes.size(); ++cause) {
      const double bad = bad_given(model, check, cause);
      outcomes.push_back({1 - bad, bad});
      chance += causes[cause] * bad;
    }
    const double gain = information_gain(causes, outcomes);
    next.push_back({i, gain, gain / check.minutes, chance});
  }
  std::stable_sort(next.begin(), next.end(), [&](const NextCheck& a, const NextCheck& b) {
    // Equal within a thousandth of a bit for each minute counts as equal: then the one without a hazard comes first.
    const auto bits = [](const NextCheck& n) { return static_cast<long long>(n.per_minute * 1000 + 0.5); };
    if (bits(a) != bits(b)) return bits(a) > bits(b);
    return hazard(model.checks[a.check]) < hazard(model.checks[b.check]);
  });
  return next;
}

// A cause costs what its cheapest check costs.
double cost_of(const DiagnosisModel& model, std::size_t cause) {
  double cost = 15;
  bool found = false;
  for (const CheckModel& check : model.checks) {
    if (std::find(check.causes.begin(), check.causes.end(), cause) == check.causes.end()) continue;
    cost = found ? std::min(cost, check.minutes) : check.minutes;
    found = true;
  }
  return cost;
}

void add_repairs(const DiagnosisModel& model, const std::vector<double>& causes, Diagnosis& result) {
  if (result.causes.empty() || result.causes.front().probability < probable_enough) return;
  std::vector<double> costs;
  for (std::size_t cause = 0; cause < causes.size(); ++cause) costs.push_back(cost_of(model, cause));
  result.repairs = repair_order(causes, costs);
  result.expected_minutes = expected_cost(causes, costs, result.repairs);
}

} // namespace

Diagnosis diagnose(const DiagnosisModel& model, const Observations& observed) {
  Diagnosis result;
  const std::vector<double> causes = posterior_of(model, observed);
  for (std::size_t i = 0; i < causes.size(); ++i) result.causes.push_back({i, causes[i]});
  std::stable_sort(result.causes.begin(), result.causes.end(),
                   [](auto& a, auto& b) { return a.probability > b.probability; });
  result.next = next_checks(model, observed, causes);
  add_repairs(model, causes, result);
  return result;
}

} // namespace benchlore
