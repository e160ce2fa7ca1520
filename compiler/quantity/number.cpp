// The text of one number: sign, digits, point, power of ten; what does not fit a decimal is refused, never rounded.
#include "quantity/reader.h"

namespace benchlore {
namespace {

bool fail_no_number(Reader& reader) {
  std::size_t length = unit_end(reader.text, reader.at) - reader.at;
  std::string found = length > 0 ? quoted(reader.rest().substr(0, length)) + " instead of a number" : "no number";
  return reader.fail(reader.at, length, std::move(found), "write a number such as `4.7`");
}

bool fail_size(Reader& reader, std::size_t begin) {
  std::string_view written = reader.text.substr(begin, reader.at - begin);
  return reader.fail(begin, written.size(), "the number " + quoted(written) + " is too large, too small or too long",
                     "write at most 18 digits and an exponent within 60");
}

void take_digits(Reader& reader, std::string& plain) {
  for (; digit_at(reader.text, reader.at); ++reader.at) plain += reader.text[reader.at];
}

void take_sign(Reader& reader, std::string& plain) {
  std::size_t length = sign_at(reader.text, reader.at);
  if (length == 0) return;
  plain += reader.text[reader.at] == '+' ? '+' : '-';
  reader.at += length;
}

void take_power(Reader& reader, std::string& plain) {
  if (reader.done() || (reader.text[reader.at] != 'e' && reader.text[reader.at] != 'E')) return;
  std::size_t sign = sign_at(reader.text, reader.at + 1);
  if (!digit_at(reader.text, reader.at + 1 + sign)) return;
  plain += 'e';
  ++reader.at;
  take_sign(reader, plain);
  take_digits(reader, plain);
}

} // namespace

std::optional<Decimal> read_number(Reader& reader) {
  std::size_t begin = reader.at;
  std::string plain;
  if (!number_at(reader.text, begin)) {
    fail_no_number(reader);
    return std::nullopt;
  }
  take_sign(reader, plain);
  take_digits(reader, plain);
  if (reader.rest().starts_with(".") && digit_at(reader.text, reader.at + 1)) {
    plain += reader.text[reader.at++];
    take_digits(reader, plain);
  }
  take_power(reader, plain);
  auto number = Decimal::parse(plain);
  if (!number) fail_size(reader, begin);
  return number;
}

} // namespace benchlore
