// Where the calculations are defined, by what they are about; and what their definitions share.
#pragma once

#include "calculations/calculation.h"

#include <cmath>

namespace benchlore::definitions {

std::vector<Calculation> capacitors();
std::vector<Calculation> combinations();
std::vector<Calculation> resistors_and_heat();
std::vector<Calculation> semiconductors();
std::vector<Calculation> logic();
std::vector<Calculation> timing();
std::vector<Calculation> supplies();
std::vector<Calculation> drives();
std::vector<Calculation> disks();
std::vector<Calculation> meters();

inline PointResult refused(std::string why) {
  PointResult result;
  result.refusal = std::move(why);
  return result;
}

inline PointResult found(std::vector<double> numbers, std::vector<std::string> working = {}, std::string verdict = {}) {
  return {{}, std::move(numbers), std::move(working), std::move(verdict)};
}

inline std::string show(double number, Dimension dimension = {}) { return number_text(number, dimension); }

} // namespace benchlore::definitions
