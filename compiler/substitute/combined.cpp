// What becomes of each rating when parts are joined. One short function for each law.
#include "substitute/combined.h"

#include "substitute/comparison.h"
#include "workings/sharing.h"

#include <algorithm>
#include <cmath>

namespace benchlore {
namespace {

using Law = CombinationLaw::Kind;

struct Joining {
  const CombinationWay& way;
  const std::vector<Part>& parts;

  const Value* stated(std::size_t part, std::string_view rating) const {
    const auto found = parts[part].ratings->find(rating);
    return found == parts[part].ratings->end() ? nullptr : &found->second.value;
  }

  // The quantities of all parts, under one condition; empty when one is missing or stands under another.
  std::vector<const Quantity*> quantities(std::string_view rating) const {
    std::vector<const Quantity*> all;
    for (std::size_t i = 0; i < parts.size(); ++i) {
      const Value* value = stated(i, rating);
      const Quantity* quantity = value == nullptr ? nullptr : std::get_if<Quantity>(value);
      if (quantity == nullptr || (!all.empty() && !(quantity->at == all.front()->at))) return {};
      all.push_back(quantity);
    }
    return all;
  }
};

enum class Side { low, high };

std::optional<double> guaranteed(const Quantity& quantity, Side side) {
  return side == Side::low ? quantity.low() : quantity.high();
}

using Numbers = std::vector<double>;

template <typename Read> std::optional<Numbers> all_of(const std::vector<const Quantity*>& quantities, Read read) {
  Numbers numbers;
  for (const Quantity* quantity : quantities) {
    const auto number = read(*quantity);
    if (!number) return std::nullopt;
    numbers.push_back(*number);
  }
  return numbers;
}

std::optional<double> add_up(const std::optional<Numbers>& numbers, Law kind) {
  if (!numbers) return std::nullopt;
  double sum = 0;
  for (double number : *numbers) {
    if (kind == Law::reciprocal_sum && !(number > 0)) return std::nullopt;
    sum += kind == Law::sum ? number : 1 / number;
  }
  return kind == Law::sum ? sum : 1 / sum;
}

// `start` gives dimension and conditions.
Quantity like(const Quantity& start) {
  Quantity quantity;
  quantity.dimension = start.dimension;
  quantity.at = start.at;
  return quantity;
}

// Nine figures are enough for what adds up, so that 100 nF and 47 nF make 147 nF; four, cut off, for what is shared.
enum class Rounding { nearest, down };

std::optional<Decimal> rounded(std::optional<double> number, Rounding rounding = Rounding::nearest) {
  const auto exact = number ? Decimal::nearest(*number) : std::nullopt;
  if (!exact) return std::nullopt;
  const std::int64_t end = rounding == Rounding::down ? 10'000 : 1'000'000'000;
  std::int64_t digits = exact->digits(), dropped = 0;
  int exponent = exact->exponent();
  for (; digits >= end || digits <= -end; ++exponent) {
    dropped = digits % 10;
    digits /= 10;
  }
  if (rounding == Rounding::nearest && dropped >= 5) ++digits;
  return Decimal::make(digits, exponent);
}

std::optional<Value> added(const Joining& joining, std::string_view rating, Law kind) {
  const auto all = joining.quantities(rating);
  if (all.empty()) return std::nullopt;
  auto nominal =
      add_up(all_of(all, [](auto& q) { return q.nominal ? std::optional(q.nominal->value()) : std::nullopt; }), kind);
  const auto low = add_up(all_of(all, [](auto& q) { return guaranteed(q, Side::low); }), kind);
  const auto high = add_up(all_of(all, [](auto& q) { return guaranteed(q, Side::high); }), kind);
  const bool spread = std::all_of(all.begin(), all.end(), [](auto* q) { return q->tolerance_stated(); });
  Quantity whole = like(*all.front());
  if (nominal) {
    whole.nominal = rounded(nominal);
    if (spread && low && high) {
      whole.relative_tolerance = false;
      whole.minus = rounded(std::max(0.0, *nominal - *low));
      whole.plus = rounded(std::max(0.0, *high - *nominal));
    }
    return whole;
  }
  whole.minimum = rounded(low);
  whole.maximum = rounded(high);
  whole.range = low && high;
  if (!low && !high) return std::nullopt;
  return whole;
}

std::optional<Value> extreme(const Joining& joining, std::string_view rating, Side side) {
  const auto all = joining.quantities(rating);
  const Quantity* worst = nullptr;
  for (const Quantity* quantity : all) {
    const auto number = guaranteed(*quantity, side);
    if (!number) return std::nullopt;
    const auto most = worst == nullptr ? std::nullopt : guaranteed(*worst, side);
    if (!most || (side == Side::low ? *number < *most : *number > *most)) worst = quantity;
  }
  return worst == nullptr ? std::nullopt : std::optional<Value>(*worst);
}

std::optional<Value> overlap(const Joining& joining, std::string_view rating) {
  const auto all = joining.quantities(rating);
  if (all.empty()) return std::nullopt;
  Quantity whole = like(*all.front());
  std::optional<double> low, high;
  for (const Quantity* quantity : all) {
    if (!quantity->low() || !quantity->high()) return std::nullopt;
    low = low ? std::max(*low, *quantity->low()) : quantity->low();
    high = high ? std::min(*high, *quantity->high()) : quantity->high();
  }
  if (*low > *high) return std::nullopt;
  whole.range = true;
  whole.minimum = rounded(low);
  whole.maximum = rounded(high);
  return whole;
}

std::optional<Value> same(const Joining& joining, std::string_view rating) {
  const Value* first = joining.stated(0, rating);
  if (first == nullptr) return std::nullopt;
  for (std::size_t i = 1; i < joining.parts.size(); ++i) {
    const Value* other = joining.stated(i, rating);
    if (other == nullptr || !(*other == *first)) return std::nullopt;
  }
  return *first;
}

// The weights of the made-up value with their tolerances; nothing when one tolerance is not stated.
std::optional<std::vector<Spread>> spreads(const Joining& joining) {
  const bool adds = joining.way.laws.at(joining.way.value).kind == Law::sum;
  std::vector<Spread> weights;
  for (const Quantity* quantity : joining.quantities(joining.way.value)) {
    const bool bounded = quantity->tolerance_stated() || (quantity->minimum && quantity->maximum);
    if (!bounded || !(*quantity->low() > 0)) return std::nullopt;
    weights.push_back(adds ? Spread{*quantity->low(), *quantity->high()}
                           : Spread{1 / *quantity->high(), 1 / *quantity->low()});
  }
  if (weights.size() != joining.parts.size()) return std::nullopt;
  return weights;
}

std::optional<Value> at_least(const Joining& joining, std::string_view rating, double limit) {
  Quantity whole = like(*joining.quantities(rating).front());
  whole.nominal = rounded(limit, Rounding::down);
  return whole;
}

std::optional<Value> shared(const Joining& joining, std::string_view rating) {
  const auto all = joining.quantities(rating);
  const auto limits = all_of(all, [](auto& q) { return guaranteed(q, Side::low); });
  const auto weights = spreads(joining);
  if (all.empty() || !limits || !weights) return std::nullopt;
  return at_least(joining, rating, shared_limit(*limits, *weights));
}

std::optional<Value> current_shared(const Joining& joining, std::string_view rating, const CombinationLaw& law) {
  const auto all = joining.quantities(rating);
  const auto limits = all_of(all, [](auto& q) { return guaranteed(q, Side::low); });
  const Condition* frequency = all.empty() ? nullptr : all.front()->condition(dimension::frequency);
  if (!limits || frequency == nullptr || !frequency->value || !frequency->value->centre()) return std::nullopt;
  const double hertz = *frequency->value->centre();
  if (not_above(hertz, *law.by_value_below->centre())) return shared(joining, rating);
  if (!not_below(hertz, *law.by_resistance_above->centre())) return std::nullopt;
  const bool one_type = std::all_of(joining.parts.begin(), joining.parts.end(),
                                    [&](auto& part) { return part.ratings == joining.parts.front().ratings; });
  const auto stated = all_of(joining.quantities(law.resistance), [](auto& q) { return guaranteed(q, Side::high); });
  Numbers resistances(all.size(), 1.0); // parts of one type are alike, whatever their resistance
  if (!one_type) {
    if (!stated || stated->size() != all.size()) return std::nullopt;
    resistances = *stated;
  }
  for (double resistance : resistances) {
    if (!(resistance > 0)) return std::nullopt;
  }
  return at_least(joining, rating, heat_shared_current(*limits, resistances));
}

std::optional<Value> whole_of(const Joining& joining, const std::string& rating, const CombinationLaw& law) {
  switch (law.kind) {
  case Law::sum:
  case Law::reciprocal_sum:
    return added(joining, rating, law.kind);
  case Law::least:
    return extreme(joining, rating, Side::low);
  case Law::greatest:
    return extreme(joining, rating, Side::high);
  case Law::overlap:
    return overlap(joining, rating);
  case Law::same:
    return same(joining, rating);
  case Law::shared:
    return shared(joining, rating);
  case Law::current_shared:
    return current_shared(joining, rating, law);
  }
  return std::nullopt;
}

// A part that brings less than a fiftieth of the whole changes nothing that tolerances do not change more.
bool one_is_idle(const CombinationWay& way, const std::vector<Part>& parts) {
  double whole = 0, smallest = INFINITY;
  for (const Part& part : parts) {
    const double weight = weight_of(way, part).value_or(0);
    whole += weight;
    smallest = std::min(smallest, weight);
  }
  return smallest < whole / 50;
}

// What to put across each part, when leakage would share the voltage otherwise.
std::string balancing(const Joining& joining, const Where& where) {
  const std::string across = "across each part";
  const auto leakage =
      all_of(joining.quantities(joining.way.leakage), [](auto& q) { return guaranteed(q, Side::high); });
  const auto rated = all_of(joining.quantities(joining.way.balanced), [](auto& q) { return guaranteed(q, Side::low); });
  const bool known = leakage && rated && leakage->size() == joining.parts.size() && rated->size() == leakage->size();
  const double greatest = known ? *std::max_element(leakage->begin(), leakage->end()) : 0;
  if (!known || !(greatest > 0))
    return "fit a balancing resistor " + across + ", sized from the leakage current, which is not stated";
  const double least = *std::min_element(rated->begin(), rated->end());
  const auto applied = where.stress.find("applied-voltage");
  const Quantity* string = applied == where.stress.end() ? nullptr : std::get_if<Quantity>(&applied->second.value);
  const double voltage = string != nullptr && string->high() ? *string->high() : 0;
  const double resistance =
      balancing_resistance(static_cast<int>(joining.parts.size()), {least}, {voltage}, {greatest}).si;
  if (!(resistance > 0)) return "the string bears less than the voltage across it";
  return "fit a balancing resistor of at most " + show_number(resistance, dimension::resistance) + " " + across;
}

} // namespace

bool takes(const CombinationWay& way, std::string_view class_name) {
  return std::find(way.classes.begin(), way.classes.end(), class_name) != way.classes.end();
}

const CombinationWay* find_way(const Schema& schema, std::string_view name, std::string_view class_name) {
  for (const CombinationWay& way : schema.combinations) {
    if (way.name == name && takes(way, class_name)) return &way;
  }
  return nullptr;
}

std::optional<double> weight_of(const CombinationWay& way, const Part& part) {
  const auto stated = part.ratings->find(way.value);
  const Quantity* quantity = stated == part.ratings->end() ? nullptr : std::get_if<Quantity>(&stated->second.value);
  if (quantity == nullptr || quantity->only_typical() || !quantity->centre() || !(*quantity->centre() > 0))
    return std::nullopt;
  return way.laws.at(way.value).kind == Law::sum ? *quantity->centre() : 1 / *quantity->centre();
}

std::optional<CombinedPart> combine(const Schema& schema, const CombinationWay& way, const std::vector<Part>& parts,
                                    const Where& where) {
  if (parts.size() < 2 || parts.size() > static_cast<std::size_t>(way.most)) return std::nullopt;
  const ComponentClass* made = parts.front().component_class;
  for (const Part& part : parts) {
    if (part.component_class != made || (way.alike && part.ratings != parts.front().ratings)) return std::nullopt;
  }
  if (!takes(way, made->name)) return std::nullopt;
  CombinedPart whole;
  whole.component_class = way.becomes.empty() ? made : schema.find_class(way.becomes);
  const Joining joining{way, parts};
  for (const auto& [rating, law] : way.laws) {
    if (!whole.component_class->ratings.contains(rating)) continue;
    if (auto value = whole_of(joining, rating, law)) whole.ratings[rating] = StatedValue{*value, {}, {}, {}};
  }
  const auto value = whole.ratings.find(way.value);
  if (value == whole.ratings.end()) return std::nullopt;
  const auto centre = std::get<Quantity>(value->second.value).centre();
  if (!centre) return std::nullopt;
  whole.value = *centre;
  if (one_is_idle(way, parts)) return std::nullopt;
  if (const auto weights = spreads(joining)) {
    for (std::size_t i = 0; i < parts.size(); ++i) whole.shares.push_back(worst_share(*weights, i));
  }
  whole.conditions = way.conditions;
  if (!way.leakage.empty()) whole.conditions.push_back(balancing(joining, where));
  return whole;
}

} // namespace benchlore
