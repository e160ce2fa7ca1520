// `benchlore calc NAME input=value…`: a computation of the bench, with its working.
#include "base/json.h"
#include "base/text.h"
#include "calculations/calculation.h"
#include "command/command.h"

#include <CLI/CLI.hpp>
#include <ostream>

namespace benchlore {
namespace {

void options_of(CLI::App& app, Options& options) {
  add_content_options(app, options);
  add_format_option(app, options);
  app.add_option("name", options.words,
                 "name of a calculation, then its inputs as NAME=VALUE; without a name all are listed")
      ->expected(0, 64);
}

void write_list(std::ostream& out) {
  for (const Calculation& one : calculations()) {
    out << one.name << std::string(one.name.size() < 34 ? 34 - one.name.size() : 1, ' ') << one.title << "\n";
  }
}

void write_help(const Calculation& calculation, std::ostream& out) {
  out << calculation.name << ": " << calculation.title << "\n"
      << calculation.meaning << "\n\n  " << calculation.formula << "\n\n";
  for (const CalculationInput& input : calculation.inputs) {
    out << "  " << input.name << "=…  " << input.title << " (" << describe(input.dimension) << "): " << input.meaning;
    if (!input.otherwise.empty()) out << "; " << input.otherwise << " when not given";
    if (input.list) out << "; may be repeated";
    out << "\n";
  }
  out << "\nfor example: benchlore calc " << calculation.name;
  for (const std::string& argument : calculation.example) out << " \"" << argument << "\"";
  out << "\nsource: " << calculation.source << "\n";
}

void write_cautions(const Calculation& calculation, const Schema& schema, std::ostream& out) {
  for (const std::string& name : calculation.cautions) {
    const auto found = schema.cautions.find(name);
    if (found != schema.cautions.end()) write_caution(found->second, out);
  }
}

void write_text(const Calculation& calculation, const CalculationResult& result, const Schema& schema,
                std::ostream& out) {
  out << calculation.title << "\n";
  write_cautions(calculation, schema, out);
  for (const CalculationValue& value : result.values)
    out << "  " << value.title << ": " << interval_text(value) << "\n";
  if (!result.verdict.empty()) out << "  " << result.verdict << "\n";
  out << "\n  " << calculation.formula << "\n";
  for (const auto& [name, value] : result.given) out << "  " << name << " = " << value << "\n";
  for (const std::string& step : result.working) out << "  " << step << "\n";
  out << "  source: " << calculation.source << "\n";
}

void write_value(JsonWriter& json, const CalculationValue& value) {
  json.object();
  json.field("name", std::string_view(value.name));
  json.field("value", value.value);
  json.field("unit", std::string_view(base_units(value.dimension)));
  json.field("low", value.low);
  json.field("high", value.high);
  json.field("text", std::string_view(interval_text(value)));
  json.end();
}

std::string as_json(const Calculation& calculation, const CalculationResult& result, const Schema& schema) {
  JsonWriter json;
  json.object();
  json.field("format", "benchlore-calculation");
  json.field("version", 1);
  json.field("name", std::string_view(calculation.name));
  json.key("result");
  write_value(json, result.values.front());
  json.key("results");
  json.list();
  for (const CalculationValue& value : result.values) write_value(json, value);
  json.end();
  json.field("verdict", std::string_view(result.verdict));
  json.field("formula", std::string_view(calculation.formula));
  json.field("working", result.working);
  json.field("source", std::string_view(calculation.source));
  json.key("cautions");
  json.list();
  for (const std::string& name : calculation.cautions) {
    const auto found = schema.cautions.find(name);
    if (found != schema.cautions.end()) json.value(std::string_view(found->second.wording));
  }
  json.end();
  json.end();
  return json.text() + "\n";
}

const Calculation* find_named(const std::string& name, Streams& streams) {
  if (const Calculation* found = find_calculation(name)) return found;
  std::vector<std::string> known;
  for (const Calculation& one : calculations()) known.push_back(one.name);
  const auto near = near_names(name, known);
  streams.err << "benchlore: there is no calculation `" << name << "`"
              << (near.empty() ? "; benchlore calc lists them" : "; near it: " + alternatives(near)) << "\n";
  return nullptr;
}

int execute(const Options& options, Streams& streams) {
  if (options.words.empty()) {
    write_list(streams.out);
    return exit_good;
  }
  const Calculation* calculation = find_named(options.words.front(), streams);
  if (calculation == nullptr) return exit_usage;
  const std::vector<std::string> arguments(options.words.begin() + 1, options.words.end());
  if (arguments.empty()) {
    write_help(*calculation, streams.out);
    return exit_good;
  }
  const auto schema = open_schema(options, streams);
  if (!schema) return exit_usage;
  const CalculationResult result = calculate(*calculation, arguments);
  if (!result.refusal.empty()) {
    streams.err << "benchlore: nothing was worked out: " << result.refusal << "\n";
    return exit_usage;
  }
  if (options.format == "json") {
    streams.out << as_json(*calculation, result, *schema);
  } else {
    write_text(*calculation, result, *schema, streams.out);
  }
  return exit_good;
}

} // namespace

const Command calc_command = {"calc", "work out what the bench needs, with the working", options_of, execute};

} // namespace benchlore
