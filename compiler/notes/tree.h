// Markdown as cmark-gfm's tree, behind bounds: what would take cmark too long or a page too deep is refused first.
#pragma once

#include <cmark-gfm.h>
#include <cstdint>
#include <map>
#include <memory>
#include <set>
#include <string>
#include <string_view>

namespace benchlore {

struct FreeTree {
  void operator()(cmark_node* node) const { cmark_node_free(node); }
};

struct FreeIterator {
  void operator()(cmark_iter* iterator) const { cmark_iter_free(iterator); }
};

// The tree, or, when there is none, why not and from which byte on.
struct MarkdownTree {
  std::unique_ptr<cmark_node, FreeTree> root;
  std::string refusal;
  std::size_t at = 0;
};

MarkdownTree parse_markdown(std::string_view text);

enum class Tag {
  document,
  quote,
  list,
  item,
  code_block,
  html_block,
  paragraph,
  heading,
  rule,
  table,
  row,
  cell,
  text,
  soft_break,
  line_break,
  code,
  html,
  emphasis,
  strong,
  strike,
  link,
  image,
  other
};

Tag tag_of(cmark_node* node);

// Literal text of a node, never null.
std::string_view literal_of(cmark_node* node);

// The text of a node and all under it, without mark-up.
std::string inner_text(cmark_node* node);

// A walk without recursion: calls `visit(node, entering)` for each node; `visit` returns nothing.
template <class Visit> void walk(cmark_node* root, Visit visit) {
  std::unique_ptr<cmark_iter, FreeIterator> iterator(cmark_iter_new(root));
  for (;;) {
    const cmark_event_type event = cmark_iter_next(iterator.get());
    if (event == CMARK_EVENT_DONE) return;
    visit(cmark_iter_get_node(iterator.get()), event == CMARK_EVENT_ENTER);
  }
}

// Heading texts become anchors as the common forges make them; a repeated one gets `-1`, `-2`.
class Anchors {
public:
  std::string next(std::string_view heading);

private:
  std::set<std::string, std::less<>> taken_;
  std::map<std::string, std::size_t, std::less<>> counts_; // so that many equal headings take no quadratic time
};

} // namespace benchlore
