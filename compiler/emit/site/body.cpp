// Links of a body: to another note's page, to a picture or file, or out by http, https or mailto; all others are
// dropped.
#include "emit/site/body.h"

#include "base/text.h"

#include <algorithm>

namespace benchlore {
namespace {

bool leads_out(std::string_view address) {
  std::string start = lower(address.substr(0, 8));
  return start.starts_with("http://") || start.starts_with("https://") || start.starts_with("mailto:");
}

// A link to a heading that is not there leads to the top of the note; the finding says so elsewhere.
bool has_heading(const Note& note, std::string_view anchor) {
  return std::any_of(note.headings.begin(), note.headings.end(),
                     [&](const Heading& heading) { return heading.anchor == anchor; });
}

struct PageLinks : LinkTarget {
  const View& view;
  const Gathered& gathered;
  const Note& note;
  PageLinks(const View& v, const Gathered& g, const Note& n) : view(v), gathered(g), note(n) {}

  std::optional<std::string> href(const BodyLink& link) const override {
    std::string anchor = link.anchor.empty() ? "" : "#" + link.anchor;
    if (leads_out(link.raw)) return link.image ? std::nullopt : std::optional(link.raw);
    if (link.target.empty())
      return !link.image && has_heading(note, link.anchor) ? std::optional(anchor) : std::nullopt;
    auto path = link_path(note.path, link.target);
    if (!path) return std::nullopt;
    if (auto found = gathered.by_path.find(*path); found != gathered.by_path.end() && !link.image)
      return view.root + page_path(view.shop().note(found->second)) +
             (has_heading(view.shop().note(found->second), link.anchor) ? anchor : "");
    return attachment(*path, link.image);
  }

  std::optional<std::string> attachment(const std::string& path, bool image) const {
    // A drawing opened by itself may run what it holds; shown as a picture it may not.
    if (!gathered.attachments.contains(path) || (!image && lower(path).ends_with(".svg"))) return std::nullopt;
    auto published = attachment_path(path);
    if (!published || (image && !is_picture(path))) return std::nullopt;
    return view.root + *published;
  }
};

} // namespace

Html body_view(const View& view, const Gathered& gathered, const Note& note) {
  std::string markup = render_body(note, view.in.sources, PageLinks(view, gathered, note));
  if (trim(markup).empty()) return {};
  Html out{"<div class=\"body\">\n"};
  return out << rendered(std::move(markup)) << "</div>\n";
}

std::string excerpt(const Note& note, std::size_t most) {
  std::string out;
  for (std::string_view word : split(note.plain_text, ' ')) {
    word = trim(word);
    if (word.empty()) continue;
    if (out.size() + word.size() + 1 > most) return out + " …";
    if (!out.empty()) out += ' ';
    out += word;
  }
  for (char& c : out)
    if (c == '\n' || c == '\t') c = ' ';
  return out;
}

} // namespace benchlore
