// Tolerance letters, those of small capacitors in picofarads, and those on which publications disagree.
// source: 3bmdesign.com, ceramic capacitor codes (letters, and picofarads below 10 pF); signalpro.biz and
// oriedza.blogspot.com for what disagrees; letters of the 2016 edition of IEC 60062 from memory.
#include "decode/families.h"

#include <algorithm>
#include <array>

namespace benchlore {
namespace {

struct Picofarads {
  char letter;
  int hundredths;
};
constexpr auto below_ten = std::to_array<Picofarads>({{'B', 10}, {'C', 25}, {'D', 50}, {'F', 100}, {'G', 200}});

struct Disputed {
  char letter;
  std::string_view said;
};
constexpr auto disputed = std::to_array<Disputed>({
    {'P', "-0/+100 %, +80/-0 % or ±0.02 %"},
    {'Y', "-20/+50 % or +50/-0 %"},
    {'W', "-20/+40 % or ±0.05 %"},
    {'E', "±0.5 % or ±0.005 %"},
    {'V', "no two tables say the same"},
});

template <class Rows> auto row_of(const Rows& rows, char letter) -> decltype(rows.data()) {
  const auto row = std::find_if(rows.begin(), rows.end(), [&](const auto& x) { return x.letter == letter; });
  return row == rows.end() ? nullptr : &*row;
}

std::string disagreement(char letter, std::string_view said) {
  return std::string("tolerance letter ") + letter + ": sources disagree (" + std::string(said) + ")";
}

// `4.7 pF ±0.25 pF` as a fraction, in words the picofarads.
bool add_picofarads(Draft& draft, char letter) {
  const Picofarads* row = row_of(below_ten, letter);
  if (row == nullptr) return false;
  const Decimal spread = decimal(row->hundredths, -14);
  const auto fraction = Decimal::nearest(spread.value() / draft.value->value());
  if (!fraction) return false;
  draft.tolerance = ToleranceCode{*fraction, *fraction};
  draft.spread = spread;
  add_reason(draft, std::string("below 10 pF the letter ") + letter + " means picofarads");
  draft.rank += 5;
  return true;
}

bool lopsided(const ToleranceCode& code) { return !(code.minus == code.plus); }

// What the letter does to the likelihood: the usual letters speak for the reading, the others against it.
int letter_weight(const Draft& draft, char letter) {
  const bool capacitor = draft.part == Part::capacitor;
  if (std::string_view("JK").find(letter) != std::string_view::npos) return 5;
  if (letter == 'M') return capacitor ? 5 : -5;
  if (letter == 'Z' || letter == 'S') return 3;
  if (letter == 'F' || letter == 'G') return capacitor ? 0 : 3;
  return capacitor ? -15 : -8;
}

} // namespace

bool add_tolerance(Draft& draft, char letter) {
  const bool capacitor = draft.part == Part::capacitor;
  if (!draft.value || draft.value->zero()) return false;
  if (capacitor && less(*draft.value, decimal(10, -12)) && add_picofarads(draft, letter)) return true;
  if (const auto code = read_tolerance_letter(letter)) {
    if (lopsided(*code) && !capacitor) return false;
    draft.tolerance = *code;
    if (lopsided(*code) && less(*draft.value, decimal(100, -12))) draft.rank -= 25; // of large ceramics and cans
    draft.rank += letter_weight(draft, letter);
    add_reason(draft, std::string("the letter ") + letter + " behind it is a tolerance");
    return true;
  }
  const Disputed* row = row_of(disputed, letter);
  if (row == nullptr) return false;
  draft.tolerance.reset();
  draft.facts.emplace_back("tolerance not known: sources disagree");
  add_reason(draft, disagreement(letter, row->said));
  draft.rank -= 15;
  return true;
}

void read_tolerance_code(std::string_view text, Drafts& out) {
  if (text.size() != 1) return;
  constexpr std::string_view system_name = "tolerance letter";
  const char letter = text[0];
  if (const Disputed* row = row_of(disputed, letter)) {
    out.push_back(
        fact_draft(system_name, "tolerance not known: sources disagree", 30, disagreement(letter, row->said)));
    return;
  }
  const auto code = read_tolerance_letter(letter);
  if (!code) return;
  auto percent = [](Decimal fraction) { return multiply(fraction, decimal(100)).value_or(fraction).text(); };
  const std::string range =
      lopsided(*code) ? "-" + percent(code->minus) + "/+" + percent(code->plus) : "±" + percent(code->plus);
  Draft draft = fact_draft(system_name, "tolerance " + range + " %", rank_usual, "a letter of IEC 60062");
  draft.tolerance = *code;
  if (const Picofarads* row = row_of(below_ten, letter))
    draft.facts.push_back("on a capacitor below 10 pF ±" + decimal(row->hundredths, -2).text() + " pF");
  out.push_back(std::move(draft));
}

} // namespace benchlore
