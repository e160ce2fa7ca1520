// Dielectric codes of ceramic capacitors.
// source: EIA-198 as transcribed by 3bmdesign.com and in a thread of element14; N and P with a number, and that NP0 is
// C0G, by the same; SL from a sheet of safety disc capacitors (ic37.com).
#include "decode/families.h"

#include <algorithm>
#include <array>

namespace benchlore {
namespace {

constexpr Dimension per_kelvin = inverse(dimension::temperature_difference);
constexpr int rank = 85;

struct Degrees {
  char sign;
  std::string_view degrees;
};
constexpr auto lowest = std::to_array<Degrees>({{'X', "-55"}, {'Y', "-30"}, {'Z', "+10"}});
constexpr auto highest =
    std::to_array<Degrees>({{'2', "+45"}, {'4', "+65"}, {'5', "+85"}, {'6', "+105"}, {'7', "+125"}, {'8', "+150"}});
constexpr auto changes = std::to_array<Degrees>({{'A', "±1"},
                                                 {'B', "±1.5"},
                                                 {'C', "±2.2"},
                                                 {'D', "±3.3"},
                                                 {'E', "±4.7"},
                                                 {'F', "±7.5"},
                                                 {'P', "±10"},
                                                 {'R', "±15"},
                                                 {'S', "±22"},
                                                 {'T', "-33/+22"},
                                                 {'U', "-56/+22"},
                                                 {'V', "-82/+22"}});

struct Figure {
  char sign;
  int number;
};
constexpr auto tenths = std::to_array<Figure>({{'C', 0},
                                               {'B', 3},
                                               {'L', 8},
                                               {'A', 9},
                                               {'M', 10},
                                               {'P', 15},
                                               {'R', 22},
                                               {'S', 33},
                                               {'T', 47},
                                               {'V', 56},
                                               {'U', 75}});
constexpr auto multipliers = std::to_array<Figure>(
    {{'0', -1}, {'1', -10}, {'2', -100}, {'3', -1000}, {'4', 1}, {'6', 10}, {'7', 100}, {'8', 1000}});
constexpr auto spreads =
    std::to_array<Figure>({{'G', 30}, {'H', 60}, {'J', 120}, {'K', 250}, {'L', 500}, {'M', 1000}, {'N', 2500}});

template <class Rows> auto find_sign(const Rows& rows, char sign) -> decltype(rows.data()) {
  const auto row = std::find_if(rows.begin(), rows.end(), [&](const auto& x) { return x.sign == sign; });
  return row == rows.end() ? nullptr : &*row;
}

Draft coefficient(std::int64_t tenths_of_ppm, std::string_view code, std::string reason) {
  return rating_draft(code, decimal(tenths_of_ppm, -7), per_kelvin, rank, std::move(reason));
}

void add_second_class(std::string_view text, Drafts& out) {
  const auto* low = find_sign(lowest, text[0]);
  const auto* high = find_sign(highest, text[1]);
  const auto* change = find_sign(changes, text[2]);
  if (low == nullptr || high == nullptr || change == nullptr) return;
  const std::string fact = "ceramic of class 2: within " + std::string(change->degrees) + " % from " +
                           std::string(low->degrees) + " to " + std::string(high->degrees) + " °C";
  out.push_back(fact_draft("EIA dielectric code, class 2", fact, rank,
                           "letter for the lowest temperature, figure for the highest, letter for the change of "
                           "capacitance; the change with voltage and age comes on top"));
}

void add_first_class(std::string_view text, Drafts& out) {
  const auto* figure = find_sign(tenths, text[0]);
  const auto* multiplier = find_sign(multipliers, text[1] == 'O' ? '0' : text[1]);
  const auto* spread = find_sign(spreads, text[2]);
  if (figure == nullptr || multiplier == nullptr || spread == nullptr) return;
  Draft draft =
      coefficient(static_cast<std::int64_t>(figure->number) * multiplier->number, "EIA dielectric code, class 1",
                  "letter for the figure of the temperature coefficient, digit for its multiplier, letter for "
                  "its tolerance");
  draft.facts = {"±" + std::to_string(spread->number) + " ppm/K", "ceramic of class 1"};
  if (spread->number > 250) draft.rank = 45; // so wide a tolerance is seldom printed
  if (figure->number == 0) draft.facts.emplace_back("also called NP0");
  out.push_back(std::move(draft));
}

// `N750`, `P100`: the coefficient in ppm/K, negative or positive.
void add_named(std::string_view text, Drafts& out) {
  const std::string_view digits = text.substr(1);
  if ((text[0] != 'N' && text[0] != 'P') || !all_digits(digits) || digits.size() < 2 || digits.size() > 4) return;
  std::int64_t ppm = 0;
  for (char c : digits) ppm = 10 * ppm + (c - '0');
  if (ppm == 0) return;
  constexpr auto usual =
      std::to_array<std::int64_t>({30, 33, 75, 80, 100, 150, 220, 330, 470, 750, 1500, 2200, 3300, 4700});
  Draft draft = coefficient(text[0] == 'N' ? -10 * ppm : 10 * ppm, "temperature coefficient name",
                            text[0] == 'N' ? "N for a negative coefficient, then ppm for each kelvin"
                                           : "P for a positive coefficient, then ppm for each kelvin");
  draft.facts.emplace_back("ceramic of class 1");
  if (std::find(usual.begin(), usual.end(), ppm) == usual.end()) {
    draft.rank = rank_odd;
    add_reason(draft, "no usual coefficient");
  }
  out.push_back(std::move(draft));
}

} // namespace

void read_dielectric(std::string_view text, Drafts& out) {
  if (text == "NP0" || text == "NPO" || text == "CG") {
    Draft draft = coefficient(0, "temperature coefficient name", "neither negative nor positive; C0G with tolerance G");
    draft.facts = {"±30 ppm/K", "ceramic of class 1"};
    out.push_back(std::move(draft));
  } else if (text == "SL") {
    out.push_back(fact_draft("temperature coefficient name", "ceramic of class 1: between -1000 and +350 ppm/K", rank,
                             "a wide limit for parts whose drift does not matter"));
  } else if (text.size() >= 3) {
    if (text.size() == 3) {
      add_second_class(text, out);
      add_first_class(text, out);
    }
    add_named(text, out);
  }
}

} // namespace benchlore
