// `benchlore build`: the site, the index and the catalogue, published whole.
#include "command/command.h"
#include "report/render.h"

#include "base/publish.h"

#include <CLI/CLI.hpp>
#include <chrono>
#include <map>
#include <ostream>

namespace benchlore {
namespace {

void options_of(CLI::App& app, Options& options) {
  add_content_options(app, options);
  app.add_option("--out", options.out, "folder to publish into; new, empty, or published before")
      ->capture_default_str();
  app.add_option("--site", options.site,
                 "folder of templates, styles and scripts; found beside the program when not given");
}

std::string site_folder(const Options& options) {
  if (!options.site.empty()) return options.site;
  const std::string beside = program_folder() + "/../site";
  return disk_files(beside)->is_folder("templates") ? beside : "site";
}

std::string schema_folder(const Options& options) {
  if (!options.schema.empty()) return options.schema;
  const std::string beside = program_folder() + "/../schema";
  return disk_files(beside)->is_file("roles.yaml") ? beside : "schema";
}

// A bar on a terminal, nothing otherwise.
void show_progress(Streams& streams, std::string_view step, std::size_t done, std::size_t total) {
  if (!streams.err_is_terminal) return;
  const std::size_t filled = total == 0 ? 0 : 24 * done / total;
  streams.err << "\r[" << std::string(filled, '=') << std::string(24 - filled, ' ') << "] " << step << "          ";
  if (done == total) streams.err << "\n";
  streams.err.flush();
}

void summarise(const Compiled& compiled, double seconds, const Options& options, Streams& streams) {
  std::map<std::string, int> kinds, verdicts;
  std::size_t broken = 0;
  for (const Note& note : compiled.shop.notes) {
    ++kinds[note.kind.empty() ? "unreadable" : note.kind];
    broken += note.broken ? 1 : 0;
  }
  for (const JudgedSubstitute& judged : compiled.judged.substitutes) {
    if (judged.position == nullptr) ++verdicts[std::string(to_text(judged.judgement.verdict))];
  }
  streams.out << "notes      " << compiled.shop.notes.size() << " (";
  const char* comma = "";
  for (const auto& [kind, count] : kinds) {
    streams.out << comma << kind << " " << count;
    comma = ", ";
  }
  streams.out << ")" << (broken > 0 ? ", " + std::to_string(broken) + " with errors left out" : "") << "\n";
  streams.out << "verdicts  ";
  for (const char* word : {"unsafe", "unfit", "unknown", "conditional", "suitable"})
    streams.out << " " << word << " " << verdicts[word];
  streams.out << "\nfindings  ";
  for (Severity severity : {Severity::unsafe, Severity::error, Severity::warning, Severity::note}) {
    streams.out << " " << to_text(severity) << " " << compiled.report.count(severity);
  }
  streams.out << "\nseconds    " << static_cast<double>(static_cast<int>(seconds * 100)) / 100 << "\nsite       "
              << options.out << "/index.html\n";
}

int execute(const Options& options, Streams& streams) {
  const auto start = std::chrono::steady_clock::now();
  std::string error;
  const auto compiled = open_shop(options, streams);
  if (!compiled) return exit_usage;
  const BuildInput input{site_folder(options), schema_folder(options), options.content, options.out};
  const auto progress = [&streams](std::string_view step, std::size_t done, std::size_t total) {
    show_progress(streams, step, done, total);
  };
  if (!publish(*compiled, input, progress, error)) {
    streams.err << "benchlore: " << error << "\n";
    return exit_usage;
  }
  streams.err << render_text(compiled->report, compiled->sources, colour_allowed(streams.err_is_terminal));
  const std::chrono::duration<double> took = std::chrono::steady_clock::now() - start;
  summarise(*compiled, took.count(), options, streams);
  return compiled->report.has(Severity::warning) ? exit_findings : exit_good;
}

} // namespace

const Command build_command = {"build", "publish the site, the index and the catalogue", options_of, execute};

} // namespace benchlore
