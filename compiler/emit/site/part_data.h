// Data for the substitute look-up in the page: names of components, and what was judged for each.
#pragma once

#include "emit/site/gathered.h"
#include "emit/site/page.h"
#include "emit/site/shards.h"

namespace benchlore {

// The key under which type numbers and markings meet, to [the note numbers that bear the name].
std::vector<ShardEntry> name_entries(const Shop& shop, const std::vector<NoteId>& notes);

// Seven digits of a component's number, to {title, page, stock, in: [[substitute, page with anchor, verdict, where,
// decided by, conditions, stock], …]}.
std::vector<ShardEntry> part_entries(const View& view, const Gathered& gathered, const std::vector<NoteId>& notes);

} // namespace benchlore
