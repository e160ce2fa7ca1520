// Destinations of links: what sort they are, where a relative one leads, and its path and anchor.
#include "notes/links.h"

#include "base/text.h"

namespace benchlore {
namespace {

int hex(char c) {
  if (c >= '0' && c <= '9') return c - '0';
  const char small = static_cast<char>(c | 0x20);
  return small >= 'a' && small <= 'f' ? small - 'a' + 10 : -1;
}

std::string percent_decoded(std::string_view text) {
  std::string out;
  for (std::size_t at = 0; at < text.size(); ++at) {
    const bool code = text[at] == '%' && at + 2 < text.size() && hex(text[at + 1]) >= 0 && hex(text[at + 2]) >= 0;
    out += code ? static_cast<char>(hex(text[at + 1]) * 16 + hex(text[at + 2])) : text[at];
    if (code) at += 2;
  }
  return out;
}

bool scheme_sign(char c) {
  return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '+' || c == '-' || c == '.';
}

} // namespace

std::string scheme_of(std::string_view raw) {
  std::string scheme;
  for (char c : raw) {
    if (static_cast<unsigned char>(c) <= 0x20) continue; // browsers skip these before they look for a scheme
    if (c == ':') return scheme;
    scheme += lower(std::string_view(&c, 1));
    if (!scheme_sign(scheme.back())) return {};
  }
  return {};
}

LinkSort link_sort(std::string_view raw) {
  const std::string scheme = scheme_of(raw);
  if (scheme == "http" || scheme == "https" || scheme == "mailto") return LinkSort::outward;
  return scheme.empty() ? LinkSort::relative : LinkSort::refused;
}

std::optional<std::string> link_path(std::string_view from, std::string_view target) {
  if (target.starts_with('/') || target.starts_with('\\') || target.find('\0') != std::string_view::npos)
    return std::nullopt;
  std::vector<std::string> parts;
  for (std::string_view part : split(from, '/')) parts.emplace_back(part);
  if (!target.empty()) parts.pop_back();
  for (std::string_view part : split(target, '/')) {
    if (part.empty() || part == ".") continue;
    if (part != "..") {
      parts.emplace_back(part);
    } else if (parts.empty()) {
      return std::nullopt;
    } else {
      parts.pop_back();
    }
  }
  return join(parts, "/");
}

BodyLink body_link(std::string_view raw, bool image, Span span) {
  BodyLink link;
  link.raw = raw;
  link.image = image;
  link.span = span;
  if (link_sort(raw) != LinkSort::relative) {
    link.target = raw;
    return link;
  }
  const std::size_t mark = raw.find('#');
  link.target = percent_decoded(raw.substr(0, mark));
  if (mark != std::string_view::npos) link.anchor = percent_decoded(raw.substr(mark + 1));
  return link;
}

} // namespace benchlore
