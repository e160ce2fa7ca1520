// A page for each rule, which reasons link to, and the list of all of them by the class that they speak of.
#include "emit/site/rules_page.h"

#include "emit/site/ratings_view.h"
#include "emit/site/table.h"
#include "emit/site/verdict_view.h"

namespace benchlore {
namespace {

Html class_links(const View& view, const std::vector<std::string>& names) {
  Html out;
  for (const std::string& name : names) {
    if (!out.empty()) out << ", ";
    out << view.class_link(name);
  }
  return out;
}

Html role_list(const View& view, const std::vector<std::string>& names) {
  Html out;
  for (const std::string& name : names) {
    if (!out.empty()) out << ", ";
    out << text(role_title(view.schema(), name));
  }
  return out;
}

Cell side(const View& view, const std::string& class_name, const std::vector<std::string>& usual,
          const Ratings& ratings) {
  Html out;
  if (!class_name.empty()) out << view.class_link(class_name) << " ";
  std::string own = !class_name.empty() || usual.empty() ? class_name : usual.front();
  return {out << stated_list(view, ratings, own), {}};
}

Html examples_view(const View& view, const Rule& rule) {
  Table table{"Examples of " + spoken(rule.name), {"Example", "Original", "Substitute", "Stress", "Role"}, {}, false};
  for (const RuleExample& example : rule.examples)
    table.rows.push_back({{text(example.kind), {}},
                          side(view, example.original_class, rule.from, example.original),
                          side(view, example.substitute_class, rule.to, example.substitute),
                          {stated_list(view, example.stress), {}},
                          {example.role.empty() ? Html() : text(role_title(view.schema(), example.role)), {}}});
  return render(table);
}

Html facts_of(const View& view, const Rule& rule) {
  std::vector<NamedValue> facts{
      {"Compares", text(rule.rating.empty() ? std::string() : rating_title(view.schema(), rule.rating))},
      {"Form", text(spoken(to_text(rule.form)))},
      {"Against", text(rule.stress.empty() ? std::string() : stress_title(view.schema(), rule.stress))},
      {"In place of", class_links(view, rule.from)},
      {"Substitute", class_links(view, rule.to)},
      {"Roles", role_list(view, rule.roles)},
      {"Not for", role_list(view, rule.not_roles)},
      {"Computation", text(rule.computation)},
      {"Falling short is", verdict_mark(verdict_of(rule.falls_short))},
      {"To do", text(rule.action)},
      {"Changed", text(rule.changed)},
      {"A shop may loosen it", rule.may_loosen ? text("yes, and every verdict then says so") : Html()},
      {"Source", view.source_link(rule.source)}};
  return render(facts);
}

Html sources_view(const Schema& schema) {
  Html out = section_heading("the_sources", "Sources");
  out << "<ul>\n";
  for (const auto& [name, source] : schema.sources) {
    out << "<li id=\"source_" << text(safe_name(name)) << "\">" << text(source.title.empty() ? name : source.title);
    if (!source.publisher.empty()) out << ", " << text(source.publisher);
    if (!source.trust.empty()) out << " <span class=\"from\">" << text(spoken(source.trust)) << "</span>";
    out << "</li>\n";
  }
  return out << "</ul>\n";
}

} // namespace

Page rule_page(const View& view, const Rule& rule) {
  Html main{"<p class=\"where\">"};
  main << link(view.root + "rules.html", text("Rules")) << "</p>\n<h1>" << text(spoken(rule.name))
       << "</h1>\n<p class=\"lead\">" << text(spoken(rule.because)) << ".</p>\n"
       << facts_of(view, rule) << section_heading("the_examples", "Examples") << examples_view(view, rule);
  return {rule_path(rule.name), spoken(rule.name), "rules", main, {}};
}

Page rules_page(const View& view) {
  Html main{"<h1>Rules</h1>\n<p class=\"lead\">What a substitute is judged by. A value that is not stated never "
            "passes.</p>\n"};
  std::map<std::string, std::vector<Html>> by_class;
  for (const Rule& rule : view.schema().rules)
    by_class[rule.from.front()].push_back(link(view.root + rule_path(rule.name), text(spoken(rule.name))));
  for (const auto& [name, items] : by_class) {
    const ComponentClass* made = view.schema().find_class(name);
    main << "<section class=\"rules-of\"><h2>" << text(made == nullptr ? name : made->plural)
         << "</h2>\n<div class=\"columns\">" << bullets(items) << "</div></section>\n";
  }
  main << sources_view(view.schema());
  return {"rules.html", "Rules", "rules", main, {}};
}

} // namespace benchlore
