// Tables of what the bench worked out.
#include "emit/site/bench_parts.h"

#include "bench/measurements.h"
#include "bench/parts_list.h"
#include "emit/site/table.h"
#include "emit/site/verdict_view.h"

namespace benchlore {
namespace {

Html amperes(double value) { return text(show_number(value, dimension::current)); }

Html amperes(const std::optional<double>& value) { return value ? amperes(*value) : Html(); }

Html modules_of(const RailBudget& rail) {
  Html out;
  for (const ModuleLoad& load : rail.loads) {
    if (!out.empty()) out << ", ";
    out << text(load.module + " " + show_number(load.running, dimension::current));
    if (load.starting > load.running)
      out << text(" (starts with " + show_number(load.starting, dimension::current) + ")");
  }
  return out;
}

Html rails_table(const Budget& budget) {
  Table table{
      "Loads by rail",
      {"Rail", "Running", "All starting at once", "Starting in turn", "Rating", "Peak", "Least load", "Modules"},
      {},
      false};
  for (const RailBudget& rail : budget.rails)
    table.rows.push_back({{text(rail.rail), {}},
                          {amperes(rail.running), rail.running},
                          {amperes(rail.starting), rail.starting},
                          {amperes(rail.staggered), rail.staggered},
                          {amperes(rail.rated), {}},
                          {amperes(rail.peak), {}},
                          {amperes(rail.minimum), {}},
                          {modules_of(rail), {}}});
  return render(table);
}

Html budget_findings(const Budget& budget) {
  std::vector<Html> items;
  for (const BudgetFinding& finding : budget.findings) {
    Html item = finding.unfit() ? verdict_mark(Verdict::unfit) : Html();
    item << " " << with_code(finding.text);
    if (!finding.way_out.empty()) item << "; " << with_code(finding.way_out);
    items.push_back(item);
  }
  return bullets(items);
}

Html bench_supply_table(const Budget& budget) {
  Table table{"Current limits for a bench supply", {"Rail", "For the start", "Afterwards"}, {}, false};
  for (const RailBudget& rail : budget.rails) {
    if (rail.loads.empty()) continue;
    const double running = 1.2 * rail.running, starting = std::max(running, 1.1 * rail.starting);
    table.rows.push_back({{text(rail.rail), {}}, {amperes(starting), {}}, {amperes(running), {}}});
  }
  return render(table);
}

Html ruling_view(const JudgedMeasurement& judged) {
  if (!judged.ruling) return text(judged.why_not.empty() ? "no limits" : "not judged: " + judged.why_not);
  Html out{"<strong>"};
  out << text(spoken(to_text(*judged.ruling))) << "</strong>";
  if (*judged.ruling == Ruling::undecided) out << text("; " + judged.decides + " would decide it");
  if (judged.settled && *judged.ruling != Ruling::accept) out << text("; settled later in this job");
  return out;
}

Html measurements_part(const View& view, NoteId id) {
  Table table{"Measurements, judged",
              {"What", "Where", "Reading", "Meter", "With its accuracy", "Limits", "Ruling"},
              {},
              false};
  for (const JudgedMeasurement& judged : judge_measurements(view.shop(), id))
    table.rows.push_back({{text(judged.what), {}},
                          {text(judged.where), {}},
                          {text(judged.reading), {}},
                          {text(judged.meter), {}},
                          {text(judged.working), {}},
                          {text(judged.limits), {}},
                          {ruling_view(judged), {}}});
  if (table.rows.empty()) return {};
  return section_heading("the_rulings", "Measurements") << render(table);
}

Html rescue_part(const View& view, NoteId id) {
  const auto rescue = rescue_of(view.shop(), id);
  if (!rescue) return {};
  Html out = section_heading("the_rescue", "Data rescue");
  out << rescue_strip(*rescue);
  auto share = [&](std::int64_t sectors) {
    const double percent =
        rescue->total > 0 ? 100.0 * static_cast<double>(sectors) / static_cast<double>(rescue->total) : 0;
    return text(std::to_string(sectors) + " sectors, " + show_number(percent, dimension::none, 5) + " %");
  };
  std::vector<NamedValue> facts{{"Read", share(rescue->read)},
                                {"Unreadable", share(rescue->unreadable)},
                                {"Not yet tried", share(rescue->untried)},
                                {"Tool", text(rescue->tool)},
                                {"Passes", rescue->passes > 0 ? text(std::to_string(rescue->passes)) : Html()},
                                {"Hash of the copy", text(rescue->hash)},
                                {"Copy", text(rescue->copy)}};
  out << render(facts);
  std::vector<Html> faults;
  for (const std::string& fault : rescue->faults) faults.push_back(with_code(fault));
  return out << bullets(faults);
}

} // namespace

Html supply_part(const View& view, NoteId equipment) {
  const auto budget = budget_of(view.shop(), equipment);
  if (!budget || budget->rails.empty()) return {};
  Html out = section_heading("the_budget", "What the supply carries");
  out << supply_chart(*budget) << budget_findings(*budget) << rails_table(*budget) << bench_supply_table(*budget);
  out << "<p>The rails together take " << text(show_number(budget->running_power, dimension::power));
  if (budget->rated_power) out << " of " << text(show_number(*budget->rated_power, dimension::power));
  out << " running. A lamp in series with the mains must have at least "
      << text(show_number(budget->lamp_power, dimension::power, 2))
      << ", or a switching supply will not start behind it; the machine behind the lamp is live.</p>\n";
  return out;
}

Html recap_part(const View& view, NoteId equipment) {
  Table table{"Parts by risk",
              {"Component", "Class", "Count", "Positions", "Fails by", "Take instead", "Verdict", "In stock", "Bin",
               "To order"},
              {},
              true};
  const Shop& shop = view.shop();
  for (const PartsLine& line : parts_list(shop, equipment, "")) {
    Html places;
    for (const Position* position : line.positions) {
      if (!places.empty()) places << ", ";
      places << text(position->ref);
    }
    table.rows.push_back({{view.note_link(line.component), {}},
                          {view.class_link(shop.note(line.component).class_name), {}},
                          {text(std::to_string(line.positions.size())), static_cast<double>(line.positions.size())},
                          {places, {}},
                          {text(line.risk), line.likelihood},
                          {line.chosen ? view.note_link(*line.chosen) : Html(), {}},
                          {line.chosen ? verdict_mark(line.verdict) : Html(), {}},
                          {text(std::to_string(line.in_stock)), static_cast<double>(line.in_stock)},
                          {text(line.bin), {}},
                          {text(std::to_string(line.to_order)), static_cast<double>(line.to_order)}});
  }
  if (table.rows.empty()) return {};
  return section_heading("the_recap", "Recap list") << render(table);
}

KindParts job_parts(const View& view, const Gathered&, NoteId id) {
  KindParts parts;
  parts.shown = {"rescue", "measurements"};
  parts.before << measurements_part(view, id) << rescue_part(view, id);
  return parts;
}

} // namespace benchlore
