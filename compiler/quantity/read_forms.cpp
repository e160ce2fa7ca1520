// The three forms of a value: limits (`min 1 typ 2 max 3 V`), a range (`1..3 V`), a nominal value with or without
// a tolerance.
#include "quantity/reader.h"

#include <array>

namespace benchlore {
namespace {

struct Limits {
  std::vector<Amount> amounts; // in the order written
  std::vector<std::string_view> words;
};

bool take_limit_word(Reader& reader, Limits& limits) {
  std::string_view word = limit_word_at(reader.text, reader.at);
  for (std::string_view before : limits.words) {
    if (before == word) return reader.fail(reader.at, word.size(), quoted(word) + " stands twice", "leave one out");
  }
  limits.words.push_back(word);
  reader.at += word.size();
  if (reader.rest().starts_with(".") && !digit_at(reader.text, reader.at + 1)) reader.take(".");
  reader.skip_space();
  return true;
}

bool read_limit(Reader& reader, Limits& limits) {
  if (!take_limit_word(reader, limits)) return false;
  auto amount = read_amount(reader);
  if (!amount) return false;
  if (amount->tolerance_letter) {
    return reader.fail(amount->offset + amount->length - 1, 1, "a tolerance letter at a limit",
                       "write the limit without it");
  }
  limits.amounts.push_back(*amount);
  return true;
}

bool store_limits(Reader& reader, const Limits& limits, Quantity& quantity) {
  for (std::size_t i = 0; i < limits.words.size(); ++i) {
    auto si = to_si(reader, limits.amounts[i], quantity.dimension);
    if (!si) return false;
    if (limits.words[i] == "min") quantity.minimum = si;
    if (limits.words[i] == "typ") quantity.typical = si;
    if (limits.words[i] == "max") quantity.maximum = si;
  }
  return true;
}

bool above(const std::optional<Decimal>& a, const std::optional<Decimal>& b) { return a && b && less(*b, *a); }

bool check_order(Reader& reader, std::size_t begin, const Quantity& quantity) {
  std::string found;
  if (above(quantity.minimum, quantity.maximum)) {
    found = "the minimum is above the maximum";
  } else if (above(quantity.minimum, quantity.typical)) {
    found = "the minimum is above the typical value";
  } else if (above(quantity.typical, quantity.maximum)) {
    found = "the typical value is above the maximum";
  }
  if (found.empty()) return true;
  return reader.fail(begin, reader.at - begin, found, "check the numbers and their units");
}

bool read_limits(Reader& reader, Quantity& quantity) {
  std::size_t begin = reader.at;
  std::size_t end = begin;
  Limits limits;
  reader.in_limits = true;
  while (!limit_word_at(reader.text, reader.at).empty()) {
    if (!read_limit(reader, limits)) return false;
    end = reader.at;
    reader.skip_space();
  }
  reader.in_limits = false;
  reader.at = end;
  share_units(limits.amounts);
  return store_limits(reader, limits, quantity) && check_order(reader, begin, quantity);
}

bool range_sign_at(const Reader& reader) {
  std::size_t next = reader.at;
  while (std::size_t length = space_at(reader.text, next)) next += length;
  return reader.text.substr(next).starts_with("..");
}

bool read_nominal(Reader& reader, Amount amount, Quantity& quantity) {
  if (!read_tolerance(reader, amount, quantity) || !check_rest(reader)) return false;
  quantity.nominal = to_si(reader, amount, quantity.dimension);
  return quantity.nominal && apply_tolerance_letter(reader, amount, quantity);
}

// `<`, `≤`, `>`, `≥`, `~` are read in different ways by different people.
bool check_first_sign(Reader& reader) {
  constexpr std::array<std::string_view, 8> signs{"<=", ">=", "<", ">", "≤", "≥", "~", "≈"};
  for (std::string_view sign : signs) {
    if (!reader.rest().starts_with(sign)) continue;
    return reader.fail(reader.at, sign.size(), "the sign " + quoted(sign) + " before a value",
                       "write `min`, `typ` or `max` before the number");
  }
  return true;
}

} // namespace

bool read_range_end(Reader& reader, Amount first, Dimension expected, Quantity& quantity) {
  std::size_t begin = first.offset;
  reader.skip_space();
  std::size_t sign = reader.at;
  reader.take("..");
  if (reader.rest().starts_with(".")) {
    return reader.fail(sign, 3, "three dots between two numbers", "write two dots, such as `10..20 V`");
  }
  reader.skip_space();
  auto last = read_amount(reader);
  if (!last) return false;
  if (first.tolerance_letter || last->tolerance_letter) {
    return reader.fail(begin, reader.at - begin, "a tolerance letter in a range", "write the range without it");
  }
  std::array<Amount, 2> both{first, *last};
  share_units(both);
  quantity.range = true;
  quantity.minimum = to_si(reader, both[0], expected);
  quantity.maximum = quantity.minimum ? to_si(reader, both[1], expected) : std::nullopt;
  return quantity.maximum && check_order(reader, begin, quantity);
}

bool read_forms(Reader& reader, Quantity& quantity) {
  if (!check_first_sign(reader)) return false;
  if (!limit_word_at(reader.text, reader.at).empty()) return read_limits(reader, quantity);
  auto amount = read_amount(reader);
  if (!amount) return false;
  if (range_sign_at(reader)) return read_range_end(reader, *amount, quantity.dimension, quantity);
  return read_nominal(reader, *amount, quantity);
}

} // namespace benchlore
