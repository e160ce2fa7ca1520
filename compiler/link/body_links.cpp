// Links and pictures of bodies: relative to the note, inside the content folder, with the right capitals and anchor.
#include "link/linking.h"

#include "base/text.h"

#include <algorithm>

namespace benchlore {
namespace {

struct BodyLinking {
  Linking& linking;
  std::map<std::string, std::string, std::less<>> by_lower; // path in lower case to the path
  std::set<std::string, std::less<>> attachments;

  Message& report(MessageKind kind, const Note& note, const BodyLink& link, std::string text, std::string way_out) {
    Message& message = linking.report.add(kind, link.span, std::move(text), std::move(way_out));
    message.subject = note.id;
    return message;
  }
};

bool exists(const Linking& linking, std::string_view path) {
  return std::binary_search(linking.paths.begin(), linking.paths.end(), path);
}

// The path as one would write it from the note's folder.
std::string relative_to(std::string_view from, std::string_view path) {
  std::size_t shared = 0;
  for (std::size_t at = 0; at < std::min(from.size(), path.size()) && from[at] == path[at]; ++at) {
    if (from[at] == '/') shared = at + 1;
  }
  std::string out;
  for (std::size_t at = shared; at < from.size(); ++at) {
    if (from[at] == '/') out += "../";
  }
  return out + std::string(path.substr(shared));
}

void check_anchor(BodyLinking& body, const Note& note, const BodyLink& link, const Note& target) {
  if (link.anchor.empty() || target.broken) return;
  std::vector<std::string> known;
  for (const Heading& heading : target.headings) {
    if (heading.anchor == link.anchor) return;
    known.push_back(heading.anchor);
  }
  const auto near = near_names(link.anchor, known);
  body.report(MessageKind::missing_anchor, note, link, "`" + target.path + "` has no heading `#" + link.anchor + "`",
              near.empty() ? "link to the note without an anchor" : "use " + alternatives(near));
}

void link_note(BodyLinking& body, NoteId from, const BodyLink& link, NoteId to) {
  Shop& shop = body.linking.shop;
  check_anchor(body, shop.note(from), link, shop.note(to));
  if (from != to && !shop.note(to).broken) shop.backlinks[to.index].push_back({from, ""});
}

// A note of the same name in another folder is what a wrong path usually meant.
std::string nearest(const Linking& linking, const Note& note, const std::string& path) {
  const std::string name = path.substr(path.rfind('/') + 1);
  std::vector<std::string> names;
  for (const std::string& known : linking.paths) {
    const std::string last = known.substr(known.rfind('/') + 1);
    if (last == name) return "write `" + relative_to(note.path, known) + "`";
    names.push_back(last);
  }
  const auto near = near_names(name, names);
  return near.empty() ? "write the note, or take the link out" : "the folder holds " + alternatives(near);
}

void report_missing(BodyLinking& body, const Note& note, const BodyLink& link, const std::string& path) {
  if (const auto found = body.by_lower.find(lower(path)); found != body.by_lower.end()) {
    body.report(MessageKind::link_case, note, link,
                "`" + link.target + "` differs from the file's name in its capitals",
                "write `" + relative_to(note.path, found->second) + "`");
    return;
  }
  const MessageKind kind = link.image ? MessageKind::missing_image : MessageKind::broken_link;
  body.report(kind, note, link, "there is no file `" + path + "`", nearest(body.linking, note, path));
}

void resolve_path(BodyLinking& body, NoteId from, const BodyLink& link, const std::string& path) {
  const Note& note = body.linking.shop.note(from);
  if (!exists(body.linking, path)) return report_missing(body, note, link, path);
  if (const auto to = body.linking.shop.at_path(path); to && !link.image) return link_note(body, from, link, *to);
  if (path != "shop.yaml" && path != "stock.csv") body.attachments.insert(path);
}

void resolve(BodyLinking& body, NoteId from, const BodyLink& link) {
  const Note& note = body.linking.shop.note(from);
  const LinkSort sort = link_sort(link.raw);
  if (sort == LinkSort::outward && !link.image) return;
  if (sort != LinkSort::relative) {
    const std::string what = link.image ? "a picture from elsewhere is not published" : "this address is not published";
    body.report(MessageKind::unsafe_link, note, link, what,
                link.image ? "put the picture beside the note" : "use a relative link, http, https or mailto");
    return;
  }
  const auto path = link_path(note.path, link.target);
  if (path) return resolve_path(body, from, link, *path);
  body.report(MessageKind::link_outside, note, link, "`" + link.raw + "` leads out of the content folder",
              "put the file into the content folder and link to it there");
}

} // namespace

void resolve_body_links(Linking& linking) {
  BodyLinking body{linking, {}, {}};
  for (const std::string& path : linking.paths) body.by_lower.emplace(lower(path), path);
  for (std::uint32_t at = 0; at < linking.shop.notes.size(); ++at) {
    if (linking.shop.notes[at].broken) continue;
    for (const BodyLink& link : linking.shop.notes[at].links) resolve(body, NoteId{at}, link);
  }
  linking.shop.attachments.assign(body.attachments.begin(), body.attachments.end());
}

} // namespace benchlore
