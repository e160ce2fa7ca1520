// Colour bands of resistors with three to six bands, read in both directions, and of moulded coils.
// source: colour tables of IEC 60062 as transcribed in public repositories and by Wikipedia; the temperature
// coefficients and the tolerances of orange and yellow from memory. On grey as a tolerance the editions disagree.
#include "decode/families.h"

#include <algorithm>
#include <array>

namespace benchlore {
namespace {

constexpr int nothing = -99;

struct Colour {
  std::string_view name;
  int figure = nothing;
  int power = nothing;     // of ten
  int tolerance = nothing; // in 0.01 %
  int ppm = nothing;       // temperature coefficient, ppm/K
};
constexpr auto colours = std::to_array<Colour>({
    {"black", 0, 0, nothing, 250},
    {"brown", 1, 1, 100, 100},
    {"red", 2, 2, 200, 50},
    {"orange", 3, 3, 5, 15},
    {"yellow", 4, 4, 2, 25},
    {"green", 5, 5, 50, 20},
    {"blue", 6, 6, 25, 10},
    {"violet", 7, 7, 10, 5},
    {"grey", 8, 8, nothing, 1},
    {"white", 9, 9, nothing, nothing},
    {"gold", nothing, -1, 500, nothing},
    {"silver", nothing, -2, 1000, nothing},
    {"pink", nothing, -3, nothing, nothing},
    {"none", nothing, nothing, 2000, nothing},
});

const Colour& colour(std::string_view name) {
  return *std::find_if(colours.begin(), colours.end(), [&](const Colour& row) { return row.name == name; });
}

using Bands = std::vector<std::string_view>;

std::optional<Decimal> value_of(const Bands& bands, std::size_t figures) {
  std::int64_t number = 0;
  for (std::size_t i = 0; i < figures; ++i) {
    const int figure = colour(bands[i]).figure;
    if (figure == nothing) return std::nullopt;
    number = 10 * number + figure;
  }
  const int power = colour(bands[figures]).power;
  if (power == nothing) return std::nullopt;
  return decimal(number, power);
}

// False when the band is no tolerance.
bool add_tolerance_band(Draft& draft, std::string_view name) {
  if (name == "grey") {
    draft.facts.emplace_back("tolerance not known: sources disagree");
    add_reason(draft, "grey is ±0.05 % in older tables and ±0.01 % in the edition of 2016 (from memory)");
    return true;
  }
  const int tolerance = colour(name).tolerance;
  if (tolerance == nothing) return false;
  draft.tolerance = ToleranceCode{decimal(tolerance, -4), decimal(tolerance, -4)};
  if (name == "orange" || name == "yellow") {
    draft.rank -= 12;
    add_reason(draft, std::string(name) + " as a tolerance is of the edition of 2016 (from memory)");
  }
  return true;
}

bool add_coefficient_band(Draft& draft, std::string_view name) {
  const int ppm = colour(name).ppm;
  if (ppm == nothing) return false;
  draft.facts.push_back("±" + std::to_string(ppm) + " ppm/K (from memory)");
  return true;
}

// A tolerance from four bands on, three figures from five bands on, a temperature coefficient on the sixth.
struct Layout {
  std::string_view code;
  std::size_t figures;
  std::string_view reason;
};
constexpr std::array<Layout, 4> layouts{
    {{"three colour bands", 2, "two figures and multiplier; without a fourth band ±20 %"},
     {"four colour bands", 2, "two figures, multiplier, tolerance"},
     {"five colour bands", 3, "three figures, multiplier, tolerance"},
     {"six colour bands", 3, "three figures, multiplier, tolerance, temperature coefficient"}}};

std::optional<Draft> read_bands(const Bands& bands, Part part, int rank) {
  const Layout& layout = layouts[bands.size() - 3];
  auto value = value_of(bands, layout.figures);
  if (value && part == Part::inductor) value = multiply(*value, decimal(1, -6));
  if (!value || (bands.front() == "black" && bands.size() > 3)) return std::nullopt;
  Draft draft = value_draft(layout.code, part, *value, rank, std::string(layout.reason));
  if (!add_tolerance_band(draft, bands.size() == 3 ? "none" : bands[layout.figures + 1])) return std::nullopt;
  if (bands.size() == 6 && !add_coefficient_band(draft, bands[5])) return std::nullopt;
  return draft;
}

void add_backwards(const Bands& bands, bool forwards_too, Drafts& out) {
  auto draft = read_bands(Bands(bands.rbegin(), bands.rend()), Part::resistor, forwards_too ? 58 : 66);
  if (!draft) return;
  draft->code += ", read backwards";
  if (bands.size() < 5) draft->rank -= 10;
  add_reason(*draft, forwards_too ? "no band of gold or silver tells which end is first"
                                  : "forwards these bands make no value");
  out.push_back(std::move(*draft));
}

void add_coil(const Bands& bands, Drafts& out) {
  if (bands.size() > 4) return;
  auto draft = read_bands(bands, Part::inductor, 40);
  if (!draft) return;
  add_reason(*draft, "moulded coils bear the same bands for microhenries (from memory)");
  out.push_back(std::move(*draft));
}

} // namespace

void read_colour_bands(const ColourWords& words, Drafts& out) {
  const std::size_t count = words.names.size();
  if (words.dot || count < 3 || count > 6) return;
  const auto forwards = read_bands(words.names, Part::resistor, 70);
  if (forwards) out.push_back(*forwards);
  add_backwards(words.names, forwards.has_value(), out);
  add_coil(words.names, out);
}

} // namespace benchlore
