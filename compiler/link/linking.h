// The steps of linking, in the order in which link_shop takes them. Each fills its part of the shop and reports.
#pragma once

#include "base/files.h"
#include "link/shop.h"

#include <set>

namespace benchlore {

// What the steps share beside the shop.
struct Linking {
  const Files& files;
  std::string folder;                            // with a `/` at its end, or empty
  std::vector<std::string> paths;                // every file of the content folder, relative to it, sorted
  std::set<std::string, std::less<>> broken_ids; // of broken notes: what names them is held back
  Sources& sources;
  Report& report;
  Shop& shop;
};

void read_notes(Linking& linking);
void read_shop_facts(Linking& linking);
void index_names(Linking& linking);        // ids, names, ambiguous names
void resolve_references(Linking& linking); // fields that name notes; backlinks
void resolve_body_links(Linking& linking); // links and pictures of bodies; backlinks and attachments
void read_positions(Linking& linking);
void read_substitutes(Linking& linking); // declared substitutes and accepted findings
void read_stock(Linking& linking);
void check_sources(Linking& linking);

} // namespace benchlore
