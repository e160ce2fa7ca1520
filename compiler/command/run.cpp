// The table of commands, and the way from arguments to an exit code.
#include "command/run.h"

#include "command/command.h"

#include <CLI/CLI.hpp>
#include <exception>
#include <ostream>

namespace benchlore {
namespace {

const Command* const commands[] = {&check_command,      &build_command,      &judge_command,  &substitute_command,
                                   &search_command,     &combine_command,    &calc_command,   &budget_command,
                                   &parts_list_command, &drive_type_command, &decode_command, &diagnose_command,
                                   &explain_command};

} // namespace

int run(int argc, char** argv, Streams& streams) {
  CLI::App app(
      "Turns a repair bench's notes into an offline site, an index and a parts catalogue, and judges substitutes.",
      "benchlore");
  app.require_subcommand(1);
  app.failure_message([](const CLI::App*, const CLI::Error& e) {
    return std::string("benchlore: ") + e.what() + "\nbenchlore --help lists the commands\n";
  });
  Options options;
  const Command* chosen = nullptr;
  for (const Command* command : commands) {
    CLI::App* sub = app.add_subcommand(command->name, command->summary);
    command->options(*sub, options);
    sub->callback([&chosen, command] { chosen = command; });
  }
  try {
    app.parse(argc, argv);
  } catch (const CLI::ParseError& error) {
    return app.exit(error, streams.out, streams.err) == 0 ? exit_good : exit_usage;
  }
  try {
    return chosen->execute(options, streams);
  } catch (const std::exception& error) { // the last door: a library ran out of memory or disk
    streams.err << "benchlore: " << chosen->name << " was not done: " << error.what() << "\n";
    return exit_usage;
  }
}

} // namespace benchlore
