// Dimensions as values and as types: a capacitance times a voltage is a charge, and the compiler knows it.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace benchlore {

// Exponents of the SI base units, and of the bench's countable things that must not be mixed with them.
struct Dimension {
  std::int8_t kilogram = 0;
  std::int8_t metre = 0;
  std::int8_t second = 0;
  std::int8_t ampere = 0;
  std::int8_t kelvin = 0;     // a temperature difference
  std::int8_t celsius = 0;    // a temperature on the scale, in degrees Celsius
  std::int8_t bit = 0;        // information; a byte is 8
  std::int8_t turn = 0;       // turns per minute are kept as such: 1/60 is no decimal
  std::int8_t track = 0;      // tracks per inch are kept as such
  std::int8_t root_hertz = 0; // for noise densities
  constexpr bool operator==(const Dimension&) const = default;
};

constexpr Dimension operator*(Dimension a, Dimension b) {
  auto sum = [](int x, int y) { return static_cast<std::int8_t>(x + y); };
  return {sum(a.kilogram, b.kilogram), sum(a.metre, b.metre),          sum(a.second, b.second), sum(a.ampere, b.ampere),
          sum(a.kelvin, b.kelvin),     sum(a.celsius, b.celsius),      sum(a.bit, b.bit),       sum(a.turn, b.turn),
          sum(a.track, b.track),       sum(a.root_hertz, b.root_hertz)};
}

constexpr Dimension inverse(Dimension a) {
  auto minus = [](int x) { return static_cast<std::int8_t>(-x); };
  return {minus(a.kilogram), minus(a.metre), minus(a.second), minus(a.ampere), minus(a.kelvin),
          minus(a.celsius),  minus(a.bit),   minus(a.turn),   minus(a.track),  minus(a.root_hertz)};
}

constexpr Dimension operator/(Dimension a, Dimension b) { return a * inverse(b); }

namespace dimension {
inline constexpr Dimension none{};
inline constexpr Dimension length{.metre = 1};
inline constexpr Dimension mass{.kilogram = 1};
inline constexpr Dimension time{.second = 1};
inline constexpr Dimension frequency{.second = -1};
inline constexpr Dimension current{.ampere = 1};
inline constexpr Dimension temperature{.celsius = 1};
inline constexpr Dimension temperature_difference{.kelvin = 1};
inline constexpr Dimension voltage{.kilogram = 1, .metre = 2, .second = -3, .ampere = -1};
inline constexpr Dimension resistance{.kilogram = 1, .metre = 2, .second = -3, .ampere = -2};
inline constexpr Dimension capacitance{.kilogram = -1, .metre = -2, .second = 4, .ampere = 2};
inline constexpr Dimension inductance{.kilogram = 1, .metre = 2, .second = -2, .ampere = -2};
inline constexpr Dimension power{.kilogram = 1, .metre = 2, .second = -3};
inline constexpr Dimension energy{.kilogram = 1, .metre = 2, .second = -2};
inline constexpr Dimension charge{.second = 1, .ampere = 1};
inline constexpr Dimension information{.bit = 1};
} // namespace dimension

// What a person calls the dimension: `capacitance`, `voltage`, or its base units when it has no name.
std::string describe(Dimension dimension);

// The product of base units, as `parse_unit` reads it: `kg*m^2*s^-3`; empty for a pure number.
std::string base_units(Dimension dimension);

// A number whose dimension is part of its type, in SI units. Used wherever the code computes.
template <Dimension D> struct Measure { double si = 0; };
template <Dimension A, Dimension B> constexpr auto operator*(Measure<A> a, Measure<B> b) {
  return Measure<A * B>{a.si * b.si};
}
template <Dimension A, Dimension B> constexpr auto operator/(Measure<A> a, Measure<B> b) {
  return Measure<A / B>{a.si / b.si};
}
template <Dimension D> constexpr Measure<D> operator+(Measure<D> a, Measure<D> b) { return {a.si + b.si}; }
template <Dimension D> constexpr Measure<D> operator-(Measure<D> a, Measure<D> b) { return {a.si - b.si}; }
template <Dimension D> constexpr Measure<D> operator*(double factor, Measure<D> a) { return {factor * a.si}; }
template <Dimension D> constexpr bool operator<(Measure<D> a, Measure<D> b) { return a.si < b.si; }

using Volts = Measure<dimension::voltage>;
using Amperes = Measure<dimension::current>;
using Ohms = Measure<dimension::resistance>;
using Farads = Measure<dimension::capacitance>;
using Hertz = Measure<dimension::frequency>;
using Seconds = Measure<dimension::time>;
using Watts = Measure<dimension::power>;
using Joules = Measure<dimension::energy>;
using Coulombs = Measure<dimension::charge>;

} // namespace benchlore
