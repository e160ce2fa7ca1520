// A note from one file: encoding and size, front matter, body. Any error of its own makes it broken.
#include "notes/note.h"

#include "base/text.h"
#include "notes/body.h"
#include "notes/front.h"
#include "notes/pinout.h"

namespace benchlore {
namespace {

constexpr std::size_t largest = 1u << 20;

std::string id_of(std::string_view path) {
  const std::size_t slash = path.rfind('/');
  if (slash != std::string_view::npos) path.remove_prefix(slash + 1);
  if (path.ends_with(".md")) path.remove_suffix(3);
  return std::string(path);
}

// The first byte that is no UTF-8.
std::size_t bad_byte(std::string_view text) {
  std::size_t at = 0;
  for (std::size_t begin = 0; begin < text.size(); begin = at) {
    if (next_point(text, at) == bad_point) return begin;
  }
  return text.size();
}

bool readable(const Note& note, const Sources& sources, Report& report) {
  const std::string_view text = sources.text(note.file);
  if (text.size() > largest) {
    report.add(MessageKind::unreadable_file, {note.file, 0, 0}, "the note is larger than one megabyte", "split it up");
    return false;
  }
  if (valid_utf8(text)) return true;
  const auto at = static_cast<std::uint32_t>(bad_byte(text));
  report.add(MessageKind::unreadable_file, {note.file, at, at + 1}, "this is not UTF-8 text", "save the file as UTF-8");
  return false;
}

} // namespace

std::string Note::text(std::string_view name) const {
  const Node* node = field(name);
  return node != nullptr && node->is_scalar() ? node->text : std::string();
}

std::vector<Located<std::string>> Note::texts(std::string_view name) const {
  std::vector<Located<std::string>> found;
  const Node* node = field(name);
  if (node == nullptr) return found;
  if (node->is_scalar() && !node->text.empty()) found.push_back({node->text, node->span});
  for (const Node& item : node->items) {
    if (item.is_scalar() && !item.text.empty()) found.push_back({item.text, item.span});
  }
  return found;
}

Note read_note(std::string path, FileId file, const Sources& sources, const Schema& schema, Report& report) {
  Note note;
  note.id = id_of(path);
  note.path = std::move(path);
  note.file = file;
  note.front.shape = Node::Shape::map;
  const std::size_t before = report.messages().size();
  if (readable(note, sources, report) && find_front(note, sources, report)) {
    read_front(note, sources, schema, report);
    take_pinout(note, schema, report);
    read_body(note, sources, report);
  }
  for (std::size_t at = before; at < report.messages().size(); ++at) {
    Message& message = report.messages()[at];
    message.subject = note.id;
    if (message.severity <= Severity::error) note.broken = true;
  }
  if (note.title.empty()) note.title = note.id;
  return note;
}

} // namespace benchlore
