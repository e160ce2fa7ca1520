// Fault notes first, then failure modes of what is fitted, and last what is in no note.
#include "diagnosis/model.h"

#include "diagnosis/decisions.h"

#include <algorithm>
#include <set>

namespace benchlore {
namespace {

double probability_of(const Shop& shop, const std::string& word, double otherwise) {
  const auto found = shop.schema->likelihood.find(word);
  return found == shop.schema->likelihood.end() ? otherwise : found->second;
}

bool names(const Note& note, std::string_view field, const std::string& id) {
  for (const auto& name : note.texts(field)) {
    if (name.value == id) return true;
  }
  return false;
}

void add_checks(DiagnosisModel& model, const Note& fault, std::size_t cause) {
  const Node* list = fault.field("checks");
  if (list == nullptr) return;
  for (std::size_t i = 0; i < list->items.size(); ++i) {
    const Node& item = list->items[i];
    const std::string text = text_in(item, "check");
    const auto same = std::find_if(model.checks.begin(), model.checks.end(), [&](auto& c) { return c.text == text; });
    if (same != model.checks.end()) {
      same->causes.push_back(cause);
      continue;
    }
    CheckModel check{fault.id + "/" + std::to_string(i + 1),
                     text,
                     text_in(item, "good"),
                     text_in(item, "bad"),
                     {cause},
                     15,
                     text_in(item, "risk"),
                     text_in(item, "power") == "yes"};
    if (const auto minutes = Decimal::parse(text_in(item, "minutes")); minutes && minutes->value() > 0)
      check.minutes = minutes->value();
    model.checks.push_back(std::move(check));
  }
}

void add_fault(DiagnosisModel& model, const Shop& shop, NoteId id) {
  const Note& note = shop.note(id);
  CauseModel cause{note.id, note.title, id, note.text("likelihood"), 0, 0, 0, {}};
  cause.weight = probability_of(shop, cause.word, 0.3);
  if (const Node* symptoms = note.field("symptoms")) {
    for (const Node& item : symptoms->items)
      cause.symptoms[text_in(item, "symptom")] = probability_of(shop, text_in(item, "likelihood"), 0.75);
  }
  add_checks(model, note, model.causes.size());
  model.causes.push_back(std::move(cause));
}

// Symptoms that a fault note of this machine already ties to this component, so that nothing counts twice.
bool already_told(const DiagnosisModel& model, const Shop& shop, const Note& component) {
  return std::any_of(model.causes.begin(), model.causes.end(), [&](const CauseModel& cause) {
    const Node* told = shop.note(cause.note).field("cause");
    return told != nullptr && text_in(*told, "component") == component.id;
  });
}

void add_inherited(DiagnosisModel& model, const Shop& shop) {
  std::set<std::uint32_t> components;
  for (const auto& board_name : shop.note(model.equipment).texts("boards")) {
    const auto board = shop.find(board_name.value);
    if (!board) continue;
    for (const Position* position : shop.positions_on(*board)) {
      if (position->component.known()) components.insert(position->component.index);
    }
  }
  const std::size_t told = model.causes.size();
  for (std::uint32_t index : components) {
    const Note& component = shop.note({index});
    const Node* modes = component.field("failure-modes");
    DiagnosisModel first_part{
        model.equipment, {model.causes.begin(), model.causes.begin() + static_cast<std::ptrdiff_t>(told)}, {}};
    if (modes == nullptr || already_told(first_part, shop, component)) continue;
    for (const Node& mode : modes->items) {
      CauseModel cause{component.id + ": " + text_in(mode, "mode"),
                       component.title + ": " + text_in(mode, "mode"),
                       NoteId{index},
                       text_in(mode, "likelihood"),
                       0,
                       0,
                       0,
                       {}};
      cause.weight = inherited_weight * probability_of(shop, cause.word, 0.3);
      const Node* looks = mode.find("looks-like");
      if (looks == nullptr) continue;
      if (looks->is_scalar()) cause.symptoms[looks->text] = 0.5;
      for (const Node& symptom : looks->items) cause.symptoms[symptom.text] = 0.5;
      if (!cause.symptoms.empty()) model.causes.push_back(std::move(cause));
    }
  }
}

void count_jobs(DiagnosisModel& model, const Shop& shop) {
  const std::string& machine = shop.note(model.equipment).id;
  for (const auto& [unused, id] : shop.by_id) {
    const Note& job = shop.note(id);
    if (job.kind != "job" || job.text("equipment") != machine) continue;
    for (CauseModel& cause : model.causes) {
      if (!cause.id.empty() && names(job, "found", cause.id)) ++cause.jobs;
    }
  }
}

void set_priors(DiagnosisModel& model) {
  double sum = 0;
  for (const CauseModel& cause : model.causes) sum += cause.weight;
  std::vector<double> counts, weights;
  for (const CauseModel& cause : model.causes) {
    counts.push_back(cause.jobs);
    weights.push_back(cause.weight / sum);
  }
  const auto priors = smoothed(counts, weights, prior_strength);
  for (std::size_t i = 0; i < priors.size(); ++i) model.causes[i].prior = priors[i];
}

} // namespace

DiagnosisModel diagnosis_model(const Shop& shop, NoteId equipment) {
  DiagnosisModel model;
  model.equipment = equipment;
  for (const auto& [unused, id] : shop.by_id) {
    const Note& note = shop.note(id);
    if (note.kind == "fault" && names(note, "equipment", shop.note(equipment).id)) add_fault(model, shop, id);
  }
  add_inherited(model, shop);
  model.causes.push_back({"", "something not in these notes", {}, "", leak_weight, 0, 0, {}});
  count_jobs(model, shop);
  set_priors(model);
  return model;
}

} // namespace benchlore
