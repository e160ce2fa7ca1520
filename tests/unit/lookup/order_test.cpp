// The order of `search` against a query put together by hand for Xapian, and against the formula of ranking.h computed
// without Xapian, on a made-up collection.
#include "emit/index/document.h"
#include "emit/index/index.h"
#include "emit/index/ranking.h"
#include "emit/index/search_terms.h"
#include "lookup/search.h"
#include "small_shop.h"

#include <algorithm>
#include <cmath>
#include <random>

using namespace benchlore;

namespace {

const std::vector<std::string> words{"relay",   "hums",   "rail",     "burnt", "smell",   "drive",
                                     "spindle", "belt",   "corroded", "track", "voltage", "regulator",
                                     "hot",     "supply", "fuse",     "blows"};

std::map<std::string, std::string> many_notes(std::size_t count) {
  std::mt19937 random(7);
  auto some = [&](std::size_t number) {
    std::string text;
    for (std::size_t i = 0; i < number; ++i) {
      const std::size_t at = std::min(random() % words.size(), random() % words.size()); // some more often than others
      text += (text.empty() ? "" : " ") + words[at];
    }
    return text;
  };
  std::map<std::string, std::string> notes;
  for (std::size_t i = 0; i < count; ++i) {
    const std::string id = "note-" + std::string(1, static_cast<char>('a' + i % 26)) + std::to_string(i);
    notes["symptoms/" + id + ".md"] = "---\nkind: symptom\ntitle: " + some(1 + random() % 4) + "\nalso-said: [\"" +
                                      some(2) + "\"]\n---\n" + some(5 + random() % 60) + ".\n";
  }
  return notes;
}

struct Counts : TermSink {
  std::map<std::string, double> f;
  double length = 0;
  void add(const std::string& term, unsigned weight) { f[term] += weight, length += weight; }
  void word(const std::string& term, std::uint32_t, unsigned weight) override { add(term, weight); }
  void extra(const std::string& term, unsigned weight) override { add(term, weight); }
  void filter(const std::string&) override {}
  void value(std::uint32_t, double) override {}
  void spelling(const std::string&) override {}
};

// The formula, as the browser has to compute it.
std::vector<std::pair<double, std::string>> by_formula(const test::SmallShop& small,
                                                       const std::vector<std::string>& terms) {
  const TermSource source(small.shop, small.judged);
  std::map<std::string, Counts> notes;
  double all = 0;
  for (const auto& [id, note] : small.shop.by_id) note_terms(source, note, notes[id]), all += notes[id].length;
  std::map<std::string, double> scores;
  for (const std::string& term : terms) {
    double with = 0;
    for (const auto& [id, counts] : notes) with += counts.f.contains(term) ? 1 : 0;
    const double x = (static_cast<double>(notes.size()) - with + 0.5) / (with + 0.5);
    const double idf = std::log(x < 2 ? x / 2 + 1 : x);
    for (auto& [id, counts] : notes) {
      const auto f = counts.f.find(term);
      if (f == counts.f.end()) continue;
      const double length = std::max(counts.length / (all / static_cast<double>(notes.size())), ranking.shortest);
      scores[id] +=
          idf * (ranking.k1 + 1) * f->second / (ranking.k1 * (1 - ranking.b + ranking.b * length) + f->second);
    }
  }
  std::vector<std::pair<double, std::string>> order;
  for (const auto& [id, score] : scores) order.emplace_back(score, id);
  std::ranges::stable_sort(order, [](const auto& a, const auto& b) { return a.first > b.first + 1e-9; });
  return order;
}

} // namespace

TEST_CASE("the order of search is that of Xapian's own query and of the formula, for 60 queries") {
  const test::SmallShop small(many_notes(200));
  const test::TemporaryFolder folder;
  std::string error;
  REQUIRE_MESSAGE(write_index(small.shop, small.judged, folder.in("index"), {2, 64}, error), error);
  const Xapian::Database database(folder.in("index"));
  std::mt19937 random(11);
  for (int query = 0; query < 60; ++query) {
    std::vector<std::string> asked;
    std::string text;
    for (unsigned i = 0; i < 1 + random() % 3; ++i) {
      const std::string& word = words[random() % words.size()];
      const std::string term = search_term(search_tokens(word).at(0));
      if (std::ranges::count(asked, term) > 0) continue;
      asked.push_back(term);
      text += word + " ";
    }
    CAPTURE(text);
    const auto answer = search(folder.in("index"), text, {.limit = 200}, error);
    REQUIRE(answer.has_value());
    Xapian::Enquire enquire(database);
    enquire.set_weighting_scheme(Xapian::BM25Weight(ranking.k1, 0, 1, ranking.b, ranking.shortest));
    enquire.set_query(Xapian::Query(Xapian::Query::OP_OR, asked.begin(), asked.end()));
    const Xapian::MSet direct = enquire.get_mset(0, 200);
    const auto formula = by_formula(small, asked);
    REQUIRE(answer->hits.size() == direct.size());
    REQUIRE(answer->hits.size() == formula.size());
    for (Xapian::doccount i = 0; i < direct.size(); ++i) {
      CHECK(answer->hits[i].id == note_from(direct[i].get_document().get_data()).id);
      CHECK(answer->hits[i].score == doctest::Approx(formula[i].first));
    }
    CHECK(answer->hits.front().score == doctest::Approx(formula.front().first));
  }
}
