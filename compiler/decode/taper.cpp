// Letters for how the resistance of a potentiometer changes along its travel; makers and times disagree on them.
// source: clubedohardware.com.br (A logarithmic, B linear, mid-travel shares), precisionelectronics.com (U linear, A
// logarithmic, B reverse logarithmic); older European use of A and B, and C, from memory.
#include "decode/families.h"

#include <array>

namespace benchlore {
namespace {

struct Taper {
  char letter;
  std::string_view meaning;
};
constexpr auto tapers = std::to_array<Taper>({
    {'A', "taper A: logarithmic on most recent parts, linear on older European ones (sources disagree)"},
    {'B', "taper B: linear on most recent parts, logarithmic on older European ones, reverse logarithmic by one maker "
          "(sources disagree)"},
    {'C', "taper C: reverse logarithmic (from memory)"},
    {'D', "taper D: logarithmic with 10 % at mid-travel (one source)"},
    {'U', "taper U: linear (one maker)"},
});

} // namespace

std::string taper_of(char letter) {
  for (const Taper& row : tapers) {
    if (row.letter == letter) return std::string(row.meaning);
  }
  return "";
}

void read_taper(std::string_view text, Drafts& out) {
  if (text.size() != 1) return;
  const std::string meaning = taper_of(text[0]);
  if (meaning.empty()) return;
  const bool usual = text[0] == 'A' || text[0] == 'B';
  out.push_back(fact_draft("potentiometer taper letter", meaning, usual ? 50 : 30,
                           "measure at mid-travel: linear has 50 % of its resistance there, logarithmic 10 to 20 %"));
}

} // namespace benchlore
