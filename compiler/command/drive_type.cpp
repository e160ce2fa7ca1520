// `benchlore drive-type 615/4/17`: which types of the known firmware fit a drive, and what goes wrong under another
// one.
#include "base/json.h"
#include "bench/drive_types.h"
#include "command/command.h"

#include <CLI/CLI.hpp>
#include <ostream>

namespace benchlore {
namespace {

void options_of(CLI::App& app, Options& options) {
  add_content_options(app, options);
  add_format_option(app, options);
  app.add_flag("--translates", options.translates,
               "the drive takes up any geometry that the host sets, as ATA drives do");
  app.add_option("--type", options.at, "say what goes wrong under this type, as TABLE:NUMBER");
  app.add_option("--limit", options.limit, "at most so many types")->capture_default_str();
  app.add_option("geometry", options.words, "cylinders/heads/sectors of the drive")->required()->expected(1);
}

std::string size_text(const Geometry& geometry) {
  const std::int64_t bytes = geometry.total() * 512;
  return std::to_string(geometry.total()) + " sectors, " + std::to_string(bytes) + " bytes, " +
         show_number(static_cast<double>(bytes) / 1048576, dimension::none) + " MiB";
}

std::string type_text(const DriveType& type) {
  return std::to_string(type.cylinders) + "/" + std::to_string(type.heads) + "/" + std::to_string(type.sectors) +
         ", precompensation " + type.precompensation + ", landing zone " + std::to_string(type.landing);
}

void write_text(const Schema& schema, const Geometry& drive, const std::vector<FittingType>& fitting, std::size_t limit,
                std::ostream& out) {
  out << size_text(drive) << "\n";
  if (drive.cylinders > 1024) out << "more than 1024 cylinders: set-ups of the time cannot address all of it\n";
  for (std::size_t i = 0; i < fitting.size() && i < limit; ++i) {
    const FittingType& one = fitting[i];
    out << one.table->name << ":" << one.type->number << "  " << type_text(*one.type) << "; "
        << show_number(100 * one.lost, dimension::none, 4) << " % lost";
    const auto source = schema.sources.find(one.table->source);
    if (source != schema.sources.end() && source->second.trust == "from-memory")
      out << "  (from memory: compare with the set-up's own screen)";
    out << "\n";
  }
  if (fitting.empty())
    out << "no type fits: it needs a type that the user sets, a table in memory, or a controller with firmware of its "
           "own\n";
  out << "a number means nothing without its table; compare the geometry\n";
}

std::string as_json(const Geometry& drive, const std::vector<FittingType>& fitting,
                    const std::vector<std::string>& troubles) {
  JsonWriter json;
  json.object();
  json.field("format", "benchlore-drive-types");
  json.field("version", 1);
  json.field("sectors", static_cast<double>(drive.total()));
  json.field("bytes", static_cast<double>(drive.total() * 512));
  json.key("types");
  json.list();
  for (const FittingType& one : fitting) {
    json.object();
    json.field("table", std::string_view(one.table->name));
    json.field("type", one.type->number);
    json.field("cylinders", one.type->cylinders);
    json.field("heads", one.type->heads);
    json.field("sectors", one.type->sectors);
    json.field("lost", one.lost);
    json.end();
  }
  json.end();
  json.field("troubles", troubles);
  json.end();
  return json.text() + "\n";
}

int execute(const Options& options, Streams& streams) {
  const auto schema = open_schema(options, streams);
  if (!schema) return exit_usage;
  const auto drive = read_geometry(options.words.front());
  if (!drive) {
    streams.err << "benchlore: `" << options.words.front()
                << "` is no geometry; write cylinders/heads/sectors, such as 615/4/17\n";
    return exit_usage;
  }
  std::vector<std::string> troubles;
  if (!options.at.empty()) {
    const DriveType* type = find_type(*schema, options.at);
    if (type == nullptr) {
      streams.err << "benchlore: there is no type `" << options.at << "`; write --type TABLE:NUMBER with";
      for (const DriveTypeTable& table : schema->drive_types) streams.err << " " << table.name;
      streams.err << "\n";
      return exit_usage;
    }
    troubles = wrong_type(*drive, *type);
  }
  const auto fitting = fitting_types(*schema, *drive, options.translates);
  if (options.format == "json") {
    streams.out << as_json(*drive, fitting, troubles);
  } else {
    if (options.at.empty()) write_text(*schema, *drive, fitting, options.limit, streams.out);
    if (!options.at.empty() && troubles.empty()) streams.out << "the type is that of the drive\n";
    for (const std::string& trouble : troubles) streams.out << trouble << "\n";
  }
  const bool good = options.at.empty() ? !fitting.empty() : troubles.empty();
  return good ? exit_good : exit_findings;
}

} // namespace

const Command drive_type_command = {"drive-type", "find the firmware's drive types that fit a drive", options_of,
                                    execute};

} // namespace benchlore
