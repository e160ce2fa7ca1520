// What is found for a query, on a shop of few notes.
#include "lookup/search.h"

#include "emit/index/index.h"
#include "small_shop.h"
#include <xapian.h>

using namespace benchlore;

namespace {

struct Indexed {
  test::SmallShop small{test::few_notes()};
  test::TemporaryFolder folder;
  std::string error;
  Indexed() {
    small.add_position("kestrel-main", "C201", "tantalum-10u-16v", "decoupling");
    REQUIRE_MESSAGE(write_index(small.shop, small.judged, folder.in("index"), {}, error), error);
  }
  SearchAnswer ask(std::string_view query, SearchOptions options = {}) {
    auto answer = search(folder.in("index"), query, options, error);
    REQUIRE_MESSAGE(answer.has_value(), query << ": " << error);
    return *answer;
  }
  std::string ids(std::string_view query) {
    std::string out;
    for (const Hit& hit : ask(query).hits) out += (out.empty() ? "" : " ") + hit.id;
    return out;
  }
};

} // namespace

TEST_CASE_FIXTURE(Indexed, "words, capitals, plurals, type numbers with and without hyphens and suffixes") {
  CHECK(ids("RELAYS") == "pn2222a");
  CHECK(ids("1N4007") == "1n4007");
  CHECK(ids("1n-4007") == "1n4007");
  CHECK(ids("1N 4007") == "1n4007");
  CHECK(ids("pn2222") == "pn2222a");
  CHECK(ids("PN2222A-TA").starts_with("pn2222a"));
  CHECK(ids("2N2222") == "pn2222a");
  CHECK(ids("106c") == "tantalum-10u-16v");
  CHECK(ids("10 uF") == "tantalum-10u-16v");
  CHECK(ids("10µF").starts_with("tantalum-10u-16v"));
  CHECK(ids("C201") == "kestrel-main");
  CHECK(ids("no picture").starts_with("no-picture"));
  CHECK(ids("") == "");
  CHECK(ids("the of is") == "");
}

TEST_CASE_FIXTURE(Indexed, "phrases, filters, ranges, exclusion") {
  CHECK(ids("\"switching transistor\"") == "pn2222a");
  CHECK(ids("\"transistor switching\"") == "");
  CHECK(ids("kind:component").size() > 40);
  CHECK(ids("class:capacitor") == "electrolytic-47u-25v tantalum-10u-16v");
  CHECK(ids("class:capacitor -class:tantalum-capacitor") == "electrolytic-47u-25v");
  CHECK(ids("class:bjt class:rectifier-diode") == "1n4007 pn2222a");
  CHECK(ids("equipment:kestrel-8 kind:fault") == "shorted-tantalum");
  CHECK(ids("tag:BEAD") == "tantalum-10u-16v");
  CHECK(ids("capacitance:10uF..20uF") == "tantalum-10u-16v");
  CHECK(ids("capacitance:10..50uF") == "electrolytic-47u-25v tantalum-10u-16v");
  CHECK(ids("capacitance:\"10 uF .. 50 uF\"") == "electrolytic-47u-25v tantalum-10u-16v");
  CHECK(ids("capacitance:47000nF") == "electrolytic-47u-25v");
  CHECK(ids("capacitance:..20uF") == "tantalum-10u-16v");
  CHECK(ids("capacitance:20uF..") == "electrolytic-47u-25v");
  CHECK(ids("rated-voltage:20V.. kind:component") == "electrolytic-47u-25v");
  CHECK(ids("polarity:bipolar") == "");
  CHECK(ids("kind:nothing rail") == "");
  CHECK(ids("rail -bead") == "");
  CHECK(ids("-kind:component kind:component") == "");
}

TEST_CASE_FIXTURE(Indexed, "synonyms, of the schema and of symptoms") {
  CHECK(ids("condenser") == "tantalum-10u-16v"); // by the name of its class
  CHECK(ids("display").find("no-picture") != std::string::npos);
  CHECK(ids("dead screen").find("shorted-tantalum") != std::string::npos);
}

TEST_CASE_FIXTURE(Indexed, "a word that is not there gets a suggestion") {
  CHECK(ask("electrolite").suggestion == "electrolyte");
  CHECK(ask("Resing tranzistor kind:component").suggestion.find("transistor kind:component") != std::string::npos);
  CHECK(ask("transistor").suggestion.empty());
}

TEST_CASE_FIXTURE(Indexed, "excerpts mark what was asked for") {
  const auto hits = ask("warning", {.mark_begin = "[", .mark_end = "]"}).hits;
  REQUIRE(hits.size() == 1);
  CHECK(hits[0].excerpt == "Short-circuits without [warning] on the +12 V rail.");
  CHECK(hits[0].title == "Tantalum bead 10 µF 16 V");
  CHECK(hits[0].path == "components/tantalum-10u-16v.md");
  CHECK(hits[0].score > 0);
}

TEST_CASE_FIXTURE(Indexed, "pages and counts") {
  const SearchAnswer all = ask("kind:component");
  CHECK(all.matches == 4);
  const SearchAnswer second = ask("kind:component", {.limit = 2, .skip = 1});
  REQUIRE(second.hits.size() == 2);
  CHECK(second.hits[0].id == all.hits[1].id);
  CHECK(second.matches == 4);
}

TEST_CASE_FIXTURE(Indexed, "queries that cannot be understood, and any other") {
  CHECK_FALSE(search(folder.in("index"), "capacitance:10V", {}, error));
  CHECK(error.find("capacitance:10V") != std::string::npos);
  CHECK_FALSE(search(folder.in("index"), std::string(5000, 'x'), {}, error));
  CHECK_FALSE(search(folder.in("index"), "\xFF\xFE", {}, error));
  for (const std::string& odd :
       {std::string("\""), std::string("-"), std::string("--"), std::string("-\"\""), std::string(":"),
        std::string("kind:"), std::string("kind:\""), std::string("a:b"), std::string("'; DROP TABLE note; --"),
        std::string("* OR ( AND NOT"), std::string("capacitance:"), std::string("-capacitance:10uF"),
        std::string(900, '-'), std::string(900, '"'), std::string("http://x.y/z?q=1"), std::string("a\0b", 3),
        std::string(300, 'k') + ":x"}) {
    CAPTURE(odd);
    CHECK(benchlore::search(folder.in("index"), odd, {}, error).has_value());
  }
}

TEST_CASE_FIXTURE(Indexed, "an index that is missing, of another make or damaged is an error and no crash") {
  CHECK_FALSE(search(folder.in("nowhere"), "x", {}, error));
  CHECK(error.find("missing or damaged") != std::string::npos);
  { Xapian::WritableDatabase other(folder.in("other"), Xapian::DB_CREATE); }
  CHECK_FALSE(search(folder.in("other"), "x", {}, error));
  CHECK(error.find("build the shop again") != std::string::npos);
  for (const auto& file : std::filesystem::directory_iterator(folder.in("index")))
    if (file.path().extension() == ".glass") std::filesystem::resize_file(file.path(), 100);
  CHECK_FALSE(search(folder.in("index"), "transistor", {}, error));
}
