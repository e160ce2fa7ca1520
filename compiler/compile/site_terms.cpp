// Collects the terms of a note as emit/index reads them off it.
#include "compile/site_terms.h"

#include "emit/index/note_terms.h"
#include "emit/index/ranking.h"

#include <map>
#include <memory>
#include <set>

namespace benchlore {
namespace {

struct Collector : TermSink {
  std::map<std::string, unsigned> terms;
  std::set<std::string> words;
  void word(const std::string& term, std::uint32_t, unsigned weight) override { terms[term] += weight; }
  void extra(const std::string& term, unsigned weight) override { terms[term] += weight; }
  void filter(const std::string&) override {}
  void value(std::uint32_t, double) override {}
  void spelling(const std::string& word) override { words.insert(word); }
};

} // namespace

TermsOf terms_for_site(const Shop& shop, const JudgedShop& judged) {
  auto source = std::make_shared<TermSource>(shop, judged);
  return [source](NoteId note) {
    Collector found;
    note_terms(*source, note, found);
    return NoteTerms{{found.terms.begin(), found.terms.end()}, {found.words.begin(), found.words.end()}};
  };
}

RankingNumbers ranking_for_site() { return {ranking.k1, ranking.b, ranking.shortest, ranking.lesser}; }

} // namespace benchlore
