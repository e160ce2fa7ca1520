// Gathers notes by path, kind and class, and judgements by part.
#include "emit/site/gathered.h"

#include <algorithm>

namespace benchlore {
namespace {

void sort_by_title(const Shop& shop, std::vector<NoteId>& notes) {
  std::stable_sort(notes.begin(), notes.end(), [&](NoteId a, NoteId b) {
    const Note& left = shop.note(a);
    const Note& right = shop.note(b);
    return left.title != right.title ? left.title < right.title : left.id < right.id;
  });
}

void gather_notes(const Shop& shop, Gathered& out) {
  for (std::uint32_t i = 0; i < shop.notes.size(); ++i) {
    const Note& note = shop.notes[i];
    if (note.broken) continue;
    out.by_path[note.path] = NoteId{i};
    out.by_kind[note.kind].push_back(NoteId{i});
    if (!note.class_name.empty()) out.by_class[note.class_name].push_back(NoteId{i});
  }
  for (auto& [kind, notes] : out.by_kind) sort_by_title(shop, notes);
  for (auto& [class_name, notes] : out.by_class) sort_by_title(shop, notes);
}

void worst_first(std::vector<const JudgedSubstitute*>& list) {
  std::stable_sort(list.begin(), list.end(), [](const JudgedSubstitute* a, const JudgedSubstitute* b) {
    return a->judgement.verdict < b->judgement.verdict;
  });
}

} // namespace

Gathered gather(const SiteInput& input) {
  Gathered out;
  gather_notes(input.shop, out);
  out.attachments.insert(input.shop.attachments.begin(), input.shop.attachments.end());
  for (const JudgedSubstitute& judged : input.judged.substitutes) {
    out.by_original[judged.original].push_back(&judged);
    out.by_substitute[judged.substitute].push_back(&judged);
  }
  for (auto& [note, list] : out.by_original) worst_first(list);
  for (auto& [note, list] : out.by_substitute) worst_first(list);
  for (const JudgedPlace& place : input.judged.places) out.places[place.position] = &place;
  return out;
}

std::vector<NoteId> naming(const Shop& shop, NoteId note, std::string_view kind, std::string_view field) {
  std::vector<NoteId> out;
  if (note.index >= shop.backlinks.size()) return out;
  for (const Backlink& link : shop.backlinks[note.index])
    if (link.field.starts_with(field) && !shop.note(link.from).broken && shop.note(link.from).kind == kind &&
        std::find(out.begin(), out.end(), link.from) == out.end())
      out.push_back(link.from);
  return out;
}

} // namespace benchlore
