// The recap list of a machine: every position that matches, grouped by component, with what may take its place, what
// lies in the drawer and what must be ordered.
#pragma once

#include "link/shop.h"
#include "substitute/verdict.h"

#include <optional>
#include <string>
#include <vector>

namespace benchlore {

struct PartsLine {
  NoteId component;
  std::vector<const Position*> positions;
  std::string risk;             // the likeliest failure mode with its likelihood word; empty when the note states none
  double likelihood = 0;        // of that mode
  std::optional<NoteId> chosen; // the best substitute that is usable at every one of the positions
  Verdict verdict = Verdict::unknown; // its worst verdict there
  int in_stock = 0; // of what is to be put in: the chosen one, or the component itself when there is none
  std::string bin;
  int to_order = 0;
};

// Positions of the equipment's boards whose component has this class or one that descends from it (empty: all).
// Lines with the greatest risk first, then by component.
std::vector<PartsLine> parts_list(const Shop& shop, NoteId equipment, const std::string& class_name);

// As comma-separated values (RFC 4180): a header line, then one line for each group.
std::string parts_csv(const Shop& shop, const std::vector<PartsLine>& lines);

} // namespace benchlore
