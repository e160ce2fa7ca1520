// What a quantity guarantees. The bounds are computed in decimals, and in doubles only where digits run out.
#include "quantity/quantity.h"

namespace benchlore {
namespace {

Decimal magnitude(Decimal number) { return number.negative() ? negate(number) : number; }

// The nominal value moved by a tolerance; a fraction counts from the size of the value, so below stays below for
// negative values.
double moved(Decimal nominal, Decimal tolerance, bool relative, bool up) {
  auto step = relative ? multiply(magnitude(nominal), tolerance) : tolerance;
  auto sum = step ? add(nominal, up ? *step : negate(*step)) : std::nullopt;
  if (sum) return sum->value();
  double size = relative ? magnitude(nominal).value() * tolerance.value() : tolerance.value();
  return up ? nominal.value() + size : nominal.value() - size;
}

double middle(Decimal a, Decimal b) {
  auto sum = add(a, b);
  auto half = Decimal::make(5, -1);
  auto result = sum && half ? multiply(*sum, *half) : std::nullopt;
  return result ? result->value() : a.value() / 2 + b.value() / 2;
}

} // namespace

std::optional<double> Quantity::low() const {
  if (minimum) return minimum->value();
  if (!nominal) return std::nullopt;
  return minus ? moved(*nominal, *minus, relative_tolerance, false) : nominal->value();
}

std::optional<double> Quantity::high() const {
  if (maximum) return maximum->value();
  if (!nominal) return std::nullopt;
  return plus ? moved(*nominal, *plus, relative_tolerance, true) : nominal->value();
}

std::optional<double> Quantity::centre() const {
  if (nominal) return nominal->value();
  if (typical) return typical->value();
  if (minimum && maximum) return range ? std::optional(middle(*minimum, *maximum)) : std::nullopt;
  if (minimum) return minimum->value();
  return maximum ? std::optional(maximum->value()) : std::nullopt;
}

const Condition* Quantity::condition(std::string_view name) const {
  for (const Condition& item : at) {
    if (item.name == name) return &item;
  }
  return nullptr;
}

const Condition* Quantity::condition(Dimension wanted) const {
  for (const Condition& item : at) {
    if (item.name.empty() && item.value && item.value->dimension == wanted) return &item;
  }
  return nullptr;
}

bool Quantity::operator==(const Quantity& other) const {
  return dimension == other.dimension && nominal == other.nominal && minimum == other.minimum &&
         typical == other.typical && maximum == other.maximum && range == other.range && minus == other.minus &&
         plus == other.plus && relative_tolerance == other.relative_tolerance && at == other.at;
}

bool Condition::operator==(const Condition& other) const { return name == other.name && value == other.value; }

} // namespace benchlore
