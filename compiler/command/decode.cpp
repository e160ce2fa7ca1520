// `benchlore decode TEXT…`: what a marking can mean, and which components of the shop bear it.
#include "decode/decode.h"
#include "base/files.h"
#include "base/json.h"
#include "base/text.h"
#include "command/command.h"
#include "quantity/unit.h"
#include "report/shown.h"

#include <CLI/CLI.hpp>
#include <ostream>

namespace benchlore {
namespace {

void options_of(CLI::App& app, Options& options) {
  add_content_options(app, options);
  add_format_option(app, options);
  app.add_option("text", options.words, "the marking as printed, or colours from end to end: yellow violet red gold")
      ->required()
      ->expected(1, -1);
}

// The components of the shop that bear a marking; none without a shop.
struct Bearers {
  std::unique_ptr<Compiled> shop;
  std::vector<NoteId> components;
};

// Nothing after a message: the folder was named and cannot be read.
std::optional<Bearers> bearers_of(const std::string& marking, const Options& options, Streams& streams) {
  const bool named = options.content != Options{}.content;
  if (!named && !disk_files(".")->is_folder(options.content)) return Bearers{};
  Bearers found{open_shop(options, streams), {}};
  if (found.shop) found.components = found.shop->shop.named(marking);
  if (!found.shop && named) return std::nullopt;
  return found;
}

// The symbol of the SI unit in which a value is given: `F`, `ohm`, `bit`, `K^-1`.
std::string si_symbol(Dimension dimension) {
  for (const UnitRow& unit : units()) {
    if (unit.dimension == dimension && unit.factor == Decimal::make(1, 0)) return std::string(unit.symbol);
  }
  return base_units(dimension);
}

void write_tolerance(JsonWriter& json, const std::optional<ReadTolerance>& tolerance) {
  json.key("tolerance");
  if (!tolerance) return json.null();
  json.object();
  json.field("minus", tolerance->minus);
  json.field("plus", tolerance->plus);
  json.end();
}

void write_reading(JsonWriter& json, const Reading& reading) {
  json.object();
  json.field("reading", std::string_view(reading.code));
  json.field("marking", std::string_view(reading.marking));
  json.key("value");
  if (reading.value) {
    json.value(*reading.value);
  } else {
    json.null();
  }
  json.field("unit", std::string_view(si_symbol(reading.dimension)));
  write_tolerance(json, reading.tolerance);
  json.field("text", std::string_view(reading.text));
  json.field("why", std::string_view(reading.why));
  json.end();
}

std::string as_json(const std::vector<Reading>& readings, const Bearers& bearers) {
  JsonWriter json;
  json.object();
  json.field("format", "benchlore-decode");
  json.field("version", 1);
  json.key("readings");
  json.list();
  for (const Reading& reading : readings) write_reading(json, reading);
  json.end();
  json.key("components");
  json.list();
  for (NoteId id : bearers.components) json.value(std::string_view(bearers.shop->shop.note(id).id));
  json.end();
  json.end();
  return json.text() + "\n";
}

void write_text(const std::string& marking, const std::vector<Reading>& readings, const Bearers& bearers,
                std::ostream& out) {
  for (NoteId id : bearers.components) {
    const Note& note = bearers.shop->shop.note(id);
    out << "in this shop: " << note.id << "  " << note.title << "\n";
  }
  for (const Reading& reading : readings) {
    out << (reading.marking == marking ? "" : "`" + reading.marking + "`: ") << reading.text << "\n    " << reading.code
        << ": " << reading.why << "\n";
  }
}

int execute(const Options& options, Streams& streams) {
  const std::string marking(trim(join(options.words, " ")));
  if (marking.empty()) {
    streams.err << "benchlore: there is no marking; write what is printed on the part, as in `benchlore decode 104K`\n";
    return exit_usage;
  }
  if (marking.size() > longest_marking) {
    streams.err << "benchlore: the text has " << marking.size() << " bytes, a marking at most " << longest_marking
                << "; write what is printed on one part only\n";
    return exit_usage;
  }
  const auto bearers = bearers_of(marking, options, streams);
  if (!bearers) return exit_usage;
  const std::vector<Reading> readings = decode(marking);
  if (options.format == "json") {
    streams.out << as_json(readings, *bearers);
  } else {
    write_text(marking, readings, *bearers, streams.out);
  }
  if (!readings.empty() || !bearers->components.empty()) return exit_good;
  streams.err << "benchlore: no code reads `" << shown(marking)
              << "`; look for a part of it, and for letters taken for digits (O and 0, I and 1, S and 5); "
                 "of colour bands name three to six, from end to end\n";
  return exit_findings;
}

} // namespace

const Command decode_command = {"decode", "what a marking or colour bands on a part can mean", options_of, execute};

} // namespace benchlore
