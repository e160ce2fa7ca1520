// Cuts sorted entries into files of even size.
#include "emit/site/shards.h"

#include "base/json.h"

namespace benchlore {
namespace {

constexpr std::size_t shard_bytes = 32 * 1024;

std::string utf8(std::uint32_t point) {
  auto byte = [](std::uint32_t bits) { return static_cast<char>(static_cast<unsigned char>(bits)); };
  if (point < 0x80) return {byte(point)};
  if (point < 0x800) return {byte(0xC0 | point >> 6), byte(0x80 | (point & 0x3F))};
  return {byte(0xE0 | point >> 12), byte(0x80 | (point >> 6 & 0x3F)), byte(0x80 | (point & 0x3F))};
}

std::string quoted(std::string_view text) { return "\"" + json_escape(text) + "\""; }

std::string joined(const std::vector<ShardEntry>& entries, std::size_t begin, std::size_t end, ShardJoin join) {
  std::string out(join == ShardJoin::object ? "{" : "\"");
  for (std::size_t i = begin; i < end; ++i) {
    if (join == ShardJoin::object) out += (i > begin ? ",\n" : "") + quoted(entries[i].key) + ":";
    out += entries[i].bytes;
  }
  return out + (join == ShardJoin::object ? "}" : "\"");
}

} // namespace

std::string as_code_point(std::uint32_t value) {
  if (value > 60000) return "!" + as_code_point(value >> 15) + as_code_point(value & 0x7FFF);
  std::uint32_t point = value + 35;
  if (point >= 0x5C) ++point;
  if (point >= 0xD800) point += 0x800;
  return utf8(point);
}

ShardFiles write_shards(std::string_view name, const std::vector<ShardEntry>& entries, ShardJoin join, Files& out) {
  ShardFiles files;
  for (std::size_t begin = 0; begin < entries.size();) {
    std::size_t end = begin, size = 0;
    for (; end < entries.size() && (end == begin || size + entries[end].bytes.size() <= shard_bytes); ++end)
      size += entries[end].bytes.size() + (join == ShardJoin::object ? entries[end].key.size() + 6 : 0);
    std::string number = std::to_string(files.first_keys.size());
    files.first_keys.push_back(entries[begin].key);
    std::string script =
        "benchloreData(" + quoted(std::string(name) + "/" + number) + "," + joined(entries, begin, end, join) + ");\n";
    files.written = out.write("data/" + std::string(name) + "/" + number + ".js", script) && files.written;
    begin = end;
  }
  return files;
}

} // namespace benchlore
