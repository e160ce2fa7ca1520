// `benchlore judge A B`: may B take the place of A?
#include "command/command.h"

#include <CLI/CLI.hpp>
#include <ostream>

namespace benchlore {
namespace {

void options_of(CLI::App& app, Options& options) {
  add_content_options(app, options);
  add_format_option(app, options);
  add_place_options(app, options);
  app.add_option("parts", options.words,
                 "the original and the substitute, each by id, marking, alias or cross-reference number")
      ->required()
      ->expected(2);
}

int execute(const Options& options, Streams& streams) {
  const auto compiled = open_shop(options, streams);
  if (!compiled) return exit_usage;
  const auto original = find_component(*compiled, options.words[0], streams);
  const auto substitute = find_component(*compiled, options.words[1], streams);
  const auto where = read_where(*compiled, options, streams);
  if (!original || !substitute || !where) return exit_usage;
  const Part a = compiled->shop.part(*original);
  const Part b = compiled->shop.part(*substitute);
  const Judgement judgement = judge(compiled->schema, a, b, *where);
  streams.out << (options.format == "json" ? to_json(judgement, a, b, *where) + "\n"
                                           : judgement_text(*compiled, a, b, *where, judgement));
  return judgement.verdict >= Verdict::conditional ? exit_good : exit_findings;
}

} // namespace

const Command judge_command = {"judge", "judge one part as a substitute for another", options_of, execute};

} // namespace benchlore
