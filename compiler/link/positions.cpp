// Positions of boards, typed. The note's reader has checked every value, so what cannot be read here was reported.
#include "link/linking.h"

#include <algorithm>

namespace benchlore {
namespace {

Ratings stresses_of(const Linking& linking, const Node& position) {
  Ratings stresses;
  const Node* stress = position.find("stress");
  if (stress == nullptr) return stresses;
  Report said_before;
  for (const Entry& entry : stress->entries) {
    const auto type = linking.shop.schema->stresses.find(entry.key);
    if (type == linking.shop.schema->stresses.end()) continue;
    if (const auto value = read_value(entry.value, type->second, linking.sources, said_before))
      stresses[entry.key] = *value;
  }
  return stresses;
}

// A note of this kind; unknown when there is none, which the references have reported.
NoteId find_kind(const Shop& shop, const std::string& id, std::string_view kind) {
  const auto found = shop.find(id);
  return found && shop.note(*found).kind == kind ? *found : NoteId{};
}

Position read_position(const Linking& linking, NoteId board, const Entry& entry) {
  Position position;
  position.ref = entry.key;
  position.board = board;
  position.component = find_kind(linking.shop, text_in(entry.value, "component"), "component");
  position.role = text_in(entry.value, "role");
  position.stress = stresses_of(linking, entry.value);
  position.polarity = text_in(entry.value, "polarity");
  position.note = text_in(entry.value, "note");
  position.span = entry.key_span;
  return position;
}

template <class Wanted> std::vector<const Position*> chosen(const std::vector<Position>& positions, Wanted wanted) {
  std::vector<const Position*> found;
  for (const Position& position : positions) {
    if (wanted(position)) found.push_back(&position);
  }
  return found;
}

} // namespace

void read_positions(Linking& linking) {
  for (std::uint32_t at = 0; at < linking.shop.notes.size(); ++at) {
    const Note& note = linking.shop.notes[at];
    const Node* map = note.kind == "board" && !note.broken ? note.field("positions") : nullptr;
    if (map == nullptr) continue;
    for (const Entry& entry : map->entries) linking.shop.positions.push_back(read_position(linking, NoteId{at}, entry));
  }
}

std::string Position::name(const Shop& shop) const { return shop.note(board).id + ":" + ref; }

std::vector<const Position*> Shop::positions_of(NoteId component) const {
  return chosen(positions, [component](const Position& position) { return position.component == component; });
}

std::vector<const Position*> Shop::positions_on(NoteId board) const {
  return chosen(positions, [board](const Position& position) { return position.board == board; });
}

const Position* Shop::position(std::string_view board, std::string_view ref) const {
  const auto id = find(board);
  if (!id) return nullptr;
  const auto found = std::find_if(positions.begin(), positions.end(), [&](const Position& position) {
    return position.board == *id && position.ref == ref;
  });
  return found == positions.end() ? nullptr : &*found;
}

Where Shop::where(const Position& position) const { return {position.name(*this), position.role, position.stress}; }

} // namespace benchlore
