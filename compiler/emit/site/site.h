// Writes the shop as a site that needs no server: pages, style, scripts, pictures, and data for the search in the page.
//
// Adds no facts: what a page says was in a note, in schema/ or in a judgement.
#pragma once

#include "base/files.h"
#include "link/shop.h"
#include "report/message.h"
#include "substitute/judged.h"

namespace benchlore {

struct SiteInput {
  const Shop& shop;
  const JudgedShop& judged;
  const Report& report;
  const Sources& sources;
  const Files& site_files; // site/: templates, styles, scripts
  const Files& content;    // the shop's own folder, for pictures
};

// Writes every file of the site; false when the template is missing or a file could not be written.
bool write_site(const SiteInput& input, Files& out);

} // namespace benchlore
