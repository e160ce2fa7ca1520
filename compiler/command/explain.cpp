// `benchlore explain RULE`: a rule of substitution, or a kind of finding, in words.
#include "base/text.h"
#include "command/command.h"

#include <CLI/CLI.hpp>
#include <ostream>

namespace benchlore {
namespace {

void options_of(CLI::App& app, Options& options) {
  add_content_options(app, options);
  app.add_option("name", options.words, "name of a rule or of a kind of finding")->required()->expected(1);
}

void write_ratings(Streams& streams, const char* who, const std::string& class_name, const Ratings& ratings) {
  streams.out << "    " << who << (class_name.empty() ? "" : " (" + class_name + ")") << ":";
  for (const auto& [name, value] : ratings) streams.out << " " << name << " " << to_text(value.value) << ";";
  streams.out << "\n";
}

void write_rule(const Compiled& compiled, const Rule& rule, Streams& streams) {
  streams.out << rule.name << "\n" << rule.because << "\n\n";
  streams.out << "compares    " << (rule.rating.empty() ? rule.computation : rule.rating) << " (" << to_text(rule.form)
              << ")\n";
  streams.out << "original    " << join(rule.from, ", ") << "\nsubstitute  " << join(rule.to, ", ") << "\n";
  if (!rule.roles.empty()) streams.out << "roles       " << join(rule.roles, ", ") << "\n";
  if (!rule.stress.empty()) streams.out << "stress      " << rule.stress << "\n";
  streams.out << "if not met  " << to_text(rule.falls_short) << (rule.action.empty() ? "" : ": " + rule.action) << "\n";
  if (!rule.changed.empty()) streams.out << "changed     " << rule.changed << "\n";
  if (rule.may_loosen) streams.out << "            a shop may loosen it\n";
  const auto source = compiled.schema.sources.find(rule.source);
  if (source != compiled.schema.sources.end())
    streams.out << "source      " << source->second.title << " (" << source->second.trust << ")\n";
  for (const RuleExample& example : rule.examples) {
    streams.out << "\n  " << example.kind << (example.role.empty() ? "" : " as " + example.role) << "\n";
    write_ratings(streams, "original", example.original_class, example.original);
    write_ratings(streams, "substitute", example.substitute_class, example.substitute);
    if (!example.stress.empty()) write_ratings(streams, "stress", {}, example.stress);
  }
}

int execute(const Options& options, Streams& streams) {
  const auto compiled = open_shop(options, streams);
  if (!compiled) return exit_usage;
  const std::string& name = options.words.front();
  if (const Rule* rule = compiled->schema.find_rule(name)) {
    write_rule(*compiled, *rule, streams);
    return exit_good;
  }
  std::vector<std::string> known;
  for (const KindRow& kind : message_kinds()) {
    if (kind.name == name) {
      streams.out << kind.name << " (" << to_text(kind.severity) << ")\n" << kind.help << "\n";
      return exit_good;
    }
    known.emplace_back(kind.name);
  }
  for (const Rule& rule : compiled->schema.rules) known.push_back(rule.name);
  streams.err << "benchlore: nothing is called `" << name << "`; near it: " << alternatives(near_names(name, known))
              << "\n";
  return exit_findings;
}

} // namespace

const Command explain_command = {"explain", "say what a rule or a finding means", options_of, execute};

} // namespace benchlore
