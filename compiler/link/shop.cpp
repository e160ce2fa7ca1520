// Links a content folder in the order of linking.h, and answers questions about a linked shop.
#include "link/linking.h"

#include "base/text.h"

#include <algorithm>

namespace benchlore {
namespace {

// Everything that may be linked to: the schema of the shop is no part of its notes.
std::vector<std::string> content_paths(const Files& files, const std::string& folder) {
  std::vector<std::string> paths;
  for (const std::string& path : files.list(folder)) {
    if (!path.starts_with(folder)) continue;
    std::string inside = path.substr(folder.size());
    if (inside.starts_with("schema/")) continue;
    paths.push_back(std::move(inside));
  }
  std::sort(paths.begin(), paths.end());
  return paths;
}

void sort_backlinks(Shop& shop) {
  const auto key = [](const Backlink& link) { return std::tie(link.from.index, link.field); };
  for (auto& links : shop.backlinks) {
    std::sort(links.begin(), links.end(), [&key](const auto& a, const auto& b) { return key(a) < key(b); });
    const auto same = [&key](const auto& a, const auto& b) { return key(a) == key(b); };
    links.erase(std::unique(links.begin(), links.end(), same), links.end());
  }
}

} // namespace

Shop link_shop(const Files& files, std::string_view folder, const Schema& schema, Sources& sources, Report& report) {
  Shop shop;
  shop.schema = &schema;
  shop.sources = &sources;
  std::string inside = tidy_path(folder).value_or(std::string(folder));
  if (!inside.empty()) inside += '/';
  Linking linking{files, inside, content_paths(files, inside), {}, sources, report, shop};
  read_notes(linking);
  read_shop_facts(linking);
  index_names(linking);
  resolve_references(linking);
  resolve_body_links(linking);
  sort_backlinks(shop);
  read_positions(linking);
  read_substitutes(linking);
  read_stock(linking);
  check_sources(linking);
  return shop;
}

std::optional<NoteId> Shop::find(std::string_view id) const {
  const auto found = by_id.find(id);
  return found == by_id.end() ? std::nullopt : std::optional(found->second);
}

std::optional<NoteId> Shop::at_path(std::string_view path) const {
  const auto found = std::lower_bound(notes.begin(), notes.end(), path,
                                      [](const Note& note, std::string_view wanted) { return note.path < wanted; });
  if (found == notes.end() || found->path != path) return std::nullopt;
  return NoteId{static_cast<std::uint32_t>(found - notes.begin())};
}

std::vector<NoteId> Shop::named(std::string_view name) const {
  std::vector<NoteId> found;
  const auto [first, last] = by_name.equal_range(type_key(name));
  for (auto at = first; at != last; ++at) {
    if (note(at->second).kind == "component") found.push_back(at->second);
  }
  std::sort(found.begin(), found.end(), [this](NoteId a, NoteId b) { return note(a).id < note(b).id; });
  found.erase(std::unique(found.begin(), found.end()), found.end());
  return found;
}

Part Shop::part(NoteId component) const {
  const Note& about = note(component);
  return {about.id, about.title, schema->find_class(about.class_name), &about.ratings};
}

int Shop::in_stock(NoteId component) const {
  int count = 0;
  for (const StockLine& line : stock) {
    if (line.component == component) count += line.quantity;
  }
  return count;
}

} // namespace benchlore
