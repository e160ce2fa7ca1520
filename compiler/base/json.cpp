// A JSON writer that keeps one character a level and puts the commas itself.
#include "base/json.h"

#include "base/text.h"

#include <cmath>
#include <cstdio>
#include <cstdlib>

namespace benchlore {

namespace {

void append_escape(std::string& out, char32_t point) {
  char buffer[8];
  std::snprintf(buffer, sizeof buffer, "\\u%04x", static_cast<unsigned>(point) & 0xFFFFu);
  out += buffer;
}

// What may end a script element or a JavaScript string line, or is not allowed raw in JSON.
bool needs_escape(char32_t point) {
  return point < 0x20 || point == '<' || point == '>' || point == '&' || point == 0x7F || point == 0x2028 ||
         point == 0x2029;
}

char short_escape(char32_t point) {
  switch (point) {
  case '"':
    return '"';
  case '\\':
    return '\\';
  case '\n':
    return 'n';
  case '\r':
    return 'r';
  case '\t':
    return 't';
  default:
    return 0;
  }
}

} // namespace

std::string json_escape(std::string_view text) {
  std::string out;
  out.reserve(text.size());
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t begin = at;
    const char32_t point = next_point(text, at);
    if (const char letter = short_escape(point)) {
      (out += '\\') += letter;
    } else if (point == bad_point) {
      out += "\xEF\xBF\xBD";
    } else if (needs_escape(point)) {
      append_escape(out, point);
    } else {
      out += text.substr(begin, at - begin);
    }
  }
  return out;
}

void JsonWriter::separate() {
  if (!first_ && !after_key_) out_ += ',';
  first_ = false;
  after_key_ = false;
}

void JsonWriter::object() {
  separate();
  out_ += '{';
  open_ += '{';
  first_ = true;
}

void JsonWriter::list() {
  separate();
  out_ += '[';
  open_ += '[';
  first_ = true;
}

void JsonWriter::end() {
  if (open_.empty()) return;
  out_ += open_.back() == '{' ? '}' : ']';
  open_.pop_back();
  first_ = false;
}

void JsonWriter::key(std::string_view name) {
  value(name);
  out_ += ':';
  after_key_ = true;
}

void JsonWriter::value(std::string_view text) {
  separate();
  out_ += '"';
  out_ += json_escape(text);
  out_ += '"';
}

void JsonWriter::value(double number) {
  if (!std::isfinite(number)) return null();
  separate();
  char buffer[40];
  std::snprintf(buffer, sizeof buffer, "%.15g", number);
  if (std::strtod(buffer, nullptr) != number) std::snprintf(buffer, sizeof buffer, "%.17g", number);
  out_ += buffer;
}

void JsonWriter::value(long long number) {
  separate();
  out_ += std::to_string(number);
}

void JsonWriter::value(bool flag) {
  separate();
  out_ += flag ? "true" : "false";
}

void JsonWriter::value(const std::vector<std::string>& texts) {
  list();
  for (const std::string& text : texts) value(std::string_view(text));
  end();
}

void JsonWriter::null() {
  separate();
  out_ += "null";
}

} // namespace benchlore
