// Data for scripts as many small files that load on demand: a page opened from a memory stick can fetch nothing, but it
// can add a script element. Sorted entries are cut into ranges; the first key of each range goes into one small file.
#pragma once

#include "base/files.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace benchlore {

// A number as one to three UTF-8 bytes: the code point `value + 35`, which steps over the backslash and the surrogates.
// Above 60000: `!`, then the upper part and the lower 15 bits.
std::string as_code_point(std::uint32_t value);

struct ShardEntry {
  std::string key;
  std::string bytes; // of JavaScript or of an encoded text, as `join` needs it
};

enum class ShardJoin {
  object, // `{"key":bytes,…}`
  string, // `"bytes…"`: entries one after the other in one string
};

struct ShardFiles {
  std::vector<std::string> first_keys;
  bool written = true;
};

// Writes `data/NAME/0.js`, `1.js`, …, each about 32 KB, a long entry alone. Entries must be sorted by key.
ShardFiles write_shards(std::string_view name, const std::vector<ShardEntry>& entries, ShardJoin join, Files& out);

} // namespace benchlore
