// The table of kinds and the order of a report.
#include "report/message.h"

#include <doctest/doctest.h>

#include <set>

using namespace benchlore;

TEST_CASE("every kind has its own row, name and help") {
  std::set<std::string_view> names;
  for (const KindRow& kind : message_kinds()) {
    CHECK(&row(kind.kind) == &kind);
    CHECK(kind.help.size() > 20);
    CHECK(kind.help.ends_with('.'));
    CHECK(names.insert(kind.name).second);
  }
}

TEST_CASE("a kind's printed name is its identifier with hyphens") {
  CHECK(row(MessageKind::broken_link).name == "broken-link");
  CHECK(row(MessageKind::unsafe_substitute).severity == Severity::unsafe);
}

TEST_CASE("an accepted message counts for nothing") {
  Report report;
  report.add(MessageKind::unsafe_substitute, {}, "x").accepted = Acceptance{"r", "b", "d"};
  CHECK_FALSE(report.has(Severity::note));
  CHECK(report.count(Severity::unsafe) == 0);
  report.add(MessageKind::ambiguous_name, {}, "x");
  CHECK(report.has(Severity::warning));
  CHECK(report.has(Severity::note));
  CHECK_FALSE(report.has(Severity::error));
}

TEST_CASE("a report is ordered by severity, file, place and text, and what is accepted comes last") {
  Sources sources;
  const FileId b = sources.add("b.md", "bbbb"), a = sources.add("a.md", "aaaa");
  Report report;
  report.add(MessageKind::source_missing, {a, 0, 1}, "7");
  report.add(MessageKind::unsafe_substitute, {b, 0, 1}, "8").accepted = Acceptance{};
  report.add(MessageKind::broken_link, {b, 0, 1}, "5");
  report.add(MessageKind::broken_link, {a, 2, 3}, "4");
  report.add(MessageKind::broken_link, {a, 1, 2}, "3");
  report.add(MessageKind::broken_link, {a, 1, 2}, "2");
  report.add(MessageKind::ambiguous_name, {a, 0, 1}, "6");
  report.add(MessageKind::unsafe_substitute, {b, 0, 1}, "1");
  report.sort(sources);
  std::string order;
  for (const Message& message : report.messages()) order += message.text;
  CHECK(order == "12345678");
}
