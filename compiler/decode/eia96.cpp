// EIA-96: an index into series E96 and a letter for the power of ten, on 1 % chip resistors.
// source: developer.wildernesslabs.co, table of surface-mount resistor codes.
#include "decode/families.h"
#include "quantity/preferred.h"

#include <array>

namespace benchlore {
namespace {

struct PowerLetter {
  char letter;
  int power; // of the three-figure value in ohms
};
constexpr auto letters = std::to_array<PowerLetter>({{'Z', -3},
                                                     {'Y', -2},
                                                     {'R', -2},
                                                     {'X', -1},
                                                     {'S', -1},
                                                     {'A', 0},
                                                     {'B', 1},
                                                     {'H', 1},
                                                     {'C', 2},
                                                     {'D', 3},
                                                     {'E', 4},
                                                     {'F', 5}});

} // namespace

void read_eia96(std::string_view text, Drafts& out) {
  if (text.size() != 3 || !all_digits(text.substr(0, 2))) return;
  const auto values = preferred_values(96);
  const int index = 10 * (text[0] - '0') + (text[1] - '0');
  if (index < 1 || index > static_cast<int>(values.size())) return;
  for (const PowerLetter& row : letters) {
    if (row.letter != text[2]) continue;
    const int figures = values[static_cast<std::size_t>(index) - 1];
    const int rank = row.letter == 'R' ? rank_seldom : 68;
    Draft draft = value_draft("EIA-96", Part::resistor, decimal(figures, row.power), rank,
                              "value " + std::to_string(index) + " of series E96 is " + std::to_string(figures) +
                                  ", the letter gives the power of ten");
    draft.tolerance = ToleranceCode{decimal(1, -2), decimal(1, -2)};
    if (row.letter == 'R') add_reason(draft, "R is more often a decimal point");
    out.push_back(std::move(draft));
  }
}

} // namespace benchlore
