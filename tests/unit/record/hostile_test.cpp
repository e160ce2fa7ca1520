// Texts made to exhaust a reader: each is refused with one message, or read, within half a second.
#include "reading.h"

#include <ctime>

using namespace benchlore;

namespace {

#if defined(__SANITIZE_ADDRESS__)
constexpr double most_seconds = 5; // the sanitizers slow everything down
#else
constexpr double most_seconds = 0.5;
#endif

std::string repeat(std::string_view text, std::size_t times) {
  std::string out;
  for (std::size_t i = 0; i < times; ++i) out += text;
  return out;
}

// Within the default limits, and with the size set free so that the reader itself has to cope.
void check_cheap(const std::string& name, const std::string& text) {
  CAPTURE(name);
  for (const std::size_t bytes : {RecordLimits{}.bytes, std::size_t{1} << 30}) {
    Sources sources;
    Report report;
    const FileId file = sources.add("a.md", text);
    const std::clock_t start = std::clock(); // of this program alone, so that a busy machine does no harm
    const auto node = read_record(sources, {file, 0, static_cast<std::uint32_t>(text.size())}, report, {bytes, 16});
    const double seconds = static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
    CHECK(report.messages().size() == (node ? 0 : 1));
    if (bytes == RecordLimits{}.bytes) CHECK(seconds < most_seconds);
    if (bytes != RecordLimits{}.bytes) CHECK(seconds < most_seconds * 10);
  }
}

} // namespace

TEST_CASE("deep nests are refused at their seventeenth level") {
  check_cheap("brackets", repeat("[", 100000));
  check_cheap("brackets within the size", repeat("[", 60000));
  check_cheap("braces", repeat("{a: ", 20000));
  check_cheap("braces within the size", repeat("{a: ", 16000));
  check_cheap("dashes", repeat("- ", 30000));
  check_cheap("many dashes", repeat("- ", 100000));
  check_cheap("question marks", repeat("? ", 30000));
  check_cheap("closing brackets", "a: " + repeat("]", 60000));
  check_cheap("staircase", [] {
    std::string text;
    for (std::size_t i = 0; i < 350; ++i) text += std::string(i, ' ') + "a:\n";
    return text;
  }());
}

TEST_CASE("long records are refused by their size") {
  check_cheap("ten megabytes without a closing quote", "a: \"" + repeat("x", 10u << 20));
  check_cheap("a long line", "a: " + repeat("x", 60000));
  check_cheap("a quote without an end", "a: \"" + repeat("x ", 30000));
  check_cheap("a quote of lines", "a: \"" + repeat("x\n ", 20000));
  check_cheap("blank lines", repeat("\n", 65000));
  check_cheap("comments", repeat("# x\n", 16000));
  check_cheap("one comment", "a: 1 #" + repeat("#", 65000));
  check_cheap("a block of blank lines", "a: |\n" + repeat(" \n", 30000));
}

TEST_CASE("many entries are read in time that grows with their number") {
  std::string keys, many, list = "a: [", same;
  for (int i = 0; i < 200000; ++i) many += 'k' + std::to_string(i) + ": 1\n";
  for (int i = 0; i < 6000; ++i) keys += 'k' + std::to_string(i) + ": 1\n";
  for (int i = 0; i < 20000; ++i) list += "1, ";
  check_cheap("two hundred thousand keys", many);
  check_cheap("six thousand keys", keys);
  check_cheap("a long list", list + "]\n");
  check_cheap("a list of nothing", "a: [" + repeat(",", 60000));
  check_cheap("colons", repeat(":", 60000));
  check_cheap("colons and spaces", repeat(": ", 30000));
  check_cheap("keys on one line", "{" + repeat("a b c d e f g h i j ", 3000));
}

TEST_CASE("anchors and aliases are refused before they multiply") {
  std::string bomb = "a0: &a0 [x, x, x, x, x, x, x, x, x]\n";
  for (int i = 1; i < 10; ++i) {
    const std::string from = "*a" + std::to_string(i - 1), to = "a" + std::to_string(i);
    bomb += to + ": &" + to + " [" + repeat(from + ", ", 9) + "]\n";
  }
  check_cheap("alias bomb", bomb);
  check_cheap("an alias to itself", "a: &a [*a]\n");
  check_cheap("an alias to a map around it", "&a a: {b: *a}\n");
  check_cheap("tags", repeat("!x ", 20000));
  check_cheap("a long tag", "!" + repeat("x", 60000) + " 1");
  check_cheap("an escaped tag", "!<" + repeat("%41", 20000) + "> 1");
  check_cheap("directives", repeat("%TAG !a! !b\n", 5000) + "---\n");
}

TEST_CASE("other encodings are refused") {
  check_cheap("UTF-16", std::string("\xFF\xFE"
                                    "a\0:\0 \0",
                                    8));
  check_cheap("UTF-16 without a mark", std::string("a\0:\0 \0001\0", 8));
  check_cheap("UTF-32", std::string("\xFF\xFE\0\0a\0\0\0", 8));
  check_cheap("no encoding", repeat("\x80\xFF\xC0", 20000));
  check_cheap("half a sign at the end", "a: \xE2\x82");
}
