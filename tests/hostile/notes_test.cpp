// Notes that someone wrote to do harm, or a broken program wrote: each is read in bounded time, and what is shown is
// escaped.
#include "unit/notes/small_schema.h"

#include <chrono>

using namespace benchlore;
using namespace benchlore::test;

namespace {

std::string repeated(std::string_view piece, std::size_t times) {
  std::string text;
  for (std::size_t at = 0; at < times; ++at) text += piece;
  return text;
}

std::string page(const std::string& body) { return "---\nkind: page\ntitle: P\n---\n" + body; }

} // namespace

TEST_CASE("hostile bodies end in time, as a page or as a refusal") {
  const std::string bodies[] = {
      std::string(1'000'000, 'x'),
      repeated(">", 50'000),
      repeated("[", 60'000),
      repeated("![[]()", 10'000),
      repeated("- ", 20'000),
      repeated("*a _b ", 10'000),
      repeated("a <?x ", 10'000),
      repeated("# x\n", 20'000),
      repeated("[a](b.md)\n\n", 20'000),
      repeated("|x", 15'000) + "\n" + repeated("|-", 15'000) + "\n",
      repeated("**", 30'000) + "a",
      std::string("a\0b\x01\x7F", 5),
      std::string(10'000, 'w') + " end",
      repeated("`", 60'000),
  };
  for (const std::string& body : bodies) {
    CAPTURE(body.substr(0, 20));
    const auto begin = std::chrono::steady_clock::now();
    const ReadNote read(page(body), "pages/p.md");
    const std::string html = render_body(read.note, read.sources, AllLinks{});
    CHECK(std::chrono::steady_clock::now() - begin < std::chrono::seconds(20));
    CHECK_FALSE(html.empty());
  }
}

TEST_CASE("depth and length beyond any use are refused in words") {
  CHECK(kinds_of(ReadNote(page(repeated(">", 5'000) + "a\n")).report) == Kinds{"unreadable-file"});
  CHECK(kinds_of(ReadNote(page(std::string(1'000'000, 'x'))).report) == Kinds{"unreadable-file"});
  CHECK(kinds_of(ReadNote(page(std::string(1'100'000, '\n'))).report) == Kinds{"unreadable-file"});
  CHECK(kinds_of(ReadNote(page(repeated(">", 50) + "a\n")).report) == Kinds{});
}

TEST_CASE("what is no UTF-8 is refused at its byte") {
  for (const char* bad : {"\xFF", "\xC0\xAF", "\xED\xA0\x80", "\xF4\x90\x80\x80", "\xE2\x82"}) {
    const ReadNote read(page(std::string("text ") + bad));
    CHECK(kinds_of(read.report) == Kinds{"unreadable-file"});
    CHECK(read.report.messages().front().span.begin == page("text ").size());
  }
}

TEST_CASE("mark-up in a title stays text, and ids come from the file name alone") {
  const ReadNote read("---\nkind: page\ntitle: \"<script>alert(1)</script>\"\n---\n", "pages/..%2f..%2fetc.md");
  CHECK(read.note.title == "<script>alert(1)</script>");
  CHECK(read.note.id == "..%2f..%2fetc");
  const ReadNote reference("---\nkind: job\ntitle: J\nequipment: ../../etc/passwd\nreceived: 2024-01-01\n---\n");
  REQUIRE(reference.note.references.size() == 1);
  CHECK(reference.note.references[0].target == "../../etc/passwd");
}

TEST_CASE("controls of writing direction cannot turn a line around") {
  const ReadNote read(page("# a\u202Eb\n\ntext \u2066x\u2069\n"));
  const std::string html = render_body(read.note, read.sources, NoLinks{});
  for (const char* control : {"\u202E", "\u2066", "\u2069"}) {
    CHECK(html.find(control) == std::string::npos);
    CHECK(read.note.plain_text.find(control) == std::string::npos);
  }
}

TEST_CASE("escapes hold in every place that takes text") {
  const ReadNote read(
      page("```\"><script>\nx\n```\n\n[a](<b\"onclick=x.md> \"t\\\"><b>\")\n\n![\"><i>](c.png)\n\n# \"><u>\n"));
  const std::string html = render_body(read.note, read.sources, AllLinks{});
  for (const char* tag : {"<script>", "<b>", "<i>", "<u>", "\"onclick"}) CHECK(html.find(tag) == std::string::npos);
}
