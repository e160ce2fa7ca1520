// What is said about a unit that is missing, unknown or of another dimension, with what to write instead.
#include "base/text.h"
#include "quantity/reader.h"

#include <array>
#include <utility>

namespace benchlore {
namespace {

std::string write_one_of(const std::vector<std::string>& texts) { return "write " + alternatives(texts); }

// Old markings whose letters do not say which prefix was meant, with what they usually stood for.
std::string_view old_marking(std::string_view text) {
  constexpr std::array<std::pair<std::string_view, std::string_view>, 9> rows{{{"mfd", "`uF` for microfarad"},
                                                                               {"mfds", "`uF` for microfarad"},
                                                                               {"ufd", "`uF` for microfarad"},
                                                                               {"mmfd", "`pF` for picofarad"},
                                                                               {"mmf", "`pF` for picofarad"},
                                                                               {"uufd", "`pF` for picofarad"},
                                                                               {"uuf", "`pF` for picofarad"},
                                                                               {"pfd", "`pF` for picofarad"},
                                                                               {"nfd", "`nF` for nanofarad"}}};
  std::string word = lower(text);
  for (const auto& [marking, meaning] : rows) {
    if (word == marking) return meaning;
  }
  return {};
}

// `Kohm`, `KHz`: kelvin is no prefix. `KB` may count by 1000 or by 1024.
std::string kilo_way_out(std::string_view text) {
  if (!text.starts_with("K")) return {};
  std::string kilo = "k" + std::string(text.substr(1));
  auto unit = parse_unit(kilo);
  if (!unit) return {};
  if (unit->dimension != dimension::information) return "write `" + kilo + "`";
  return "write `" + kilo + "` for 1000 or `Ki" + std::string(text.substr(1)) + "` for 1024";
}

std::vector<std::string> list_units() {
  std::vector<std::string> names;
  for (const UnitRow& row : units()) {
    names.emplace_back(row.symbol);
    for (char prefix : row.prefixes) names.push_back(prefix + std::string(row.symbol));
  }
  return names;
}

const std::vector<std::string>& known_units() {
  static const std::vector<std::string> names = list_units();
  return names;
}

std::string unknown_way_out(const Reader& reader, std::string_view text) {
  if (auto way = old_marking(text); !way.empty()) return "write " + std::string(way);
  if (auto way = kilo_way_out(text); !way.empty()) return way;
  std::string word = lower(text);
  if (word == "to" || word == "bis") return "write a range with two dots, such as `10..20 V`";
  std::vector<std::string> near;
  for (std::string& name : near_names(text, known_units(), 12)) {
    auto unit = parse_unit(name);
    if (reader.in_condition || (unit && unit->dimension == reader.expected)) near.push_back(std::move(name));
  }
  if (near.size() > 4) near.resize(4);
  if (!near.empty()) return write_one_of(near);
  return reader.in_condition ? "write a unit such as `V`, `kHz` or `°C`" : write_one_of(units_for(reader.expected));
}

} // namespace

bool fail_unknown_unit(Reader& reader, std::size_t offset, std::size_t length) {
  std::string_view text = reader.text.substr(offset, length);
  std::string way_out = unknown_way_out(reader, text);
  std::string what = old_marking(text).empty() ? "unknown unit " : "the old marking ";
  return reader.fail(offset, length, what + quoted(text), std::move(way_out));
}

bool fail_missing_unit(Reader& reader, const Amount& amount, Dimension expected) {
  std::string number = quoted(reader.text.substr(amount.offset, amount.length));
  return reader.fail(amount.offset, amount.length, "the number " + number + " has no unit",
                     "write a unit of " + describe(expected) + " behind it: " + alternatives(units_for(expected)));
}

bool fail_other_dimension(Reader& reader, const Amount& amount, Dimension expected) {
  std::string unit = quoted(reader.text.substr(amount.unit_offset, amount.unit_length));
  if (expected == dimension::none) {
    return reader.fail(amount.unit_offset, amount.unit_length, "a pure number has no unit " + unit,
                       "write the number alone, or with `%` or `ppm`");
  }
  Dimension found = amount.unit ? amount.unit->dimension : dimension::none;
  return reader.fail(amount.unit_offset, amount.unit_length,
                     unit + " is a unit of " + describe(found) + ", not of " + describe(expected),
                     write_one_of(units_for(expected)));
}

} // namespace benchlore
