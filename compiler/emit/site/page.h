// What every page has in common: its frame, its way back to the root, and links to notes.
#pragma once

#include "emit/site/html.h"
#include "emit/site/paths.h"
#include "emit/site/site.h"

#include <map>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace benchlore {

// The shop seen from one page. `root` leads from the page to the root of the site: `` or `../`.
struct View {
  const SiteInput& in;
  const std::string& frame;
  std::string root;

  const Shop& shop() const { return in.shop; }
  const Schema& schema() const { return *in.shop.schema; }
  // A link to a note with its title; the bare text when there is no such note.
  Html note_link(NoteId id) const;
  Html note_link(std::string_view id) const;
  // The source's title, linked when it has an entry somewhere.
  Html source_link(std::string_view source) const;
  Html kind_link(std::string_view kind) const;
  Html class_link(std::string_view class_name) const;
};

struct Page {
  std::string path;
  std::string title;
  std::string current; // which entry of the navigation it belongs to
  Html main;
  std::vector<std::string> scripts; // names in assets/
};

// The whole page, ready to write.
std::string framed(const View& view, const Page& page);

// The `../` that lead from a page back to the root.
std::string root_of(std::string_view path);

} // namespace benchlore
