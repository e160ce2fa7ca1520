// Pages of the calculations, from the same registry as the command.
#include "emit/site/calculation_pages.h"

#include "emit/site/cautions_view.h"
#include "emit/site/table.h"

namespace benchlore {
namespace {

Html inputs_view(const Calculation& calculation) {
  Table table{"Inputs of " + calculation.title, {"Input", "Kind", "Meaning"}, {}, false};
  for (const CalculationInput& input : calculation.inputs) {
    std::string meaning = input.title + ": " + input.meaning;
    if (!input.otherwise.empty()) meaning += "; " + input.otherwise + " when not given";
    if (input.list) meaning += "; may be repeated";
    table.rows.push_back(
        {{with_code("`" + input.name + "=`"), {}}, {text(describe(input.dimension)), {}}, {text(meaning), {}}});
  }
  return render(table);
}

Html example_view(const Calculation& calculation) {
  const CalculationResult result = calculate(calculation, calculation.example);
  if (!result.refusal.empty()) return {};
  std::string command = "benchlore calc " + calculation.name;
  for (const std::string& argument : calculation.example) command += " \"" + argument + "\"";
  Html out{"<pre class=\"command\"><code>"};
  out << text(command) << "</code></pre>\n";
  std::vector<NamedValue> values;
  for (const CalculationValue& value : result.values) values.push_back({value.title, text(interval_text(value))});
  out << render(values);
  if (!result.verdict.empty()) out << "<p class=\"ask\">" << text(spoken(result.verdict)) << "</p>\n";
  std::vector<Html> steps;
  for (const std::string& step : result.working) steps.push_back(text(step));
  return out << "<h3>Working</h3>\n" << bullets(steps);
}

std::vector<const Caution*> cautions_of(const View& view, const Calculation& calculation) {
  std::vector<const Caution*> cautions;
  for (const std::string& name : calculation.cautions) {
    const auto found = view.schema().cautions.find(name);
    if (found != view.schema().cautions.end()) cautions.push_back(&found->second);
  }
  return cautions;
}

} // namespace

std::string calculation_path(const Calculation& calculation) {
  return "calculations/" + safe_name(calculation.name) + ".html";
}

Page calculations_page(const View& view) {
  Html main{"<h1>Calculations</h1>\n<p class=\"lead\">What the bench has to work out, each with its formula, a worked "
            "example "
            "and where it comes from. At a prompt: <code>benchlore calc NAME</code>.</p>\n"};
  Table table{"All calculations", {"Calculation", "Formula", "When"}, {}, false};
  for (const Calculation& one : calculations())
    table.rows.push_back({{link(view.root + calculation_path(one), text(one.title)), {}},
                          {text(one.formula), {}},
                          {text(one.meaning), {}}});
  main << render(table);
  return {"calculations.html", "Calculations", "calculations", main, {}};
}

Page calculation_page(const View& view, const Calculation& calculation) {
  Html main{"<p class=\"where\">"};
  main << link(view.root + "calculations.html", text("Calculations")) << "</p>\n<h1>" << text(calculation.title)
       << "</h1>\n<p class=\"lead\">" << text(spoken(calculation.meaning)) << ".</p>\n"
       << cautions_view(view, cautions_of(view, calculation)) << section_heading("the_formula", "Formula")
       << "<p class=\"formula\">" << text(calculation.formula) << "</p>\n"
       << inputs_view(calculation) << section_heading("the_example", "Worked example") << example_view(calculation)
       << section_heading("the_source", "Source") << "<p>" << text(calculation.source) << "</p>\n";
  return {calculation_path(calculation), calculation.title, "calculations", main, {}};
}

} // namespace benchlore
