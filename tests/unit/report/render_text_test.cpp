// Rendered text, whole and exact.
#include "report/render.h"

#include <doctest/doctest.h>

using namespace benchlore;

namespace {

struct Bench {
  Sources sources;
  Report report;
  FileId file;
  explicit Bench(std::string text) : file(sources.add("boards/a.md", std::move(text))) {}

  // A broken link at the first place where `what` stands.
  Message& add(std::string_view what, std::string text = "found", std::string way_out = "") {
    const auto at = static_cast<std::uint32_t>(sources.text(file).find(what));
    const Span span{file, at, at + static_cast<std::uint32_t>(what.size())};
    return report.add(MessageKind::broken_link, span, std::move(text), std::move(way_out));
  }
  std::string text() const { return render_text(report, sources, false); }
};

} // namespace

TEST_CASE("a message has a head, the line, a mark, second places and the way out") {
  Bench bench("---\ntitle: Röhre\nfits: tube-9\n");
  Message& message = bench.add("tube-9", "no note `tube-9`", "name one that is there");
  message.labels.push_back({Span{bench.file, 11, 17}, "this one is near"});
  message.labels.push_back({Span{}, "looked for in the shop"});
  CHECK(bench.text() == R"(error broken-link boards/a.md:3:7
  no note `tube-9`
     3 | fits: tube-9
       |       ^^^^^^
  this one is near: boards/a.md:2:8
     2 | title: Röhre
       |        -----
  looked for in the shop
  to settle: name one that is there

0 unsafe, 1 error, 0 warnings, 0 notes
)");
}

TEST_CASE("a message without a place has no line") {
  Bench bench("");
  bench.report.add(MessageKind::unsafe_substitute, {}, "found");
  CHECK(bench.text() == "unsafe unsafe-substitute\n  found\n\n1 unsafe, 0 errors, 0 warnings, 0 notes\n");
}

TEST_CASE("the mark stands under its text behind tabs, umlauts and wide signs") {
  Bench bench("\tä 漢字 e\u0301 bad\n");
  bench.add("bad");
  CHECK(bench.text().find("     1 |     ä 漢字 e\u0301 bad\n"
                          "       |              ^^^\n") != std::string::npos);
}

TEST_CASE("what could trick a terminal is shown as an escape") {
  Bench bench("a\u202eb\x1b[31mc\u200bd bad\n");
  bench.add("bad", "x\u2066y\nz");
  CHECK(bench.text() == R"(error broken-link boards/a.md:1:13
  x\u{2066}y\u{a}z
     1 | a\u{202e}b\u{1b}[31mc\u{200b}d bad
       |                                ^^^

0 unsafe, 1 error, 0 warnings, 0 notes
)");
}

TEST_CASE("bytes that are no UTF-8 are shown as a replacement") {
  Bench bench("a\xFF\xFE bad\n");
  bench.add("bad");
  CHECK(bench.text().find("1 | a\uFFFD\uFFFD bad\n") != std::string::npos);
}

TEST_CASE("a long line is cut around the mark") {
  Bench bench(std::string(500, 'a') + " bad " + std::string(500, 'b') + "\n");
  bench.add("bad");
  const std::string line = "     1 | …" + std::string(32, 'a') + " bad " + std::string(63, 'b') + "…\n";
  const std::string mark = "       | " + std::string(34, ' ') + "^^^\n";
  CHECK(bench.text().find(line + mark) != std::string::npos);
}

TEST_CASE("a mark over several lines ends with the first") {
  Bench bench("a: [1,\n 2]\n");
  bench.add("[1,\n 2]");
  CHECK(bench.text().find("     1 | a: [1,\n       |    ^^^\n  ") == std::string::npos);
  CHECK(bench.text().find("     1 | a: [1,\n       |    ^^^\n") != std::string::npos);
}

TEST_CASE("an empty span is marked with one sign, at the end of the line too") {
  Bench bench("ab:\n");
  bench.report.add(MessageKind::wrong_type, {bench.file, 3, 3}, "no value");
  CHECK(bench.text().find("     1 | ab:\n       |    ^\n") != std::string::npos);
}

TEST_CASE("accepted messages come after the rest and say by whom and why") {
  Bench bench("one two\n");
  bench.add("one").accepted = Acceptance{"stock is used up", "rk", "2024-05-01"};
  bench.add("two");
  CHECK(bench.text() == R"(error broken-link boards/a.md:1:5
  found
     1 | one two
       |     ^^^

error broken-link boards/a.md:1:1
  found
     1 | one two
       | ^^^
  accepted by rk on 2024-05-01: stock is used up

0 unsafe, 1 error, 0 warnings, 0 notes, 1 accepted
)");
}

TEST_CASE("colour comes only when asked for") {
  Bench bench("one\n");
  bench.add("one");
  CHECK(bench.text().find('\x1b') == std::string::npos);
  const std::string painted = render_text(bench.report, bench.sources, true);
  CHECK(painted.starts_with("\x1b[1;31merror\x1b[0m broken-link "));
  CHECK(painted.find("\x1b[1;31m^^^\x1b[0m\n") != std::string::npos);
}
