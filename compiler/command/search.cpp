// `benchlore search WORDS`: notes that have to do with the words, best first, from the published index.
#include "lookup/search.h"
#include "base/json.h"
#include "base/text.h"
#include "command/command.h"

#include <CLI/CLI.hpp>
#include <ostream>

namespace benchlore {
namespace {

void options_of(CLI::App& app, Options& options) {
  add_format_option(app, options);
  app.add_option("--out", options.out, "folder that was published into")->capture_default_str();
  app.add_option("--limit", options.limit, "at most so many")->capture_default_str();
  app.add_option("words", options.words,
                 "words, \"a phrase\", kind:fault, class:fuse, equipment:ID, capacitance:10uF..47uF, -word")
      ->required()
      ->expected(-1);
}

std::string as_json(const SearchAnswer& answer) {
  JsonWriter json;
  json.object();
  json.field("format", "benchlore-search");
  json.field("version", 1);
  json.field("matches", answer.matches);
  json.field("suggestion", std::string_view(answer.suggestion));
  json.key("hits");
  json.list();
  for (const Hit& hit : answer.hits) {
    json.object();
    json.field("id", std::string_view(hit.id));
    json.field("kind", std::string_view(hit.kind));
    json.field("title", std::string_view(hit.title));
    json.field("score", hit.score);
    json.field("excerpt", std::string_view(hit.excerpt));
    json.end();
  }
  json.end();
  json.end();
  return json.text() + "\n";
}

void write_text(const SearchAnswer& answer, Streams& streams) {
  for (const Hit& hit : answer.hits)
    streams.out << hit.title << "  [" << hit.kind << " " << hit.id << "]\n    " << hit.excerpt << "\n";
  if (answer.hits.empty()) streams.out << "nothing found\n";
  if (!answer.suggestion.empty()) streams.out << "did you mean: " << answer.suggestion << "\n";
}

int execute(const Options& options, Streams& streams) {
  std::string error;
  SearchOptions search_options;
  search_options.limit = options.limit;
  const auto answer = search(options.out + "/data/index", join(options.words, " "), search_options, error);
  if (!answer) {
    streams.err << "benchlore: " << error << "; build the shop first, or name its folder with --out\n";
    return exit_usage;
  }
  if (options.format == "json") {
    streams.out << as_json(*answer);
  } else {
    write_text(*answer, streams);
  }
  return answer->hits.empty() ? exit_findings : exit_good;
}

} // namespace

const Command search_command = {"search", "search the published notes", options_of, execute};

} // namespace benchlore
