// Escapes for text, attributes and addresses.
#include "notes/html_text.h"

#include "notes/body.h"

namespace benchlore {

std::string html_escaped(std::string_view text) {
  std::string out;
  for (char c : without_bidi(text)) {
    switch (c) {
    case '&':
      out += "&amp;";
      break;
    case '<':
      out += "&lt;";
      break;
    case '>':
      out += "&gt;";
      break;
    case '"':
      out += "&quot;";
      break;
    default:
      out += c;
    }
  }
  return out;
}

std::string href_escaped(std::string_view address) {
  constexpr std::string_view kept = "!#$%()*+,-./:;=?@_~";
  constexpr char digits[] = "0123456789ABCDEF";
  std::string out;
  for (char c : address) {
    const auto byte = static_cast<unsigned char>(c);
    const bool plain = (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
    if (plain || kept.find(c) != std::string_view::npos) {
      out += c;
    } else if (c == '&') {
      out += "&amp;";
    } else if (c == '\'') {
      out += "&#x27;";
    } else {
      ((out += '%') += digits[byte >> 4]) += digits[byte & 15];
    }
  }
  return out;
}

} // namespace benchlore
