// The tokeniser against its table, and on text that nobody should have written.
#include "emit/index/fold.h"
#include "emit/index/search_terms.h"

#include <doctest/doctest.h>
#include <fstream>
#include <string>

using namespace benchlore;

namespace {

std::string shown(std::string_view text) {
  std::string out;
  for (const SearchToken& token : search_tokens(text)) {
    if (!out.empty()) out += ' ';
    if (token.sort == SearchToken::Sort::joined) out += '=';
    if (token.sort == SearchToken::Sort::base) out += '~';
    out += token.text;
  }
  return out;
}

} // namespace

TEST_CASE("tokens are those of tests/tables/search_tokens.txt") {
  std::ifstream table(std::string(BENCHLORE_ROOT) + "/tests/tables/search_tokens.txt");
  int rows = 0;
  for (std::string line; std::getline(table, line);) {
    const std::size_t tab = line.find('\t');
    if (line.empty() || line[0] == '#' || tab == std::string::npos) continue;
    CAPTURE(line);
    CHECK(shown(line.substr(0, tab)) == line.substr(tab + 1));
    ++rows;
  }
  CHECK(rows > 35);
}

TEST_CASE("a token knows the bytes that it stands for") {
  const std::string text = "Die Größe 10 µF, 2N3904-Y.";
  const auto tokens = search_tokens(text);
  REQUIRE(tokens.size() == 7);
  CHECK(text.substr(tokens[1].begin, tokens[1].end - tokens[1].begin) == "Größe");
  CHECK(text.substr(tokens[2].begin, tokens[2].end - tokens[2].begin) == "10 µF");
  CHECK(text.substr(tokens[5].begin, tokens[5].end - tokens[5].begin) == "2N3904-Y");
  CHECK(tokens[4].place == 4);
  CHECK(tokens[5].place == 3);
  CHECK(tokens[6].chunk == tokens[3].chunk);
}

TEST_CASE("the endless word is cut at a code point and the broken byte ends a word") {
  CHECK(search_tokens(std::string(10000, 'x')).at(0).text.size() == longest_token);
  std::string cyrillic = "x";
  for (int i = 0; i < 100; ++i) cyrillic += "ж";
  CHECK(search_tokens(cyrillic).at(0).text.size() == 59);
  CHECK(shown("ab\xC3") == "ab");
  CHECK(shown("ab\xFF\xFE"
              "cd\xE2\x82") == "ab cd");
  CHECK(shown(std::string("a1\0b2", 5)) == "a1 b2");
  CHECK(search_tokens("").empty());
  CHECK(search_tokens("...///---").empty());
}

TEST_CASE("terms are stems, and type numbers themselves") {
  CHECK(search_term({"capacitors"}) == search_term({"capacitor"}));
  CHECK(search_term({"2n3904"}) == "2n3904");
  CHECK(name_term("1N 4007") == "1n4007");
  CHECK(name_term("WD 1772-PH") == "wd1772ph");
  CHECK(name_term("Kestrel") == "");
  CHECK(name_term("the best 10 uF in town") == "");
}

TEST_CASE("every code point folds to lower case or to nothing") {
  for (char32_t point = 0; point < 0x2FFFF; ++point) {
    std::string out;
    const Folded sort = fold(point, out);
    if ((sort == Folded::word) == out.empty()) FAIL("U+" << static_cast<unsigned>(point));
    for (const char c : out)
      if (c >= 'A' && c <= 'Z') FAIL("U+" << static_cast<unsigned>(point));
  }
}
