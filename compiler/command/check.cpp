// `benchlore check`: every finding of the shop.
#include "command/command.h"
#include "report/render.h"

#include <CLI/CLI.hpp>
#include <ostream>

namespace benchlore {
namespace {

void options_of(CLI::App& app, Options& options) {
  add_content_options(app, options);
  add_format_option(app, options, true);
}

int execute(const Options& options, Streams& streams) {
  const auto compiled = open_shop(options, streams);
  if (!compiled) return exit_usage;
  if (options.format == "json") {
    streams.out << render_json(compiled->report, compiled->sources) << "\n";
  } else if (options.format == "sarif") {
    streams.out << render_sarif(compiled->report, compiled->sources) << "\n";
  } else {
    streams.out << render_text(compiled->report, compiled->sources, colour_allowed(streams.out_is_terminal));
  }
  return compiled->report.has(Severity::warning) ? exit_findings : exit_good;
}

} // namespace

const Command check_command = {"check", "report what is wrong or unsafe in the notes", options_of, execute};

} // namespace benchlore
