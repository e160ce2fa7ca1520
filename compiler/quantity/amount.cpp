// An amount: a decimal number, a fraction or ratio, or an IEC 60062 code; then its unit. Conversion to SI is an
// exact multiplication.
#include "base/text.h"
#include "quantity/marking_code.h"
#include "quantity/reader.h"

namespace benchlore {
namespace {

// `3/4` and `1:10`, where a pure number is expected.
bool read_fraction(Reader& reader, Amount& amount) {
  bool sign = reader.rest().starts_with("/") || reader.rest().starts_with(":");
  if (!sign || !digit_at(reader.text, reader.at + 1) || reader.in_condition) return true;
  if (reader.expected != dimension::none) return true;
  ++reader.at;
  auto below = read_number(reader);
  if (!below) return false;
  auto quotient = divide(amount.number, *below);
  amount.length = reader.at - amount.offset;
  std::string_view written = reader.text.substr(amount.offset, amount.length);
  if (!quotient) {
    return reader.fail(amount.offset, amount.length, "the fraction " + quoted(written) + " is no exact decimal number",
                       "write the number with as many digits as are meant, such as `0.333`");
  }
  amount.number = *quotient;
  return true;
}

std::size_t code_end(std::string_view text, std::size_t at) {
  while (at < text.size()) {
    char c = text[at];
    bool plain = digit_at(text, at) || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
    bool micro = text.substr(at).starts_with("\u00B5") || text.substr(at).starts_with("\u03BC");
    if (!plain && !micro) break;
    at += plain ? 1 : 2;
  }
  return at;
}

// `10uF` is a number with its unit although it has the shape of a code.
bool plain_unit(const Reader& reader, std::string_view token) {
  std::size_t digits = token.find_first_not_of("0123456789");
  auto unit = digits == std::string_view::npos ? std::nullopt : parse_unit(token.substr(digits));
  return unit && unit->dimension == reader.expected;
}

bool follows_code(std::string_view text, std::size_t at) {
  if (at >= text.size()) return true;
  if (text[at] == '.') return text.substr(at).starts_with("..");
  return text[at] != '/' && text[at] != '%' && text[at] != '*' && text[at] != '^';
}

std::optional<Amount> read_code(Reader& reader) {
  bool farads = reader.expected == dimension::capacitance;
  if (reader.in_condition || (!farads && reader.expected != dimension::resistance)) return std::nullopt;
  std::size_t end = code_end(reader.text, reader.at);
  std::string_view token = reader.text.substr(reader.at, end - reader.at);
  auto code = read_value_code(token, farads ? CodedThing::capacitance : CodedThing::resistance);
  if (!code || plain_unit(reader, token) || !follows_code(reader.text, end)) return std::nullopt;
  // `10nJ` could be nanojoule: a tolerance letter counts only after a digit.
  if (code->tolerance_letter && !digit_at(token, token.size() - 2)) return std::nullopt;
  Amount amount{code->si, reader.at, token.size()};
  amount.coded = true;
  amount.tolerance_letter = code->tolerance_letter;
  reader.at = end;
  return amount;
}

// `R` is the decimal point of ohms, yet some write it for any unit.
bool check_foreign_code(Reader& reader) {
  if (reader.expected != dimension::capacitance || reader.in_condition) return true;
  std::size_t end = code_end(reader.text, reader.at);
  std::string_view token = reader.text.substr(reader.at, end - reader.at);
  if (!read_value_code(token, CodedThing::resistance) || token.find('R') == std::string_view::npos) return true;
  return reader.fail(reader.at, token.size(), "the code " + quoted(token) + " has the letter of ohms",
                     "write the capacitance with its unit, such as `4.7 uF` or `4.7 pF`");
}

// Among limits, `min` is the unit minute unless a number follows: `typ 2 min 1 max 3 V`.
bool limit_follows(const Reader& reader) {
  std::string_view word = limit_word_at(reader.text, reader.at);
  if (word.empty()) return false;
  std::size_t next = reader.at + word.size();
  while (std::size_t length = space_at(reader.text, next)) next += length;
  return word != "min" || (reader.in_limits && number_at(reader.text, next));
}

bool read_unit(Reader& reader, Amount& amount) {
  std::size_t before = reader.at;
  reader.skip_space();
  std::size_t end = unit_end(reader.text, reader.at);
  if (end == reader.at || limit_follows(reader)) {
    reader.at = before;
    return true;
  }
  amount.unit_offset = reader.at;
  amount.unit_length = end - reader.at;
  amount.unit = parse_unit(reader.text.substr(reader.at, amount.unit_length));
  if (!amount.unit) return fail_unknown_unit(reader, amount.unit_offset, amount.unit_length);
  reader.at = end;
  return true;
}

// Kelvin will do for a temperature on the scale.
bool check_unit(Reader& reader, const Amount& amount, Dimension expected) {
  if (!amount.unit) return fail_missing_unit(reader, amount, expected);
  Dimension found = amount.unit->dimension;
  bool kelvin = found == dimension::temperature_difference && expected == dimension::temperature;
  return found == expected || kelvin || fail_other_dimension(reader, amount, expected);
}

bool check_gap(Reader& reader, const Amount& amount) {
  std::size_t next = reader.at;
  while (std::size_t length = space_at(reader.text, next)) next += length;
  if (next == reader.at || !digit_at(reader.text, next)) return true;
  return reader.fail(amount.offset, next + 1 - amount.offset, "two numbers with a space between them",
                     "write one number without spaces inside, such as `10000`");
}

} // namespace

std::optional<Amount> read_amount(Reader& reader) {
  if (auto coded = read_code(reader)) return coded;
  if (!check_foreign_code(reader)) return std::nullopt;
  Amount amount{Decimal{}, reader.at};
  auto number = read_number(reader);
  if (!number) return std::nullopt;
  amount.number = *number;
  amount.length = reader.at - amount.offset;
  if (!read_fraction(reader, amount) || !check_gap(reader, amount) || !read_unit(reader, amount)) return std::nullopt;
  return amount;
}

void share_units(std::span<Amount> amounts) {
  for (std::size_t i = amounts.size(); i-- > 1;) {
    Amount& before = amounts[i - 1];
    if (before.unit || before.coded || !amounts[i].unit) continue;
    before.unit = amounts[i].unit;
    before.unit_offset = amounts[i].unit_offset;
    before.unit_length = amounts[i].unit_length;
  }
}

std::optional<Decimal> to_si(Reader& reader, const Amount& amount, Dimension expected) {
  if (amount.coded) return amount.number;
  if (!amount.unit && expected == dimension::none) return amount.number;
  if (!check_unit(reader, amount, expected)) return std::nullopt;
  bool scale = expected == dimension::temperature;
  const Decimal absolute_zero = Decimal::make(-27315, -2).value_or(Decimal{});
  auto si = multiply(amount.number, amount.unit->factor);
  if (si && scale && amount.unit->dimension != expected) si = add(*si, absolute_zero);
  if (!si) {
    reader.fail(amount.offset, amount.length, "the number is too large or too long", "write fewer digits");
  } else if (scale && less(*si, absolute_zero)) {
    reader.fail(amount.offset, amount.length, "a temperature below absolute zero", "check the number and its unit");
    return std::nullopt;
  }
  return si;
}

} // namespace benchlore
