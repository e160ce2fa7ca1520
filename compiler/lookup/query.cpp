// Takes a query apart at blanks and quotes, and puts its words, filters and ranges together.
#include "lookup/query.h"

#include "base/text.h"
#include "lookup/rating_query.h"
#include "lookup/word_query.h"

#include <algorithm>
#include <map>

namespace benchlore {
namespace {

constexpr std::size_t longest_query = 1000; // bytes; more is no question that a person asks

bool blank(char c) { return static_cast<unsigned char>(c) <= ' '; }

// Reads `field:` where letters, digits and hyphens stand before a colon with something after it.
std::size_t field_length(std::string_view text) {
  std::size_t length = 0;
  auto in_name = [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9'); };
  while (length < text.size() && (in_name(text[length]) || (length > 0 && text[length] == '-'))) ++length;
  const bool colon = length > 0 && length + 1 < text.size() && text[length] == ':' && !blank(text[length + 1]);
  return colon ? length : 0;
}

QueryItem read_item(std::string_view query, std::size_t at) {
  QueryItem item;
  if (query[at] == '-' && at + 1 < query.size() && !blank(query[at + 1])) item.excluded = true, ++at;
  if (const std::size_t length = field_length(query.substr(at)); length > 0) {
    item.field = lower(query.substr(at, length));
    at += length + 1;
  }
  item.quoted = query[at] == '"';
  if (item.quoted) ++at;
  item.begin = at;
  while (at < query.size() && (item.quoted ? query[at] != '"' : !blank(query[at]))) ++at;
  item.text = query.substr(item.begin, at - item.begin);
  item.end = at + (item.quoted && at < query.size() ? 1 : 0);
  return item;
}

// Gathers what the items ask for.
class Builder {
public:
  Builder(const QueryRules& rules, std::string& error) : rules_(rules), error_(error) {}

  bool add(QueryItem item) {
    if (!item.field.empty() && !filter_term(item.field, item.text).empty()) {
      narrow(item, Xapian::Query(filter_term(item.field, item.text)));
      return true;
    }
    if (!item.field.empty() && rules_.slots.contains(item.field)) {
      const auto query = rating_query(item.field, item.text, rules_.slots, error_);
      if (query) narrow(item, *query);
      return query.has_value();
    }
    if (item.excluded || item.quoted)
      add_text(item);
    else
      add_word(std::move(item));
    return true;
  }

  ReadQuery finish() {
    std::vector<Xapian::Query> wanted = phrases_;
    if (!words_.empty()) wanted.push_back(words_query(words_, rules_.synonyms, read_.terms));
    Xapian::Query query = Xapian::Query(Xapian::Query::OP_OR, wanted.begin(), wanted.end());
    if (wanted.empty() && (!filters_.empty() || !excluded_.empty())) query = weightless(Xapian::Query::MatchAll);
    for (const auto& [field, choices] : filters_)
      query = {Xapian::Query::OP_FILTER, query, Xapian::Query(Xapian::Query::OP_OR, choices.begin(), choices.end())};
    for (const Xapian::Query& out : excluded_) query = {Xapian::Query::OP_AND_NOT, query, out};
    read_.query = query;
    return std::move(read_);
  }

private:
  static Xapian::Query weightless(const Xapian::Query& query) { return {Xapian::Query::OP_SCALE_WEIGHT, query, 0.0}; }

  void narrow(const QueryItem& item, const Xapian::Query& query) {
    if (item.excluded)
      excluded_.push_back(query);
    else
      filters_[item.field].push_back(query);
  }

  // A phrase, or words to leave out; a field that is none is a word like any other.
  void add_text(const QueryItem& item) {
    std::vector<std::string> hidden;
    const Xapian::Query query = phrase_query(item.field + " " + item.text, item.excluded ? hidden : read_.terms);
    (item.excluded ? excluded_ : phrases_).push_back(query);
  }

  void add_word(QueryItem item) {
    if (!words_.empty()) words_ += ' ';
    words_ += (item.field.empty() ? "" : item.field + ":") + item.text;
    read_.plain.push_back(std::move(item));
  }

  const QueryRules& rules_;
  std::string& error_;
  std::string words_;
  std::vector<Xapian::Query> phrases_, excluded_;
  std::map<std::string, std::vector<Xapian::Query>> filters_;
  ReadQuery read_;
};

} // namespace

std::vector<QueryItem> query_items(std::string_view query) {
  std::vector<QueryItem> items;
  for (std::size_t at = 0; at < query.size();) {
    if (blank(query[at])) {
      ++at;
      continue;
    }
    items.push_back(read_item(query, at));
    at = std::max(items.back().end, at + 1);
  }
  return items;
}

QueryRules query_rules(const Xapian::Database& database) {
  return {slots_from(database.get_metadata("ratings")), groups_from(database.get_metadata("synonyms"))};
}

std::optional<ReadQuery> read_query(std::string_view query, const QueryRules& rules, std::string& error) {
  if (query.size() > longest_query) {
    error = "the query is longer than " + std::to_string(longest_query) + " bytes";
    return std::nullopt;
  }
  Builder builder(rules, error);
  for (QueryItem& item : query_items(query))
    if (!builder.add(std::move(item))) return std::nullopt;
  return builder.finish();
}

} // namespace benchlore
