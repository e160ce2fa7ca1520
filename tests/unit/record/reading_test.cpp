// What is read: shapes, texts and exact spans.
#include "reading.h"

using namespace benchlore;

TEST_CASE("a record is a tree of maps, lists and texts") {
  const Reading record("kind: board\nparts:\n  - ref: C1\n    rating: 10 uF\n  - ref: C2\ntags: [a, 'b c', "
                       "\"d\\u00b5\"]\nsize: {w: 1, h: 2}\n");
  CHECK(record.at("kind").text == "board");
  CHECK(record.at("parts").items.size() == 2);
  CHECK(record.at("parts").items[0].find("rating")->text == "10 uF");
  CHECK(record.at("tags").items[1].text == "b c");
  CHECK(record.at("tags").items[1].quoted);
  CHECK(record.at("tags").items[2].text == "dµ");
  CHECK(record.at("size").find("h")->text == "2");
  CHECK(record.at("kind").find("x") == nullptr);
}

TEST_CASE("scalars stay text, whatever they look like") {
  const Reading record("a: 010\nb: no\nc: 1e3\nd: ~\ne: 2024-01-01\nf: 4k7\ng: 12:30:45\n");
  std::string texts;
  for (const Entry& entry : record.node->entries) texts += entry.value.text + ' ';
  CHECK(texts == "010 no 1e3 ~ 2024-01-01 4k7 12:30:45 ");
}

TEST_CASE("entries keep the order in which they are written") {
  const Reading record("z: 1\na: 2\nm: 3\n");
  std::string keys;
  for (const Entry& entry : record.node->entries) keys += entry.key;
  CHECK(keys == "zam");
}

TEST_CASE("spans are bytes of the file, behind signs of several bytes too") {
  const Reading record("größe: 10 µF ±20 %  # why\nname: \"Ω 😀\" # b\n", "\xEF\xBB\xBF---\n");
  const Entry& first = record.node->entries[0];
  CHECK(record.text(first.key_span) == "größe");
  CHECK(record.text(first.value.span) == "10 µF ±20 %");
  CHECK(record.text(record.node->entries[1].key_span) == "name");
  CHECK(record.text(record.at("name").span) == "\"Ω 😀\"");
  CHECK(record.at("name").text == "Ω 😀");
}

TEST_CASE("the span of a block ends with its last value") {
  const Reading record("µ:\n  - a: 1 # x\n    b: 2 # y\n\n  # z\nn: 3\n");
  CHECK(record.text(record.at("µ").span) == "- a: 1 # x\n    b: 2");
  CHECK(record.text(record.at("µ").items[0].span) == "a: 1 # x\n    b: 2");
}

TEST_CASE("the span of brackets holds both of them") {
  const Reading record("a: [1, {b: 2}, [c: 3 ] ] # x\n");
  CHECK(record.text(record.at("a").span) == "[1, {b: 2}, [c: 3 ] ]");
  CHECK(record.text(record.at("a").items[1].span) == "{b: 2}");
  CHECK(record.text(record.at("a").items[2].items[0].span) == "c: 3");
}

TEST_CASE("blocks of text lose their indentation and keep their span") {
  const Reading record("a: |\n  one\n   two\n\nb: >-\n  three\n  four\n");
  CHECK(record.at("a").text == "one\n two\n");
  CHECK(record.at("a").quoted);
  CHECK(record.text(record.at("a").span) == "|\n  one\n   two");
  CHECK(record.at("b").text == "three four");
}

TEST_CASE("a missing value stands behind the colon") {
  const Reading record("a:\nb:   \nc: {d, e: }\n");
  CHECK(record.at("a").is_empty());
  CHECK(record.at("a").span == Span{record.file, record.before + 2, record.before + 2});
  CHECK(record.at("b").span == Span{record.file, record.before + 5, record.before + 5});
  CHECK(record.at("c").find("d")->span.begin == record.before + 14);
  CHECK(record.at("c").find("e")->is_empty());
}

TEST_CASE("empty quotes are a value") {
  const Reading record("a: ''\n");
  CHECK_FALSE(record.at("a").is_empty());
  CHECK(record.text(record.at("a").span) == "''");
}

TEST_CASE("a record without entries is an empty map") {
  for (const char* text : {"", "\n\n", "# only a comment\n", "   \n"}) {
    const Reading record(text);
    REQUIRE(record.node);
    CHECK(record.node->is_map());
    CHECK(record.node->entries.empty());
  }
}

TEST_CASE("Windows line ends are line ends") {
  const Reading record("a: 1\r\nµ: zwei\r\nc: |\r\n  x\r\n  y\r\n");
  CHECK(record.at("a").text == "1");
  CHECK(record.text(record.at("µ").span) == "zwei");
  CHECK(record.at("c").text == "x\ny\n");
}

TEST_CASE("the record ends where its region ends") {
  const Reading record("a: 1");
  CHECK(record.at("a").text == "1");
  CHECK(record.node->entries.size() == 1);
}

TEST_CASE("sixteen levels are read and seventeen are not") {
  CHECK(Reading("a: " + std::string(15, '[') + std::string(15, ']') + "\n").node);
  const Reading deep("ä: " + std::string(16, '[') + std::string(16, ']') + "\n");
  CHECK(deep.marked() == "[");
  CHECK(deep.offset() == 4 + 15);
  CHECK(deep.message().kind == MessageKind::front_matter_limit);
}
