// Names of pages. Nothing from a note reaches the disk without passing through safe_name().
#include "emit/site/paths.h"

#include "base/text.h"

#include <algorithm>
#include <array>
#include <cstdint>

namespace benchlore {
namespace {

constexpr std::size_t longest_name = 120;
constexpr std::string_view hex = "0123456789abcdef";
constexpr std::array<std::string_view, 7> pictures{"png", "jpg", "jpeg", "gif", "webp", "svg", "avif"};
constexpr std::array<std::string_view, 5> papers{"pdf", "csv", "txt", "bin", "zip"};

bool plain(char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-'; }

std::string encoded(std::string_view text) {
  std::string out;
  for (char c : text) {
    if (plain(c)) {
      out += c;
      continue;
    }
    auto byte = static_cast<unsigned char>(c);
    out += {'_', hex[byte >> 4], hex[byte & 15]};
  }
  return out;
}

// FNV-1a, 64 bits: tells cut names apart; not meant against an enemy.
std::string digest(std::string_view text) {
  std::uint64_t sum = 0xcbf29ce484222325u;
  for (char c : text) sum = (sum ^ static_cast<unsigned char>(c)) * 0x100000001b3u;
  std::string out;
  for (int shift = 60; shift >= 0; shift -= 4) out += hex[(sum >> shift) & 15];
  return out;
}

// Names that one operating system keeps for its devices.
bool reserved(std::string_view name) {
  static constexpr std::array<std::string_view, 4> words{"con", "prn", "aux", "nul"};
  if (std::find(words.begin(), words.end(), name) != words.end()) return true;
  return name.size() == 4 && (name.starts_with("com") || name.starts_with("lpt"));
}

std::string extension(std::string_view path) {
  std::size_t dot = path.rfind('.');
  return dot == std::string_view::npos ? std::string() : lower(path.substr(dot + 1));
}

template <class List> bool listed(const List& list, std::string_view word) {
  return std::find(list.begin(), list.end(), word) != list.end();
}

} // namespace

std::string safe_name(std::string_view text) {
  std::string out = encoded(text);
  if (out.size() > longest_name) out = out.substr(0, longest_name - 17) + "_" + digest(text);
  if (out.empty() || reserved(out)) out += '_';
  return out;
}

std::string page_path(const Note& note) { return "notes/" + safe_name(note.id) + ".html"; }
std::string kind_path(std::string_view kind) { return "kinds/" + safe_name(kind) + ".html"; }
std::string class_path(std::string_view class_name) { return "classes/" + safe_name(class_name) + ".html"; }
std::string rule_path(std::string_view rule) { return "rules/" + safe_name(rule) + ".html"; }

std::string source_path(const Shop& shop, std::string_view source) {
  if (auto note = shop.find(source)) return page_path(shop.note(*note));
  if (shop.schema->sources.contains(source)) return "rules.html#source_" + safe_name(source);
  return {};
}

std::optional<std::string> attachment_path(std::string_view path) {
  std::string end = extension(path);
  if (!listed(pictures, end) && !listed(papers, end)) return std::nullopt;
  std::string out = "files";
  for (std::string_view piece : split(path.substr(0, path.size() - end.size() - 1), '/')) out += "/" + safe_name(piece);
  return out + "." + end;
}

bool is_picture(std::string_view path) { return listed(pictures, extension(path)); }

} // namespace benchlore
