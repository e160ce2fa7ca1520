// The E series. E3 to E24 are historic and kept as a table; E48 to E192 are 10^(k/n) rounded to three figures,
// with the one exception (920) that the standard keeps. Coarser series take every second value of the finer one.
#include "quantity/preferred.h"

#include <array>
#include <cstddef>

namespace benchlore {
namespace {

constexpr std::array<int, 24> e24{100, 110, 120, 130, 150, 160, 180, 200, 220, 240, 270, 300,
                                  330, 360, 390, 430, 470, 510, 560, 620, 680, 750, 820, 910};

constexpr std::array<int, 192> e192{
    100, 101, 102, 104, 105, 106, 107, 109, 110, 111, 113, 114, 115, 117, 118, 120, 121, 123, 124, 126, 127, 129,
    130, 132, 133, 135, 137, 138, 140, 142, 143, 145, 147, 149, 150, 152, 154, 156, 158, 160, 162, 164, 165, 167,
    169, 172, 174, 176, 178, 180, 182, 184, 187, 189, 191, 193, 196, 198, 200, 203, 205, 208, 210, 213, 215, 218,
    221, 223, 226, 229, 232, 234, 237, 240, 243, 246, 249, 252, 255, 258, 261, 264, 267, 271, 274, 277, 280, 284,
    287, 291, 294, 298, 301, 305, 309, 312, 316, 320, 324, 328, 332, 336, 340, 344, 348, 352, 357, 361, 365, 370,
    374, 379, 383, 388, 392, 397, 402, 407, 412, 417, 422, 427, 432, 437, 442, 448, 453, 459, 464, 470, 475, 481,
    487, 493, 499, 505, 511, 517, 523, 530, 536, 542, 549, 556, 562, 569, 576, 583, 590, 597, 604, 612, 619, 626,
    634, 642, 649, 657, 665, 673, 681, 690, 698, 706, 715, 723, 732, 741, 750, 759, 768, 777, 787, 796, 806, 816,
    825, 835, 845, 856, 866, 876, 887, 898, 909, 920, 931, 942, 953, 965, 976, 988};

template <std::size_t Count, std::size_t Finer>
constexpr std::array<int, Count> every(const std::array<int, Finer>& finer) {
  std::array<int, Count> values{};
  for (std::size_t i = 0; i < Count; ++i) values[i] = finer[i * (Finer / Count)];
  return values;
}

constexpr auto e3 = every<3>(e24);
constexpr auto e6 = every<6>(e24);
constexpr auto e12 = every<12>(e24);
constexpr auto e48 = every<48>(e192);
constexpr auto e96 = every<96>(e192);

} // namespace

std::span<const int> preferred_values(int series) {
  switch (series) {
  case 3:
    return e3;
  case 6:
    return e6;
  case 12:
    return e12;
  case 24:
    return e24;
  case 48:
    return e48;
  case 96:
    return e96;
  case 192:
    return e192;
  default:
    return {};
  }
}

} // namespace benchlore
