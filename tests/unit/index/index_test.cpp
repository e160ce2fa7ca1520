// The written index, read back with Xapian alone.
#include "emit/index/index.h"

#include "emit/index/document.h"
#include "small_shop.h"

#include <xapian.h>

using namespace benchlore;
using benchlore::test::SmallShop;
using benchlore::test::TemporaryFolder;

namespace {

std::string dump(const std::string& folder) {
  const Xapian::Database database(folder);
  std::string out;
  for (auto term = database.allterms_begin(); term != database.allterms_end(); ++term) {
    out += *term + ":";
    for (auto post = database.postlist_begin(*term); post != database.postlist_end(*term); ++post) {
      out += " " + std::to_string(*post) + "*" + std::to_string(post.get_wdf());
      for (auto place = post.positionlist_begin(); place != post.positionlist_end(); ++place)
        out += "," + std::to_string(*place);
    }
    out += "\n";
  }
  for (Xapian::docid id = 1; id <= database.get_lastdocid(); ++id) out += database.get_document(id).get_data() + "\n";
  for (auto word = database.spellings_begin(); word != database.spellings_end(); ++word)
    out += *word + "=" + std::to_string(word.get_termfreq()) + "\n";
  return out;
}

std::string written(const SmallShop& small, const std::string& folder, IndexOptions options = {}) {
  std::string error;
  REQUIRE_MESSAGE(write_index(small.shop, small.judged, folder, options, error), error);
  return dump(folder);
}

std::uint32_t counted(const std::string& folder, const std::string& term, Xapian::docid document) {
  const Xapian::Database database(folder);
  for (auto post = database.postlist_begin(term); post != database.postlist_end(term); ++post)
    if (*post == document) return post.get_wdf();
  return 0;
}

} // namespace

TEST_CASE("documents are the sound notes in order of id") {
  const SmallShop small(test::few_notes());
  const TemporaryFolder folder;
  written(small, folder.in("index"));
  const Xapian::Database database(folder.in("index"));
  CHECK(database.get_doccount() == small.shop.notes.size());
  Xapian::docid number = 0;
  for (const auto& [id, note] : small.shop.by_id) {
    const StoredNote stored = note_from(database.get_document(++number).get_data());
    CHECK(stored.id == id);
    CHECK(stored.title == small.shop.note(note).title);
    CHECK(stored.kind == small.shop.note(note).kind);
  }
}

TEST_CASE("batches, threads and a second run make the same index") {
  const SmallShop small(test::few_notes());
  const TemporaryFolder folder;
  const std::string once = written(small, folder.in("index"));
  CHECK(written(small, folder.in("index"), {2, 1}) == once);
  CHECK(written(small, folder.in("other"), {3, 3}) == once);
  CHECK_FALSE(std::filesystem::exists(folder.in("index.parts")));
  CHECK_FALSE(std::filesystem::exists(folder.in("index.new")));
}

TEST_CASE("words weigh by where they stand") {
  const SmallShop small(test::few_notes());
  const TemporaryFolder folder;
  written(small, folder.in("index"));
  const std::string index = folder.in("index");
  CHECK(counted(index, "1n4007", 1) == 3 + 1); // the title and the id
  CHECK(counted(index, "pn2222", 6) >= 1);
  CHECK(counted(index, "dead", 5) == 2);
  CHECK(counted(index, "dead", 7) == 1);
}

TEST_CASE("filters: kind, class with those above it, machine, board, verdict, words of ratings") {
  SmallShop small(test::few_notes());
  small.add_position("kestrel-main", "C201", "tantalum-10u-16v", "decoupling");
  small.add_substitute("tantalum-10u-16v", "electrolytic-47u-25v", Verdict::unsafe);
  const TemporaryFolder folder;
  written(small, folder.in("index"));
  const Xapian::Database database(folder.in("index"));
  auto number = [&](const std::string& filter, const std::string& value) {
    return database.get_termfreq(filter_term(filter, value));
  };
  CHECK(number("kind", "component") == 4);
  CHECK(number("class", "capacitor") == 2);
  CHECK(number("class", "Tantalum-Capacitor") == 1);
  CHECK(number("equipment", "kestrel-8") == 4); // itself, its board, the fault and the part on the board
  CHECK(number("board", "kestrel-main") == 3);
  CHECK(number("symptom", "no-picture") == 2);
  CHECK(number("verdict", "unsafe") == 1);
  CHECK(number("role", "decoupling") == 1);
  CHECK(database.get_termfreq("c201") == 1);
  const auto slot = slot_of(rating_slots(*small.shop.schema), "capacitance", "F");
  REQUIRE(slot != 0);
  CHECK(database.get_value_freq(slot) == 2);
}

TEST_CASE("rating slots are their own and survive the metadata") {
  const RatingSlots slots = rating_slots(test::small_schema());
  std::set<std::uint32_t> seen;
  for (const auto& [name, slot] : slots) CHECK(seen.insert(slot.slot).second);
  CHECK(to_metadata(slots_from(to_metadata(slots))) == to_metadata(slots));
  const auto groups = synonym_groups(test::small_schema());
  CHECK(groups.size() == 3);
  CHECK(groups_from(to_metadata(groups)) == groups);
}

TEST_CASE("an update gives what a new index would") {
  auto notes = test::few_notes();
  const SmallShop before(notes);
  const TemporaryFolder folder;
  written(before, folder.in("index"));
  notes["components/1n4007.md"] =
      "---\nkind: component\nclass: rectifier-diode\ntitle: 1N4007\n---\nOther words here.\n";
  const SmallShop after(notes);
  std::string error;
  REQUIRE_MESSAGE(update_index(after.shop, after.judged, folder.in("index"), {after.id("1n4007")}, error), error);
  const std::string fresh = written(after, folder.in("fresh"));
  auto terms = [](const std::string& text) { return text.substr(0, text.find("\n1n4007\ncomponent")); };
  CHECK(terms(dump(folder.in("index"))) == terms(fresh));
  notes.erase("components/1n4007.md");
  const SmallShop less(notes);
  CHECK_FALSE(update_index(less.shop, less.judged, folder.in("index"), {}, error));
  CHECK(error.find("other notes") != std::string::npos);
}

TEST_CASE("hostile texts are indexed, and a place that cannot be written is said") {
  const std::string title = "'\"; DROP TABLE note; --" + std::string(10000, 'x') + " \xE2\x80\xAE";
  const SmallShop small({{"components/odd.md", "---\nkind: component\nclass: bjt\ntags: [\"" + std::string(3000, 't') +
                                                   "\"]\ntitle: Odd\n---\n" + title + "\n"}});
  const TemporaryFolder folder;
  written(small, folder.in("index"));
  std::string error;
  CHECK_FALSE(write_index(small.shop, small.judged, "/proc/no/such/place", {}, error));
  CHECK(error.find("was not written") != std::string::npos);
  const SmallShop none({});
  written(none, folder.in("none"));
  CHECK(Xapian::Database(folder.in("none")).get_doccount() == 0);
}
