// `benchlore combine X`: the best combinations of two to four parts that may take the place of X.
#include "substitute/combine.h"
#include "base/json.h"
#include "command/command.h"

#include <CLI/CLI.hpp>
#include <ostream>

namespace benchlore {
namespace {

void options_of(CLI::App& app, Options& options) {
  add_content_options(app, options);
  add_format_option(app, options);
  add_place_options(app, options);
  app.add_flag("--from-stock", options.in_stock, "only what lies in a drawer, and no more of it than lies there");
  app.add_option("--limit", options.each, "at most so many for each number of parts")->capture_default_str();
  app.add_option("part", options.words, "the original, by id, marking, alias or cross-reference number")
      ->required()
      ->expected(1);
}

constexpr int as_many_as_needed = 4;

std::vector<CombinationSource> sources_of(const Compiled& compiled, NoteId original, bool from_stock) {
  std::vector<CombinationSource> sources;
  for (const auto& [id, note] : compiled.shop.by_id) {
    if (note == original || compiled.shop.note(note).kind != "component") continue;
    const Part part = compiled.shop.part(note);
    if (part.component_class == nullptr) continue;
    const int available = from_stock ? compiled.shop.in_stock(note) : as_many_as_needed;
    if (available > 0) sources.push_back({part, available});
  }
  return sources;
}

void write_json(JsonWriter& json, const Combination& made, const std::vector<CombinationSource>& sources) {
  json.object();
  json.field("text", std::string_view(combination_text(made, sources)));
  json.key("ways");
  json.list();
  for (const CombinationWay* way : made.ways) json.value(std::string_view(way->name));
  json.end();
  json.key("parts");
  json.list();
  for (std::size_t part : made.parts) json.value(std::string_view(sources[part].part.id));
  json.end();
  json.field("value", made.whole.value);
  json.field("deviation", static_cast<double>(made.deviation) / 1e9);
  json.key("shares");
  json.list();
  for (double share : made.whole.shares) json.value(share);
  json.end();
  json.key("ratings");
  json.object();
  for (const auto& [name, stated] : made.whole.ratings) json.field(name, std::string_view(to_text(stated.value)));
  json.end();
  json.field("verdict", to_text(made.judgement.verdict));
  json.field("deciding", made.judgement.deciding);
  json.field("conditions", made.judgement.conditions);
  json.end();
}

std::string as_json(const Part& original, const Where& where, const CombinationSearch& search,
                    const std::vector<CombinationSource>& sources) {
  JsonWriter json;
  json.object();
  json.field("format", "benchlore-combinations");
  json.field("version", 1);
  json.field("original", std::string_view(original.id));
  json.field("position", std::string_view(where.position));
  json.field("role", std::string_view(where.role));
  json.field("complete", search.complete);
  json.key("combinations");
  json.list();
  for (const Combination& made : search.found) write_json(json, made, sources);
  json.end();
  json.end();
  return json.text() + "\n";
}

std::string percent(double fraction) { return show_number(fraction * 100, dimension::none, 3) + " %"; }

void write_shares(const Combination& made, const std::vector<CombinationSource>& sources, std::ostream& out) {
  if (made.whole.shares.empty()) return;
  out << "    greatest share of one part:";
  for (std::size_t i = 0; i < made.whole.shares.size(); ++i)
    out << (i == 0 ? " " : ", ") << sources[made.parts[i]].part.id << " " << percent(made.whole.shares[i]);
  out << "\n";
}

void write_text(const Combination& made, const std::vector<CombinationSource>& sources, std::ostream& out) {
  out << to_text(made.judgement.verdict) << "  " << combination_text(made, sources) << "\n    ";
  bool first = true;
  for (const auto& [name, stated] : made.whole.ratings) {
    out << (first ? "" : "; ") << name << " " << to_text(stated.value);
    first = false;
  }
  out << "\n";
  write_shares(made, sources, out);
  for (const std::string& condition : made.judgement.conditions) out << "    - " << condition << "\n";
}

int execute(const Options& options, Streams& streams) {
  const auto compiled = open_shop(options, streams);
  if (!compiled) return exit_usage;
  const auto original = find_component(*compiled, options.words.front(), streams);
  const auto where = read_where(*compiled, options, streams);
  if (!original || !where) return exit_usage;
  const Part part = compiled->shop.part(*original);
  const auto sources = sources_of(*compiled, *original, options.in_stock);
  const CombinationSearch search = find_combinations(compiled->schema, part, sources, *where, options.each);
  if (options.format == "json") {
    streams.out << as_json(part, *where, search, sources);
  } else {
    streams.out << "for " << part.id << "  " << part.title;
    if (!where->position.empty()) streams.out << " at " << where->position;
    if (!where->role.empty()) streams.out << " as " << where->role;
    streams.out << "\n";
    write_cautions(*compiled, *original, streams.out);
    for (const Combination& made : search.found) write_text(made, sources, streams.out);
    if (search.found.empty()) streams.out << "no combination of up to four parts may take its place\n";
  }
  if (!search.complete)
    streams.err << "benchlore: so many combinations did not do that the search was given up; state role and stress, or "
                   "use --from-stock\n";
  return search.found.empty() ? exit_findings : exit_good;
}

} // namespace

const Command combine_command = {"combine", "join two to four parts into one that may take a part's place", options_of,
                                 execute};

} // namespace benchlore
