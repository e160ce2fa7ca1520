// Rated d.c. voltages as a power of ten and a letter, and as one letter on tantalum chips.
#include "decode/families.h"
#include "quantity/quantity.h"

#include <algorithm>
#include <array>

namespace benchlore {
namespace {

// source: pedalprojects.co.uk and oriedza.blogspot.com, tables of EIA capacitor codes.
struct Mantissa {
  char letter;
  int hundredths;
};
constexpr auto mantissas = std::to_array<Mantissa>({{'A', 100},
                                                    {'B', 125},
                                                    {'C', 160},
                                                    {'D', 200},
                                                    {'E', 250},
                                                    {'F', 315},
                                                    {'G', 400},
                                                    {'H', 500},
                                                    {'J', 630},
                                                    {'K', 800},
                                                    {'V', 350},
                                                    {'W', 450},
                                                    {'L', 550},
                                                    {'P', 220},
                                                    {'Q', 110},
                                                    {'Z', 180},
                                                    {'I', 650}});

// On these one source stands alone.
struct Disputed {
  std::string_view code;
  std::string_view said;
};
constexpr auto disputed =
    std::to_array<Disputed>({{"2T", "one reader's note says 150 V, the tables have no such letter"},
                             {"3N", "one table says 1500 V, the others have no such letter"}});

// source: from memory; 50 V is H on aluminium capacitors.
struct ChipLetter {
  char letter;
  int tenths;
};
constexpr auto chip_letters = std::to_array<ChipLetter>(
    {{'G', 40}, {'J', 63}, {'A', 100}, {'C', 160}, {'D', 200}, {'E', 250}, {'V', 350}, {'T', 500}});

// source: rated voltages of capacitors as catalogues list them, from memory; tenths of a volt.
constexpr auto usual_tenths = std::to_array<int>(
    {25,   40,   63,   100,  160,  200,  250,  350,  400,  500,  630,  750,   800,   1000,  1250,  1600,  2000,
     2500, 2750, 3000, 3150, 3500, 4000, 4500, 5000, 6000, 6300, 8000, 10000, 12500, 15000, 16000, 20000, 30000});

// Joules, full; 10 mF at 100 V and 470 uF at 450 V are below. From memory.
constexpr double greatest_energy = 100;

template <class Rows> auto find_letter(const Rows& rows, char letter) {
  return std::find_if(rows.begin(), rows.end(), [&](const auto& row) { return row.letter == letter; });
}

} // namespace

void add_rated_voltage(Draft& capacitor, Decimal volts) {
  const double farads = capacitor.value->value();
  capacitor.facts.push_back(show_number(volts.value(), dimension::voltage));
  if (volts.value() < 50 && farads >= 1e-7) capacitor.rank += 8;
  if (volts.value() < 50 && farads < 1e-9) {
    capacitor.rank -= 10;
    add_reason(capacitor, "small ceramics seldom print so low a voltage");
  }
  if (farads * volts.value() * volts.value() / 2 > greatest_energy) {
    capacitor.rank -= 40;
    add_reason(capacitor, "hardly any capacitor stores so much at this voltage");
  }
}

bool usual_voltage(Decimal volts) {
  return std::any_of(usual_tenths.begin(), usual_tenths.end(),
                     [&](int tenths) { return volts == decimal(tenths, -1); });
}

std::optional<CodedVoltage> coded_voltage(std::string_view text) {
  if (text.size() != 2 || text[0] < '0' || text[0] > '4') return std::nullopt;
  for (const Disputed& row : disputed) {
    if (row.code == text) return CodedVoltage{std::nullopt, std::string(row.said)};
  }
  const auto row = find_letter(mantissas, text[1]);
  if (row == mantissas.end()) return std::nullopt;
  return CodedVoltage{decimal(row->hundredths, text[0] - '0' - 2), ""};
}

std::optional<Decimal> chip_voltage(char letter) {
  const auto row = find_letter(chip_letters, letter);
  return row == chip_letters.end() ? std::nullopt : std::optional(decimal(row->tenths, -1));
}

void read_voltage_code(std::string_view text, Drafts& out) {
  const auto coded = coded_voltage(text);
  if (!coded) return;
  constexpr std::string_view system_name = "EIA voltage code";
  if (!coded->volts) {
    Draft draft = fact_draft(system_name, "rated d.c. voltage not known: sources disagree", 40, coded->disagreement);
    draft.dimension = dimension::voltage;
    out.push_back(std::move(draft));
    return;
  }
  Draft draft = rating_draft(system_name, *coded->volts, dimension::voltage, 66,
                             "the letter is a mantissa, the digit a power of ten");
  draft.facts.emplace_back("rated d.c. voltage of a capacitor");
  if (!usual_voltage(*coded->volts)) {
    draft.rank -= 20;
    add_reason(draft, "few parts are made for this voltage");
  }
  out.push_back(std::move(draft));
}

void read_chip_voltage(std::string_view text, Drafts& out) {
  if (text.size() != 1) return;
  const auto volts = chip_voltage(text[0]);
  if (!volts) return;
  Draft draft = rating_draft("tantalum chip letter", *volts, dimension::voltage, 40,
                             "a letter beside the value of a tantalum chip is its voltage (from memory)");
  draft.facts.emplace_back("rated d.c. voltage of a tantalum chip");
  out.push_back(std::move(draft));
}

} // namespace benchlore
