// Cautions are derived: from the note's own field and tags, from classes and roles, from values above a threshold; a
// board has those of its positions, an equipment those of its boards, a fault those of its cause.
#include "link/linking.h"

#include <algorithm>

namespace benchlore {
namespace {

struct Evidence {
  std::set<std::string, std::less<>> named, tags, classes, roles;
  std::vector<const Ratings*> values;
  std::set<std::uint32_t> seen; // notes already gathered, so that a loop of boards ends
};

void add_class(const Shop& shop, std::string name, Evidence& evidence) {
  for (int depth = 0; depth < 16 && !name.empty(); ++depth) {
    const ComponentClass* made = shop.schema->find_class(name);
    if (made == nullptr) return;
    evidence.classes.insert(name);
    evidence.named.insert(made->cautions.begin(), made->cautions.end());
    name = made->extends;
  }
}

void add_role(const Shop& shop, const std::string& name, Evidence& evidence) {
  const auto role = shop.schema->roles.find(name);
  if (role == shop.schema->roles.end()) return;
  evidence.roles.insert(name);
  evidence.named.insert(role->second.cautions.begin(), role->second.cautions.end());
}

void add_component(const Shop& shop, const Note& note, Evidence& evidence) {
  add_class(shop, note.class_name, evidence);
  evidence.values.push_back(&note.ratings);
}

void add_position(const Shop& shop, const Position& position, Evidence& evidence) {
  add_role(shop, position.role, evidence);
  evidence.values.push_back(&position.stress);
  if (position.component.known()) add_component(shop, shop.note(position.component), evidence);
}

void add_own(const Note& note, Evidence& evidence) {
  evidence.tags.insert(note.tags.begin(), note.tags.end());
  for (const auto& name : note.texts("cautions")) evidence.named.insert(name.value);
  const Node* steps = note.field("steps");
  if (steps == nullptr) return;
  for (const Node& step : steps->items) {
    const Node* cautions = step.find("cautions");
    if (cautions == nullptr) continue;
    if (cautions->is_scalar()) evidence.named.insert(cautions->text);
    for (const Node& name : cautions->items) evidence.named.insert(name.text);
  }
}

// A board or component brings its own field and tags with it, wherever it is used.
void gather(const Shop& shop, NoteId id, Evidence& evidence) {
  if (!evidence.seen.insert(id.index).second) return;
  const Note& note = shop.note(id);
  add_own(note, evidence);
  if (note.kind == "component") {
    add_component(shop, note, evidence);
    for (const Position* position : shop.positions_of(id)) add_role(shop, position->role, evidence);
  }
  if (note.kind == "board") {
    for (const Position* position : shop.positions_on(id)) add_position(shop, *position, evidence);
  }
}

// Notes that a field of this note names, when they are of the kind.
void gather_named(const Shop& shop, const Note& note, std::string_view field, std::string_view kind,
                  Evidence& evidence) {
  for (const Reference& reference : note.references) {
    const auto target = reference.field == field ? shop.find(reference.target) : std::nullopt;
    if (target && shop.note(*target).kind == kind) gather(shop, *target, evidence);
  }
}

bool reaches(const Caution::Threshold& threshold, const Ratings& values) {
  const auto stated = values.find(threshold.rating);
  if (stated == values.end()) return false;
  const auto* quantity = std::get_if<Quantity>(&stated->second.value);
  if (quantity == nullptr || quantity->dimension != threshold.at_least.dimension) return false;
  const auto least = threshold.at_least.centre();
  // The highest that it may be: a caution errs on the side of being shown.
  const auto most = quantity->high() ? quantity->high() : quantity->centre();
  return least && most && *most >= *least;
}

bool meets(const std::set<std::string, std::less<>>& have, const std::vector<std::string>& wanted) {
  return std::any_of(wanted.begin(), wanted.end(), [&have](const std::string& name) { return have.contains(name); });
}

bool applies(const Caution& caution, const Evidence& evidence) {
  if (evidence.named.contains(caution.name) || meets(evidence.classes, caution.classes) ||
      meets(evidence.roles, caution.roles) || meets(evidence.tags, caution.tags)) {
    return true;
  }
  return std::any_of(caution.thresholds.begin(), caution.thresholds.end(),
                     [&evidence](const Caution::Threshold& threshold) {
                       return std::any_of(evidence.values.begin(), evidence.values.end(),
                                          [&threshold](const Ratings* values) { return reaches(threshold, *values); });
                     });
}

} // namespace

std::vector<const Caution*> cautions_for(const Shop& shop, NoteId id) {
  Evidence evidence;
  const Note& note = shop.note(id);
  gather(shop, id, evidence);
  if (note.kind == "equipment") gather_named(shop, note, "boards", "board", evidence);
  if (note.kind == "fault") {
    gather_named(shop, note, "cause.component", "component", evidence);
    const Node* cause = note.field("cause");
    const Position* position =
        cause == nullptr ? nullptr : shop.position(text_in(*cause, "board"), text_in(*cause, "position"));
    if (position != nullptr) add_position(shop, *position, evidence);
  }
  std::vector<const Caution*> found;
  for (const auto& [name, caution] : shop.schema->cautions) {
    if (applies(caution, evidence)) found.push_back(&caution);
  }
  return found;
}

} // namespace benchlore
