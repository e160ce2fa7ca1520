// The whole text of a quantity: checks that hold for all of it, the value, then its test conditions.
#include "base/text.h"
#include "quantity/reader.h"

namespace benchlore {
namespace {

bool check_encoding(Reader& reader) {
  for (std::size_t at = 0; at < reader.text.size();) {
    std::size_t begin = at;
    if (next_point(reader.text, at) == bad_point) {
      return reader.fail(begin, 1, "a byte that is no UTF-8", "save the file as UTF-8 and write the sign again");
    }
  }
  return true;
}

std::string_view number_around(std::string_view text, std::size_t comma) {
  std::size_t begin = comma;
  while (begin > 0 && digit_at(text, begin - 1)) --begin;
  std::size_t end = comma + 1;
  while (digit_at(text, end)) ++end;
  return text.substr(begin, end - begin);
}

// The value with a point, and with nothing, where three digits behind the comma leave open what was meant.
bool fail_comma(Reader& reader, std::size_t comma) {
  std::string_view number = number_around(reader.text, comma);
  std::size_t whole = number.find(',');
  std::string before(number.substr(0, whole));
  std::string after(number.substr(whole + 1));
  std::size_t offset = comma - whole;
  bool first = offset == 0 && number.size() < 20;
  std::string unit = first ? std::string(trim(reader.text.substr(number.size(), 12))) : std::string();
  bool simple = parse_unit(unit).has_value();
  std::string tail = simple ? " " + unit : "";
  std::string way_out = "write " + quoted(before + "." + after + tail);
  if (after.size() == 3)
    way_out = "write " + quoted(before + after + tail) + " or " + quoted(before + "." + after + tail);
  return reader.fail(comma, 1, "a decimal comma", std::move(way_out));
}

bool check_commas(Reader& reader) {
  for (std::size_t at = 1; at + 1 < reader.text.size(); ++at) {
    if (reader.text[at] != ',' || !digit_at(reader.text, at - 1) || !digit_at(reader.text, at + 1)) continue;
    return fail_comma(reader, at);
  }
  return true;
}

bool fail_leftover(Reader& reader) {
  std::size_t offset = reader.at;
  std::string_view left = reader.rest();
  std::string_view word = limit_word_at(reader.text, offset);
  if (!word.empty()) {
    return reader.fail(offset, word.size(), quoted(word) + " behind the value",
                       "write " + quoted(word) + " before the number");
  }
  bool dash = left.starts_with("\u2013") || left.starts_with("\u2014") || left.starts_with("…");
  return reader.fail(offset, left.size(), "leftover text " + quoted(left),
                     dash ? "write a range with two dots, such as `10..20 V`"
                          : "write one value, and test conditions after `@`");
}

bool check_not_empty(Reader& reader) {
  reader.skip_space();
  if (!reader.done()) return true;
  std::string example = reader.expected == dimension::none ? "0.5" : "10 " + units_for(reader.expected)[0];
  return reader.fail(0, reader.text.size(), "no value", "write a value such as `" + example + "`");
}

bool read_all(Reader& reader, Quantity& quantity) {
  if (!check_text(reader) || !check_not_empty(reader) || !read_forms(reader, quantity)) return false;
  if (!check_rest(reader)) return false;
  return !reader.take("@") || read_conditions(reader, quantity);
}

} // namespace

bool check_rest(Reader& reader) {
  reader.skip_space();
  return reader.done() || reader.rest().starts_with("@") || fail_leftover(reader);
}

bool check_text(Reader& reader) { return check_encoding(reader) && check_commas(reader); }

QuantityResult parse_quantity(std::string_view text, Dimension expected) {
  Reader reader{text, expected};
  Quantity quantity;
  quantity.dimension = expected;
  if (read_all(reader, quantity)) return {std::move(quantity), std::nullopt};
  reader.fail(reader.at, 0, "no value", "write one value"); // keeps the first error when there is one
  return {std::nullopt, std::move(reader.error)};
}

} // namespace benchlore
