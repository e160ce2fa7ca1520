// A schema of a few lines, so that these tests do not hang on what the project's own says today.
#pragma once

#include "base/files.h"
#include "schema/schema.h"

#include <doctest/doctest.h>
#include <memory>

namespace benchlore::test {

inline std::map<std::string, std::string, std::less<>> small_schema_files() {
  auto kind = [](const std::string& name, const std::string& fields) {
    return "kind: " + name + "\ntitle: " + name + "\nplural: " + name + "s\nfolder: " + name +
           "\nmeaning: a note\nfields:\n" + fields;
  };
  return {
      {"kinds/component.yaml", kind("component", "  class: {type: word, choices: classes, required: true}\n"
                                                 "  ratings: {type: ratings}\n  markings: {type: words}\n"
                                                 "  aliases: {type: words}\n  maker: {type: text}\n")},
      {"kinds/equipment.yaml", kind("equipment", "  boards: {type: list, of: {type: ref, to: [board]}}\n")},
      {"kinds/board.yaml", kind("board", "  revision: {type: text}\n")},
      {"kinds/symptom.yaml", kind("symptom", "  also-said: {type: words}\n")},
      {"kinds/fault.yaml",
       kind("fault",
            "  equipment: {type: list, of: {type: ref, to: [equipment]}}\n  symptoms:\n    type: list\n    of:\n"
            "      type: map\n      fields:\n        symptom: {type: ref, to: [symptom], required: true}\n"
            "        likelihood: {type: word, choices: likelihood}\n")},
      {"classes/parts.yaml",
       "classes:\n"
       "  - class: capacitor\n    title: Capacitor\n    plural: Capacitors\n    general: yes\n    meaning: stores "
       "charge\n"
       "    ratings:\n      capacitance: {title: Capacitance, unit: F, meaning: how much}\n"
       "      rated-voltage: {title: Voltage, unit: V, meaning: how high}\n"
       "      polarity: {title: Polarity, words: [polar, bipolar], meaning: which way}\n"
       "  - class: tantalum-capacitor\n    title: Tantalum\n    plural: Tantalums\n    extends: capacitor\n    "
       "meaning: a bead\n"
       "  - class: aluminium-electrolytic\n    title: Electrolytic\n    plural: Electrolytics\n    extends: capacitor\n"
       "    meaning: a can\n"
       "  - class: bjt\n    title: Transistor\n    plural: Transistors\n    meaning: amplifies\n"
       "    ratings:\n      gain: {title: Gain, unit: none, meaning: how much}\n"
       "  - class: rectifier-diode\n    title: Rectifier\n    plural: Rectifiers\n    meaning: one way\n"},
      {"roles.yaml", "roles:\n  - {role: decoupling, title: Decoupling, meaning: keeps a rail quiet}\n"},
      {"likelihood.yaml", "likelihood:\n  usual: 0.75\n  rare: 0.1\n"},
      {"sources.yaml", "sources:\n  - {source: maker, title: A maker, publisher: Maker, trust: published}\n"},
      {"stresses.yaml", "stresses:\n  - {stress: applied-voltage, title: Applied, unit: V, meaning: how high}\n"},
      {"synonyms.yaml", "synonyms:\n  - [capacitor, condenser, cap]\n  - [picture, display, image]\n"
                        "  - [power supply, psu, power pack]\n"},
      {"rules/empty.yaml", "rules: []\n"},
      {"cautions.yaml", "cautions: []\n"},
  };
}

inline const Schema& small_schema() {
  struct Read {
    Sources sources;
    Report report;
    std::optional<Schema> schema;
  };
  static const std::unique_ptr<Read> read = [] {
    auto made = std::make_unique<Read>();
    const MemoryFiles files(small_schema_files());
    made->schema = read_schema({{files, ""}}, made->sources, made->report);
    return made;
  }();
  for (const Message& message : read->report.messages()) {
    const Place place = read->sources.place(message.span);
    FAIL_CHECK(place.path << ":" << place.line << ": " << message.text << " " << message.way_out);
  }
  REQUIRE(read->schema.has_value());
  return *read->schema;
}

} // namespace benchlore::test
