// Clauses for words; see emit/index/ranking.h for how they add up.
#include "lookup/word_query.h"

#include "emit/index/ranking.h"

#include <algorithm>
#include <span>

namespace benchlore {
namespace {

using Sort = SearchToken::Sort;

Xapian::Query lesser(const Xapian::Query& query) {
  return Xapian::Query(Xapian::Query::OP_SCALE_WEIGHT, query, ranking.lesser);
}

Xapian::Query all_of(const std::vector<std::string>& terms, Xapian::Query::op op) {
  if (terms.size() == 1) return Xapian::Query(terms.front());
  return Xapian::Query(op, terms.begin(), terms.end());
}

class Clauses {
public:
  Clauses(const std::vector<SynonymGroup>& synonyms, std::vector<std::string>& terms)
      : synonyms_(synonyms), terms_(terms) {}

  void add(std::span<const SearchToken> chunk) {
    std::vector<Xapian::Query> choices;
    std::vector<std::string> parts;
    bool joined = false;
    for (const SearchToken& token : chunk) {
      const std::string term = shown(search_term(token));
      if (token.sort == Sort::part || token.sort == Sort::word) parts.push_back(term);
      if (token.sort == Sort::joined) choices.emplace_back(term);
      if (token.sort == Sort::base) choices.push_back(lesser(Xapian::Query(term)));
      joined = joined || token.sort == Sort::joined;
    }
    if (joined) {
      if (!parts.empty()) choices.push_back(lesser(all_of(parts, Xapian::Query::OP_OR)));
      best(choices);
    } else {
      for (const std::string& part : parts) word(part, choices);
    }
    words_.insert(words_.end(), parts.begin(), parts.end());
  }

  // Groups with a member of several words, all in the query one after the other.
  void add_long_synonyms() {
    for (const SynonymGroup& group : synonyms_)
      for (const std::vector<std::string>& member : group) {
        if (member.size() < 2 || std::ranges::search(words_, member).empty()) continue;
        std::vector<Xapian::Query> others;
        for (const std::vector<std::string>& other : group)
          if (other != member) others.push_back(synonym(other));
        best(others);
      }
  }

  void add_name(std::string_view words) {
    const std::string term = name_term(words);
    if (term.empty() || words_.size() < 2) return;
    clauses_.emplace_back(shown(term));
  }

  Xapian::Query query() const { return Xapian::Query(Xapian::Query::OP_OR, clauses_.begin(), clauses_.end()); }

private:
  const std::string& shown(const std::string& term) { return terms_.emplace_back(term); }

  void best(const std::vector<Xapian::Query>& choices) {
    if (!choices.empty()) clauses_.emplace_back(Xapian::Query::OP_MAX, choices.begin(), choices.end());
  }

  Xapian::Query synonym(const std::vector<std::string>& member) {
    for (const std::string& term : member) shown(term);
    return lesser(all_of(member, Xapian::Query::OP_AND));
  }

  // A word, with the choices that its chunk adds (its base).
  void word(const std::string& term, std::vector<Xapian::Query> choices) {
    choices.emplace(choices.begin(), term);
    for (const SynonymGroup& group : synonyms_) {
      if (std::ranges::count(group, std::vector<std::string>{term}) == 0) continue;
      for (const std::vector<std::string>& member : group)
        if (member.size() != 1 || member.front() != term) choices.push_back(synonym(member));
    }
    best(choices);
  }

  const std::vector<SynonymGroup>& synonyms_;
  std::vector<std::string>& terms_;
  std::vector<std::string> words_;
  std::vector<Xapian::Query> clauses_;
};

} // namespace

Xapian::Query words_query(std::string_view words, const std::vector<SynonymGroup>& synonyms,
                          std::vector<std::string>& terms) {
  const std::vector<SearchToken> tokens = search_tokens(words);
  Clauses clauses(synonyms, terms);
  for (std::size_t i = 0; i < tokens.size();) {
    std::size_t end = i + 1;
    while (end < tokens.size() && tokens[end].chunk == tokens[i].chunk) ++end;
    clauses.add(std::span(tokens).subspan(i, end - i));
    i = end;
  }
  clauses.add_long_synonyms();
  clauses.add_name(words);
  return clauses.query();
}

Xapian::Query phrase_query(std::string_view words, std::vector<std::string>& terms) {
  std::vector<std::string> order;
  for (const SearchToken& token : search_tokens(words))
    if (token.sort == Sort::word || token.sort == Sort::part) order.push_back(search_term(token));
  terms.insert(terms.end(), order.begin(), order.end());
  if (order.empty()) return Xapian::Query::MatchNothing;
  return all_of(order, Xapian::Query::OP_PHRASE);
}

} // namespace benchlore
