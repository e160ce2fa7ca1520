// A body's tree as HTML, in the shape that the CommonMark specification shows, with our differences: headings one
// level down with an id, raw HTML as text, links by the caller's leave, pictures loaded when they come into view.
#include "notes/body.h"
#include "notes/html_text.h"
#include "notes/links.h"
#include "notes/tree.h"

#include <algorithm>
#include <cmark-gfm-core-extensions.h>

namespace benchlore {
namespace {

class Renderer {
public:
  explicit Renderer(const LinkTarget& links) : links_(links) {}

  void visit(cmark_node* node, bool entering) {
    const Tag tag = tag_of(node);
    if (image_ != nullptr) { // its inner text has become the `alt`
      if (node == image_ && !entering) image_ = nullptr;
      return;
    }
    if (tag <= Tag::rule) return block(tag, node, entering);
    if (tag <= Tag::cell) return table_part(tag, node, entering);
    span(tag, node, entering);
  }
  std::string take() { return std::move(out_); }

private:
  void block(Tag tag, cmark_node* node, bool entering);
  void table_part(Tag tag, cmark_node* node, bool entering);
  void span(Tag tag, cmark_node* node, bool entering);
  void list(cmark_node* node, bool entering);
  void item(cmark_node* node, bool entering);
  void paragraph(cmark_node* node, bool entering);
  void heading(cmark_node* node, bool entering);
  void code_block(cmark_node* node);
  void html_block(cmark_node* node);
  void cell(bool entering);
  void link(cmark_node* node, bool entering);
  void image(cmark_node* node);
  void title(cmark_node* node);
  void wrap(std::string_view tag, bool entering) { ((out_ += entering ? "<" : "</") += tag) += '>'; }
  void fresh_line() {
    if (!out_.empty() && out_.back() != '\n') out_ += '\n';
  }

  const LinkTarget& links_;
  std::string out_;
  Anchors anchors_;
  std::vector<bool> open_links_; // whether each link that is open is shown as one
  cmark_node* image_ = nullptr;
  bool header_row_ = false, body_open_ = false;
  std::size_t column_ = 0;
  std::vector<std::uint8_t> alignments_;
};

void Renderer::block(Tag tag, cmark_node* node, bool entering) {
  switch (tag) {
  case Tag::list:
    return list(node, entering);
  case Tag::item:
    return item(node, entering);
  case Tag::paragraph:
    return paragraph(node, entering);
  case Tag::heading:
    return heading(node, entering);
  case Tag::code_block:
    return code_block(node);
  case Tag::html_block:
    return html_block(node);
  case Tag::quote:
    fresh_line();
    wrap("blockquote", entering);
    out_ += '\n';
    return;
  case Tag::rule:
    fresh_line();
    out_ += "<hr />\n";
    return;
  default:
    return;
  }
}

void Renderer::list(cmark_node* node, bool entering) {
  const bool bullets = cmark_node_get_list_type(node) == CMARK_BULLET_LIST;
  if (!entering) {
    out_ += bullets ? "</ul>\n" : "</ol>\n";
    return;
  }
  fresh_line();
  const int start = cmark_node_get_list_start(node);
  if (bullets) {
    out_ += "<ul>\n";
  } else {
    out_ += start == 1 ? "<ol>\n" : "<ol start=\"" + std::to_string(start) + "\">\n";
  }
}

void Renderer::item(cmark_node* node, bool entering) {
  if (!entering) {
    out_ += "</li>\n";
    return;
  }
  fresh_line();
  out_ += "<li>";
  if (std::string_view(cmark_node_get_type_string(node)) != "tasklist") return;
  const bool done = cmark_gfm_extensions_get_tasklist_item_checked(node);
  out_ +=
      done ? "<input type=\"checkbox\" checked=\"\" disabled=\"\" /> " : "<input type=\"checkbox\" disabled=\"\" /> ";
}

void Renderer::paragraph(cmark_node* node, bool entering) {
  cmark_node* above = cmark_node_parent(cmark_node_parent(node));
  if (above != nullptr && tag_of(above) == Tag::list && cmark_node_get_list_tight(above)) return;
  if (entering) fresh_line();
  wrap("p", entering);
  if (!entering) out_ += '\n';
}

void Renderer::heading(cmark_node* node, bool entering) {
  const std::string level = std::to_string(std::min(cmark_node_get_heading_level(node) + 1, 6));
  if (!entering) {
    out_ += "</h" + level + ">\n";
    return;
  }
  fresh_line();
  out_ += "<h" + level + " id=\"" + std::string(anchor_prefix) + html_escaped(anchors_.next(inner_text(node))) + "\">";
}

void Renderer::code_block(cmark_node* node) {
  fresh_line();
  const char* info = cmark_node_get_fence_info(node);
  std::string_view word = info == nullptr ? "" : info;
  word = word.substr(0, word.find_first_of(" \t\r\n"));
  out_ += word.empty() ? "<pre><code>" : "<pre class=\"block-" + html_escaped(word) + "\"><code>";
  out_ += html_escaped(literal_of(node)) + "</code></pre>\n";
}

void Renderer::html_block(cmark_node* node) {
  fresh_line();
  std::string_view text = literal_of(node);
  if (text.ends_with('\n')) text.remove_suffix(1);
  out_ += "<pre class=\"raw\">" + html_escaped(text) + "</pre>\n";
}

void Renderer::table_part(Tag tag, cmark_node* node, bool entering) {
  if (tag == Tag::cell) return cell(entering);
  if (tag == Tag::row) {
    header_row_ = cmark_gfm_extensions_get_table_row_is_header(node) != 0;
    column_ = 0;
    if (entering && (header_row_ || !body_open_)) out_ += header_row_ ? "<thead>\n" : "<tbody>\n";
    if (!header_row_) body_open_ = true;
    out_ += entering ? "<tr>\n" : "</tr>\n";
    if (!entering && header_row_) out_ += "</thead>\n";
    return;
  }
  if (entering) {
    fresh_line();
    const std::uint8_t* first = cmark_gfm_extensions_get_table_alignments(node);
    alignments_.assign(first, first + cmark_gfm_extensions_get_table_columns(node));
    body_open_ = false;
  } else if (body_open_) {
    out_ += "</tbody>\n";
  }
  out_ += entering ? "<table>\n" : "</table>\n";
}

void Renderer::cell(bool entering) {
  const std::string_view tag = header_row_ ? "th" : "td";
  if (!entering) {
    (out_ += "</") += tag;
    out_ += ">\n";
    return;
  }
  const std::uint8_t align = column_ < alignments_.size() ? alignments_[column_] : std::uint8_t{0};
  ++column_;
  (out_ += '<') += tag;
  if (align == 'l') out_ += " class=\"left\"";
  if (align == 'c') out_ += " class=\"centre\"";
  if (align == 'r') out_ += " class=\"right\"";
  out_ += '>';
}

void Renderer::span(Tag tag, cmark_node* node, bool entering) {
  switch (tag) {
  case Tag::emphasis:
    return wrap("em", entering);
  case Tag::strong:
    return wrap("strong", entering);
  case Tag::strike:
    return wrap("del", entering);
  case Tag::link:
    return link(node, entering);
  case Tag::image:
    return image(node);
  case Tag::soft_break:
    out_ += '\n';
    return;
  case Tag::line_break:
    out_ += "<br />\n";
    return;
  case Tag::code:
    out_ += "<code>" + html_escaped(literal_of(node)) + "</code>";
    return;
  case Tag::html:
    out_ += "<span class=\"raw\">" + html_escaped(literal_of(node)) + "</span>";
    return;
  default:
    out_ += html_escaped(literal_of(node));
    return;
  }
}

// Whatever the caller says, nothing that runs or reads a local file becomes a link.
bool never_published(std::string_view href) {
  const std::string scheme = scheme_of(href);
  return scheme == "javascript" || scheme == "vbscript" || scheme == "data" || scheme == "file";
}

std::string_view url_of(cmark_node* node) {
  const char* url = cmark_node_get_url(node);
  return url == nullptr ? std::string_view() : std::string_view(url);
}

void Renderer::title(cmark_node* node) {
  const char* text = cmark_node_get_title(node);
  if (text != nullptr && *text != '\0') out_ += " title=\"" + html_escaped(text) + "\"";
}

void Renderer::link(cmark_node* node, bool entering) {
  if (!entering) {
    if (open_links_.back()) out_ += "</a>";
    open_links_.pop_back();
    return;
  }
  const auto href = links_.href(body_link(url_of(node), false, {}));
  open_links_.push_back(href && !never_published(*href));
  if (!open_links_.back()) return;
  out_ += "<a href=\"" + href_escaped(*href) + "\"";
  title(node);
  if (scheme_of(*href).starts_with("http")) out_ += " rel=\"noreferrer\"";
  out_ += '>';
}

void Renderer::image(cmark_node* node) {
  image_ = node;
  const std::string alt = html_escaped(inner_text(node));
  const auto source = links_.href(body_link(url_of(node), true, {}));
  if (!source || link_sort(*source) != LinkSort::relative) {
    out_ += alt;
    return;
  }
  out_ += "<img src=\"" + href_escaped(*source) + "\" alt=\"" + alt + "\"";
  title(node);
  out_ += " loading=\"lazy\" />";
}

} // namespace

std::string render_markdown(std::string_view text, const LinkTarget& links) {
  const MarkdownTree tree = parse_markdown(text);
  if (!tree.root) return "<pre>" + html_escaped(text) + "</pre>\n";
  Renderer renderer(links);
  walk(tree.root.get(), [&renderer](cmark_node* node, bool entering) { renderer.visit(node, entering); });
  return renderer.take();
}

std::string render_body(const Note& note, const Sources& sources, const LinkTarget& links) {
  return render_markdown(sources.text(note.body_span), links);
}

} // namespace benchlore
