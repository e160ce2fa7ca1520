// Reads every note of the folder, finds ids that stand twice, and reads shop.yaml.
#include "link/linking.h"

#include "base/text.h"

namespace benchlore {
namespace {

constexpr std::size_t most_bytes = 16u << 20; // of a note; one larger than a megabyte is refused with its place

Span start_of(const Note& note) {
  const Node* title = note.field("title");
  return title != nullptr ? title->span : Span{note.file, 0, 0};
}

Note unread_note(const std::string& path, FileId file) {
  Note note;
  note.path = path;
  note.id = path.substr(path.rfind('/') + 1);
  note.id.resize(note.id.size() - 3);
  note.title = note.id;
  note.file = file;
  note.front.shape = Node::Shape::map;
  note.broken = true;
  return note;
}

// Two ids that differ in capitals only would be one file on some systems, so they count as one.
void find_duplicates(Linking& linking) {
  std::map<std::string, std::size_t> first;
  for (std::size_t at = 0; at < linking.shop.notes.size(); ++at) {
    Note& note = linking.shop.notes[at];
    const auto [found, fresh] = first.emplace(lower(note.id), at);
    if (fresh) continue;
    const Note& other = linking.shop.notes[found->second];
    linking.report
        .add(MessageKind::duplicate_id, start_of(note), "`" + note.id + "` is already the id of `" + other.path + "`",
             "rename one of the two files", {{start_of(other), "the other one"}})
        .subject = note.id;
    note.broken = true;
  }
}

void read_meters(Linking& linking, const Node& list) {
  for (const Node& item : list.items) {
    Meter meter{text_in(item, "name"), text_in(item, "measures"), text_in(item, "accuracy"), text_in(item, "note"),
                item.span};
    if (item.is_scalar()) meter.name = item.text;
    if (!meter.name.empty()) {
      linking.shop.facts.meters.push_back(std::move(meter));
    } else {
      linking.report.add(MessageKind::wrong_type, item.span, "a meter without a name", "add `name:`");
    }
    for (const Entry& entry : item.entries) {
      if (entry.key == "name" || entry.key == "measures" || entry.key == "accuracy" || entry.key == "note") continue;
      linking.report.add(MessageKind::unknown_field, entry.key_span, "`" + entry.key + "` is not a part of a meter",
                         "use `name`, `measures`, `accuracy` or `note`");
    }
  }
}

void read_fact(Linking& linking, const Entry& entry) {
  ShopFacts& facts = linking.shop.facts;
  if (entry.key == "name") {
    facts.name = entry.value.text;
  } else if (entry.key == "wording") {
    facts.wording = entry.value.text;
  } else if (entry.key == "mains") {
    facts.mains_voltage = text_in(entry.value, "voltage");
    facts.mains_frequency = text_in(entry.value, "frequency");
  } else if (entry.key == "meters") {
    read_meters(linking, entry.value);
  } else {
    linking.report.add(MessageKind::unknown_field, entry.key_span, "`" + entry.key + "` is not a field of shop.yaml",
                       "use `name`, `mains`, `meters` or `wording`");
  }
}

} // namespace

void read_notes(Linking& linking) {
  for (const std::string& path : linking.paths) {
    if (!path.ends_with(".md")) continue;
    const auto bytes = linking.files.read(linking.folder + path, most_bytes);
    const FileId file = linking.sources.add(linking.folder + path, bytes.value_or(""));
    if (bytes) {
      linking.shop.notes.push_back(read_note(path, file, linking.sources, *linking.shop.schema, linking.report));
      continue;
    }
    linking.report.add(MessageKind::unreadable_file, {file, 0, 0}, "`" + path + "` cannot be read",
                       "look at its rights and its size");
    linking.shop.notes.push_back(unread_note(path, file));
  }
  find_duplicates(linking);
  for (const Note& note : linking.shop.notes) {
    if (note.broken) linking.broken_ids.insert(note.id);
  }
  linking.shop.backlinks.resize(linking.shop.notes.size());
}

void read_shop_facts(Linking& linking) {
  const std::string path = linking.folder + "shop.yaml";
  const auto bytes = linking.files.read(path, 64u << 10);
  if (!bytes) return;
  const FileId file = linking.sources.add(path, *bytes);
  const auto facts = read_record(linking.sources, {file, 0, static_cast<std::uint32_t>(bytes->size())}, linking.report);
  if (!facts) return;
  for (const Entry& entry : facts->entries) read_fact(linking, entry);
}

} // namespace benchlore
