// A record read from a text that stands somewhere in a file, and its single refusal.
#pragma once

#include "record/record.h"

#include <doctest/doctest.h>

namespace benchlore {

struct Reading {
  Sources sources;
  Report report;
  FileId file;
  std::uint32_t before;
  std::optional<Node> node;

  // The record stands behind `head`, as front matter does behind `---`.
  explicit Reading(std::string text, const std::string& head = "---\n") {
    before = static_cast<std::uint32_t>(head.size());
    const auto end = static_cast<std::uint32_t>(head.size() + text.size());
    file = sources.add("a.md", head + text + "---\nbody: [\n");
    node = read_record(sources, {file, before, end}, report);
  }

  const Node& at(std::string_view key) const {
    REQUIRE(node.has_value());
    const Node* found = node->find(key);
    REQUIRE(found != nullptr);
    return *found;
  }

  std::string_view text(Span span) const { return sources.text(span); }
  // The text that is marked as wrong.
  std::string_view marked() const {
    REQUIRE_FALSE(node.has_value());
    REQUIRE(report.messages().size() == 1);
    return text(report.messages()[0].span);
  }
  std::uint32_t offset() const { return report.messages()[0].span.begin - before; }
  const Message& message() const { return report.messages()[0]; }
};

} // namespace benchlore
