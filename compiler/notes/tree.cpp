// Parsing by cmark-gfm. Its extensions switch a table that all parsers share, so one text is parsed at a time.
#include "notes/tree.h"

#include <algorithm>
#include <cmark-gfm-core-extensions.h>
#include <cmark-gfm-extension_api.h>
#include <mutex>

namespace benchlore {
namespace {

// cmark 0.29 takes quadratic time in the length of one paragraph (`![[]()`, `<?`, table headers): 0.4 s at this length.
constexpr std::size_t longest_run = 64u << 10;
constexpr std::size_t deepest = 100;

struct FreeParser {
  void operator()(cmark_parser* parser) const { cmark_parser_free(parser); }
};

bool is_blank(std::string_view line) { return line.find_first_not_of(" \t\r>") == std::string_view::npos; }

// Where a run of lines without a blank one begins that is too long; the size of the text when there is none.
std::size_t long_run(std::string_view text) {
  std::size_t begin = 0;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = std::min(text.find_first_of("\n\r", at), text.size());
    if (end - begin > longest_run) return begin;
    if (is_blank(text.substr(at, end - at))) begin = end + 1;
    at = end + 1;
  }
  return text.size();
}

cmark_node* parse(std::string_view text) {
  static std::mutex one_at_a_time;
  const std::lock_guard lock(one_at_a_time);
  cmark_gfm_core_extensions_ensure_registered();
  const std::unique_ptr<cmark_parser, FreeParser> parser(cmark_parser_new(CMARK_OPT_DEFAULT));
  for (const char* name : {"table", "strikethrough", "tasklist"}) {
    cmark_parser_attach_syntax_extension(parser.get(), cmark_find_syntax_extension(name));
  }
  cmark_parser_feed(parser.get(), text.data(), text.size());
  return cmark_parser_finish(parser.get());
}

std::size_t depth_of(cmark_node* root) {
  std::size_t depth = 0, most = 0;
  walk(root, [&](cmark_node* node, bool entering) {
    // The iterator leaves only what may have children, and enters all.
    if (entering) most = std::max(most, depth + 1);
    if (cmark_node_first_child(node) == nullptr) return;
    entering ? ++depth : --depth;
  });
  return most;
}

} // namespace

MarkdownTree parse_markdown(std::string_view text) {
  if (const std::size_t at = long_run(text); at < text.size()) {
    return {nullptr, "a paragraph of more than 64 KiB without a blank line", at};
  }
  MarkdownTree tree{std::unique_ptr<cmark_node, FreeTree>(parse(text)), {}, 0};
  if (tree.root && depth_of(tree.root.get()) > deepest)
    return {nullptr, "quotes, lists or emphasis more than 100 deep", 0};
  return tree;
}

} // namespace benchlore
