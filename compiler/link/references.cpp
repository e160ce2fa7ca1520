// Fields that name notes. What names a broken note is held back: its own faults come first.
#include "link/linking.h"

#include "base/text.h"

#include <algorithm>

namespace benchlore {
namespace {

bool may_be(const Reference& reference, std::string_view kind) {
  return reference.kinds.empty() ||
         std::find(reference.kinds.begin(), reference.kinds.end(), kind) != reference.kinds.end();
}

// What the schema itself cites may be cited by notes too.
bool cites_schema(const Linking& linking, const Reference& reference) {
  return may_be(reference, "source") && linking.shop.schema->sources.contains(reference.target);
}

std::vector<std::string> candidates(const Shop& shop, const Reference& reference) {
  std::vector<std::string> ids;
  for (const auto& [id, note] : shop.by_id) {
    if (may_be(reference, shop.note(note).kind)) ids.push_back(id);
  }
  return ids;
}

void report_unresolved(Linking& linking, const Note& note, const Reference& reference) {
  const auto near = near_names(reference.target, candidates(linking.shop, reference));
  std::string wanted = reference.kinds.empty() ? "note" : join(reference.kinds, " or ");
  std::string way_out = near.empty() ? "write the note, or take the name out" : "use " + alternatives(near);
  linking.report
      .add(MessageKind::unresolved_reference, reference.span, "there is no " + wanted + " `" + reference.target + "`",
           way_out)
      .subject = note.id;
}

void report_kind(Linking& linking, const Note& note, const Reference& reference, const Note& target) {
  linking.report
      .add(MessageKind::unresolved_reference, reference.span,
           "`" + target.id + "` is a " + target.kind + ", and `" + reference.field + "` takes " +
               alternatives(reference.kinds),
           "name a note of that kind")
      .subject = note.id;
}

void resolve(Linking& linking, NoteId from, const Reference& reference) {
  Shop& shop = linking.shop;
  const auto target = shop.find(reference.target);
  if (!target) {
    if (linking.broken_ids.contains(reference.target) || cites_schema(linking, reference)) return;
    return report_unresolved(linking, shop.note(from), reference);
  }
  if (!may_be(reference, shop.note(*target).kind))
    return report_kind(linking, shop.note(from), reference, shop.note(*target));
  if (*target != from) shop.backlinks[target->index].push_back({from, reference.field});
}

} // namespace

void resolve_references(Linking& linking) {
  for (std::uint32_t at = 0; at < linking.shop.notes.size(); ++at) {
    if (linking.shop.notes[at].broken) continue;
    for (const Reference& reference : linking.shop.notes[at].references) resolve(linking, NoteId{at}, reference);
  }
}

void check_sources(Linking& linking) {
  for (const Note& note : linking.shop.notes) {
    if (note.broken || note.kind != "component" || !note.texts("sources").empty()) continue;
    const bool each =
        !note.ratings.empty() && std::all_of(note.ratings.begin(), note.ratings.end(),
                                             [](const auto& rating) { return !rating.second.source.empty(); });
    if (each) continue;
    linking.report
        .add(MessageKind::source_missing, {note.file, note.front_span.begin, note.front_span.begin},
             "`" + note.id + "` names no source", "add `sources:` with the datasheet that its ratings are taken from")
        .subject = note.id;
  }
}

} // namespace benchlore
