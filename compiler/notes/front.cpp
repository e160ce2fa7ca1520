// Front matter stands between a first line `---` and the next line `---`. The body is what follows; spans stay those
// of the file, so nothing is cut out.
#include "notes/front.h"

#include "base/text.h"
#include "notes/fields.h"

#include <algorithm>

namespace benchlore {
namespace {

struct Line {
  std::size_t begin, end, next;
};

Line line_at(std::string_view text, std::size_t begin) {
  const std::size_t end = std::min(text.find('\n', begin), text.size());
  return {begin, end, std::min(end + 1, text.size())};
}

bool is_fence(std::string_view text, Line line) {
  std::string_view written = text.substr(line.begin, line.end - line.begin);
  while (!written.empty() && (written.back() == '\r' || written.back() == ' ' || written.back() == '\t'))
    written.remove_suffix(1);
  return written == "---";
}

Span span_of(FileId file, std::size_t begin, std::size_t end) {
  return {file, static_cast<std::uint32_t>(begin), static_cast<std::uint32_t>(end)};
}

const Kind* kind_of(const Note& note, const Schema& schema, Report& report) {
  const Node* written = note.front.find("kind");
  if (written == nullptr) return nullptr;
  const Kind* kind = written->is_scalar() ? schema.find_kind(written->text) : nullptr;
  if (kind != nullptr) return kind;
  std::vector<std::string> known;
  for (const auto& [name, unused] : schema.kinds) known.push_back(name);
  const auto near = near_names(written->text, known);
  report.add(MessageKind::unknown_kind, written->span, "`" + written->text + "` is no kind of note",
             "use " + alternatives(near.empty() ? known : near));
  return nullptr;
}

// The class of a component is needed before its ratings can be read, wherever it stands.
void read_class(Note& note, const Schema& schema, Report& report) {
  const Node* written = note.front.find("class");
  if (written == nullptr || !written->is_scalar() || note.kind != "component") return;
  note.class_name = written->text;
  const ComponentClass* made = schema.find_class(written->text);
  if (made == nullptr || !made->general) return;
  std::vector<std::string> under;
  for (const auto& [name, one] : schema.classes) {
    if (!one.general && schema.is_a(name, made->name)) under.push_back(name);
  }
  report.add(MessageKind::unknown_class, written->span, "`" + written->text + "` is a family of classes",
             under.empty() ? "name a class" : "use " + alternatives(under));
}

} // namespace

bool find_front(Note& note, const Sources& sources, Report& report) {
  const std::string_view text = sources.text(note.file);
  note.body_span = span_of(note.file, 0, text.size());
  note.front_span = span_of(note.file, 0, 0);
  const Line first = line_at(text, text.starts_with("\xEF\xBB\xBF") ? 3 : 0);
  if (!is_fence(text, first)) {
    report.add(MessageKind::front_matter_missing, span_of(note.file, first.begin, first.end),
               "the note does not begin with a line `---`", "begin it with `---`, its fields, and a second line `---`");
    return false;
  }
  for (Line line = line_at(text, first.next); line.begin < text.size(); line = line_at(text, line.next)) {
    if (!is_fence(text, line)) continue;
    note.front_span = span_of(note.file, first.next, line.begin);
    note.body_span = span_of(note.file, line.next, text.size());
    return true;
  }
  report.add(MessageKind::front_matter_missing, span_of(note.file, first.begin, first.end),
             "the front matter has no end", "close it with a second line `---`");
  return false;
}

void read_front(Note& note, const Sources& sources, const Schema& schema, Report& report) {
  auto front = read_record(sources, note.front_span, report);
  if (!front) return;
  if (!front->is_map()) {
    report.add(MessageKind::wrong_type, front->span, "the front matter is no list of fields",
               "write `field: value` lines");
    return;
  }
  note.front = std::move(*front);
  note.front.span = note.front_span;
  const Kind* kind = kind_of(note, schema, report);
  note.title = trim(note.text("title"));
  for (const auto& tag : note.texts("tags")) note.tags.push_back(tag.value);
  const std::vector<Field> common = common_fields(schema);
  std::vector<const Field*> fields;
  for (const Field& field : common) fields.push_back(&field);
  if (kind == nullptr && note.front.find("kind") != nullptr) return; // its fields cannot be judged
  if (kind != nullptr) {
    note.kind = kind->name;
    read_class(note, schema, report);
    for (const Field& field : kind->fields) fields.push_back(&field);
    FieldReading reading{note, sources, schema, report};
    read_fields(reading, note.front, fields, "");
    return;
  }
  report.add(MessageKind::missing_field, {note.file, note.front_span.begin, note.front_span.begin}, "`kind` is missing",
             "add `kind:` with one of the kinds in schema/kinds");
}

} // namespace benchlore
