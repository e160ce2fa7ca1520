// Colours of tantalum beads from the top: two figures, the dot as multiplier, the voltage; in microfarads.
// source: endprod.com, table of tantalum colours. One stored page prints a table that contradicts all others.
#include "decode/families.h"

#include <algorithm>
#include <array>

namespace benchlore {
namespace {

constexpr auto figures = std::to_array<std::string_view>(
    {"black", "brown", "red", "orange", "yellow", "green", "blue", "violet", "grey", "white"});

struct Row {
  std::string_view name;
  int number;
};
constexpr auto powers = std::to_array<Row>({{"black", 0}, {"brown", 1}, {"red", 2}, {"grey", -2}, {"white", -1}});
constexpr auto tenths_of_volts = std::to_array<Row>(
    {{"white", 30}, {"yellow", 63}, {"black", 100}, {"green", 160}, {"blue", 200}, {"grey", 250}, {"pink", 350}});

// source: from memory.
constexpr auto tips = std::to_array<Row>({{"black", 0},
                                          {"brown", -33},
                                          {"red", -75},
                                          {"orange", -150},
                                          {"yellow", -220},
                                          {"green", -330},
                                          {"blue", -470},
                                          {"violet", -750}});

template <class Rows> std::optional<int> number_of(const Rows& rows, std::string_view name) {
  for (const Row& row : rows) {
    if (row.name == name) return row.number;
  }
  return std::nullopt;
}

std::optional<int> figure_of(std::string_view name) {
  const auto at = std::find(figures.begin(), figures.end(), name);
  return at == figures.end() ? std::nullopt : std::optional(static_cast<int>(at - figures.begin()));
}

} // namespace

void read_tantalum_colours(const ColourWords& words, Drafts& out) {
  const std::size_t count = words.names.size();
  if (count != 4 && !(count == 3 && words.dot)) return;
  const auto first = figure_of(words.names[0]), second = figure_of(words.names[1]);
  const auto power = number_of(powers, words.names[2]);
  if (!first || !second || !power || *first == 0) return;
  Draft draft =
      value_draft("tantalum colours", Part::capacitor, decimal(10 * *first + *second, *power - 6), words.dot ? 80 : 52,
                  "from the top: two figures, the dot as multiplier, volts at the bottom; in microfarads");
  if (count == 4) {
    const auto volts = number_of(tenths_of_volts, words.names[3]);
    if (!volts) return;
    add_rated_voltage(draft, decimal(*volts, -1));
  }
  draft.facts.emplace_back("tantalum bead");
  out.push_back(std::move(draft));
}

void read_single_colour(const ColourWords& words, Drafts& out) {
  if (words.names.size() != 1 || words.dot) return;
  const std::string_view name = words.names.front();
  if (name == "black") {
    Draft link =
        value_draft("one colour band", Part::resistor, {}, rank_open, "one black band in the middle (from memory)");
    link.facts.emplace_back("a link of no resistance");
    out.push_back(std::move(link));
  }
  const auto ppm = number_of(tips, name);
  if (!ppm) return;
  Draft tip = rating_draft("tip colour of a ceramic capacitor", decimal(*ppm, -6),
                           inverse(dimension::temperature_difference), rank_open,
                           "the tip of an old tube or disc capacitor tells its temperature coefficient (from memory)");
  tip.facts.push_back(*ppm == 0 ? "NP0" : "N" + std::to_string(-*ppm));
  out.push_back(std::move(tip));
}

} // namespace benchlore
