// A shop built by hand from a few notes, for the tests of the index, the search and the catalogue.
#pragma once

#include "small_schema.h"
#include "substitute/judged.h"

#include <filesystem>
#include <map>
#include <string>
#include <unistd.h>

namespace benchlore::test {

struct SmallShop {
  Sources sources;
  Report report;
  Shop shop;
  JudgedShop judged;

  // Notes by path; sound when they can be read.
  explicit SmallShop(const std::map<std::string, std::string>& notes) {
    shop.schema = &small_schema();
    for (const auto& [path, text] : notes) {
      const FileId file = sources.add(path, text);
      shop.notes.push_back(read_note(path, file, sources, *shop.schema, report));
    }
    shop.sources = &sources;
    shop.backlinks.resize(shop.notes.size());
    for (std::uint32_t i = 0; i < shop.notes.size(); ++i) shop.by_id.emplace(shop.notes[i].id, NoteId{i});
    for (std::uint32_t i = 0; i < shop.notes.size(); ++i)
      for (const Reference& reference : shop.notes[i].references)
        if (const auto found = shop.by_id.find(reference.target); found != shop.by_id.end())
          shop.backlinks[found->second.index].push_back({NoteId{i}, reference.field});
  }
  SmallShop(const SmallShop&) = delete;

  NoteId id(const std::string& name) const { return shop.by_id.at(name); }

  void add_position(const std::string& board, const std::string& ref, const std::string& component,
                    const std::string& role) {
    Position& position = shop.positions.emplace_back();
    position.ref = ref;
    position.board = id(board);
    position.component = id(component);
    position.role = role;
  }

  void add_substitute(const std::string& original, const std::string& substitute, Verdict verdict) {
    JudgedSubstitute& judged_one = judged.substitutes.emplace_back();
    judged_one.original = id(original);
    judged_one.substitute = id(substitute);
    judged_one.judgement.verdict = verdict;
    judged_one.judgement.deciding = {"rated-voltage"};
    Reason reason;
    reason.rule_name = "class";
    reason.outcome = Outcome::falls_short;
    reason.verdict = verdict;
    reason.original = "16 V";
    reason.margin = -0.5;
    judged_one.judgement.reasons = {reason};
    judged_one.judgement.conditions = {"measure it"};
  }
};

// A workshop of few notes with something of everything.
inline std::map<std::string, std::string> few_notes() {
  return {
      {"components/tantalum-10u-16v.md", "---\nkind: component\nclass: tantalum-capacitor\ntitle: Tantalum bead 10 µF "
                                         "16 V\nratings:\n  capacitance: 10 uF ±20%\n"
                                         "  rated-voltage: 16 V\nmarkings: [\"106C\"]\ntags: "
                                         "[bead]\n---\nShort-circuits without warning on the +12 V rail.\n"},
      {"components/electrolytic-47u-25v.md",
       "---\nkind: component\nclass: aluminium-electrolytic\ntitle: Electrolytic 47 µF 25 V\nratings:\n  capacitance: "
       "47 uF "
       "±20%\n  rated-voltage: 25 V\n---\nLeaks with age; the electrolyte eats tracks.\n"},
      {"components/pn2222a.md", "---\nkind: component\nclass: bjt\ntitle: PN2222A\naliases: [\"2N-2222A\"]\n---\nNPN "
                                "switching transistor, drives the relay.\n"},
      {"components/1n4007.md",
       "---\nkind: component\nclass: rectifier-diode\ntitle: 1N4007\n---\nRectifier diode for mains "
       "supplies.\n"},
      {"equipment/kestrel-8.md",
       "---\nkind: equipment\ntitle: Kestrel 8\nboards: [kestrel-main]\n---\nHome computer.\n"},
      {"boards/kestrel-main.md", "---\nkind: board\ntitle: Kestrel main board\n---\nThe main board.\n"},
      {"symptoms/no-picture.md",
       "---\nkind: symptom\ntitle: No picture\nalso-said: [dead screen, black display]\n---\nNothing "
       "on the monitor.\n"},
      {"faults/shorted-tantalum.md",
       "---\nkind: fault\ntitle: Shorted tantalum on the rail\nequipment: [kestrel-8]\nsymptoms:\n  - {symptom: "
       "no-picture, "
       "likelihood: usual}\n---\nThe bead burns and the supply shuts down; the machine shows nothing.\n"},
  };
}

// A folder that vanishes with its owner.
struct TemporaryFolder {
  std::filesystem::path path;
  TemporaryFolder() {
    static int count = 0;
    path = std::filesystem::temp_directory_path() /
           ("benchlore-test-" + std::to_string(getpid()) + "-" + std::to_string(count++));
    std::filesystem::create_directories(path);
  }
  ~TemporaryFolder() {
    std::error_code ignored;
    std::filesystem::remove_all(path, ignored);
  }
  TemporaryFolder(const TemporaryFolder&) = delete;
  std::string in(const std::string& name) const { return (path / name).string(); }
};

} // namespace benchlore::test
