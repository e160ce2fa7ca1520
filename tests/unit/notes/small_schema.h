// The real kinds of notes over a handful of classes, roles and stresses: enough to read and link small shops in tests.
#pragma once

#include "notes/note.h"
#include "schema/reading.h"

#include <doctest/doctest.h>

namespace benchlore::test {

inline RatingType quantity_type(SchemaReading& reading, std::string name, std::string unit) {
  RatingType type;
  type.name = std::move(name);
  type.dimension = reading.dimension(unit, {});
  type.unit = std::move(unit);
  return type;
}

inline void add_class(SchemaReading& reading, std::string name, std::string parent, bool general) {
  ComponentClass made;
  made.name = name;
  made.extends = std::move(parent);
  made.general = general;
  made.ratings["capacitance"] = quantity_type(reading, "capacitance", "F");
  made.ratings["pinout"].name = "pinout";
  made.ratings["pinout"].form = RatingForm::words;
  made.ratings["rated-voltage"] = quantity_type(reading, "rated-voltage", "V");
  if (general) made.cautions = {"charged"};
  reading.schema.classes[name] = made;
}

inline void fill_lists(SchemaReading& reading) {
  Schema& schema = reading.schema;
  add_class(reading, "capacitor", "", true);
  add_class(reading, "film-capacitor", "capacitor", false);
  add_class(reading, "safety-capacitor", "capacitor", false);
  schema.roles["smoothing"] = {"smoothing", "Smoothing", "", false, {}};
  schema.roles["mains"] = {"mains", "Across the mains", "", true, {"mains"}};
  schema.stresses["applied-voltage"] = quantity_type(reading, "applied-voltage", "V");
  schema.likelihood = {{"usual", 0.6}, {"rare", 0.05}};
  for (const char* name : {"charged", "eht", "mains", "solvent"})
    schema.cautions[name] = {name, name, "", "", {}, {}, {}, {}};
  schema.cautions["solvent"].tags = {"cleaning"};
  Caution::Threshold high{"applied-voltage",
                          *parse_quantity("1 kV", schema.stresses["applied-voltage"].dimension).quantity};
  schema.cautions["eht"].thresholds.push_back(high);
}

// The schema, and the texts that it came from.
inline const Schema& small_schema() {
  static const Schema schema = [] {
    Schema made;
    Sources sources;
    Report report;
    SchemaReading reading{sources, report, made};
    fill_lists(reading);
    const auto files = disk_files(BENCHLORE_ROOT);
    for (const std::string& path : files->list("schema/kinds")) {
      const std::string text = files->read(path).value_or("");
      const FileId file = sources.add(path, text);
      const auto node = read_record(sources, {file, 0, static_cast<std::uint32_t>(text.size())}, report);
      REQUIRE_MESSAGE(node, path);
      read_kind(reading, *node);
    }
    for (const Message& message : report.messages()) FAIL_CHECK(message.text);
    return made;
  }();
  return schema;
}

// Names of the messages' kinds, in the order reported.
inline std::vector<std::string> kinds_of(const Report& report) {
  std::vector<std::string> names;
  for (const Message& message : report.messages()) names.emplace_back(row(message.kind).name);
  return names;
}

using Kinds = std::vector<std::string>;

// One note read by itself.
struct ReadNote {
  Sources sources;
  Report report;
  Note note;
  explicit ReadNote(std::string text, std::string path = "components/one.md") {
    const FileId file = sources.add(path, std::move(text));
    note = read_note(path, file, sources, small_schema(), report);
  }
  std::string_view marked(std::size_t at = 0) const { return sources.text(report.messages().at(at).span); }
};

struct AllLinks : LinkTarget {
  std::optional<std::string> href(const BodyLink& link) const override { return link.raw; }
};

struct NoLinks : LinkTarget {
  std::optional<std::string> href(const BodyLink&) const override { return std::nullopt; }
};

} // namespace benchlore::test
