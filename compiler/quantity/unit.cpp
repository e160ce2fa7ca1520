// Unit expressions: factors joined by `*`, `·` or `/`, each a symbol of the table with at most one prefix and an
// exponent (`2`, `²`, `^-1`). The whole text must be understood; nothing is guessed from case or likeness.
#include "quantity/unit.h"

#include <array>
#include <utility>

namespace benchlore {
namespace {

constexpr int factor_limit = 6; // the exponents of a dimension have eight bits
constexpr int exponent_limit = 4;

struct Factor {
  std::string_view symbol;
  int exponent = 1;
};

struct Prefix {
  std::string_view text;
  char letter;
  int power;
};

constexpr std::array<Prefix, 12> prefixes{{{"f", 'f', -15},
                                           {"p", 'p', -12},
                                           {"n", 'n', -9},
                                           {"u", 'u', -6},
                                           {"\u00B5", 'u', -6},
                                           {"\u03BC", 'u', -6},
                                           {"m", 'm', -3},
                                           {"c", 'c', -2},
                                           {"k", 'k', 3},
                                           {"M", 'M', 6},
                                           {"G", 'G', 9},
                                           {"T", 'T', 12}}};

std::optional<Unit> with_prefix(std::string_view text, const Prefix& prefix) {
  if (!text.starts_with(prefix.text)) return std::nullopt;
  for (const UnitRow& row : units()) {
    if (row.symbol != text.substr(prefix.text.size())) continue;
    if (row.prefixes.find(prefix.letter) == std::string_view::npos) continue;
    auto power = Decimal::make(1, prefix.power);
    auto factor = power ? multiply(row.factor, *power) : std::nullopt;
    if (factor) return Unit{row.dimension, *factor};
  }
  return std::nullopt;
}

std::optional<Unit> simple_unit(std::string_view symbol) {
  for (const UnitRow& row : units()) {
    if (row.symbol == symbol) return Unit{row.dimension, row.factor};
  }
  for (const Prefix& prefix : prefixes) {
    if (auto unit = with_prefix(symbol, prefix)) return unit;
  }
  return std::nullopt;
}

// `s^-3`, `m²`, `A2`: the exponent at the end is cut off the symbol.
Factor split_exponent(std::string_view text) {
  constexpr std::array<std::pair<std::string_view, int>, 10> endings{{{"^-1", -1},
                                                                      {"^-2", -2},
                                                                      {"^-3", -3},
                                                                      {"^-4", -4},
                                                                      {"^2", 2},
                                                                      {"^3", 3},
                                                                      {"^4", 4},
                                                                      {"²", 2},
                                                                      {"³", 3},
                                                                      {"2", 2}}};
  for (const auto& [ending, exponent] : endings) {
    if (text.ends_with(ending)) return {text.substr(0, text.size() - ending.size()), exponent};
  }
  if (text.ends_with("3")) return {text.substr(0, text.size() - 1), 3};
  return {text, 1};
}

bool apply(Unit& product, Unit factor, int exponent) {
  for (int i = 0; i < (exponent < 0 ? -exponent : exponent); ++i) {
    auto number = exponent < 0 ? divide(product.factor, factor.factor) : multiply(product.factor, factor.factor);
    if (!number) return false;
    product.factor = *number;
    product.dimension = exponent < 0 ? product.dimension / factor.dimension : product.dimension * factor.dimension;
  }
  return true;
}

std::optional<Unit> parse_factor(std::string_view text, bool below, bool alone) {
  Factor factor{text, 1};
  auto unit = simple_unit(text);
  if (!unit) {
    factor = split_exponent(text);
    unit = simple_unit(factor.symbol);
  }
  if (!unit || factor.exponent > exponent_limit) return std::nullopt;
  // Within a product only a difference of temperatures makes sense: `ppm/°C` is `ppm/K`.
  bool scale = unit->dimension == dimension::temperature;
  if (scale && !(alone && factor.exponent == 1)) unit->dimension = dimension::temperature_difference;
  Unit result{dimension::none, Decimal::make(1, 0).value_or(Decimal{})};
  if (!apply(result, *unit, below ? -factor.exponent : factor.exponent)) return std::nullopt;
  return result;
}

// The end of the factor that begins at `begin`, and the length of the sign after it.
std::pair<std::size_t, std::size_t> factor_end(std::string_view text, std::size_t begin) {
  constexpr std::array<std::string_view, 4> signs{"/", "*", "·", "\u22C5"};
  for (std::size_t at = begin; at < text.size(); ++at) {
    for (std::string_view sign : signs) {
      if (text.substr(at).starts_with(sign)) return {at, sign.size()};
    }
  }
  return {text.size(), 0};
}

} // namespace

std::optional<Unit> parse_unit(std::string_view text) {
  Unit product{dimension::none, Decimal::make(1, 0).value_or(Decimal{})};
  bool below = false;
  std::size_t begin = 0;
  for (int count = 0; count < factor_limit; ++count) {
    auto [end, sign] = factor_end(text, begin);
    bool alone = begin == 0 && sign == 0;
    auto factor = parse_factor(text.substr(begin, end - begin), below, alone);
    if (!factor || !apply(product, *factor, 1)) return std::nullopt;
    if (sign == 0) return product;
    below = text[end] == '/';
    begin = end + sign;
  }
  return std::nullopt;
}

} // namespace benchlore
