// Every refusal: what is marked, what is said, what to write instead.
#include "reading.h"

using namespace benchlore;

namespace {

struct Row {
  const char* text;
  const char* marked;
  const char* found;
};

void check_rows(MessageKind kind, std::initializer_list<Row> rows) {
  for (const Row& row : rows) {
    const std::string text = row.text, marked = row.marked, found = row.found;
    CAPTURE(text);
    const Reading record(text);
    CHECK(record.marked() == marked);
    CHECK(record.message().text == found);
    CHECK(record.message().kind == kind);
    CHECK_FALSE(record.message().way_out.empty());
  }
}

} // namespace

TEST_CASE("what is outside the subset is refused where it stands") {
  check_rows(MessageKind::front_matter_subset, {{"ä: &x 1\n", "&x", "an anchor `&`"},
                                                {"ä: &x [1]\n", "&x", "an anchor `&`"},
                                                {"a: &x\n  b: 1\n", "&x", "an anchor `&`"},
                                                {"ö: *x\n", "*x", "an alias `*`"},
                                                {"a: &a [*a]\n", "&a", "an anchor `&`"},
                                                {"ü: !!str 1\n", "!!str", "a tag `!`"},
                                                {"a: !x {b: 1}\n", "!x", "a tag `!`"},
                                                {"a: ! 1\n", "!", "a tag `!`"},
                                                {"&x a: 1\n", "&x", "an anchor `&`"},
                                                {"µ: 1\n<<: 2\n", "<<", "a merge key `<<`"},
                                                {"[a]: 1\n", "[", "a list or map as a key"},
                                                {"{a: 1}: 1\n", "{", "a list or map as a key"},
                                                {"? [a]\n: 1\n", "?", "a key marked with `?`"},
                                                {"? a\n: 1\n", "?", "a key marked with `?`"},
                                                {"b: {? a : 1}\n", "?", "a key marked with `?`"},
                                                {"a: 1\nb: 2\na: 3\n", "a", "the key `a` is already there"},
                                                {"a: {µ: 2, \"µ\": 3}\n", "\"µ\"", "the key `µ` is already there"},
                                                {"a: 1\n---\nb: 2\n", "---", "a second document"},
                                                {"a: 1\n...\n---\nb: 2\n", "---", "a second document"},
                                                {"%YAML 1.2\n---\na: 1\n", "%YAML", "a `%` directive"},
                                                {"%TAG ! !x\n---\na: 1\n", "%TAG", "a `%` directive"},
                                                {"a: \"x\\0y\"\n", "\"x\\0y\"", "an escape for the character 0"},
                                                {"a: x\u2028y\n", "\u2028", "the line separator U+2028"},
                                                {"a: x\u0085y\n", "\u0085", "the line separator U+0085"}});
}

TEST_CASE("what is not well formed is refused where it stands") {
  check_rows(MessageKind::front_matter_syntax,
             {{"ä: b: c\n", ":", "a second `: ` where a value was expected"},
              {"ä: 1\n\tb: 2\n", "\t", "a tab in the indentation"},
              {"ä:\n\t- b\n", "\t", "a tab in the indentation"},
              {"ä: \"x\nb: 1\n", "\"", "a quote that is not closed"},
              {"ä: 'x\n", "'", "a quote that is not closed"},
              {"a: [1, 2\nb: 3\n", "", "a line that goes on with a value and is not indented deeper than its key"},
              {"ä: @x\n", "@", "a value cannot begin with this character"},
              {"ä: `x`\n", "`", "a value cannot begin with this character"},
              {"ä: \"\\q\"\n", "\\", "a backslash that begins no escape"},
              {"ä: 1\nµ b\nc: 2\n", "µ b", "a line without `:` among keys"},
              {"ä: \"x\" y\n", "y", "a line that fits neither the keys above it nor the value before it"},
              {"ä: - b\n", "-", "a list item `- ` in the middle of a line"},
              {"ä: [-]\n", "-", "a lone `-`"},
              {"ä: \"x\"# y\n", "#", "a `#` without a space before it"},
              {"ä: [1]#y\n", "#", "a `#` without a space before it"},
              {"ä: |# y\n  x\n", "#", "a `#` without a space before it"},
              {"ä: \"x\ny\"\n", "", "a line that goes on with a value and is not indented deeper than its key"},
              {"ä: \"x\n\ty\"\n", "\t", "a tab in the indentation"},
              {"ä: x\x01\n", "\x01", "the control character U+0001"},
              {"ä: x\x7F\n", "\x7F", "the control character U+007F"},
              {"ä: x\xFFy\n", "\xFF", "this is not UTF-8 text"},
              {"ä: x\xED\xA0\x80y\n", "\xED", "this is not UTF-8 text"},
              {"ä: x\xEF\xBB\xBFy\n", "\xEF\xBB\xBF", "a byte order mark (U+FEFF) in the middle of the text"},
              {"\xFF\xFE\x61", "\xFF\xFE", "the text is UTF-16, not UTF-8"},
              {"\xFE\xFF", "\xFE\xFF", "the text is UTF-16, not UTF-8"}});
}

TEST_CASE("a NUL is refused") {
  const Reading record(std::string("a: x\0y\n", 7));
  CHECK(record.offset() == 4);
  CHECK(record.message().text == "the control character U+0000");
}

TEST_CASE("a duplicate key shows where the first one is") {
  const Reading record("µ: 1\nb: 2\nµ: 3\n");
  CHECK(record.offset() == 11);
  REQUIRE(record.message().labels.size() == 1);
  CHECK(record.message().labels[0].span.begin == record.before);
  CHECK(record.text(record.message().labels[0].span) == "µ");
}

TEST_CASE("an unclosed list shows where it begins") {
  const Reading record("ä: [1,\n  2\n  b: 3\n");
  REQUIRE(record.message().labels.size() == 1);
  CHECK(record.text(record.message().labels[0].span) == "[");
  CHECK(record.message().labels[0].text == "the list begins here");
}

TEST_CASE("what only looks like something refused is read") {
  const Reading record(
      "a: '&x'\nb: \"*x\"\nc: '!x'\n\"<<\": x\nd: a?b\ne: what?\n# ? comment\nf: a#b\ng: -1\nh: 'it''s -'\n"
      "?i: 1\nj: x & y\nk: 5 * 3\nl: '%'\n");
  REQUIRE(record.node);
  CHECK(record.node->entries.size() == 13);
  CHECK(record.at("f").text == "a#b");
  CHECK(record.at("?i").text == "1");
}
