// A value with what is printed right beside it: voltage code before it, tolerance behind it, voltage behind that, the
// letter of a tantalum chip, the taper of a potentiometer. Each way to cut the text is tried; most find nothing.
// source: pedalprojects.co.uk and oriedza.blogspot.com, EIA capacitor codes (`2A474J`, `.1K63`); order of letters on
// tantalum chips and potentiometers from memory.
#include "decode/families.h"
#include "quantity/quantity.h"

namespace benchlore {
namespace {

using namespace std::string_view_literals;

Drafts values_of(Part part, std::string_view core) {
  Drafts kept;
  for (Draft& draft : value_readings(core)) {
    if (draft.part == part && draft.value && !draft.value->zero()) kept.push_back(std::move(draft));
  }
  return kept;
}

Drafts capacitors(std::string_view core) { return values_of(Part::capacitor, core); }

void add_voltage(Draft& draft, Decimal volts, int rank, std::string reason) {
  add_rated_voltage(draft, volts);
  draft.rank += rank;
  add_reason(draft, std::move(reason));
}

// `104K`, `4k7J`, `33J`. Without a tolerance letter that is known, a disputed one is kept after digits only.
void read_tolerance_behind(std::string_view text, Drafts& out) {
  if (text.size() < 2) return;
  const std::string_view core = text.substr(0, text.size() - 1);
  const bool disputed = "PYWEV"sv.find(text.back()) != std::string_view::npos;
  if (disputed && !(all_digits(core) && core.size() == 3)) return;
  for (Draft& draft : value_readings(core)) {
    if (!add_tolerance(draft, text.back())) continue;
    if (text.back() == 'F' && !all_digits(core.substr(core.size() - 1))) {
      draft.rank -= 30;
      add_reason(draft, "F behind a letter is rather farad");
    }
    if (all_digits(core) && draft.part != Part::capacitor) {
      draft.rank -= 8;
      add_reason(draft, "digits with a tolerance letter are rather a capacitor");
    }
    out.push_back(std::move(draft));
  }
}

// `2A474J`, `1H104`.
void read_voltage_before(std::string_view text, Drafts& out) {
  if (text.size() < 5 || text.size() > 6 || !all_digits(text.substr(2, 3))) return;
  const auto voltage = coded_voltage(text.substr(0, 2));
  if (!voltage) return;
  for (Draft& draft : capacitors(text.substr(2, 3))) {
    if (draft.code != "three-digit code") continue;
    if (text.size() == 6 && !add_tolerance(draft, text[5])) continue;
    const std::string code(text.substr(0, 2));
    if (voltage->volts) {
      add_voltage(draft, *voltage->volts, 15, code + " before it is an EIA voltage code");
    } else {
      draft.facts.emplace_back("rated d.c. voltage not known: sources disagree");
      add_reason(draft, code + ": " + voltage->disagreement);
    }
    out.push_back(std::move(draft));
  }
}

// `.1K63`, `1000J1600`, `10nK100`: value, tolerance letter, volts.
void read_voltage_behind(std::string_view text, Drafts& out) {
  if (text.ends_with('V')) text.remove_suffix(1);
  const std::size_t letter = text.find_last_not_of("0123456789");
  if (letter == std::string_view::npos || letter < 2 || text.size() - letter - 1 < 2) return;
  const std::string_view digits = text.substr(letter + 1);
  const auto volts = digits.size() <= 4 ? Decimal::parse(digits) : std::nullopt;
  if (!volts || digits.front() == '0' || !usual_voltage(*volts)) return;
  for (Draft& draft : capacitors(text.substr(0, letter))) {
    if (!read_tolerance_letter(text[letter]) || !add_tolerance(draft, text[letter])) continue;
    add_voltage(draft, *volts, 12, "a usual voltage stands behind the tolerance");
    out.push_back(std::move(draft));
  }
}

// Tantalum chips are mostly of 1 uF and more; J behind a smaller value is rather the tolerance of a film capacitor.
int chip_weight(Decimal farads, char letter) {
  if (less(farads, decimal(1, -6))) return -15;
  return letter == 'J' && less(farads, decimal(10, -6)) ? -12 : -2;
}

void add_chip(std::string_view digits, char letter, Drafts& out) {
  const auto volts = chip_voltage(letter);
  if (!volts || digits.size() != 3 || !all_digits(digits)) return;
  for (Draft& draft : capacitors(digits)) {
    const bool small = less(*draft.value, decimal(1, -7)), large = less(decimal(1, -3), *draft.value);
    if (draft.code != "three-digit code" || small || large) continue;
    add_voltage(draft, *volts, chip_weight(*draft.value, letter),
                std::string("the letter ") + letter + " is the voltage of a tantalum chip (from memory)");
    draft.code = "tantalum chip code";
    out.push_back(std::move(draft));
  }
}

void add_potentiometer(std::string_view value, char letter, Drafts& out) {
  const std::string taper = taper_of(letter);
  if (taper.empty()) return;
  for (const Draft& resistor : values_of(Part::resistor, value)) {
    if (resistor.code == "plain number" || resistor.code == "four-digit code" || resistor.rank < rank_odd) continue;
    Draft draft = value_draft("potentiometer code", Part::potentiometer, *resistor.value,
                              all_digits(value) ? 45 : rank_usual, resistor.reasons.front());
    draft.facts.push_back(taper);
    add_reason(draft, std::string("the letter ") + letter +
                          " beside it is a taper; measure at mid-travel: linear has 50 % there");
    out.push_back(std::move(draft));
  }
}

} // namespace

Drafts value_readings(std::string_view text) {
  Drafts found;
  read_letter_code(text, found);
  read_digit_code(text, found);
  read_bare_number(text, found);
  return found;
}

void read_affixed(std::string_view text, Drafts& out) {
  if (text.size() < 2) return;
  read_tolerance_behind(text, out);
  read_voltage_before(text, out);
  read_voltage_behind(text, out);
  add_chip(text.substr(0, text.size() - 1), text.back(), out);
  add_chip(text.substr(1), text.front(), out);
  add_potentiometer(text.substr(0, text.size() - 1), text.back(), out);
  add_potentiometer(text.substr(1), text.front(), out);
}

} // namespace benchlore
