// Test conditions after `@`, with commas between them: a value (`100 kHz`, `10..20 V`), a name and a value
// (`IC 4 A`, `f = 1 kHz`), or a name alone (`case`).
#include "base/text.h"
#include "quantity/reader.h"

namespace benchlore {
namespace {

// Signs of ASCII that stand in names such as `VCE(sat)`, `IC/IB`, `T_case`, `half-sine`.
bool name_sign(char c) { return std::string_view("()/_-+.'&").find(c) != std::string_view::npos; }

std::size_t name_piece_at(std::string_view text, std::size_t at) {
  char c = text[at];
  if ((c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || name_sign(c)) return 1;
  if (static_cast<unsigned char>(c) < 0x80 || space_at(text, at) > 0) return 0;
  std::size_t next = at;
  next_point(text, next);
  return next - at;
}

// Words up to the first that begins like a number.
std::string read_name(Reader& reader) {
  std::string name;
  while (!reader.done() && !number_at(reader.text, reader.at)) {
    std::size_t begin = reader.at;
    while (!reader.done()) {
      std::size_t length = name_piece_at(reader.text, reader.at);
      if (length == 0) break;
      reader.at += length;
    }
    if (reader.at == begin) break;
    if (!name.empty()) name += ' ';
    name += reader.text.substr(begin, reader.at - begin);
    reader.skip_space();
  }
  return name;
}

bool at_item_end(const Reader& reader) { return reader.done() || reader.rest().starts_with(","); }

bool fail_no_unit(Reader& reader, const Amount& amount) {
  std::string number = quoted(reader.text.substr(amount.offset, amount.length));
  return reader.fail(amount.offset, amount.length, "the number " + number + " has no unit",
                     "write the condition with its unit, such as `4 A` or `50 %`");
}

bool read_condition_value(Reader& reader, Quantity& value) {
  auto amount = read_amount(reader);
  if (!amount) return false;
  std::size_t after = reader.at;
  reader.skip_space();
  if (reader.rest().starts_with("..")) {
    // The unit at the end of the range decides, so look ahead without keeping what was read.
    Reader ahead = reader;
    ahead.take("..");
    ahead.skip_space();
    auto last = read_amount(ahead);
    if (last && !last->unit) return fail_no_unit(reader, *last);
    value.dimension = last ? last->unit->dimension : dimension::none;
    return read_range_end(reader, *amount, value.dimension, value);
  }
  reader.at = after;
  if (!amount->unit) return fail_no_unit(reader, *amount);
  value.dimension = amount->unit->dimension;
  value.nominal = to_si(reader, *amount, value.dimension);
  return value.nominal.has_value();
}

// `IC4 A` was meant as `IC 4 A`.
bool hides_value(std::string_view name) {
  std::size_t space = name.rfind(' ');
  if (space == std::string_view::npos || space == 0) return false;
  return digit_at(name, space - 1) && parse_unit(name.substr(space + 1)).has_value();
}

bool check_name(Reader& reader, std::size_t begin, const std::string& name) {
  if (hides_value(name)) {
    return reader.fail(begin, reader.at - begin, "the number in " + quoted(name) + " is part of the name",
                       "write a space between the name and the number, such as `IC 4 A`");
  }
  if (name.empty() || limit_word_at(name, 0).empty()) return true;
  return reader.fail(begin, 3, "a limit in a test condition", "write one value or a range such as `10..20 V`");
}

bool fail_leftover(Reader& reader) {
  std::size_t end = reader.text.find(',', reader.at);
  std::size_t length = (end == std::string_view::npos ? reader.text.size() : end) - reader.at;
  return reader.fail(reader.at, length, "leftover text " + quoted(reader.text.substr(reader.at, length)),
                     "write conditions such as `@ 100 kHz, IC 4 A, case`");
}

bool read_optional_value(Reader& reader, Condition& condition) {
  bool equals = !condition.name.empty() && reader.take("=");
  reader.skip_space();
  if (!equals && !number_at(reader.text, reader.at)) return true;
  Quantity value;
  if (!read_condition_value(reader, value)) return false;
  condition.value = value;
  reader.skip_space();
  return true;
}

bool read_condition(Reader& reader, Quantity& quantity) {
  reader.skip_space();
  std::size_t begin = reader.at;
  Condition condition;
  condition.name = read_name(reader);
  if (!check_name(reader, begin, condition.name)) return false;
  if (condition.name.empty() && at_item_end(reader)) {
    return reader.fail(reader.at, reader.done() ? 0 : 1, "no condition", "write a condition such as `100 kHz`");
  }
  if (!read_optional_value(reader, condition)) return false;
  if (!at_item_end(reader)) return fail_leftover(reader);
  quantity.at.push_back(condition);
  return true;
}

} // namespace

bool read_conditions(Reader& reader, Quantity& quantity) {
  reader.in_condition = true;
  do {
    if (!read_condition(reader, quantity)) return false;
  } while (reader.take(","));
  return true;
}

} // namespace benchlore
