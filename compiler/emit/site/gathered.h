// What pages ask for again and again, gathered once from the shop and its judgements.
#pragma once

#include "emit/site/site.h"

#include <map>
#include <set>
#include <string>
#include <vector>

namespace benchlore {

struct Gathered {
  std::map<std::string, NoteId, std::less<>> by_path;               // sound notes
  std::map<std::string, std::vector<NoteId>, std::less<>> by_kind;  // sound notes, by title
  std::map<std::string, std::vector<NoteId>, std::less<>> by_class; // components, by title
  std::set<std::string, std::less<>> attachments;
  std::map<NoteId, std::vector<const JudgedSubstitute*>> by_original; // worst verdict first
  std::map<NoteId, std::vector<const JudgedSubstitute*>> by_substitute;
  std::map<const Position*, const JudgedPlace*> places;
};

Gathered gather(const SiteInput& input);

// Notes of a kind that name this one in a field of the front matter, each once, in the order of the shop.
std::vector<NoteId> naming(const Shop& shop, NoteId note, std::string_view kind, std::string_view field);

} // namespace benchlore
