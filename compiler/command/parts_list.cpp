// `benchlore parts-list EQUIPMENT`: every position grouped, with substitutes, stock and what to order.
#include "bench/parts_list.h"
#include "base/json.h"
#include "base/text.h"
#include "command/command.h"

#include <CLI/CLI.hpp>
#include <ostream>

namespace benchlore {
namespace {

void options_of(CLI::App& app, Options& options) {
  add_content_options(app, options);
  app.add_option("--format", options.format, "form of the answer")
      ->check(CLI::IsMember({"text", "json", "csv"}))
      ->capture_default_str();
  app.add_option("--class", options.class_name, "only components of this class and those that descend from it");
  app.add_option("equipment", options.words, "id of the machine")->required()->expected(1);
}

void write_text(const Shop& shop, const std::vector<PartsLine>& lines, std::ostream& out) {
  for (const PartsLine& line : lines) {
    out << line.positions.size() << " × " << shop.note(line.component).id << "  " << shop.note(line.component).title
        << "\n   ";
    for (const Position* position : line.positions) out << " " << position->name(shop);
    out << "\n";
    if (!line.risk.empty()) out << "    fails by " << line.risk << "\n";
    if (line.chosen) {
      out << "    take " << shop.note(*line.chosen).id << " (" << to_text(line.verdict) << ")\n";
    } else {
      out << "    nothing in the notes may take its place everywhere\n";
    }
    out << "    in stock " << line.in_stock << (line.bin.empty() ? "" : " in " + line.bin) << ", to order "
        << line.to_order << "\n";
  }
}

std::string as_json(const Shop& shop, const std::string& equipment, const std::vector<PartsLine>& lines) {
  JsonWriter json;
  json.object();
  json.field("format", "benchlore-parts-list");
  json.field("version", 1);
  json.field("equipment", std::string_view(equipment));
  json.key("parts");
  json.list();
  for (const PartsLine& line : lines) {
    json.object();
    json.field("component", std::string_view(shop.note(line.component).id));
    json.key("positions");
    json.list();
    for (const Position* position : line.positions) json.value(std::string_view(position->name(shop)));
    json.end();
    json.field("risk", std::string_view(line.risk));
    json.field("substitute", std::string_view(line.chosen ? shop.note(*line.chosen).id : std::string()));
    json.field("verdict", line.chosen ? to_text(line.verdict) : std::string_view());
    json.field("in_stock", line.in_stock);
    json.field("bin", std::string_view(line.bin));
    json.field("to_order", line.to_order);
    json.end();
  }
  json.end();
  json.end();
  return json.text() + "\n";
}

int execute(const Options& options, Streams& streams) {
  const auto compiled = open_shop(options, streams);
  if (!compiled) return exit_usage;
  const auto equipment = find_equipment(*compiled, options.words.front(), streams);
  if (!equipment) return exit_usage;
  if (!options.class_name.empty() && compiled->schema.find_class(options.class_name) == nullptr) {
    std::vector<std::string> known;
    for (const auto& [name, unused] : compiled->schema.classes) known.push_back(name);
    streams.err << "benchlore: there is no class `" << options.class_name
                << "`; near it: " << alternatives(near_names(options.class_name, known)) << "\n";
    return exit_usage;
  }
  const auto lines = parts_list(compiled->shop, *equipment, options.class_name);
  if (options.format == "csv") {
    streams.out << parts_csv(compiled->shop, lines);
  } else if (options.format == "json") {
    streams.out << as_json(compiled->shop, options.words.front(), lines);
  } else {
    write_text(compiled->shop, lines, streams.out);
  }
  return lines.empty() ? exit_findings : exit_good;
}

} // namespace

const Command parts_list_command = {"parts-list", "list the parts of a machine with substitutes and stock", options_of,
                                    execute};

} // namespace benchlore
