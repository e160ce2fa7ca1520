// One Markdown file as the compiler understands it: its front matter, checked against its kind, and its body.
#pragma once

#include "schema/schema.h"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace benchlore {

// A link or picture in the body, as written.
struct BodyLink {
  std::string target; // percent-decoded path, without the anchor; of an outward link the whole destination
  std::string anchor; // without `#`
  std::string raw;    // the destination as written
  bool image = false;
  Span span;
};

struct Heading {
  int level = 1;
  std::string text;
  std::string anchor; // unique in the note
};

// A note named by a field of the front matter.
struct Reference {
  std::string field;              // path of field names: `substitutes.component`
  std::string target;             // id as written
  std::vector<std::string> kinds; // that it may be; empty: any
  Span span;
};

struct Note {
  std::string id;   // file name without `.md`
  std::string path; // relative to the content folder
  FileId file;
  std::string kind;
  std::string title;
  Node front;      // the whole front matter; an empty map when it could not be read
  Span front_span; // between the `---` lines
  Span body_span;
  std::vector<std::string> tags;
  std::vector<Reference> references;
  std::vector<BodyLink> links;
  std::vector<Heading> headings;
  std::string plain_text; // the body without mark-up, for the index
  Ratings ratings;        // of a component
  std::string class_name; // of a component
  bool broken = false;    // has an error of its own; it is listed, not published

  const Node* field(std::string_view name) const { return front.find(name); }
  // The text of a scalar field, or empty.
  std::string text(std::string_view name) const;
  // The texts of a list field, or of the one scalar in its place.
  std::vector<Located<std::string>> texts(std::string_view name) const;
};

// Reads one file. What it understood is returned and what it did not is reported; it never fails.
Note read_note(std::string path, FileId file, const Sources& sources, const Schema& schema, Report& report);

// What a destination may lead to: a place beside the note, out by http, https or mailto, or nothing that is published.
enum class LinkSort { relative, outward, refused };
LinkSort link_sort(std::string_view raw);

// The path of a relative link from the folder of the file that holds it; nothing when it leads out of the content
// folder.
std::optional<std::string> link_path(std::string_view from, std::string_view target);

// Headings of a body have this before their anchor as id, so that no heading takes the id of a part of the page.
inline constexpr std::string_view anchor_prefix = "s-";

// Turns a link target of a body into what the published page holds, or nothing to drop the link and keep its text.
struct LinkTarget {
  virtual ~LinkTarget() = default;
  virtual std::optional<std::string> href(const BodyLink& link) const = 0;
};

// The body as HTML: CommonMark with tables, strikethrough and task lists; raw HTML is shown as text (class `raw`);
// headings carry their anchors, one level down; fenced blocks keep their first word as class `block-WORD` of the `pre`.
std::string render_body(const Note& note, const Sources& sources, const LinkTarget& links);

// The same for a loose text (tests, excerpts).
std::string render_markdown(std::string_view text, const LinkTarget& links);

} // namespace benchlore
