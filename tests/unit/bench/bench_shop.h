// Shops of a few notes, read and linked with the project's own schema.
#pragma once

#include "link/shop.h"
#include "support.h"

#include <doctest/doctest.h>

namespace benchlore::test {

struct BenchShop {
  Sources sources;
  Report report;
  Shop shop;

  explicit BenchShop(std::map<std::string, std::string, std::less<>> files) {
    files["shop.yaml"] = "name: Test\nmains: {voltage: 230 V, frequency: 50 Hz}\n"
                         "meters:\n  - {name: lcr, measures: capacitance, accuracy: 1% + 5 digits}\n"
                         "  - {name: dmm, measures: voltage, accuracy: 0.5% + 2}\n";
    const MemoryFiles memory(std::move(files));
    shop = link_shop(memory, "", project_schema(), sources, report);
    for (const Message& message : report.messages()) {
      if (message.severity <= Severity::error) FAIL_CHECK(message.text << "; " << message.way_out);
    }
  }
  BenchShop(const BenchShop&) = delete;

  NoteId id(const std::string& name) const {
    const auto found = shop.find(name);
    REQUIRE_MESSAGE(found.has_value(), name);
    return *found;
  }
};

inline std::string note(const std::string& kind, const std::string& fields, const std::string& body = "Text.\n") {
  return "---\nkind: " + kind + "\ntitle: A " + kind + "\nsources: [bench-practice]\n" + fields + "---\n" + body;
}

inline std::pair<const std::string, std::string> practice() {
  return {"sources/bench-practice.md",
          "---\nkind: source\ntitle: Practice\npublisher: The bench\ntrusted-for: everything\n---\nText.\n"};
}

// The finding of this kind; null when there is none.
inline const Message* message_of(const Report& report, MessageKind kind) {
  for (const Message& message : report.messages()) {
    if (message.kind == kind) return &message;
  }
  return nullptr;
}

} // namespace benchlore::test
