// libyaml's complaints in the words of somebody who writes notes. A complaint that is not in the table is
// passed on as libyaml words it.
#include "record/checks.h"

#include <array>

namespace benchlore {

namespace {

struct Fault {
  std::string_view problem; // the beginning of libyaml's words
  std::string_view text;
  std::string_view way_out;
};

constexpr auto faults = std::to_array<Fault>({
    {"mapping values are not allowed", "a second `: ` where a value was expected",
     "put the value in quotes, or give the key its own line with the indentation of its neighbours"},
    {"could not find expected ':'", "a line without `:` among keys",
     "write `key: value`; a value that goes on in the next line is indented deeper than its key"},
    {"did not find expected key", "a line that fits neither the keys above it nor the value before it",
     "give keys of one map the same indentation; put a value that holds quotes or `: ` in quotes as a whole"},
    {"did not find expected '-' indicator", "a line that is no item of the list above it",
     "begin each item with `- ` at the same indentation"},
    {"did not find expected ',' or ']'", "a list in brackets that is not closed or lacks a comma",
     "put a comma between items and `]` at the end"},
    {"did not find expected ',' or '}'", "a map in braces that is not closed or lacks a comma",
     "put a comma between entries and `}` at the end"},
    {"block sequence entries are not allowed", "a list item `- ` in the middle of a line",
     "begin the list on the line below its key, or write it as `[a, b]`"},
    {"mapping keys are not allowed", "a key where none can stand", "begin the key on its own line"},
    {"found unexpected end of stream", "a quote that is not closed", "close the quote on the line where it opens"},
    {"found unexpected document indicator", "a quote that is not closed before the `---` or `...`",
     "close the quote on the line where it opens"},
    {"found unknown escape character", "a backslash that begins no escape",
     "write `\\\\` for a backslash, or use single quotes, where a backslash is just itself"},
    {"did not find expected hexdecimal number", "an escape without its hexadecimal digits",
     "write `\\x` with two, `\\u` with four or `\\U` with eight digits"},
    {"found invalid Unicode character escape code", "an escape for a character that does not exist",
     "write the character itself"},
    {"found a tab character", "a tab in the indentation", "indent with spaces"},
    {"found an indentation indicator equal to 0", "a block with the indentation 0",
     "leave the number out; the block is indented as its first line is"},
    {"did not find expected comment or line break", "text after a block sign `|` or `>`, or after a directive",
     "begin the text of the block on the next line"},
    {"found unexpected ':'", "a `:` without a key before it", "write `key: value`, or put the text in quotes"},
    {"found unknown directive name", "a `%` directive", "take it out; there is one form of record"},
    {"found incompatible YAML document", "a `%` directive", "take it out; there is one form of record"},
    {"did not find expected alphabetic or numeric", "an anchor `&` or an alias `*`",
     "put a value that begins with this sign in quotes"},
    {"did not find expected node content", "nothing where a value was expected", "write a value, or `\"\"` for none"},
    {"did not find expected <document start>", "text after the end of the record", "take it out"},
});

// `@` and the grave accent are reserved, a tab does not indent and `%` begins a directive.
Fault bad_start(char found) {
  if (found == '\t') return {"", "a tab in the indentation", "indent with spaces"};
  return {"", "a value cannot begin with this character", "put the value in quotes"};
}

Fault find_fault(std::string_view problem, char found) {
  if (problem.starts_with("found character that cannot start")) return bad_start(found);
  for (const Fault& fault : faults) {
    if (problem.starts_with(fault.problem)) return fault;
  }
  return {"", problem, "write it in the plain form that other notes use"};
}

bool is_quote(std::string_view context) { return context.find("quoted scalar") != std::string_view::npos; }

// What libyaml was in the middle of, when knowing where that began helps.
std::string_view label_of(std::string_view context) {
  if (context == "while parsing a block mapping") return "the map begins here";
  if (context == "while parsing a flow mapping") return "the map begins here";
  if (context == "while parsing a block collection") return "the list begins here";
  if (context == "while parsing a flow sequence") return "the list begins here";
  if (is_quote(context)) return "the quote opens here";
  return "";
}

// libyaml notices an open quote at the end of the text and a line without a colon in the line after it.
Span place_of(const yaml_parser_t& parser, std::string_view problem, std::string_view context, const Marks& marks) {
  if (problem.starts_with("found unexpected end of stream") && is_quote(context)) {
    return marks.character(parser.context_mark);
  }
  if (context == "while scanning a simple key") return marks.rest_of_line(parser.context_mark);
  return marks.character(parser.problem_mark);
}

} // namespace

void report_fault(const yaml_parser_t& parser, const Marks& marks, Report& report) {
  const std::string_view problem = parser.problem ? parser.problem : "out of memory";
  const std::string_view context = parser.context ? parser.context : "";
  const Span span = place_of(parser, problem, context, marks);
  const Span opening = marks.character(parser.context_mark);
  const Fault fault = find_fault(problem, marks.at(span.begin));
  std::vector<Label> labels;
  const std::string_view label = label_of(context);
  if (!label.empty() && opening.begin != span.begin) labels.push_back({opening, std::string(label)});
  report.add(MessageKind::front_matter_syntax, span, std::string(fault.text), std::string(fault.way_out),
             std::move(labels));
}

} // namespace benchlore
