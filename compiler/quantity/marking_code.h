// Letter and digit codes for values and tolerances (IEC 60062).
#pragma once

#include "quantity/decimal.h"

#include <optional>
#include <string_view>

namespace benchlore {

// `4k7`, `R47`, `2M2`, `4n7`, `u47`: value in ohms or farads by the letter; nothing when it is none.
enum class CodedThing { resistance, capacitance };
struct CodedValue {
  CodedThing thing;
  Decimal si;
  std::optional<char> tolerance_letter;
};
std::optional<CodedValue> read_value_code(std::string_view text, CodedThing thing);

// Symmetric tolerance letters B C D F G H J K M N as a fraction; asymmetric ones (Q T S Z) as minus and plus.
// P, W, Y, E, V disagree between publications and are not read.
struct ToleranceCode {
  Decimal minus;
  Decimal plus;
};
std::optional<ToleranceCode> read_tolerance_letter(char letter);

} // namespace benchlore
