// A reading in the making: what a family of codes found, with its reasons still apart, before all are ranked.
#pragma once

#include "decode/decode.h"
#include "quantity/decimal.h"
#include "quantity/marking_code.h"

#include <cstdint>
#include <span>

namespace benchlore {

enum class Part { other, resistor, potentiometer, capacitor, inductor };

struct Draft {
  std::string code; // the system
  Part part = Part::other;
  std::optional<Decimal> value; // SI units
  Dimension dimension;
  std::optional<ToleranceCode> tolerance; // fractions
  std::optional<Decimal> spread;          // the tolerance in the value's unit, where the code tells it so
  std::vector<std::string> facts;         // what else it means: `50 V`
  std::vector<std::string> reasons;
  int rank = 0;
};
using Drafts = std::vector<Draft>;

// Ranks that families start from.
enum Rank { rank_usual = 60, rank_open = 50, rank_seldom = 35, rank_odd = 20 };

Decimal decimal(std::int64_t digits, int exponent = 0); // digits * 10^exponent
bool all_digits(std::string_view text);                 // not empty, ASCII digits only

// A value of a part; raised or lowered by whether it is a preferred value and whether such a part is made.
Draft value_draft(std::string_view code, Part part, Decimal si, int rank, std::string reason);
// A rating that is no value of a part: a rated voltage, a temperature coefficient.
Draft rating_draft(std::string_view code, Decimal si, Dimension dimension, int rank, std::string reason);
// A meaning in words only.
Draft fact_draft(std::string_view code, int rank, std::string reason);
Draft fact_draft(std::string_view code, std::string fact, int rank, std::string reason);

void add_reason(Draft& draft, std::string reason);

// The coarsest E series (3, 6, 12, 24, 48, 96, 192) that has this value in some decade; 0 when none has.
int coarsest_series(Decimal value);

std::string number_text(const Draft& draft); // `100 nF ±10 %`; empty without a value
Reading finished(const Draft& draft, std::string_view marking);

} // namespace benchlore
