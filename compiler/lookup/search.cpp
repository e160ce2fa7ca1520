// Opens the index, asks it, and makes hits of what it finds. No exception leaves this file.
#include "lookup/search.h"

#include "base/text.h"
#include "emit/index/ranking.h"
#include "emit/index/search_terms.h"
#include "lookup/excerpt.h"
#include "lookup/query.h"

#include <algorithm>
#include <xapian.h>

namespace benchlore {
namespace {

constexpr unsigned spelling_distance = 2;

// The word of the index nearest to one that it does not have; empty when it has it, or nothing is near.
std::string better_word(const Xapian::Database& database, const SearchToken& token) {
  const bool letters = std::ranges::all_of(token.text, [](char c) { return c >= 'a' && c <= 'z'; });
  if (!letters || token.text.size() < 4 || database.term_exists(search_term(token))) return {};
  return database.get_spelling_suggestion(token.text, spelling_distance);
}

std::string suggestion(const Xapian::Database& database, std::string_view query, const ReadQuery& read) {
  std::string better(query);
  bool changed = false;
  for (auto item = read.plain.rbegin(); item != read.plain.rend(); ++item) {
    if (!item->field.empty()) continue;
    const std::vector<SearchToken> tokens = search_tokens(item->text);
    for (auto token = tokens.rbegin(); token != tokens.rend(); ++token) {
      const std::string word = better_word(database, *token);
      if (word.empty()) continue;
      better.replace(item->begin + token->begin, token->end - token->begin, word);
      changed = true;
    }
  }
  return changed ? better : std::string{};
}

Hit make_hit(const Xapian::MSetIterator& found, const ReadQuery& read, const SearchOptions& options) {
  const StoredNote note = note_from(found.get_document().get_data());
  return {note.id,
          note.kind,
          note.title,
          note.path,
          found.get_weight(),
          excerpt(note.text, read.terms, options.excerpt, options.mark_begin, options.mark_end)};
}

std::optional<SearchAnswer> ask(const Xapian::Database& database, std::string_view query, const SearchOptions& options,
                                std::string& error) {
  const std::optional<ReadQuery> read = read_query(query, query_rules(database), error);
  if (!read) return std::nullopt;
  SearchAnswer answer;
  answer.suggestion = suggestion(database, query, *read);
  Xapian::Enquire enquire(database);
  enquire.set_weighting_scheme(Xapian::BM25Weight(ranking.k1, 0, 1, ranking.b, ranking.shortest));
  enquire.set_query(read->query);
  const auto count = [](std::size_t number) {
    return static_cast<Xapian::doccount>(std::min<std::size_t>(number, 1u << 30));
  };
  const Xapian::MSet found = enquire.get_mset(count(options.skip), count(options.limit), count(options.count_up_to));
  answer.matches = found.get_matches_estimated();
  for (Xapian::MSetIterator hit = found.begin(); hit != found.end(); ++hit)
    answer.hits.push_back(make_hit(hit, *read, options));
  return answer;
}

} // namespace

std::optional<SearchAnswer> search(const std::string& index_folder, std::string_view query,
                                   const SearchOptions& options, std::string& error) {
  const std::string what = "the index `" + index_folder + "` cannot be read: ";
  try {
    if (!valid_utf8(query)) {
      error = "the query is not UTF-8 text";
      return std::nullopt;
    }
    const Xapian::Database database(index_folder);
    if (database.get_metadata("format") == index_format) return ask(database, query, options, error);
    error = what + "it is not one of this version's; build the shop again";
  } catch (const Xapian::DatabaseOpeningError& fault) {
    error = what + "it is missing or damaged (" + fault.get_msg() + "); build the shop first";
  } catch (const Xapian::Error& fault) {
    error = what + fault.get_msg();
  } catch (const std::exception& fault) {
    error = what + fault.what();
  }
  return std::nullopt;
}

} // namespace benchlore
