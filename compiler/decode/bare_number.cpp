// Numbers printed plainly: microfarads on cans, tantalum beads and film, picofarads on discs and mica.
// source: pedalprojects.co.uk, capacitor codes, for `.1K63`; that cans are marked in microfarads and small discs in
// picofarads is common practice, from memory.
#include "decode/families.h"

namespace benchlore {
namespace {

constexpr std::string_view system_name = "plain number";

bool plain_decimal(std::string_view text) {
  const std::size_t point = text.find('.');
  if (point == std::string_view::npos || point + 1 == text.size()) return false;
  return all_digits(text.substr(point + 1)) && (point == 0 || all_digits(text.substr(0, point)));
}

void add(Part part, Decimal number, int power, int rank, std::string reason, Drafts& out) {
  const auto si = multiply(number, decimal(1, power));
  if (!si || coarsest_series(*si) > 24) return;
  if (coarsest_series(*si) == 0 && !less(number, decimal(1000))) return; // figures that no such part prints
  out.push_back(value_draft(system_name, part, *si, rank, std::move(reason)));
}

void add_decimal(Decimal number, Drafts& out) {
  add(Part::capacitor, number, -6, 55,
      "a number with a decimal point on a film, tantalum or can capacitor is in microfarads", out);
  if (!less(number, decimal(1)))
    add(Part::capacitor, number, -12, 45, "on a small ceramic capacitor the number is in picofarads", out);
}

// `220` on a can; two figures and zeros only, so that `104` is not taken for 104 uF.
bool printed_on_cans(std::string_view text) {
  return text.size() <= 2 || text.find_first_not_of('0', 2) == std::string_view::npos;
}

void add_whole(std::string_view text, Decimal number, Drafts& out) {
  if (printed_on_cans(text))
    add(Part::capacitor, number, -6, 44, "an aluminium can shows microfarads plainly, and its voltage beside", out);
  if (text.size() == 3) return; // three digits on ceramic are a code: 100 is 10 pF
  add(Part::capacitor, number, -12, text.size() == 2 ? 48 : 40,
      "on a disc, film or mica capacitor fewer or more digits than three are picofarads", out);
  if (text.size() <= 2) add(Part::resistor, number, 0, rank_odd, "ohms printed plainly", out);
}

} // namespace

void read_bare_number(std::string_view text, Drafts& out) {
  const bool whole = all_digits(text) && text.front() != '0';
  if (text.size() > 6 || !(whole || plain_decimal(text))) return;
  const auto number = Decimal::parse(text.front() == '.' ? "0" + std::string(text) : std::string(text));
  if (!number || number->zero()) return;
  if (whole) {
    add_whole(text, *number, out);
  } else {
    add_decimal(*number, out);
  }
}

} // namespace benchlore
