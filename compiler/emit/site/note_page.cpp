// Composes the page of a note.
#include "emit/site/note_page.h"

#include "emit/site/cautions_view.h"

#include "emit/site/body.h"
#include "emit/site/fields_view.h"
#include "emit/site/table.h"
#include "emit/site/verdict_view.h"

#include <algorithm>
#include <array>

namespace benchlore {
namespace {

using PartsOf = KindParts (*)(const View&, const Gathered&, NoteId);
struct KindRow {
  std::string_view kind;
  PartsOf parts;
};
constexpr std::array<KindRow, 5> kinds{{{"component", component_parts},
                                        {"board", board_parts},
                                        {"equipment", equipment_parts},
                                        {"symptom", symptom_parts},
                                        {"procedure", procedure_parts}}};

KindParts parts_of(const View& view, const Gathered& gathered, NoteId id) {
  for (const KindRow& row : kinds)
    if (row.kind == view.shop().note(id).kind) return row.parts(view, gathered, id);
  return {};
}

Html trail(const View& view, const Note& note) {
  Html out{"<p class=\"trail\">"};
  out << view.kind_link(note.kind);
  if (!note.class_name.empty())
    out << "<span class=\"via\" aria-hidden=\"true\"></span>" << view.class_link(note.class_name);
  return out << "</p>\n";
}

Html cautions_box(const View& view, NoteId id) { return cautions_view(view, cautions_for(view.shop(), id)); }

Html sources_view(const View& view, const Note& note) {
  std::vector<Html> items;
  for (const auto& source : note.texts("sources")) items.push_back(view.source_link(source.value));
  if (items.empty()) return {};
  return section_heading("the_sources", "Sources") << bullets(items);
}

Html backlinks_view(const View& view, NoteId id) {
  if (id.index >= view.shop().backlinks.size()) return {};
  std::vector<NoteId> seen;
  std::vector<Html> items;
  for (const Backlink& backlink : view.shop().backlinks[id.index]) {
    const Note& from = view.shop().note(backlink.from);
    if (from.broken || backlink.from == id || std::find(seen.begin(), seen.end(), backlink.from) != seen.end())
      continue;
    seen.push_back(backlink.from);
    Html item = view.note_link(backlink.from);
    const Kind* kind = view.schema().find_kind(from.kind);
    items.push_back(item << " <span class=\"from\">" << text(kind ? kind->title : from.kind) << "</span>");
  }
  if (items.empty()) return {};
  return section_heading("the_mentions", "Mentioned in") << bullets(items);
}

Html tags_view(const Note& note) {
  if (note.tags.empty()) return {};
  Html out{"<p class=\"tags\">"};
  for (const std::string& tag : note.tags) out << "<span>" << text(tag) << "</span> ";
  return out << "</p>\n";
}

} // namespace

Page note_page(const View& view, const Gathered& gathered, NoteId id) {
  const Note& note = view.shop().note(id);
  KindParts parts = parts_of(view, gathered, id);
  for (const char* common : {"kind", "title", "tags", "sources", "cautions", "accepts", "class"})
    parts.shown.emplace_back(common);
  FieldsView fields = fields_view(view, note, parts.shown);
  Html main = trail(view, note);
  main << "<h1>" << text(note.title) << "</h1>\n"
       << tags_view(note) << cautions_box(view, id) << fields.facts << parts.before << fields.sections
       << body_view(view, gathered, note) << parts.after << sources_view(view, note) << backlinks_view(view, id)
       << "<p class=\"written\">Written in <code>" << text(note.path) << "</code></p>\n";
  return {page_path(note), note.title, "notes", main, {}};
}

} // namespace benchlore
