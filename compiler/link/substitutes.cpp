// Substitutes that components declare, and findings that notes accept.
#include "link/linking.h"

namespace benchlore {
namespace {

std::vector<std::string> texts_in(const Node& map, std::string_view key) {
  std::vector<std::string> texts;
  const Node* node = map.find(key);
  if (node == nullptr) return texts;
  if (node->is_scalar() && !node->text.empty()) texts.push_back(node->text);
  for (const Node& item : node->items) texts.push_back(item.text);
  return texts;
}

void read_declared(Linking& linking, NoteId id, const Node& list) {
  for (const Node& item : list.items) {
    const Node* component = item.find("component");
    if (component == nullptr) continue;
    const auto target = linking.shop.find(component->text);
    if (!target || linking.shop.note(*target).kind != "component") continue; // reported as a reference
    linking.shop.substitutes[id].push_back({*target, texts_in(item, "roles"), text_in(item, "note"), component->span});
  }
}

void read_accepts(Linking& linking, NoteId id, const Node& list) {
  for (const Node& item : list.items) {
    linking.shop.accepts[id].push_back({text_in(item, "finding"),
                                        text_in(item, "about"),
                                        {text_in(item, "reason"), text_in(item, "by"), text_in(item, "date")},
                                        item.span});
  }
}

} // namespace

void read_substitutes(Linking& linking) {
  for (std::uint32_t at = 0; at < linking.shop.notes.size(); ++at) {
    const Note& note = linking.shop.notes[at];
    if (note.broken) continue;
    if (const Node* list = note.field("substitutes"); list != nullptr && note.kind == "component")
      read_declared(linking, {at}, *list);
    if (const Node* list = note.field("accepts")) read_accepts(linking, {at}, *list);
  }
}

} // namespace benchlore
