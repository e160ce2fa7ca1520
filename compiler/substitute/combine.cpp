// The search: parts that could never do are left out, the closest values are found without trying all, and what is
// close is judged in order until enough are usable.
#include "substitute/combine.h"

#include "base/text.h"
#include "substitute/closest_sums.h"
#include "substitute/comparison.h"

#include <algorithm>
#include <map>

namespace benchlore {
namespace {

using Law = CombinationLaw::Kind;

constexpr std::size_t most_values = 4000;  // sets of values that are looked at for each way and number of parts
constexpr std::size_t most_judged = 20000; // for each number of parts

// Whether a part that does not meet this rule alone cannot meet it in company either.
bool company_never_helps(const CombinationWay& way, const Rule& rule) {
  const auto law = way.laws.find(rule.rating);
  if (law == way.laws.end()) return false;
  switch (law->second.kind) {
  case Law::least:
    return rule.form == RuleForm::at_least || rule.form == RuleForm::withstands;
  case Law::greatest:
    return rule.form == RuleForm::at_most || rule.form == RuleForm::fits;
  case Law::overlap:
    return rule.form == RuleForm::covers;
  case Law::same:
    return rule.form == RuleForm::same || rule.form == RuleForm::same_or_higher || rule.form == RuleForm::allowed;
  default:
    return false;
  }
}

bool admissible(const Schema& schema, const CombinationWay& way, const Part& original, const Part& part,
                const Where& where) {
  if (!takes(way, part.component_class->name) || !way.becomes.empty()) return takes(way, part.component_class->name);
  return std::none_of(schema.rules.begin(), schema.rules.end(), [&](const Rule& rule) {
    if (!company_never_helps(way, rule)) return false;
    const auto reason = ask_rule(schema, rule, original, part, where);
    return reason && reason->verdict < Verdict::conditional;
  });
}

// Parts of one class by what they bring to the value, ascending.
struct Drawer {
  std::vector<double> weights;
  std::vector<std::vector<std::size_t>> sources; // with this weight, ascending
};

using Drawers = std::map<std::string, Drawer>;

Drawers open_drawers(const Schema& schema, const CombinationWay& way, const Part& original,
                     const std::vector<CombinationSource>& sources, const Where& where) {
  std::map<std::string, std::map<double, std::vector<std::size_t>>> sorted;
  for (std::size_t i = 0; i < sources.size(); ++i) {
    const Part& part = sources[i].part;
    if (sources[i].available < 1 || !admissible(schema, way, original, part, where)) continue;
    if (const auto weight = weight_of(way, part)) sorted[part.component_class->name][*weight].push_back(i);
  }
  Drawers drawers;
  for (auto& [name, by_weight] : sorted) {
    for (auto& [weight, list] : by_weight) {
      drawers[name].weights.push_back(weight);
      drawers[name].sources.push_back(std::move(list));
    }
  }
  return drawers;
}

struct Order {
  std::int64_t deviation;
  std::size_t way;
  std::vector<std::size_t> parts;
  std::vector<const CombinationWay*> ways;
  bool operator<(const Order& other) const {
    if (deviation != other.deviation) return deviation < other.deviation;
    return way != other.way ? way < other.way : parts < other.parts;
  }
};

// Every choice of sources for a set of weights, within what is available.
void choose(const Drawer& drawer, const std::vector<std::uint32_t>& places,
            const std::vector<CombinationSource>& sources, bool alike, std::vector<std::size_t>& chosen,
            std::vector<std::vector<std::size_t>>& all) {
  if (all.size() > most_judged) return;
  if (chosen.size() == places.size()) {
    all.push_back(chosen);
    std::sort(all.back().begin(), all.back().end());
    return;
  }
  const std::size_t next = chosen.size();
  for (std::size_t source : drawer.sources[places[next]]) {
    const bool repeats = next > 0 && places[next] == places[next - 1];
    if (repeats && source < chosen.back()) continue; // each set once
    if (alike && next > 0 && source != chosen.back()) continue;
    if (std::count(chosen.begin(), chosen.end(), source) >= sources[source].available) continue;
    chosen.push_back(source);
    choose(drawer, places, sources, alike, chosen, all);
    chosen.pop_back();
  }
}

struct Search {
  const Schema& schema;
  const Part& original;
  const std::vector<CombinationSource>& sources;
  const Where& where;
  double target;
};

std::optional<double> target_of(const Part& original, const std::string& rating) {
  const auto stated = original.ratings->find(rating);
  const Quantity* quantity = stated == original.ratings->end() ? nullptr : std::get_if<Quantity>(&stated->second.value);
  if (quantity == nullptr || !quantity->centre() || !(*quantity->centre() > 0)) return std::nullopt;
  return quantity->centre();
}

void add_sets(const Search& search, std::size_t way_place, const Drawer& drawer, std::size_t count,
              std::vector<Order>& orders) {
  const CombinationWay& way = search.schema.combinations[way_place];
  const bool adds = way.laws.at(way.value).kind == Law::sum;
  const double wanted = adds ? search.target : 1 / search.target;
  auto add = [&](std::int64_t deviation, const std::vector<std::uint32_t>& places) {
    std::vector<std::size_t> chosen;
    std::vector<std::vector<std::size_t>> all;
    choose(drawer, places, search.sources, way.alike, chosen, all);
    for (auto& parts : all) orders.push_back({deviation, way_place, std::move(parts), {&way}});
  };
  if (way.alike) {
    for (std::uint32_t i = 0; i < drawer.weights.size(); ++i)
      add(deviation_of(static_cast<double>(count) * drawer.weights[i], wanted), std::vector<std::uint32_t>(count, i));
    return;
  }
  for (const ClosestSum& sum : closest_sums(drawer.weights, wanted, count, most_values)) add(sum.deviation, sum.places);
}

// Two strings of two in parallel, all four of one component: the same value with more voltage or power.
void add_grids(const Search& search, std::size_t way_place, const Drawer& drawer, std::vector<Order>& orders) {
  const CombinationWay& inner = search.schema.combinations[way_place];
  if (inner.name != "series" || !inner.becomes.empty()) return;
  for (std::size_t place = 0; place < drawer.weights.size(); ++place) {
    for (std::size_t source : drawer.sources[place]) {
      const Part& part = search.sources[source].part;
      const CombinationWay* outer = find_way(search.schema, "parallel", part.component_class->name);
      if (outer == nullptr || search.sources[source].available < 4) continue;
      const bool adds = inner.laws.at(inner.value).kind == Law::sum;
      const double value = adds ? drawer.weights[place] : 1 / drawer.weights[place];
      orders.push_back(
          {deviation_of(value, search.target), way_place, std::vector<std::size_t>(4, source), {&inner, outer}});
    }
  }
}

std::vector<Order> orders_of(const Search& search, std::size_t count) {
  std::vector<Order> orders;
  for (std::size_t place = 0; place < search.schema.combinations.size(); ++place) {
    const CombinationWay& way = search.schema.combinations[place];
    Search here = search;
    const auto target = target_of(search.original, way.value);
    if (!target) continue;
    here.target = *target;
    for (const auto& [unused, drawer] :
         open_drawers(search.schema, way, search.original, search.sources, search.where)) {
      if (count <= static_cast<std::size_t>(way.most)) add_sets(here, place, drawer, count, orders);
      if (count == 4) add_grids(here, place, drawer, orders);
    }
  }
  std::sort(orders.begin(), orders.end());
  return orders;
}

std::vector<Part> parts_of(const std::vector<CombinationSource>& sources, const std::vector<std::size_t>& places) {
  std::vector<Part> parts;
  for (std::size_t place : places) parts.push_back(sources[place].part);
  return parts;
}

std::optional<CombinedPart> join_parts(const Schema& schema, const std::vector<const CombinationWay*>& ways,
                                       const std::vector<Part>& parts, const Where& where) {
  if (ways.size() == 1) return combine(schema, *ways.front(), parts, where);
  auto half = combine(schema, *ways[0], {parts[0], parts[1]}, where);
  if (!half) return std::nullopt;
  const Part string{"string", "string", half->component_class, &half->ratings};
  auto whole = combine(schema, *ways[1], {string, string}, where);
  if (!whole) return std::nullopt;
  whole->conditions.insert(whole->conditions.begin(), half->conditions.begin(), half->conditions.end());
  whole->shares = half->shares;
  return whole;
}

Reason joined(const CombinationWay& way) {
  Reason reason;
  reason.rule_name = "combination";
  reason.rating = "combination";
  reason.original = "one part";
  reason.substitute = "several parts " + way.title;
  reason.because = way.because;
  reason.source = way.source;
  return reason;
}

// What must be done to join the parts; and that they do not belong here, when the way is not meant for the role.
std::vector<Reason> reasons_to_join(const std::vector<const CombinationWay*>& ways, const CombinedPart& whole,
                                    const Where& where) {
  std::vector<Reason> reasons;
  for (const std::string& condition : whole.conditions) {
    reasons.push_back(joined(*ways.back()));
    reasons.back().outcome = Outcome::differs;
    reasons.back().verdict = Verdict::conditional;
    reasons.back().action = condition;
  }
  for (const CombinationWay* way : ways) {
    const bool meant = way->roles.empty() || where.role.empty() ||
                       std::find(way->roles.begin(), way->roles.end(), where.role) != way->roles.end();
    if (meant) continue;
    reasons.push_back(joined(*way));
    reasons.back().outcome = Outcome::falls_short;
    reasons.back().verdict = Verdict::unfit;
    reasons.back().required = "only as " + join(way->roles, ", ");
  }
  return reasons;
}

} // namespace

std::optional<Combination> judge_combination(const Schema& schema, const Part& original,
                                             const std::vector<CombinationSource>& sources,
                                             std::vector<const CombinationWay*> ways, std::vector<std::size_t> parts,
                                             const Where& where) {
  auto whole = join_parts(schema, ways, parts_of(sources, parts), where);
  const auto target = target_of(original, ways.back()->value);
  if (!whole || !target) return std::nullopt;
  const std::vector<Reason> further = reasons_to_join(ways, *whole, where);
  Combination made{std::move(ways), std::move(parts), std::move(*whole), 0, {}};
  made.deviation = deviation_of(made.whole.value, *target);
  const Part part{"combination", "combination", made.whole.component_class, &made.whole.ratings};
  made.judgement = judge(schema, original, part, where, further);
  return made;
}

CombinationSearch find_combinations(const Schema& schema, const Part& original,
                                    const std::vector<CombinationSource>& sources, const Where& where,
                                    std::size_t limit) {
  CombinationSearch result;
  const Search search{schema, original, sources, where, 0};
  for (std::size_t count = 2; count <= 4; ++count) {
    std::size_t usable = 0, judged = 0;
    for (Order& order : orders_of(search, count)) {
      if (usable == limit) break;
      if (++judged > most_judged) {
        result.complete = false;
        break;
      }
      auto made = judge_combination(schema, original, sources, std::move(order.ways), std::move(order.parts), where);
      if (!made || made->judgement.verdict < Verdict::conditional) continue;
      ++usable;
      result.found.push_back(std::move(*made));
    }
    result.judged += judged;
  }
  return result;
}

std::string combination_text(const Combination& combination, const std::vector<CombinationSource>& sources) {
  if (combination.ways.size() == 2) {
    return "4 × " + sources[combination.parts.front()].part.id + ", two strings of two " +
           combination.ways.front()->title + ", the strings " + combination.ways.back()->title;
  }
  std::vector<std::string> pieces;
  for (std::size_t i = 0; i < combination.parts.size();) {
    std::size_t same = i;
    while (same < combination.parts.size() && combination.parts[same] == combination.parts[i]) ++same;
    pieces.push_back(std::to_string(same - i) + " × " + sources[combination.parts[i]].part.id);
    i = same;
  }
  return join(pieces, " and ") + " " + combination.ways.front()->title;
}

} // namespace benchlore
