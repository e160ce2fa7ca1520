// Values with a letter in place of the decimal point.
// source: RKM code article of Wikipedia, after IEC 60062; L for milliohm, E for ohm and N for nanohenry from memory.
#include "decode/families.h"

#include <algorithm>
#include <array>

namespace benchlore {
namespace {

constexpr std::string_view system_name = "IEC 60062 letter code";

// A letter that stands for the decimal point and for a power of ten; beyond what `read_value_code` knows.
struct PointLetter {
  char letter;
  Part part;
  int power;
  int rank;
  std::string_view reason;
};
constexpr auto point_letters = std::to_array<PointLetter>({
    {'L', Part::resistor, -3, rank_open, "L stands for the decimal point in milliohms (from memory)"},
    {'E', Part::resistor, 0, rank_open,
     "E stands for the decimal point in ohms on old continental parts (from memory)"},
    {'r', Part::resistor, 0, rank_open, "r stands for the decimal point in ohms"},
    {'R', Part::capacitor, -12, 40, "R stands for the decimal point: picofarads when the part is ceramic"},
    {'R', Part::capacitor, -6, 38, "R stands for the decimal point: microfarads when the part is electrolytic"},
    {'R', Part::inductor, -6, rank_open, "R stands for the decimal point in microhenries"},
    {'P', Part::capacitor, -12, rank_open, "P stands for the decimal point in picofarads, in capitals"},
    {'N', Part::capacitor, -9, rank_open, "N stands for the decimal point in nanofarads, in capitals"},
    {'U', Part::capacitor, -6, rank_open, "U stands for the decimal point in microfarads, in capitals"},
    {'N', Part::inductor, -9, 40, "N stands for the decimal point in nanohenries (from memory)"},
});

void add_known(std::string_view text, CodedThing thing, Drafts& out) {
  const auto coded = read_value_code(text, thing);
  if (!coded || coded->tolerance_letter) return;
  if (coded->si.zero() && text.find('R') == std::string_view::npos) return;
  if (std::count_if(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; }) > 5) return;
  const bool ohms = thing == CodedThing::resistance;
  const bool farads = !ohms && text.find('F') != std::string_view::npos; // `10F`: rather a tolerance of 1 %
  const bool bare_r = ohms && text.find('R') != std::string_view::npos;
  Draft draft = value_draft(system_name, ohms ? Part::resistor : Part::capacitor, coded->si,
                            farads ? rank_odd : (bare_r ? rank_usual : 70),
                            "the letter stands for the decimal point and the unit");
  if (draft.value->zero()) draft.facts.emplace_back("a link of no resistance");
  out.push_back(std::move(draft));
}

// Digits around one letter, as a number of the letter's unit.
std::optional<Decimal> number_around(std::string_view text, std::size_t letter) {
  std::string number(text.substr(0, letter));
  if (number.empty()) number = "0";
  const std::string_view fraction = text.substr(letter + 1);
  if (text.size() < 2 || !all_digits(number) || !(fraction.empty() || all_digits(fraction))) return std::nullopt;
  if (!fraction.empty()) number.append(".").append(fraction);
  return Decimal::parse(number);
}

void add_point_letter(std::string_view text, const PointLetter& row, Drafts& out) {
  const std::size_t at = text.find(row.letter);
  if (at == std::string_view::npos) return;
  const auto number = number_around(text, at);
  const auto si = number ? multiply(*number, decimal(1, row.power)) : std::nullopt;
  if (si && coarsest_series(*si) != 0)
    out.push_back(value_draft(system_name, row.part, *si, row.rank, std::string(row.reason)));
}

} // namespace

void read_letter_code(std::string_view text, Drafts& out) {
  add_known(text, CodedThing::resistance, out);
  add_known(text, CodedThing::capacitance, out);
  for (const PointLetter& row : point_letters) add_point_letter(text, row, out);
}

} // namespace benchlore
