// One command: its name, its options, and what it does. The table of commands is in run.cpp.
#pragma once

#include "command/run.h"
#include "compile/compile.h"

#include <iosfwd>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace CLI {
class App;
}

namespace benchlore {

enum ExitCode { exit_good = 0, exit_findings = 1, exit_usage = 2 };

// What the options of all commands fill in.
struct Options {
  std::string content = "content";
  std::string schema; // found beside the program when not given
  std::string site;
  std::string out = "public";
  std::string format = "text";
  std::vector<std::string> words; // names and search words
  std::string at;                 // BOARD:REF
  std::string role;
  std::vector<std::string> stress; // NAME=VALUE
  bool in_stock = false;
  bool translates = false;
  std::vector<std::string> seen, not_seen, checked; // symptoms; CHECK=good or CHECK=bad
  bool powered = false;
  std::vector<std::string> exchanges; // MODULE=COMPONENT
  std::string class_name;
  std::size_t limit = 20;
  std::size_t each = 5; // for each number of parts
};

struct Command {
  const char* name;
  const char* summary;
  void (*options)(CLI::App&, Options&);
  int (*execute)(const Options&, Streams&);
};

extern const Command check_command, build_command, judge_command, substitute_command, search_command, explain_command,
    combine_command, calc_command, budget_command, parts_list_command, drive_type_command, decode_command,
    diagnose_command;

// The shop of the options, or nothing after an error message on the error stream.
std::unique_ptr<Compiled> open_shop(const Options& options, Streams& streams);

// The schema of the options alone, for commands that need no notes; nothing after an error message.
std::optional<Schema> open_schema(const Options& options, Streams& streams);

void add_content_options(CLI::App& app, Options& options);
void add_format_option(CLI::App& app, Options& options, bool sarif = false);
void add_place_options(CLI::App& app, Options& options);

// The place that --at, --role and --stress describe; nothing after an error message.
std::optional<Where> read_where(const Compiled& compiled, const Options& options, Streams& streams);

// The one component of this id, marking, alias or cross-reference; nothing after a message that names the choices.
std::optional<NoteId> find_component(const Compiled& compiled, const std::string& name, Streams& streams);

// The machine of this id; nothing after a message that names near ones.
std::optional<NoteId> find_equipment(const Compiled& compiled, const std::string& name, Streams& streams);

// A caution for a person; and those of a note.
void write_caution(const Caution& caution, std::ostream& out);
void write_cautions(const Compiled& compiled, NoteId note, std::ostream& out);

// True when colour may be used on this stream (a terminal, and NO_COLOR is not set).
bool colour_allowed(bool terminal);

// The verdict with all its reasons, for a person.
std::string judgement_text(const Compiled& compiled, const Part& original, const Part& substitute, const Where& where,
                           const Judgement& judgement);

} // namespace benchlore
