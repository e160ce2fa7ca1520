// Figures followed by a power of ten: three digits on capacitors (pF), resistors (ohm) and coils (uH), four on
// resistors. source: pedalprojects.co.uk, capacitor codes (9 = x 0.1 and 8 = x 0.01 among them); the Wikipedia article
// on the resistor colour code and its neighbours for resistors; coils in microhenries from memory.
#include "decode/families.h"

namespace benchlore {
namespace {

int digit(char c) { return c - '0'; }

struct Figures {
  int figures;
  int power;
};

// The last digit is the power of ten.
Figures split_off_power(std::string_view text) {
  int figures = 0;
  for (char c : text.substr(0, text.size() - 1)) figures = 10 * figures + digit(c);
  return {figures, digit(text.back())};
}

int small_power(int power) { return power == 9 ? -1 : (power == 8 ? -2 : power); }

std::string power_reason(std::string_view unit, int power) {
  std::string reason = "figures times 10^" + std::to_string(power) + ", in " + std::string(unit);
  if (power < 0) reason += power == -1 ? " (9 for a tenth)" : " (8 for a hundredth)";
  return reason;
}

void add_link(std::string_view text, Drafts& out) {
  Draft link = value_draft("digit code", Part::resistor, {}, text.size() == 2 ? rank_seldom : 70, "all figures are 0");
  link.facts.emplace_back("a link of no resistance");
  out.push_back(std::move(link));
}

void add_three(std::string_view text, Drafts& out) {
  const auto [figures, power] = split_off_power(text);
  if (figures < 10) return; // no code begins with 0
  const int farads = small_power(power);
  out.push_back(value_draft("three-digit code", Part::capacitor, decimal(figures, farads - 12), rank_usual,
                            power_reason("picofarads", farads)));
  if (power > 7) return;
  out.push_back(value_draft("three-digit code", Part::resistor, decimal(figures, power), 57,
                            power_reason("ohms, as on chip resistors", power)));
  out.push_back(value_draft("three-digit code", Part::inductor, decimal(figures, power - 6), rank_seldom,
                            power_reason("microhenries", power)));
}

void add_four(std::string_view text, Drafts& out) {
  const auto [figures, power] = split_off_power(text);
  if (figures < 100 || power > 7) return;
  Draft draft = value_draft("four-digit code", Part::resistor, decimal(figures, power), rank_usual,
                            power_reason("ohms: four digits have three figures", power));
  add_reason(draft, "chip resistors with four digits are ±1 % or closer (from memory)");
  out.push_back(std::move(draft));
}

} // namespace

void read_digit_code(std::string_view text, Drafts& out) {
  if (!all_digits(text) || text.size() > 4) return;
  if (text.find_first_not_of('0') == std::string_view::npos) return add_link(text, out);
  if (text.size() == 3) add_three(text, out);
  if (text.size() == 4) add_four(text, out);
}

} // namespace benchlore
