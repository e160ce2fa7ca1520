// Lists of notes by kind and by class.
#include "emit/site/list_pages.h"

#include "emit/site/body.h"
#include "emit/site/ratings_view.h"
#include "emit/site/verdict_view.h"

#include <algorithm>

namespace benchlore {
namespace {

std::size_t count_of(const Gathered& gathered, std::string_view kind) {
  auto found = gathered.by_kind.find(kind);
  return found == gathered.by_kind.end() ? 0 : found->second.size();
}

std::vector<NoteId> components_of(const Gathered& gathered, const std::vector<const ComponentClass*>& classes) {
  std::vector<NoteId> out;
  for (const ComponentClass* one : classes)
    if (auto found = gathered.by_class.find(one->name); found != gathered.by_class.end())
      out.insert(out.end(), found->second.begin(), found->second.end());
  return out;
}

Html class_list(const View& view, const Gathered& gathered) {
  std::vector<Html> items;
  for (const auto& [name, component_class] : view.schema().classes) {
    auto found = gathered.by_class.find(name);
    if (found == gathered.by_class.end()) continue;
    Html item = link(view.root + class_path(name), text(component_class.plural));
    items.push_back(item << " <span class=\"count\">" << text(std::to_string(found->second.size())) << "</span>");
  }
  if (items.empty()) return {};
  Html out = section_heading("the_classes", "Components by class");
  return out << "<div class=\"columns\">" << bullets(items) << "</div>\n";
}

std::vector<Cell> parametric_row(const View& view, NoteId id, const std::vector<std::string>& order) {
  const Note& note = view.shop().note(id);
  int stock = view.shop().in_stock(id);
  std::vector<Cell> cells{{view.note_link(id), {}}};
  cells.push_back({stock > 0 ? text(std::to_string(stock)) : Html(), static_cast<double>(stock)});
  for (const std::string& name : order) {
    auto found = note.ratings.find(name);
    cells.push_back(found == note.ratings.end() ? Cell{} : value_cell(found->second));
  }
  return cells;
}

Html parametric_table(const View& view, const ComponentClass& component_class, const std::vector<NoteId>& components) {
  Table table{component_class.plural, {"Component", "In stock"}, {}, true};
  std::vector<std::string> order = component_class.order;
  for (NoteId id : components)
    for (const auto& [name, stated] : view.shop().note(id).ratings)
      if (std::find(order.begin(), order.end(), name) == order.end()) order.push_back(name);
  for (const std::string& name : order)
    table.columns.push_back(rating_title(view.schema(), name, component_class.name));
  for (NoteId id : components) table.rows.push_back(parametric_row(view, id, order));
  return render(table);
}

Html stand_ins_view(const View& view, const ComponentClass& component_class) {
  std::vector<Html> items;
  for (const StandIn& one : component_class.stand_ins) {
    Html item = view.class_link(one.substitute);
    for (const std::string& role : one.roles)
      item << (&role == &one.roles.front() ? Html(" as ") : Html(", ")) << text(role_title(view.schema(), role));
    if (!one.because.empty()) item << ": " << text(one.because);
    if (!one.source.empty()) item << " <span class=\"from\">" << view.source_link(one.source) << "</span>";
    items.push_back(item);
  }
  if (items.empty()) return {};
  return section_heading("the_stand_ins", "Other classes that may take its place") << bullets(items);
}

} // namespace

std::vector<const ComponentClass*> descendants(const Schema& schema, const ComponentClass& ancestor) {
  std::vector<const ComponentClass*> out;
  for (const auto& [name, component_class] : schema.classes)
    if (schema.is_a(name, ancestor.name)) out.push_back(&component_class);
  return out;
}

Page notes_page(const View& view, const Gathered& gathered) {
  Html main{"<h1>Notes</h1>\n"};
  main << section_heading("the_kinds", "By kind");
  std::vector<Html> items;
  for (const auto& [name, kind] : view.schema().kinds) {
    std::size_t count = count_of(gathered, name);
    if (count == 0) continue;
    Html item = view.kind_link(name);
    items.push_back(item << " <span class=\"count\">" << text(std::to_string(count)) << "</span> <span class=\"from\">"
                         << text(kind.meaning) << "</span>");
  }
  main << bullets(items) << class_list(view, gathered);
  return {"notes.html", "Notes", "notes", main, {}};
}

Page kind_page(const View& view, const Gathered& gathered, const Kind& kind) {
  Html main{"<p class=\"trail\"><a href=\"../notes.html\">Notes</a></p>\n<h1>"};
  main << text(kind.plural) << "</h1>\n<p>" << text(spoken(kind.meaning)) << ".</p>\n";
  if (kind.name == "component") main << class_list(view, gathered) << section_heading("the_list", "All components");
  std::vector<Html> items;
  if (auto found = gathered.by_kind.find(kind.name); found != gathered.by_kind.end())
    for (NoteId id : found->second) {
      Html item = view.note_link(id);
      std::string words = excerpt(view.shop().note(id), 110);
      if (!words.empty()) item << " <span class=\"from\">" << text(words) << "</span>";
      items.push_back(item);
    }
  main << (items.empty() ? Html("<p>No notes of this kind yet.</p>\n") : Html()) << bullets(items);
  return {kind_path(kind.name), kind.plural, "notes", main, {}};
}

Page class_page(const View& view, const Gathered& gathered, const ComponentClass& component_class) {
  Html main{"<p class=\"trail\">"};
  main << view.kind_link("component");
  if (!component_class.extends.empty())
    main << "<span class=\"via\" aria-hidden=\"true\"></span>" << view.class_link(component_class.extends);
  main << "</p>\n<h1>" << text(component_class.plural) << "</h1>\n<p>" << text(spoken(component_class.meaning))
       << ".</p>\n";
  auto components = components_of(gathered, descendants(view.schema(), component_class));
  main << (components.empty() ? Html("<p>No notes of this class yet.</p>\n") : Html())
       << parametric_table(view, component_class, components) << stand_ins_view(view, component_class);
  std::vector<Html> rules;
  for (const Rule& rule : view.schema().rules)
    if (std::find(rule.from.begin(), rule.from.end(), component_class.name) != rule.from.end()) {
      Html item = link(view.root + rule_path(rule.name), text(spoken(rule.name)));
      rules.push_back(item << ": " << text(rule.because));
    }
  if (!rules.empty()) main << section_heading("the_rules", "Rules that judge its substitutes") << bullets(rules);
  return {class_path(component_class.name), component_class.plural, "notes", main, {"tables.js"}};
}

} // namespace benchlore
