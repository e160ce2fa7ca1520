// What a node of cmark's tree is, in our words, and the text that it holds.
#include "notes/tree.h"

namespace benchlore {
namespace {

struct TagName {
  std::string_view name; // as cmark-gfm prints it in its XML
  Tag tag;
};

// By name, since node types of extensions have no constants.
constexpr TagName tag_names[] = {
    {"document", Tag::document},
    {"block_quote", Tag::quote},
    {"list", Tag::list},
    {"item", Tag::item},
    {"tasklist", Tag::item},
    {"code_block", Tag::code_block},
    {"html_block", Tag::html_block},
    {"paragraph", Tag::paragraph},
    {"heading", Tag::heading},
    {"thematic_break", Tag::rule},
    {"table", Tag::table},
    {"table_row", Tag::row},
    {"table_header", Tag::row},
    {"table_cell", Tag::cell},
    {"text", Tag::text},
    {"softbreak", Tag::soft_break},
    {"linebreak", Tag::line_break},
    {"code", Tag::code},
    {"html_inline", Tag::html},
    {"emph", Tag::emphasis},
    {"strong", Tag::strong},
    {"strikethrough", Tag::strike},
    {"link", Tag::link},
    {"image", Tag::image},
};

} // namespace

Tag tag_of(cmark_node* node) {
  const std::string_view name = cmark_node_get_type_string(node);
  for (const TagName& row : tag_names) {
    if (row.name == name) return row.tag;
  }
  return Tag::other;
}

std::string_view literal_of(cmark_node* node) {
  const char* text = cmark_node_get_literal(node);
  return text == nullptr ? std::string_view() : std::string_view(text);
}

std::string inner_text(cmark_node* node) {
  std::string text;
  walk(node, [&text](cmark_node* inner, bool entering) {
    if (!entering) return;
    const Tag tag = tag_of(inner);
    if (tag == Tag::soft_break || tag == Tag::line_break) text += ' ';
    text += literal_of(inner);
  });
  return text;
}

} // namespace benchlore
