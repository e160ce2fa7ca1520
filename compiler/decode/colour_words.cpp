// Names of colours in a text. Slashes, commas and hyphens part words too; `dot`, `band` and `bands` may stand beside
// them.
#include "decode/families.h"

#include "base/text.h"

#include <algorithm>
#include <array>
#include <utility>

namespace benchlore {
namespace {

constexpr auto spellings = std::to_array<std::pair<std::string_view, std::string_view>>({{"black", "black"},
                                                                                         {"brown", "brown"},
                                                                                         {"red", "red"},
                                                                                         {"orange", "orange"},
                                                                                         {"yellow", "yellow"},
                                                                                         {"green", "green"},
                                                                                         {"blue", "blue"},
                                                                                         {"violet", "violet"},
                                                                                         {"purple", "violet"},
                                                                                         {"grey", "grey"},
                                                                                         {"gray", "grey"},
                                                                                         {"white", "white"},
                                                                                         {"gold", "gold"},
                                                                                         {"silver", "silver"},
                                                                                         {"pink", "pink"},
                                                                                         {"none", "none"}});

std::string_view canonical(std::string_view word) {
  for (const auto& [spelling, name] : spellings) {
    if (spelling == word) return name;
  }
  return "";
}

bool parts_words(char c) { return c == '/' || c == ',' || c == '-' || c == ' ' || (c >= '\t' && c <= '\r'); }

} // namespace

std::optional<ColourWords> colour_words(std::string_view text) {
  std::string spaced = lower(text);
  std::replace_if(spaced.begin(), spaced.end(), parts_words, ' ');
  ColourWords found;
  for (std::string_view word : split(spaced, ' ')) {
    if (word.empty() || word == "band" || word == "bands") continue;
    if (word == "dot") {
      found.dot = true;
      continue;
    }
    const std::string_view name = canonical(word);
    if (name.empty()) return std::nullopt;
    found.names.push_back(name);
  }
  if (found.names.empty()) return std::nullopt;
  return found;
}

} // namespace benchlore
