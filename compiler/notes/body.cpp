// Reads a body in one walk of its tree.
//
// cmark counts the column of a link from the content of its paragraph, with the indent of the first line; on later
// lines the indent is their own, so the column is brought back to the file, and then checked against the text.
#include "notes/body.h"

#include "notes/links.h"
#include "notes/tree.h"

#include <algorithm>

namespace benchlore {
namespace {

struct Lines {
  std::string_view text;
  std::vector<std::size_t> starts{0};

  explicit Lines(std::string_view body) : text(body) {
    for (std::size_t at = 0; at < body.size(); ++at) {
      if (body[at] == '\n' || (body[at] == '\r' && (at + 1 == body.size() || body[at + 1] != '\n')))
        starts.push_back(at + 1);
    }
  }
  std::size_t start(int line) const {
    const auto index = static_cast<std::size_t>(std::max(line, 1) - 1);
    return index < starts.size() ? starts[index] : text.size();
  }
  std::size_t end(int line) const {
    std::size_t at = start(line + 1);
    while (at > start(line) && (text[at - 1] == '\n' || text[at - 1] == '\r')) --at;
    return at;
  }
};

struct Range {
  std::size_t begin, end;
};

// Offset of a place that cmark gives inside a block; on a later line of it the content begins after indent and `>`.
std::size_t offset_of(const Lines& lines, cmark_node* block, int line, int column) {
  const std::size_t start = lines.start(line);
  const auto from = static_cast<std::size_t>(std::max(column, 1) - 1);
  if (block == nullptr || line <= cmark_node_get_start_line(block)) return start + from;
  const auto indent = static_cast<std::size_t>(std::max(cmark_node_get_start_column(block), 1) - 1);
  const std::size_t content = std::min(lines.text.find_first_not_of(" \t>", start), lines.text.size());
  return content + (from >= indent ? from - indent : 0);
}

cmark_node* block_of(cmark_node* node) {
  for (; node != nullptr; node = cmark_node_parent(node)) {
    const Tag tag = tag_of(node);
    if (tag == Tag::paragraph || tag == Tag::heading || tag == Tag::cell) return node;
  }
  return nullptr;
}

// A link over several lines has the line of its end for both; its first text knows the right one.
int first_line(cmark_node* link) {
  const int line = cmark_node_get_start_line(link);
  for (cmark_node* inner = cmark_node_first_child(link); inner != nullptr; inner = cmark_node_first_child(inner)) {
    if (cmark_node_get_start_line(inner) > 0 && cmark_node_get_start_line(inner) < line)
      return cmark_node_get_start_line(inner);
  }
  return line;
}

bool looks_like_link(std::string_view written, bool image) {
  if (written.size() < 3) return false;
  if (image) return written.starts_with("![") && (written.back() == ')' || written.back() == ']');
  if (written.front() == '<') return written.back() == '>';
  return written.front() == '[' && (written.back() == ')' || written.back() == ']');
}

// The bytes of a link; the whole line when cmark's place does not hold what a link looks like.
Range link_range(const Lines& lines, cmark_node* node, bool image) {
  cmark_node* block = block_of(node);
  const int line = first_line(node), last = cmark_node_get_end_line(node);
  const std::size_t begin = offset_of(lines, block, line, cmark_node_get_start_column(node));
  const std::size_t end = offset_of(lines, block, last, cmark_node_get_end_column(node)) + 1;
  const bool inside = begin < end && end <= lines.text.size();
  if (inside && looks_like_link(lines.text.substr(begin, end - begin), image)) return {begin, end};
  return {lines.start(line), std::max(lines.end(line), lines.start(line))};
}

void add_plain(std::string& plain, Tag tag, cmark_node* node, bool entering) {
  if (entering) {
    if (tag == Tag::soft_break || tag == Tag::line_break) plain += ' ';
    plain += literal_of(node);
  }
  const bool leaf = tag == Tag::code_block || tag == Tag::html_block;
  const bool block = tag == Tag::paragraph || tag == Tag::heading || tag == Tag::row;
  if ((leaf || (block && !entering)) && !plain.empty() && plain.back() != '\n') plain += '\n';
  if (tag == Tag::cell && !entering) plain += ' ';
}

void read_nodes(Note& note, const Lines& lines, cmark_node* root) {
  Anchors anchors;
  walk(root, [&](cmark_node* node, bool entering) {
    const Tag tag = tag_of(node);
    add_plain(note.plain_text, tag, node, entering);
    if (!entering) return;
    if (tag == Tag::heading) {
      const std::string text = inner_text(node);
      note.headings.push_back({cmark_node_get_heading_level(node), without_bidi(text), anchors.next(text)});
    }
    if (tag != Tag::link && tag != Tag::image) return;
    const Range range = link_range(lines, node, tag == Tag::image);
    const Span span{note.file, note.body_span.begin + static_cast<std::uint32_t>(range.begin),
                    note.body_span.begin + static_cast<std::uint32_t>(range.end)};
    const char* url = cmark_node_get_url(node);
    note.links.push_back(body_link(url == nullptr ? "" : url, tag == Tag::image, span));
  });
}

} // namespace

std::string without_bidi(std::string_view text) {
  std::string out;
  out.reserve(text.size());
  for (std::size_t at = 0; at < text.size();) {
    const std::string_view three = text.substr(at, 3);
    const bool embedding = three >= "\xE2\x80\xAA" && three <= "\xE2\x80\xAE";
    const bool isolate = three >= "\xE2\x81\xA6" && three <= "\xE2\x81\xA9";
    if (three.size() == 3 && (embedding || isolate)) {
      out += "\xEF\xBF\xBD";
      at += 3;
    } else {
      out += text[at++];
    }
  }
  return out;
}

void read_body(Note& note, const Sources& sources, Report& report) {
  const std::string_view text = sources.text(note.body_span);
  const MarkdownTree tree = parse_markdown(text);
  if (tree.root) {
    read_nodes(note, Lines(text), tree.root.get());
    note.plain_text = without_bidi(note.plain_text);
    return;
  }
  const auto at = note.body_span.begin + static_cast<std::uint32_t>(tree.at);
  report.add(MessageKind::unreadable_file, {note.file, at, std::min(at + 1, note.body_span.end)},
             "the text holds " + tree.refusal, "break it up");
}

} // namespace benchlore
