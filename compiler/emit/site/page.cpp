// Puts a page into the frame of site/templates/page.html.
#include "emit/site/page.h"

#include <algorithm>
#include <array>

namespace benchlore {
namespace {

struct Way {
  std::string_view name, path, title;
};
constexpr std::array<Way, 7> ways{{{"home", "index.html", "Bench"},
                                   {"search", "search.html", "Search"},
                                   {"substitute", "substitute.html", "Substitutes"},
                                   {"notes", "notes.html", "Notes"},
                                   {"findings", "findings.html", "Findings"},
                                   {"calculations", "calculations.html", "Sums"},
                                   {"rules", "rules.html", "Rules"}}};

Html navigation(const View& view, std::string_view current) {
  Html out;
  for (const Way& way : ways) {
    out << "<li><a href=\"" << text(view.root + std::string(way.path)) << "\"";
    if (way.name == current) out << " aria-current=\"page\"";
    out << ">" << text(way.title) << "</a></li>";
  }
  return out;
}

Html script_tags(const View& view, const std::vector<std::string>& scripts) {
  Html out;
  for (const std::string& name : scripts)
    out << "<script defer src=\"" << text(view.root + "assets/" + name) << "\"></script>\n";
  return out;
}

} // namespace

std::string root_of(std::string_view path) {
  std::string out;
  for (auto depth = std::count(path.begin(), path.end(), '/'); depth > 0; --depth) out += "../";
  return out;
}

std::string framed(const View& view, const Page& page) {
  const std::string& name = view.shop().facts.name.empty() ? "Repair bench" : view.shop().facts.name;
  const std::array<Slot, 8> slots{{{"title", text(page.title)},
                                   {"shop", text(name)},
                                   {"root", text(view.root)},
                                   {"navigation", navigation(view, page.current)},
                                   {"scripts", script_tags(view, page.scripts)},
                                   {"current", text(page.current)},
                                   {"wording", text(view.shop().facts.wording)},
                                   {"main", page.main}}};
  return fill(view.frame, slots.data(), slots.size()).str();
}

Html View::note_link(NoteId id) const {
  if (!id.known() || id.index >= shop().notes.size()) return {};
  const Note& note = shop().note(id);
  Html title = text(note.title.empty() ? note.id : note.title);
  return note.broken ? title : link(root + page_path(note), title);
}

Html View::note_link(std::string_view id) const {
  auto found = shop().find(id);
  return found ? note_link(*found) : text(id);
}

Html View::source_link(std::string_view source) const {
  if (auto note = shop().find(source)) return note_link(*note);
  auto entry = schema().sources.find(source);
  if (entry == schema().sources.end()) return text(source);
  return link(root + source_path(shop(), source), text(entry->second.title.empty() ? source : entry->second.title));
}

Html View::kind_link(std::string_view kind) const {
  const Kind* found = schema().find_kind(kind);
  return found ? link(root + kind_path(kind), text(found->plural.empty() ? kind : found->plural)) : text(kind);
}

Html View::class_link(std::string_view class_name) const {
  const ComponentClass* found = schema().find_class(class_name);
  return found ? link(root + class_path(class_name), text(found->title)) : text(class_name);
}

} // namespace benchlore
