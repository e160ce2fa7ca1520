// From a text to ranked readings: colours, or one marking with its parts.
#include "decode/decode.h"

#include "base/text.h"
#include "decode/families.h"
#include "decode/joined.h"

#include <algorithm>
#include <array>
#include <tuple>

namespace benchlore {
namespace {

constexpr std::array families{read_letter_code,  read_digit_code,   read_bare_number,    read_eia96, read_plain_value,
                              read_voltage_code, read_chip_voltage, read_tolerance_code, read_taper, read_dielectric,
                              read_date_code,    read_geometry,     read_affixed};
constexpr std::size_t most_words = 8; // of one marking; more are read one by one only
constexpr int one_word_of_many = 25;  // what a word of several loses

Drafts read_word(std::string_view text) {
  Drafts found;
  for (const auto family : families) family(text, found);
  return found;
}

void append(std::vector<Reading>& readings, const Drafts& drafts, std::string_view marking) {
  for (const Draft& draft : drafts) readings.push_back(finished(draft, marking));
}

// Best first; of two readings that say the same of the same marking the better stays.
std::vector<Reading> ranked(std::vector<Reading> readings) {
  auto key = [](const Reading& r) { return std::tie(r.marking, r.text); };
  std::stable_sort(readings.begin(), readings.end(), [&](const Reading& a, const Reading& b) {
    return key(a) != key(b) ? key(a) < key(b) : a.rank > b.rank;
  });
  const auto same = [&](const Reading& a, const Reading& b) { return key(a) == key(b); };
  readings.erase(std::unique(readings.begin(), readings.end(), same), readings.end());
  std::stable_sort(readings.begin(), readings.end(), [](const Reading& a, const Reading& b) {
    return std::tie(b.rank, a.code, a.text) < std::tie(a.rank, b.code, b.text);
  });
  return readings;
}

// The words; a number and a unit that stand apart are one (`16 V`).
std::vector<std::string> words_of(std::string_view text) {
  std::string spaced(text);
  std::replace_if(
      spaced.begin(), spaced.end(), [](char c) { return c >= '\t' && c <= '\r'; }, ' ');
  std::vector<std::string> words;
  for (std::string_view word : split(spaced, ' ')) {
    if (word.empty()) continue;
    const bool after_number = !words.empty() && words.back().find_first_not_of("0123456789.") == std::string::npos;
    Drafts with_unit;
    if (after_number && word.find_first_of("0123456789") == std::string_view::npos)
      read_plain_value(words.back() + std::string(word), with_unit);
    if (with_unit.empty()) {
      words.emplace_back(word);
    } else {
      words.back() += word;
    }
  }
  return words;
}

// `2A 474 J` as `2A474J`; digits that a space parts are no one number.
Drafts read_unspaced(const std::vector<std::string>& words) {
  constexpr std::string_view digits = "0123456789";
  Drafts found;
  for (std::size_t i = 1; i < words.size(); ++i) {
    const bool before = digits.find(words[i - 1].back()) != std::string_view::npos;
    if (before && digits.find(words[i].front()) != std::string_view::npos) return found;
  }
  read_affixed(join(words, ""), found);
  for (Draft& draft : found) add_reason(draft, "read without the spaces");
  return found;
}

std::vector<Reading> read_words(std::string_view text) {
  const std::vector<std::string> texts = words_of(text);
  std::vector<Reading> readings;
  if (texts.size() == 1) append(readings, read_word(texts.front()), text);
  if (texts.size() < 2) return readings;
  std::vector<ReadWord> words;
  for (const std::string& word : texts) words.push_back({word, read_word(word)});
  if (texts.size() <= most_words) {
    append(readings, read_joined(words), text);
    const Drafts unspaced = read_unspaced(texts);
    append(readings, unspaced, text);
  }
  for (ReadWord& word : words) {
    for (Draft& draft : word.drafts) draft.rank -= one_word_of_many;
    append(readings, word.drafts, word.text);
  }
  return readings;
}

std::vector<Reading> read_colours(const ColourWords& words, std::string_view text) {
  Drafts drafts;
  for (const auto family : {read_colour_bands, read_tantalum_colours, read_single_colour}) family(words, drafts);
  std::vector<Reading> readings;
  append(readings, drafts, text);
  return readings;
}

} // namespace

std::vector<Reading> decode(std::string_view text) {
  if (text.size() > longest_marking) return {};
  const std::string_view marking = trim(text);
  const auto colours = colour_words(marking);
  return ranked(colours ? read_colours(*colours, marking) : read_words(marking));
}

} // namespace benchlore
