// What only the pages of boards, equipment, symptoms and procedures have.
#include "emit/site/bench_parts.h"
#include "emit/site/diagnosis_part.h"
#include "emit/site/fields_view.h"
#include "emit/site/note_page.h"
#include "emit/site/ratings_view.h"
#include "emit/site/verdict_view.h"

namespace benchlore {
namespace {

Html numbered(const std::vector<Html>& items) {
  if (items.empty()) return {};
  Html out{"<ol class=\"steps\">\n"};
  for (const Html& item : items) out << "<li>" << item << "</li>\n";
  return out << "</ol>\n";
}

Html place_verdict(const Gathered& gathered, const Position* position) {
  auto place = gathered.places.find(position);
  if (place == gathered.places.end() || place->second->reasons.empty()) return {};
  return link("#place_" + safe_name(position->ref), verdict_mark(place->second->reasons.front().verdict));
}

Html places_part(const View& view, const Gathered& gathered, const std::vector<const Position*>& positions) {
  Html out;
  for (const Position* position : positions) {
    auto place = gathered.places.find(position);
    if (place == gathered.places.end() || place->second->reasons.empty()) continue;
    out << "<article class=\"judged edge-" << text(to_text(place->second->reasons.front().verdict)) << "\" id=\"place_"
        << text(safe_name(position->ref)) << "\"><h3>" << text(position->ref) << " "
        << view.note_link(position->component) << "</h3>" << reasons_view(view, place->second->reasons)
        << "</article>\n";
  }
  if (out.empty()) return {};
  return section_heading("the_places", "Places that ask too much of the part they carry") << out;
}

std::vector<Cell> position_row(const View& view, const Gathered& gathered, const Position& position) {
  return {{text(position.ref), {}},
          {position.component.known() ? view.note_link(position.component) : text("not stated"), {}},
          {position.role.empty() ? Html() : text(role_title(view.schema(), position.role)), {}},
          {stated_list(view, position.stress), {}},
          {text(position.polarity), {}},
          {place_verdict(gathered, &position), {}},
          {text(position.note), {}}};
}

// Notes of a kind that name this one, with the likelihood word that they state, in their own list of links.
Html naming_part(const View& view, NoteId id, std::string_view kind, std::string_view field, std::string_view title) {
  std::vector<Html> items;
  for (NoteId from : naming(view.shop(), id, kind, field)) {
    Html item = view.note_link(from);
    std::string likelihood = view.shop().note(from).text("likelihood");
    if (!likelihood.empty()) item << " <span class=\"from\">" << text(spoken(likelihood)) << "</span>";
    std::string outcome = view.shop().note(from).text("outcome");
    if (!outcome.empty()) item << " <span class=\"from\">" << text(spoken(outcome)) << "</span>";
    items.push_back(item);
  }
  if (items.empty()) return {};
  return section_heading("the_" + safe_name(kind), title) << bullets(items);
}

std::string likelihood_of(const Shop& shop, const Note& fault, NoteId symptom) {
  const Node* symptoms = fault.field("symptoms");
  if (!symptoms) return {};
  for (const Node& item : symptoms->items) {
    const Node* name = item.find("symptom");
    const Node* word = item.find("likelihood");
    if (name && word && shop.find(name->text) == symptom) return word->text;
  }
  return {};
}

} // namespace

KindParts board_parts(const View& view, const Gathered& gathered, NoteId id) {
  KindParts parts;
  parts.shown = {"positions"};
  auto positions = view.shop().positions_on(id);
  if (!positions.empty()) {
    Table table{"Positions of " + view.shop().note(id).title,
                {"Position", "Component", "Role", "Stress", "Polarity", "Judged here", "Note"},
                {},
                true};
    for (const Position* position : positions) table.rows.push_back(position_row(view, gathered, *position));
    parts.before << section_heading("the_positions", "Positions") << render(table);
  }
  parts.before << places_part(view, gathered, positions);
  parts.after << naming_part(view, id, "equipment", "boards", "Found in");
  return parts;
}

KindParts equipment_parts(const View& view, const Gathered&, NoteId id) {
  KindParts parts;
  parts.shown = {"before-power-on"};
  std::vector<Html> steps;
  for (const auto& step : view.shop().note(id).texts("before-power-on")) steps.push_back(text(step.value));
  if (!steps.empty()) parts.before << section_heading("the_first_looks", "Before power on") << numbered(steps);
  parts.before << supply_part(view, id);
  parts.after << diagnosis_part(view, id) << recap_part(view, id)
              << naming_part(view, id, "procedure", "equipment", "Procedures")
              << naming_part(view, id, "job", "equipment", "Jobs so far");
  return parts;
}

KindParts symptom_parts(const View& view, const Gathered&, NoteId id) {
  KindParts parts;
  Table table{"Faults that show it", {"Fault", "How often it shows this", "Remedy"}, {}, false};
  for (NoteId fault : naming(view.shop(), id, "fault", "symptoms")) {
    const Note& note = view.shop().note(fault);
    table.rows.push_back({{view.note_link(fault), {}},
                          {text(spoken(likelihood_of(view.shop(), note, id))), {}},
                          {text(note.text("remedy")), {}}});
  }
  if (!table.rows.empty()) parts.after << section_heading("the_fault", "What may be wrong") << render(table);
  parts.after << naming_part(view, id, "job", "symptoms", "Jobs that came in with it");
  return parts;
}

KindParts procedure_parts(const View& view, const Gathered&, NoteId id) {
  KindParts parts;
  const Node* steps = view.shop().note(id).field("steps");
  if (!steps || !steps->is_list()) return parts;
  parts.shown = {"steps"};
  std::vector<Html> items;
  for (const Node& step : steps->items) {
    const Node* what = step.find("do");
    Html item = text(what ? what->text : step.text);
    if (const Node* check = step.find("check")) item << "<br><span class=\"ask\">Check: </span>" << text(check->text);
    if (const Node* cautions = step.find("cautions"))
      for (const Node& caution : cautions->items) {
        auto found = view.schema().cautions.find(caution.text);
        item << " <strong class=\"caution-word\">"
             << text(found == view.schema().cautions.end() ? spoken(caution.text) : found->second.title) << "</strong>";
      }
    items.push_back(item);
  }
  parts.before << section_heading("the_steps", "Steps") << numbered(items);
  return parts;
}

} // namespace benchlore
