// The full-text index: one Xapian document for each sound note, numbered in order of id.
#pragma once

#include "emit/index/ranking.h"
#include "substitute/judged.h"

#include <string>

namespace benchlore {

struct IndexOptions {
  unsigned threads = 1;
  // Notes to a small database of its own, all compacted into one at the end: its maps stay in the processor's cache.
  std::size_t batch = 500;
};

// Writes the index beside the folder and puts it in its place whole. False, with what went wrong, when that failed;
// what was there before then stays.
bool write_index(const Shop& shop, const JudgedShop& judged, const std::string& folder, const IndexOptions& options,
                 std::string& error);

// Replaces the documents of these notes in an index that was written from a shop with the same notes. False when it was
// not, or cannot be changed: write it anew.
bool update_index(const Shop& shop, const JudgedShop& judged, const std::string& folder,
                  const std::vector<NoteId>& changed, std::string& error);

} // namespace benchlore
