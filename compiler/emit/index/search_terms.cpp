// The tokeniser: folded words, joined by twos with units, then compounds and their extra tokens.
#include "emit/index/search_terms.h"

#include "base/stem.h"
#include "emit/index/fold.h"

#include <algorithm>
#include <array>
#include <span>

namespace benchlore {
namespace {

constexpr std::array<std::string_view, 20> stop_words{"a",    "an",   "are", "as",   "be", "by", "for",
                                                      "from", "had",  "has", "have", "is", "it", "its",
                                                      "of",   "that", "the", "this", "to", "was"};
constexpr std::array<std::string_view, 50> unit_words{
    "a",  "ah", "b",  "c",   "cm",  "db",  "f",   "gb", "ghz", "h",   "hz", "j",  "k",    "kb", "kg", "khz", "kohm",
    "kv", "kw", "m",  "ma",  "mah", "mb",  "mf",  "mh", "mhz", "min", "mj", "mm", "mohm", "ms", "mv", "mw",  "na",
    "nf", "nh", "ns", "ohm", "pf",  "ppm", "rpm", "s",  "ua",  "uf",  "uh", "us", "uv",   "v",  "va", "w"};

static_assert(std::ranges::is_sorted(unit_words));

bool digit(char c) { return c >= '0' && c <= '9'; }
bool letter(char c) { return !digit(c) && c != '.'; }
bool number(std::string_view text) {
  return std::ranges::all_of(text, [](char c) { return digit(c) || c == '.'; });
}

enum class Link { none, blank, join };

struct Word {
  std::string text;
  std::size_t begin = 0, end = 0;
  Link before = Link::none; // what stands between the word and the one before it
};

// Splits text into words, one code point after the other.
class WordReader {
public:
  explicit WordReader(std::string_view text) : text_(text) {}

  std::vector<Word> read() {
    for (std::size_t at = 0; at < text_.size();) {
      const CodePoint point = code_point_at(text_, at);
      folded_.clear();
      take(fold(point.value, folded_), at, point.next);
      at = point.next;
    }
    finish();
    return std::move(words_);
  }

private:
  void take(Folded sort, std::size_t begin, std::size_t end) {
    if (sort == Folded::nothing) return;
    if (sort == Folded::word || (sort == Folded::point && inside_number(end))) return append(sort, begin, end);
    const bool after_word = open_;
    finish();
    if (!after_word || sort == Folded::other)
      link_ = Link::none;
    else
      link_ = sort == Folded::space ? Link::blank : Link::join;
  }

  bool inside_number(std::size_t next) const {
    return !word_.text.empty() && digit(word_.text.back()) && next < text_.size() && digit(text_[next]);
  }

  void append(Folded sort, std::size_t begin, std::size_t end) {
    if (sort == Folded::point) folded_ = ".";
    if (!open_) word_ = {{}, begin, end, link_};
    open_ = true;
    word_.end = end;
    full_ = full_ || word_.text.size() + folded_.size() > longest_token;
    if (!full_) word_.text += folded_;
  }

  void finish() {
    if (!open_) return;
    words_.push_back(std::move(word_));
    word_ = {};
    open_ = full_ = false;
  }

  std::string_view text_;
  std::string folded_;
  std::vector<Word> words_;
  Word word_;
  bool open_ = false, full_ = false;
  Link link_ = Link::none;
};

void join_units(std::vector<Word>& words) {
  std::size_t kept = 0;
  for (std::size_t i = 0; i < words.size(); ++i) {
    Word& word = words[i];
    if (kept > 0 && word.before == Link::blank && number(words[kept - 1].text) && is_unit(word.text)) {
      words[kept - 1].text += word.text;
      words[kept - 1].end = word.end;
    } else {
      if (kept != i) words[kept] = std::move(word);
      ++kept;
    }
  }
  words.resize(kept);
}

bool value(std::string_view text) {
  const auto unit = std::ranges::find_if(text, letter);
  return unit != text.begin() && is_unit(std::string_view(unit, text.end()));
}

std::string without_suffix(std::string_view text) {
  const std::size_t last = text.find_last_of("0123456789");
  if (last == std::string_view::npos || last + 1 == text.size() || text.size() - last - 1 > 3) return {};
  return std::string(text.substr(0, last + 1));
}

bool good_base(std::string_view base) {
  const auto digits = std::ranges::count_if(base, digit);
  return digits >= 4 || (digits >= 1 && base.size() >= 3 && std::ranges::any_of(base, letter));
}

std::string base_of(std::string_view text, std::string_view last_word) {
  const bool letters = last_word.size() <= 3 && std::ranges::all_of(last_word, letter);
  std::string base = letters && last_word.size() < text.size()
                         ? std::string(text.substr(0, text.size() - last_word.size()))
                         : without_suffix(text);
  return good_base(base) ? base : std::string{};
}

// Turns the words of one compound into tokens.
struct Emitter {
  std::vector<SearchToken> tokens;
  std::uint32_t chunk = 0, place = 0;

  void add(std::string text, SearchToken::Sort sort, std::uint32_t at, std::size_t begin, std::size_t end) {
    if (!text.empty()) tokens.push_back({std::move(text), sort, chunk, at, begin, end});
  }

  void compound(std::span<Word> words) {
    const std::uint32_t first = place;
    const std::string joined = join_key(words);
    const std::string whole = joined.empty() && words.size() == 1 ? words.front().text : joined;
    const bool values = std::ranges::all_of(words, value, &Word::text);
    const std::string base = whole.empty() || values ? std::string{} : base_of(whole, words.back().text);
    const auto sort = words.size() == 1 ? SearchToken::Sort::word : SearchToken::Sort::part;
    const std::size_t begin = words.front().begin, end = words.back().end;
    for (Word& word : words)
      if (!is_stop_word(word.text)) add(std::move(word.text), sort, place++, word.begin, word.end);
    add(joined, SearchToken::Sort::joined, first, begin, end);
    add(base, SearchToken::Sort::base, first, begin, end);
    ++chunk;
  }

  static std::string join_key(std::span<const Word> words) {
    std::string joined;
    if (words.size() < 2 || words.size() > 4) return joined;
    for (const Word& word : words) joined += word.text;
    const bool both = std::ranges::any_of(joined, digit) && std::ranges::any_of(joined, letter);
    return both && joined.size() <= longest_token ? joined : std::string{};
  }
};

} // namespace

bool is_stop_word(std::string_view word) { return word.size() <= 4 && std::ranges::count(stop_words, word) > 0; }
bool is_unit(std::string_view word) { return std::ranges::binary_search(unit_words, word); }

std::vector<SearchToken> search_tokens(std::string_view text) {
  std::vector<Word> words = WordReader(text).read();
  join_units(words);
  Emitter emitter;
  for (std::size_t i = 0; i < words.size();) {
    std::size_t end = i + 1;
    while (end < words.size() && words[end].before == Link::join) ++end;
    emitter.compound(std::span(words).subspan(i, end - i));
    i = end;
  }
  return std::move(emitter.tokens);
}

std::string search_term(const SearchToken& token) {
  return std::ranges::any_of(token.text, digit) ? token.text : stem(token.text);
}

std::string name_term(std::string_view name) {
  const std::vector<Word> words = WordReader(name).read();
  std::string key;
  for (const Word& word : words) key += word.text;
  const bool both = std::ranges::any_of(key, digit) && std::ranges::any_of(key, letter);
  return both && words.size() <= 3 && key.size() <= longest_token ? key : std::string{};
}

} // namespace benchlore
