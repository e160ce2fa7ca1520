// `benchlore substitute X`: what the shop knows that may take the place of X, best first.
#include "base/json.h"
#include "command/command.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <ostream>

namespace benchlore {
namespace {

void options_of(CLI::App& app, Options& options) {
  add_content_options(app, options);
  add_format_option(app, options);
  add_place_options(app, options);
  app.add_flag("--in-stock", options.in_stock, "only what lies in a drawer");
  app.add_option("--limit", options.limit, "at most so many")->capture_default_str();
  app.add_option("part", options.words, "the original, by id, marking, alias or cross-reference number")
      ->required()
      ->expected(1);
}

std::string as_json(const Compiled& compiled, NoteId original, const Where& where,
                    const std::vector<Candidate>& found) {
  JsonWriter json;
  json.object();
  json.field("format", "benchlore-substitutes");
  json.field("version", 1);
  json.field("original", std::string_view(compiled.shop.note(original).id));
  json.field("position", std::string_view(where.position));
  json.field("role", std::string_view(where.role));
  json.key("candidates");
  json.list();
  for (const Candidate& candidate : found) {
    json.object();
    json.field("id", std::string_view(compiled.shop.note(candidate.component).id));
    json.field("title", std::string_view(compiled.shop.note(candidate.component).title));
    json.field("verdict", to_text(candidate.judgement.verdict));
    json.field("deciding", candidate.judgement.deciding);
    json.field("conditions", candidate.judgement.conditions);
    json.field("in_stock", candidate.in_stock);
    json.field("declared", candidate.declared);
    json.end();
  }
  json.end();
  json.end();
  return json.text() + "\n";
}

void write_candidate(const Compiled& compiled, const Candidate& candidate, Streams& streams) {
  const Note& note = compiled.shop.note(candidate.component);
  streams.out << to_text(candidate.judgement.verdict) << "  " << note.id << "  " << note.title;
  if (candidate.in_stock > 0) streams.out << "  (" << candidate.in_stock << " in stock)";
  if (candidate.declared) streams.out << "  (named in the note)";
  streams.out << "\n";
  if (candidate.judgement.verdict == Verdict::suitable) return;
  const Reason& reason = candidate.judgement.reasons.front();
  streams.out << "    " << reason.rating << ": " << reason.substitute;
  if (!reason.required.empty()) streams.out << ", wanted " << reason.required;
  streams.out << "\n";
  for (const std::string& condition : candidate.judgement.conditions) streams.out << "    - " << condition << "\n";
}

void write_text(const Compiled& compiled, NoteId original, const Where& where, const std::vector<Candidate>& found,
                Streams& streams) {
  streams.out << "for " << compiled.shop.note(original).id << "  " << compiled.shop.note(original).title;
  if (!where.position.empty()) streams.out << " at " << where.position;
  if (!where.role.empty()) streams.out << " as " << where.role;
  streams.out << "\n";
  write_cautions(compiled, original, streams.out);
  for (const Candidate& candidate : found) write_candidate(compiled, candidate, streams);
  if (found.empty()) streams.out << "nothing in the notes may take its place\n";
}

int execute(const Options& options, Streams& streams) {
  const auto compiled = open_shop(options, streams);
  if (!compiled) return exit_usage;
  const auto original = find_component(*compiled, options.words.front(), streams);
  const auto where = read_where(*compiled, options, streams);
  if (!original || !where) return exit_usage;
  auto found = candidates(compiled->shop, *original, *where);
  if (options.in_stock) std::erase_if(found, [](const Candidate& c) { return c.in_stock == 0; });
  if (found.size() > options.limit) found.resize(options.limit);
  if (options.format == "json") {
    streams.out << as_json(*compiled, *original, *where, found);
  } else {
    write_text(*compiled, *original, *where, found, streams);
  }
  const bool usable =
      std::any_of(found.begin(), found.end(), [](auto& c) { return c.judgement.verdict >= Verdict::conditional; });
  return usable ? exit_good : exit_findings;
}

} // namespace

const Command substitute_command = {"substitute", "list what may take the place of a part, best first", options_of,
                                    execute};

} // namespace benchlore
