// Slides a window over the words that match and keeps the first best one.
#include "lookup/excerpt.h"

#include "emit/index/search_terms.h"

#include <algorithm>
#include <set>

namespace benchlore {
namespace {

struct Match {
  std::size_t begin, end;
  std::string term;
};

// Matching words in their order; of two that overlap, the longer.
std::vector<Match> matches_in(std::string_view text, const std::vector<std::string>& terms) {
  const std::set<std::string, std::less<>> wanted(terms.begin(), terms.end());
  std::vector<Match> found;
  for (const SearchToken& token : search_tokens(text))
    if (std::string term = search_term(token); wanted.contains(term))
      found.push_back({token.begin, token.end, std::move(term)});
  std::ranges::sort(
      found, [](const Match& a, const Match& b) { return a.begin != b.begin ? a.begin < b.begin : a.end > b.end; });
  std::vector<Match> kept;
  for (Match& match : found)
    if (kept.empty() || match.begin >= kept.back().end) kept.push_back(std::move(match));
  return kept;
}

// Where most different terms stand together, and of those the place where they stand closest.
std::size_t best_start(const std::vector<Match>& matches, std::size_t length) {
  std::size_t best = 0, narrowest = 0, start = 0;
  for (std::size_t i = 0; i < matches.size(); ++i) {
    std::set<std::string_view> terms;
    std::size_t extent = 0;
    for (std::size_t j = i; j < matches.size() && matches[j].end <= matches[i].begin + length; ++j)
      if (terms.insert(matches[j].term).second) extent = matches[j].end - matches[i].begin;
    if (terms.size() < best || (terms.size() == best && extent >= narrowest)) continue;
    best = terms.size(), narrowest = extent, start = matches[i].begin;
  }
  return start;
}

// The window, with some words before the first match, cut at blanks where there are any near.
std::pair<std::size_t, std::size_t> window(std::string_view text, std::size_t start, std::size_t length) {
  if (text.size() <= length) return {0, text.size()};
  std::size_t begin = std::min(start > length / 4 ? start - length / 4 : 0, text.size() - length);
  if (begin > 0) {
    const std::size_t next = text.find(' ', begin);
    begin = next != std::string_view::npos && next < start ? next + 1 : start;
  }
  std::size_t end = std::min(begin + length, text.size());
  if (end < text.size()) {
    const std::size_t before = text.rfind(' ', end);
    if (before != std::string_view::npos && before > begin) end = before;
    while (end > begin && (static_cast<unsigned char>(text[end]) & 0xC0) == 0x80) --end;
  }
  return {begin, end};
}

} // namespace

std::string excerpt(std::string_view text, const std::vector<std::string>& terms, std::size_t length,
                    std::string_view mark_begin, std::string_view mark_end) {
  const std::vector<Match> matches = matches_in(text, terms);
  const auto [begin, end] = window(text, best_start(matches, length), length);
  std::string out = begin > 0 ? "… " : "";
  std::size_t at = begin;
  for (const Match& match : matches) {
    if (match.begin < at || match.end > end) continue;
    out += text.substr(at, match.begin - at);
    out += mark_begin;
    out += text.substr(match.begin, match.end - match.begin);
    out += mark_end;
    at = match.end;
  }
  out += text.substr(at, end - at);
  return end < text.size() ? out + " …" : out;
}

} // namespace benchlore
