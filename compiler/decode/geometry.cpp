// The geometry of a drive with sectors of 512 bytes: cylinders, heads and sectors for each track.
// source: arithmetic; the limits are those of the ATA identify words and of a drive controller's registers, from
// memory.
#include "decode/families.h"

#include "base/text.h"

#include <cstdio>

namespace benchlore {
namespace {

constexpr std::int64_t bytes_in_sector = 512;

struct Geometry {
  std::int64_t cylinders = 0, heads = 0, sectors = 0;
};

// `615x4x17` and the sign × are read as `615/4/17` is.
std::string with_slashes(std::string_view text) {
  std::string result;
  for (std::size_t at = 0; at < text.size();) {
    const char32_t point = next_point(text, at);
    if (point == 'x' || point == 'X' || point == '*' || point == 0xD7) {
      result += '/';
    } else if (point < 0x80) {
      result += static_cast<char>(point);
    } else {
      return "";
    }
  }
  return result;
}

std::optional<std::int64_t> number_up_to(std::string_view text, std::int64_t most) {
  if (!all_digits(text) || text.size() > 5) return std::nullopt;
  std::int64_t number = 0;
  for (char c : text) number = 10 * number + (c - '0');
  return number >= 1 && number <= most ? std::optional(number) : std::nullopt;
}

std::optional<Geometry> geometry_of(std::string_view text) {
  const std::string slashes = with_slashes(text);
  const auto pieces = split(slashes, '/');
  if (pieces.size() != 3) return std::nullopt;
  const auto cylinders = number_up_to(pieces[0], 65535), heads = number_up_to(pieces[1], 256),
             sectors = number_up_to(pieces[2], 255);
  if (!cylinders || !heads || !sectors) return std::nullopt;
  return Geometry{*cylinders, *heads, *sectors};
}

std::string capacity_text(std::int64_t bytes) {
  std::array<char, 48> text{};
  std::snprintf(text.data(), text.size(), "%lld bytes (%.2f MiB)", static_cast<long long>(bytes),
                static_cast<double>(bytes) / 1048576.0);
  for (char& c : text) {
    if (c == ',') c = '.'; // a locale may have put it there
  }
  return text.data();
}

} // namespace

void read_geometry(std::string_view text, Drafts& out) {
  const auto drive = geometry_of(text);
  if (!drive) return;
  const std::int64_t bytes = drive->cylinders * drive->heads * drive->sectors * bytes_in_sector;
  const bool usual = drive->cylinders >= 100 && drive->heads <= 16 && drive->sectors >= 8 && drive->sectors <= 63;
  Draft draft = rating_draft("drive geometry", decimal(8 * bytes), dimension::information, usual ? 80 : rank_seldom,
                             "cylinders times heads times sectors for each track times 512 bytes");
  draft.facts = {"drive of " + std::to_string(drive->cylinders) + " cylinders, " + std::to_string(drive->heads) +
                     " heads and " + std::to_string(drive->sectors) + " sectors of 512 bytes",
                 capacity_text(bytes)};
  if (!usual) add_reason(draft, "no usual geometry: it may be a date or a size");
  out.push_back(std::move(draft));
}

} // namespace benchlore
