// Data for the search in the page and for the substitute look-up: shards, and one small file that knows their ranges.
#pragma once

#include "emit/site/gathered.h"
#include "emit/site/page.h"

namespace benchlore {

// Writes `data/meta.js` and the shards:
//   terms/   term to its notes: count, then for each note the step to it doubled, plus one when a weight follows
//   words/   words to complete, one after the other: number of letters, the letters, notes that have it
//   notes/   number to [title, page, kind, excerpt]
//   names/   key of a marking, alias or number to [name, note numbers]
//   parts/   number of a component to its judged substitutes
// Notes are numbered from 1 in the order of their ids.
bool write_search_data(const View& view, const Gathered& gathered, Files& out);

// Entries of names/ and parts/, which need no terms.
std::vector<NoteId> numbered_notes(const Shop& shop);

} // namespace benchlore
