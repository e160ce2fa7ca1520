// What only a component's page has: ratings, substitutes with their verdicts, where it is used, what is in the drawer.
#include "emit/site/fields_view.h"
#include "emit/site/note_page.h"
#include "emit/site/ratings_view.h"
#include "emit/site/verdict_view.h"

namespace benchlore {
namespace {

Html ratings_part(const View& view, const Note& note) {
  if (note.ratings.empty()) return {};
  return section_heading("the_ratings", "Ratings") << ratings_table(view, note);
}

Html substitutes_part(const View& view, const Gathered& gathered, NoteId id) {
  auto judged = gathered.by_original.find(id);
  if (judged == gathered.by_original.end()) return {};
  Html out = section_heading("the_substitutes", "Substitutes");
  for (const JudgedSubstitute* one : judged->second) out << judged_view(view, *one);
  return out;
}

Html stands_in_part(const View& view, const Gathered& gathered, NoteId id) {
  auto judged = gathered.by_substitute.find(id);
  if (judged == gathered.by_substitute.end()) return {};
  std::vector<Html> items;
  for (const JudgedSubstitute* one : judged->second) {
    Html item = verdict_mark(one->judgement.verdict);
    std::string page = view.root + page_path(view.shop().note(one->original));
    item << " for " << link(page + "#" + judgement_anchor(view, *one), text(view.shop().note(one->original).title))
         << ", " << where_view(view, *one);
    items.push_back(item);
  }
  return section_heading("the_originals", "Proposed in place of") << bullets(items);
}

Html positions_part(const View& view, NoteId id) {
  Table table{"Positions that carry it", {"Position", "Board", "Role", "Stress", "Note"}, {}, false};
  for (const Position* position : view.shop().positions_of(id))
    table.rows.push_back({{text(position->ref), {}},
                          {view.note_link(position->board), {}},
                          {position->role.empty() ? Html() : text(role_title(view.schema(), position->role)), {}},
                          {stated_list(view, position->stress), {}},
                          {text(position->note), {}}});
  if (table.rows.empty()) return {};
  return section_heading("the_positions", "Where it sits") << render(table);
}

Html stock_part(const View& view, NoteId id) {
  Table table{"Stock", {"Bin", "Quantity", "From"}, {}, false};
  for (const StockLine& line : view.shop().stock)
    if (line.component == id)
      table.rows.push_back({{text(line.bin), {}}, {text(std::to_string(line.quantity)), {}}, {text(line.from), {}}});
  if (table.rows.empty()) return {};
  return section_heading("the_stock", "In the drawer") << render(table);
}

} // namespace

KindParts component_parts(const View& view, const Gathered& gathered, NoteId id) {
  KindParts parts;
  parts.before = ratings_part(view, view.shop().note(id));
  parts.before << substitutes_part(view, gathered, id);
  parts.after << positions_part(view, id) << stock_part(view, id) << stands_in_part(view, gathered, id);
  parts.shown = {"ratings", "substitutes"};
  return parts;
}

} // namespace benchlore
