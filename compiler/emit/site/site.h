// Writes the shop as a site that needs no server: pages, style, scripts, pictures, and data for the search in the page.
//
// Adds no facts: what a page says was in a note, in schema/ or in a judgement.
#pragma once

#include "base/files.h"
#include "link/shop.h"
#include "report/message.h"
#include "substitute/judged.h"

#include <functional>
#include <string>
#include <utility>
#include <vector>

namespace benchlore {

// What a note is found by. It comes from the words of the index, so that the search in the page finds and ranks alike.
struct NoteTerms {
  std::vector<std::pair<std::string, unsigned>> terms; // each term once, with how often it counts
  std::vector<std::string> spellings;                  // words as they stand, to complete what is typed
};
using TermsOf = std::function<NoteTerms(NoteId)>;

// The numbers of the ranking (BM25); the same as the index uses.
struct RankingNumbers {
  double k1 = 1.2, b = 0.75, shortest = 0.5, lesser = 0.5;
};

struct SiteInput {
  const Shop& shop;
  const JudgedShop& judged;
  const Report& report;
  const Sources& sources;
  const Files& site_files; // site/: templates, styles, scripts
  const Files& content;    // the shop's own folder, for pictures
  TermsOf terms_of{};      // without it the search in the page finds nothing
  RankingNumbers ranking{};
};

// Writes every file of the site; false when the template is missing or a file could not be written.
bool write_site(const SiteInput& input, Files& out);

} // namespace benchlore
