// Ids and the other names of notes. A marking such as `104` is rightly on many parts; an alias or a cross-reference
// number stands for one part, so two parts with the same one are reported.
#include "link/linking.h"

#include "base/text.h"

#include <algorithm>

namespace benchlore {
namespace {

struct Name {
  NoteId note;
  Span span;
};

using Names = std::multimap<std::string, Name>;

std::vector<Located<std::string>> cross_references(const Note& note) {
  std::vector<Located<std::string>> numbers;
  const Node* list = note.field("cross-reference");
  if (list == nullptr) return numbers;
  for (const Node& item : list->items) {
    const Node* number = item.find("number");
    if (number != nullptr && number->is_scalar()) numbers.push_back({number->text, number->span});
  }
  return numbers;
}

void add_name(Shop& shop, std::string_view name, NoteId id) {
  const std::string key = type_key(name);
  if (key.empty()) return;
  const auto [first, last] = shop.by_name.equal_range(key);
  if (std::none_of(first, last, [id](const auto& entry) { return entry.second == id; })) shop.by_name.emplace(key, id);
}

// Low ends above the other's high end, for the same rating of the same class.
const std::string* disagreement(const Note& one, const Note& other) {
  if (one.class_name != other.class_name) return nullptr;
  for (const auto& [name, stated] : one.ratings) {
    const auto found = other.ratings.find(name);
    if (found == other.ratings.end()) continue;
    const auto* a = std::get_if<Quantity>(&stated.value);
    const auto* b = std::get_if<Quantity>(&found->second.value);
    if (a == nullptr || b == nullptr || !a->at.empty() || !b->at.empty()) continue;
    const auto apart = [](const Quantity& low, const Quantity& high) {
      return low.high() && high.low() && *low.high() < *high.low();
    };
    if (apart(*a, *b) || apart(*b, *a)) return &name;
  }
  return nullptr;
}

void report_shared(Linking& linking, const Located<std::string>& name, NoteId id, const Name& other) {
  const Note& note = linking.shop.note(id);
  const Note& first = linking.shop.note(other.note);
  linking.report
      .add(MessageKind::ambiguous_name, name.span, "`" + name.value + "` also names `" + first.id + "`",
           "say more exactly which of them it stands for, or let it stand", {{other.span, "the other one"}})
      .subject = note.id;
  const std::string* rating = disagreement(note, first);
  if (rating == nullptr) return;
  linking.report
      .add(MessageKind::value_disagreement, note.ratings.find(*rating)->second.span,
           "`" + name.value + "` names two components whose `" + *rating + "` cannot both be right", "look it up again",
           {{first.ratings.find(*rating)->second.span, "what `" + first.id + "` says"}})
      .subject = note.id;
}

void check_shared(Linking& linking, Names& names, const Located<std::string>& name, NoteId id) {
  const std::string key = type_key(name.value);
  if (key.empty()) return;
  const auto [first, last] = names.equal_range(key);
  for (auto at = first; at != last; ++at) {
    if (at->second.note == id) continue;
    report_shared(linking, name, id, at->second);
    break; // one message a name, however many share it
  }
  names.emplace(key, Name{id, name.span});
}

} // namespace

void index_names(Linking& linking) {
  Shop& shop = linking.shop;
  Names exact;
  for (std::uint32_t at = 0; at < shop.notes.size(); ++at) {
    const Note& note = shop.notes[at];
    if (note.broken) continue;
    const NoteId id{at};
    shop.by_id[note.id] = id;
    add_name(shop, note.id, id);
    add_name(shop, note.title, id);
    auto names = note.texts("aliases");
    for (auto& number : cross_references(note)) names.push_back(std::move(number));
    for (const auto& name : names) {
      add_name(shop, name.value, id);
      if (note.kind == "component") check_shared(linking, exact, name, id);
    }
    for (const auto& marking : note.texts("markings")) add_name(shop, marking.value, id);
  }
}

} // namespace benchlore
