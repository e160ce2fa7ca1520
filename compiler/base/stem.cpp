// The Snowball English stemmer, step by step as its description names the steps. `Y` stands for a consonant y.
#include "base/stem.h"

#include <algorithm>
#include <array>
#include <span>

namespace benchlore {
namespace {

struct Swap {
  std::string_view ending, instead;
};

constexpr std::array<Swap, 18> whole_words{{{"skis", "ski"},
                                            {"skies", "sky"},
                                            {"dying", "die"},
                                            {"lying", "lie"},
                                            {"tying", "tie"},
                                            {"idly", "idl"},
                                            {"gently", "gentl"},
                                            {"ugly", "ugli"},
                                            {"early", "earli"},
                                            {"only", "onli"},
                                            {"singly", "singl"},
                                            {"sky", "sky"},
                                            {"news", "news"},
                                            {"howe", "howe"},
                                            {"atlas", "atlas"},
                                            {"cosmos", "cosmos"},
                                            {"bias", "bias"},
                                            {"andes", "andes"}}};
constexpr std::array<std::string_view, 8> stays_after_plural{"inning",  "outing",  "canning", "herring",
                                                             "earring", "proceed", "exceed",  "succeed"};
constexpr std::array<std::string_view, 9> doubles{"bb", "dd", "ff", "gg", "mm", "nn", "pp", "rr", "tt"};
// Longest endings first: the first that fits is the one that counts.
constexpr std::array<Swap, 24> second_step{
    {{"ization", "ize"}, {"ational", "ate"}, {"fulness", "ful"}, {"ousness", "ous"}, {"iveness", "ive"},
     {"tional", "tion"}, {"biliti", "ble"},  {"lessli", "less"}, {"entli", "ent"},   {"ation", "ate"},
     {"alism", "al"},    {"aliti", "al"},    {"ousli", "ous"},   {"iviti", "ive"},   {"fulli", "ful"},
     {"enci", "ence"},   {"anci", "ance"},   {"abli", "able"},   {"izer", "ize"},    {"ator", "ate"},
     {"alli", "al"},     {"bli", "ble"},     {"ogi", "og"},      {"li", ""}}};
constexpr std::array<Swap, 9> third_step{{{"ational", "ate"},
                                          {"tional", "tion"},
                                          {"alize", "al"},
                                          {"icate", "ic"},
                                          {"iciti", "ic"},
                                          {"ative", ""},
                                          {"ical", "ic"},
                                          {"ness", ""},
                                          {"ful", ""}}};
constexpr std::array<std::string_view, 18> fourth_step{"ement", "ance", "ence", "able", "ible", "ment",
                                                       "ant",   "ent",  "ism",  "ate",  "iti",  "ous",
                                                       "ive",   "ize",  "ion",  "al",   "er",   "ic"};

bool vowel(char c) { return std::string_view("aeiouy").find(c) != std::string_view::npos; }
bool has_vowel(std::string_view text) { return std::any_of(text.begin(), text.end(), vowel); }

struct Word {
  std::string text;
  std::size_t region1 = 0, region2 = 0;

  bool ends(std::string_view ending) const { return text.ends_with(ending); }
  void cut(std::size_t count) { text.erase(text.size() - count); }
  char last(std::size_t back) const { return back < text.size() ? text[text.size() - 1 - back] : '\0'; }
};

std::size_t after_vowel_group(std::string_view text, std::size_t from) {
  for (std::size_t i = from; i + 1 < text.size(); ++i)
    if (vowel(text[i]) && !vowel(text[i + 1])) return i + 2;
  return text.size();
}

bool ends_short(const Word& word) {
  if (word.text.size() == 2) return vowel(word.text[0]) && !vowel(word.text[1]);
  if (word.text.size() < 3) return false;
  char end = word.last(0);
  return !vowel(word.last(2)) && vowel(word.last(1)) && !vowel(end) && end != 'w' && end != 'x' && end != 'Y';
}

void mark_consonant_y(std::string& text) {
  for (std::size_t i = 0; i < text.size(); ++i)
    if (text[i] == 'y' && (i == 0 || vowel(text[i - 1]))) text[i] = 'Y';
}

void find_regions(Word& word) {
  word.region1 = after_vowel_group(word.text, 0);
  for (std::string_view start : {"gener", "commun", "arsen"})
    if (word.text.starts_with(start)) word.region1 = start.size();
  word.region2 = after_vowel_group(word.text, word.region1);
}

void drop_possessive(Word& word) {
  for (std::string_view ending : {"'s'", "'s", "'"})
    if (word.ends(ending)) return word.cut(ending.size());
}

void drop_plural(Word& word) {
  if (word.ends("sses")) return word.cut(2);
  if (word.ends("ied") || word.ends("ies")) return word.cut(word.text.size() > 4 ? 2 : 1);
  if (word.ends("us") || word.ends("ss") || !word.ends("s")) return;
  if (word.text.size() > 2 && has_vowel(std::string_view(word.text).substr(0, word.text.size() - 2))) word.cut(1);
}

void tidy_after_verb_ending(Word& word) {
  if (word.ends("at") || word.ends("bl") || word.ends("iz")) {
    word.text += 'e';
  } else if (std::any_of(doubles.begin(), doubles.end(), [&](auto pair) { return word.ends(pair); })) {
    word.cut(1);
  } else if (word.region1 >= word.text.size() && ends_short(word)) {
    word.text += 'e';
  }
}

void drop_verb_ending(Word& word) {
  for (std::string_view ending : {"eedly", "ingly", "edly", "eed", "ing", "ed"}) {
    if (!word.ends(ending)) continue;
    std::size_t left = word.text.size() - ending.size();
    if (ending.starts_with("eed")) {
      if (left >= word.region1) word.text = word.text.substr(0, left) + "ee";
    } else if (has_vowel(std::string_view(word.text).substr(0, left))) {
      word.cut(ending.size());
      tidy_after_verb_ending(word);
    }
    return;
  }
}

void final_y_to_i(Word& word) {
  if (word.text.size() > 2 && (word.last(0) == 'y' || word.last(0) == 'Y') && !vowel(word.last(1)))
    word.text.back() = 'i';
}

// True when the ending may go although its own condition asks for more than its region.
bool allowed(const Word& word, std::string_view ending, std::size_t left) {
  char before = left > 0 ? word.text[left - 1] : '\0';
  if (ending == "ogi") return before == 'l';
  if (ending == "li") return std::string_view("cdeghkmnrt").find(before) != std::string_view::npos && before != '\0';
  if (ending == "ative") return left >= word.region2;
  if (ending == "ion") return before == 's' || before == 't';
  return true;
}

void swap_ending(Word& word, std::span<const Swap> swaps) {
  for (const Swap& swap : swaps) {
    if (!word.ends(swap.ending)) continue;
    std::size_t left = word.text.size() - swap.ending.size();
    if (left >= word.region1 && allowed(word, swap.ending, left))
      word.text = word.text.substr(0, left) + std::string(swap.instead);
    return;
  }
}

void drop_ending(Word& word) {
  for (std::string_view ending : fourth_step) {
    if (!word.ends(ending)) continue;
    std::size_t left = word.text.size() - ending.size();
    if (left >= word.region2 && allowed(word, ending, left)) word.cut(ending.size());
    return;
  }
}

void drop_final_letter(Word& word) {
  std::size_t left = word.text.size() - 1;
  if (word.ends("e")) {
    Word shorter = word;
    shorter.cut(1);
    if (left >= word.region2 || (left >= word.region1 && !ends_short(shorter))) word.cut(1);
  } else if (word.ends("ll") && left >= word.region2) {
    word.cut(1);
  }
}

std::string finished(Word word) {
  std::replace(word.text.begin(), word.text.end(), 'Y', 'y');
  return word.text;
}

} // namespace

std::string stem(std::string_view input) {
  if (input.size() <= 2 || (input[0] >= '0' && input[0] <= '9')) return std::string(input);
  if (input[0] == '\'') input.remove_prefix(1);
  for (const Swap& swap : whole_words)
    if (input == swap.ending) return std::string(swap.instead);
  Word word{std::string(input)};
  if (word.text.size() < 3) return word.text;
  mark_consonant_y(word.text);
  find_regions(word);
  drop_possessive(word);
  drop_plural(word);
  if (std::find(stays_after_plural.begin(), stays_after_plural.end(), word.text) != stays_after_plural.end())
    return finished(word);
  drop_verb_ending(word);
  final_y_to_i(word);
  swap_ending(word, second_step);
  swap_ending(word, third_step);
  drop_ending(word);
  if (!word.text.empty()) drop_final_letter(word);
  return finished(word);
}

} // namespace benchlore
