// The parts of the quantity parser: a cursor over the text with the first error found, and amounts (a number with
// or without its unit). Every reading function either moves the cursor past what it read or leaves an error.
#pragma once

#include "quantity/quantity.h"
#include "quantity/unit.h"

#include <span>

namespace benchlore {

struct Reader {
  std::string_view text;
  Dimension expected;
  std::size_t at = 0;
  bool in_condition = false;
  bool in_limits = false; // between `min`, `typ` and `max`
  std::optional<QuantityError> error = std::nullopt;

  bool done() const { return at >= text.size(); }
  std::string_view rest() const { return text.substr(at); }
  bool take(std::string_view sign);
  void skip_space();
  // Keeps the first error; always false.
  bool fail(std::size_t offset, std::size_t length, std::string message, std::string way_out);
};

// Length in bytes of the white space at `at`, or of the sign (`+`, `-`, U+2212) there; 0 when there is none.
std::size_t space_at(std::string_view text, std::size_t at);
std::size_t sign_at(std::string_view text, std::size_t at);
bool digit_at(std::string_view text, std::size_t at);
// A digit, or a sign or point with a digit behind it.
bool number_at(std::string_view text, std::size_t at);
// `min`, `typ` or `max` in lower case when that word stands at `at`, else empty.
std::string_view limit_word_at(std::string_view text, std::size_t at);
// The end of the unit expression that begins at `at`.
std::size_t unit_end(std::string_view text, std::size_t at);
// The text in backticks, shortened when it is long.
std::string quoted(std::string_view text);

struct Amount {
  Decimal number;
  std::size_t offset = 0; // of the number
  std::size_t length = 0;
  std::optional<Unit> unit = std::nullopt;
  std::size_t unit_offset = 0;
  std::size_t unit_length = 0;
  bool coded = false; // an IEC 60062 code, already in SI units
  std::optional<char> tolerance_letter = std::nullopt;
};

std::optional<Decimal> read_number(Reader& reader);
std::optional<Amount> read_amount(Reader& reader);
// An amount without a unit takes the one of the amount after it: `1..2 V`.
void share_units(std::span<Amount> amounts);
// In SI units; reports a missing unit or another dimension.
std::optional<Decimal> to_si(Reader& reader, const Amount& amount, Dimension expected);

// Errors of units; always false.
bool fail_unknown_unit(Reader& reader, std::size_t offset, std::size_t length);
bool fail_missing_unit(Reader& reader, const Amount& amount, Dimension expected);
bool fail_other_dimension(Reader& reader, const Amount& amount, Dimension expected);

// What may stand in the text one after the other.
bool check_text(Reader& reader);
bool read_forms(Reader& reader, Quantity& quantity);
bool read_tolerance(Reader& reader, Amount& nominal, Quantity& quantity);
bool apply_tolerance_letter(Reader& reader, const Amount& amount, Quantity& quantity);
bool read_range_end(Reader& reader, Amount first, Dimension expected, Quantity& quantity);
bool read_conditions(Reader& reader, Quantity& quantity);
// Text after a value that is neither its end nor its conditions.
bool check_rest(Reader& reader);

} // namespace benchlore
