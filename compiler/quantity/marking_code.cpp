// IEC 60062 codes, read letter by letter: digits, one multiplier letter that stands for the decimal point, digits,
// and perhaps a tolerance letter. Where publications disagree, or a letter has two meanings, nothing is read.
#include "quantity/marking_code.h"

#include <array>
#include <span>
#include <string>

namespace benchlore {
namespace {

struct Multiplier {
  std::string_view text;
  int power;
};

constexpr std::array<Multiplier, 5> resistance_letters{{{"R", 0}, {"k", 3}, {"K", 3}, {"M", 6}, {"G", 9}}};
constexpr std::array<Multiplier, 7> capacitance_letters{
    {{"p", -12}, {"n", -9}, {"u", -6}, {"\u00B5", -6}, {"\u03BC", -6}, {"m", -3}, {"F", 0}}};

struct Letter {
  char letter;
  int minus; // in units of 0.01 %
  int plus;
};
constexpr std::array<Letter, 14> tolerances{{{'B', 10, 10},
                                             {'C', 25, 25},
                                             {'D', 50, 50},
                                             {'F', 100, 100},
                                             {'G', 200, 200},
                                             {'H', 300, 300},
                                             {'J', 500, 500},
                                             {'K', 1000, 1000},
                                             {'M', 2000, 2000},
                                             {'N', 3000, 3000},
                                             {'Q', 1000, 3000},
                                             {'T', 1000, 5000},
                                             {'S', 2000, 5000},
                                             {'Z', 2000, 8000}}};

bool is_digit(char c) { return c >= '0' && c <= '9'; }

std::string_view take_digits(std::string_view& text) {
  std::size_t count = 0;
  while (count < text.size() && is_digit(text[count])) ++count;
  std::string_view digits = text.substr(0, count);
  text.remove_prefix(count);
  return digits;
}

const Multiplier* take_multiplier(std::string_view& text, std::span<const Multiplier> letters) {
  for (const Multiplier& letter : letters) {
    if (!text.starts_with(letter.text)) continue;
    text.remove_prefix(letter.text.size());
    return &letter;
  }
  return nullptr;
}

std::optional<Decimal> coded_number(std::string_view whole, std::string_view fraction, int power) {
  std::string text(whole.empty() ? "0" : whole);
  if (!fraction.empty()) text.append(".").append(fraction);
  auto number = Decimal::parse(text);
  auto factor = Decimal::make(1, power);
  return number && factor ? multiply(*number, *factor) : std::nullopt;
}

// `10uF` and `4u7F` could mean farad or ±1 %.
bool readable_letter(char letter, CodedThing thing) {
  return read_tolerance_letter(letter) && !(letter == 'F' && thing == CodedThing::capacitance);
}

} // namespace

std::optional<CodedValue> read_value_code(std::string_view text, CodedThing thing) {
  std::span<const Multiplier> letters = capacitance_letters;
  if (thing == CodedThing::resistance) letters = resistance_letters;
  std::string_view whole = take_digits(text);
  const Multiplier* multiplier = take_multiplier(text, letters);
  std::string_view fraction = take_digits(text);
  if (!multiplier || (whole.empty() && fraction.empty())) return std::nullopt;
  auto number = coded_number(whole, fraction, multiplier->power);
  if (!number) return std::nullopt;
  CodedValue value{thing, *number, std::nullopt};
  if (text.empty()) return value;
  if (text.size() > 1 || !readable_letter(text[0], thing)) return std::nullopt;
  value.tolerance_letter = text[0];
  return value;
}

std::optional<ToleranceCode> read_tolerance_letter(char letter) {
  for (const Letter& row : tolerances) {
    if (row.letter != letter) continue;
    auto minus = Decimal::make(row.minus, -4);
    auto plus = Decimal::make(row.plus, -4);
    if (minus && plus) return ToleranceCode{*minus, *plus};
  }
  return std::nullopt;
}

} // namespace benchlore
