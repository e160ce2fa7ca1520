// HTML that is already escaped, as a type: text from a note gets into a page through text() and in no other way.
#pragma once

#include <string>
#include <string_view>

namespace benchlore {

// Mark-up written in our own source. Only a constant of the program converts to it, never a string made at run time.
struct Markup {
  consteval Markup(const char* constant) : text(constant) {}
  std::string_view text;
};

class Html {
public:
  Html() = default;
  Html(Markup markup) : bytes_(markup.text) {}
  Html& operator<<(Markup markup);
  Html& operator<<(const Html& other);
  bool empty() const { return bytes_.empty(); }
  const std::string& str() const { return bytes_; }

private:
  friend Html text(std::string_view plain);
  friend Html rendered(std::string markup);
  std::string bytes_;
};

// Plain text, escaped; it may stand between tags and in a quoted attribute. Control characters become U+FFFD.
Html text(std::string_view plain);

// Text in which words stand in `backticks`, shown as code.
Html with_code(std::string_view sentence);

// Mark-up that one of our own renderers has made and escaped (a note's body, a page's frame).
Html rendered(std::string markup);

// `<a href="…">inside</a>`; the address is escaped.
Html link(std::string_view address, const Html& inside);

// `<h2 id="…">title</h2>`, with the rule that belongs to a section.
Html section_heading(std::string_view anchor, std::string_view title);

// `before-power-on` as a reader says it: `Before power on`.
std::string spoken(std::string_view name);

// Fills `{{name}}` slots of a template; a slot that has no content becomes empty, and content is never looked into.
struct Slot {
  std::string_view name;
  Html content;
};
Html fill(std::string_view page_template, const Slot* slots, std::size_t count);

} // namespace benchlore
