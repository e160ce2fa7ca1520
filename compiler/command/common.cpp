// What several commands share: options, opening the shop, naming parts and places.
#include "base/publish.h"
#include "base/text.h"
#include "command/command.h"
#include "report/render.h"

#include <CLI/CLI.hpp>
#include <cstdlib>
#include <ostream>

namespace benchlore {
namespace {

// Beside the program (in a build tree), in its share folder (installed), or here.
std::string find_folder(const std::string& given, const std::string& name, const std::string& witness) {
  if (!given.empty()) return given;
  const std::string program = program_folder();
  for (const std::string& place : {program + "/../" + name, program + "/../share/benchlore/" + name}) {
    if (!program.empty() && disk_files(place)->is_file(witness)) return place;
  }
  return name;
}

// Reads one `NAME=VALUE`; false after a message.
bool add_stress(const Compiled& compiled, const std::string& text, Ratings& stress, Streams& streams) {
  const std::size_t equals = text.find('=');
  const std::string name = text.substr(0, equals);
  const auto type = compiled.schema.stresses.find(name);
  if (equals == std::string::npos || type == compiled.schema.stresses.end()) {
    std::vector<std::string> known;
    for (const auto& [stress_name, unused] : compiled.schema.stresses) known.push_back(stress_name);
    streams.err << "benchlore: `" << name << "` is no stress; write --stress NAME=VALUE with "
                << alternatives(near_names(name, known)) << "\n";
    return false;
  }
  Node node;
  node.text = text.substr(equals + 1);
  Report report;
  const auto value = read_value(node, type->second, compiled.sources, report);
  if (!value) {
    const Message& message = report.messages().front();
    streams.err << "benchlore: " << message.text << (message.way_out.empty() ? "" : "; " + message.way_out) << "\n";
    return false;
  }
  stress[name] = *value;
  return true;
}

} // namespace

bool colour_allowed(bool terminal) { return terminal && std::getenv("NO_COLOR") == nullptr; }

void add_content_options(CLI::App& app, Options& options) {
  app.add_option("--content", options.content, "folder of the notes")->capture_default_str();
  app.add_option("--schema", options.schema, "folder of the schema; found beside the program when not given");
}

void add_format_option(CLI::App& app, Options& options, bool sarif) {
  std::vector<std::string> formats = {"text", "json"};
  if (sarif) formats.emplace_back("sarif");
  app.add_option("--format", options.format, "form of the answer")
      ->check(CLI::IsMember(formats))
      ->capture_default_str();
}

void add_place_options(CLI::App& app, Options& options) {
  auto* at = app.add_option("--at", options.at, "position, as BOARD:REF");
  auto* role = app.add_option("--role", options.role, "role of the part where it sits");
  auto* stress = app.add_option("--stress", options.stress, "stress there, as NAME=VALUE; may be repeated");
  stress->take_all();
  at->excludes(role);
}

std::unique_ptr<Compiled> open_shop(const Options& options, Streams& streams) {
  Failure failure;
  auto compiled = compile({options.content, find_folder(options.schema, "schema", "roles.yaml")}, failure);
  if (compiled) return compiled;
  if (failure.partial)
    streams.err << render_text(failure.partial->report, failure.partial->sources,
                               colour_allowed(streams.err_is_terminal));
  streams.err << "benchlore: " << failure.message << "\n";
  return nullptr;
}

std::optional<Schema> open_schema(const Options& options, Streams& streams) {
  const auto files = disk_files(find_folder(options.schema, "schema", "roles.yaml"));
  const auto content = disk_files(options.content);
  Sources sources;
  Report report;
  auto schema = read_schema({{*files, ""}, {*content, "schema/"}}, sources, report);
  if (schema) return schema;
  streams.err << render_text(report, sources, colour_allowed(streams.err_is_terminal))
              << "benchlore: the schema cannot be used; nothing was done\n";
  return std::nullopt;
}

std::optional<Where> read_where(const Compiled& compiled, const Options& options, Streams& streams) {
  Where where;
  if (!options.at.empty()) {
    const std::size_t colon = options.at.rfind(':');
    const Position* position = colon == std::string::npos
                                   ? nullptr
                                   : compiled.shop.position(options.at.substr(0, colon), options.at.substr(colon + 1));
    if (position == nullptr) {
      streams.err << "benchlore: there is no position `" << options.at << "`; write --at BOARD:REF with a board's id\n";
      return std::nullopt;
    }
    where = compiled.shop.where(*position);
  }
  if (!options.role.empty()) {
    if (!compiled.schema.roles.contains(options.role)) {
      std::vector<std::string> known;
      for (const auto& [name, unused] : compiled.schema.roles) known.push_back(name);
      streams.err << "benchlore: `" << options.role << "` is no role; use "
                  << alternatives(near_names(options.role, known)) << "\n";
      return std::nullopt;
    }
    where.role = options.role;
  }
  for (const std::string& text : options.stress) {
    if (!add_stress(compiled, text, where.stress, streams)) return std::nullopt;
  }
  return where;
}

std::optional<NoteId> find_component(const Compiled& compiled, const std::string& name, Streams& streams) {
  const auto found = compiled.shop.named(name);
  if (found.size() == 1) return found.front();
  if (found.empty()) {
    std::vector<std::string> known;
    for (const auto& [id, note] : compiled.shop.by_id) {
      if (compiled.shop.note(note).kind == "component") known.push_back(id);
    }
    const auto near = near_names(name, known);
    streams.err << "benchlore: no component is called `" << name << "`"
                << (near.empty() ? "" : "; near it: " + alternatives(near)) << "\n";
    return std::nullopt;
  }
  streams.err << "benchlore: `" << name << "` may be any of these; name one by its id:\n";
  for (NoteId id : found)
    streams.err << "  " << compiled.shop.note(id).id << "  " << compiled.shop.note(id).title << "\n";
  return std::nullopt;
}

std::optional<NoteId> find_equipment(const Compiled& compiled, const std::string& name, Streams& streams) {
  const auto found = compiled.shop.find(name);
  if (found && compiled.shop.note(*found).kind == "equipment") return found;
  std::vector<std::string> known;
  for (const auto& [id, note] : compiled.shop.by_id) {
    if (compiled.shop.note(note).kind == "equipment") known.push_back(id);
  }
  const auto near = near_names(name, known);
  streams.err << "benchlore: there is no machine `" << name
              << "`; name one by its id: " << alternatives(near.empty() ? known : near) << "\n";
  return std::nullopt;
}

void write_caution(const Caution& caution, std::ostream& out) {
  out << "caution: " << caution.title << ". " << caution.wording << "\n";
}

void write_cautions(const Compiled& compiled, NoteId note, std::ostream& out) {
  for (const Caution* caution : cautions_for(compiled.shop, note)) write_caution(*caution, out);
}

} // namespace benchlore
