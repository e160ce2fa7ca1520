// `benchlore budget EQUIPMENT`: what the supply carries, and what an exchange would make of it.
#include "bench/budget.h"
#include "base/json.h"
#include "command/command.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <ostream>

namespace benchlore {
namespace {

void options_of(CLI::App& app, Options& options) {
  add_content_options(app, options);
  add_format_option(app, options);
  app.add_option("--with", options.exchanges, "exchange or add a module, as MODULE=COMPONENT; may be repeated")
      ->take_all();
  app.add_option("equipment", options.words, "id of the machine")->required()->expected(1);
}

std::string amperes(double value) { return show_number(value, dimension::current); }

// Sums, limits and what they mean; the current limit of a bench supply is a fifth above what runs, and a tenth above
// what starts.
void write_text(const Compiled& compiled, const Budget& budget, std::ostream& out) {
  const Note& note = compiled.shop.note(budget.equipment);
  out << note.id << "  " << note.title << "\n";
  write_cautions(compiled, budget.equipment, out);
  for (const RailBudget& rail : budget.rails) {
    out << "\n"
        << rail.rail << "  running " << amperes(rail.running) << ", starting " << amperes(rail.starting)
        << " at once or " << amperes(rail.staggered) << " in turn";
    if (rail.rated) out << "; rated " << amperes(*rail.rated);
    if (rail.peak && rail.peak != rail.rated) out << ", peak " << amperes(*rail.peak);
    if (rail.minimum) out << ", needs at least " << amperes(*rail.minimum);
    out << "\n";
    for (const ModuleLoad& load : rail.loads) {
      out << "    " << load.module << " " << (load.not_stated ? "not stated" : amperes(load.running));
      if (load.starting > load.running) out << ", starts with " << amperes(load.starting);
      out << "\n";
    }
    if (!rail.loads.empty())
      out << "    bench supply: " << amperes(std::max(1.2 * rail.running, 1.1 * rail.starting))
          << " for the start, then " << amperes(1.2 * rail.running) << "\n";
  }
  out << "\nall rails: " << show_number(budget.running_power, dimension::power) << " running";
  if (budget.rated_power) out << " of " << show_number(*budget.rated_power, dimension::power);
  out << "; a series lamp of at least " << show_number(budget.lamp_power, dimension::power, 2)
      << " lets it start (it limits, it does not isolate)\n";
  for (const BudgetFinding& finding : budget.findings)
    out << (finding.unfit() ? "unfit: " : "mind: ") << finding.text
        << (finding.way_out.empty() ? "" : "; " + finding.way_out) << "\n";
}

std::string as_json(const Compiled& compiled, const Budget& budget) {
  JsonWriter json;
  auto optional = [&json](const char* key, const std::optional<double>& value) {
    json.key(key);
    if (value)
      json.value(*value);
    else
      json.null();
  };
  json.object();
  json.field("format", "benchlore-budget");
  json.field("version", 1);
  json.field("equipment", std::string_view(compiled.shop.note(budget.equipment).id));
  json.key("rails");
  json.list();
  for (const RailBudget& rail : budget.rails) {
    json.object();
    json.field("rail", std::string_view(rail.rail));
    json.field("running", rail.running);
    json.field("starting", rail.starting);
    json.field("in_turn", rail.staggered);
    optional("rated", rail.rated);
    optional("peak", rail.peak);
    optional("minimum", rail.minimum);
    json.key("loads");
    json.list();
    for (const ModuleLoad& load : rail.loads) {
      json.object();
      json.field("module", std::string_view(load.module));
      json.field("component",
                 std::string_view(load.component.known() ? compiled.shop.note(load.component).id : std::string()));
      json.field("running", load.running);
      json.field("starting", load.starting);
      json.end();
    }
    json.end();
    json.end();
  }
  json.end();
  json.field("running_power", budget.running_power);
  json.field("lamp_power", budget.lamp_power);
  json.key("findings");
  json.list();
  for (const BudgetFinding& finding : budget.findings) {
    json.object();
    json.field("severity", finding.unfit() ? "unfit" : "care");
    json.field("rail", std::string_view(finding.rail));
    json.field("text", std::string_view(finding.text));
    json.field("way_out", std::string_view(finding.way_out));
    json.end();
  }
  json.end();
  json.end();
  return json.text() + "\n";
}

std::optional<std::vector<Exchange>> read_exchanges(const Compiled& compiled, const Options& options,
                                                    Streams& streams) {
  std::vector<Exchange> exchanges;
  for (const std::string& text : options.exchanges) {
    const std::size_t equals = text.find('=');
    if (equals == std::string::npos) {
      streams.err << "benchlore: `" << text << "` is no exchange; write --with MODULE=COMPONENT\n";
      return std::nullopt;
    }
    const auto component = find_component(compiled, text.substr(equals + 1), streams);
    if (!component) return std::nullopt;
    exchanges.push_back({text.substr(0, equals), *component});
  }
  return exchanges;
}

int execute(const Options& options, Streams& streams) {
  const auto compiled = open_shop(options, streams);
  if (!compiled) return exit_usage;
  const auto equipment = find_equipment(*compiled, options.words.front(), streams);
  const auto exchanges = read_exchanges(*compiled, options, streams);
  if (!equipment || !exchanges) return exit_usage;
  const auto budget = budget_of(compiled->shop, *equipment, *exchanges);
  if (!budget) {
    streams.err << "benchlore: `" << options.words.front() << "` lists no supply; add `supply` with its `rails`\n";
    return exit_usage;
  }
  if (options.format == "json") {
    streams.out << as_json(*compiled, *budget);
  } else {
    write_text(*compiled, *budget, streams.out);
  }
  const bool unfit = std::any_of(budget->findings.begin(), budget->findings.end(), [](auto& f) { return f.unfit(); });
  return unfit ? exit_findings : exit_good;
}

} // namespace

const Command budget_command = {"budget", "add up what a machine draws from its supply", options_of, execute};

} // namespace benchlore
