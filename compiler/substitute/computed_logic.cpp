// Computations about logic and memory: levels, currents and time, at the worst of both sides.
#include "substitute/computed.h"
#include "workings/logic.h"

#include "base/text.h"

#include <algorithm>
#include <cstdint>

namespace benchlore::computed {
namespace {

// The side of a rating that surely holds: a threshold or capability is written `min`, `max` or bare.
std::optional<double> highest_threshold(const Ratings& ratings, std::string_view name) {
  const auto high = greatest(ratings, name);
  return high ? high : least(ratings, name);
}

std::optional<double> lowest_threshold(const Ratings& ratings, std::string_view name) {
  const auto low = least(ratings, name);
  return low ? low : greatest(ratings, name);
}

struct Neighbour {
  std::string name;
  double count = 1;
  const Ratings* ratings = nullptr;
};

// `74LS x10` is ten inputs of that family; nothing when a family is not known.
std::optional<std::vector<Neighbour>> neighbours(const Comparison& c, std::string_view stress) {
  std::vector<Neighbour> found;
  const auto stated = c.where.stress.find(stress);
  if (stated == c.where.stress.end()) return found;
  const Words* words = std::get_if<Words>(&stated->second.value);
  if (words == nullptr) return std::nullopt;
  for (const std::string& item : words->items) {
    Neighbour neighbour{item, 1, nullptr};
    if (const std::size_t times = item.rfind(" x"); times != std::string::npos) {
      const auto count = Decimal::parse(item.substr(times + 2));
      if (!count || !(count->value() >= 1)) return std::nullopt;
      neighbour.name = std::string(trim(item.substr(0, times)));
      neighbour.count = count->value();
    }
    const auto family = c.schema.families.find(neighbour.name);
    if (family == c.schema.families.end()) return std::nullopt;
    neighbour.ratings = &family->second.ratings;
    found.push_back(std::move(neighbour));
  }
  return found;
}

constexpr const char* unknown_neighbour =
    "the position names a family that schema/logic-families.yaml does not hold; write `74LS` or `74LS x10`";

struct Margins {
  bool met = true;
  std::optional<double> worst; // over what is required, less what is required
  std::string working;
};

// Adds one pair of output and input; false when a level is not stated.
bool add_pair(Margins& margins, const Rule& rule, const Ratings& output, const Ratings& input,
              const std::string& name) {
  const auto voh = least(output, "output-high-voltage"), vol = greatest(output, "output-low-voltage");
  const auto vih = highest_threshold(input, "input-high-voltage"), vil = lowest_threshold(input, "input-low-voltage");
  const auto least_high = parameter(rule, "least-high"), least_low = parameter(rule, "least-low");
  if (!voh || !vol || !vih || !vil || !least_high || !least_low) return false;
  const double high = high_noise_margin({*voh}, {*vih}).si, low = low_noise_margin({*vil}, {*vol}).si;
  margins.met = margins.met && not_below(high + 1e-9, *least_high) && not_below(low + 1e-9, *least_low);
  const double short_by = std::min(high - *least_high, low - *least_low);
  if (!margins.worst || short_by < *margins.worst) margins.worst = short_by;
  auto part = [](double a, double b, double difference) {
    return show(a, dimension::voltage) + " − " + show(b, dimension::voltage) + " = " +
           show(difference, dimension::voltage);
  };
  margins.working += (margins.working.empty() ? "" : "; ") + name + ": high " + part(*voh, *vih, high) + ", low " +
                     part(*vil, *vol, low);
  return true;
}

struct Load {
  double low = 0, high = 0; // currents that the output must sink and source
};

bool add_inputs(Load& load, const Ratings& input, double count) {
  const auto low = greatest(input, "input-low-current"), high = greatest(input, "input-high-current");
  if (!low || !high) return false;
  load.low += count * *low;
  load.high += count * *high;
  return true;
}

// Whether an output carries a load; the working says both states.
std::optional<bool> carries(Finding& finding, const Ratings& output, const Load& load, const std::string& name) {
  const auto sink = lowest_threshold(output, "output-low-current");
  const auto source = lowest_threshold(output, "output-high-current");
  if (!sink || !source) return std::nullopt;
  finding.working += (finding.working.empty() ? "" : "; ") + name + ": low " + show(load.low, dimension::current) +
                     " of " + show(*sink, dimension::current) + ", high " + show(load.high, dimension::current) +
                     " of " + show(*source, dimension::current);
  const double spare = load.low > 0 ? (*sink - load.low) / load.low : 1;
  if (!finding.margin || spare < *finding.margin) finding.margin = spare;
  return not_above(load.low, *sink) && not_above(load.high, *source);
}

} // namespace

Finding noise_margin(const Comparison& c) {
  const auto drivers = neighbours(c, "driven-by"), loads = neighbours(c, "drives");
  if (!drivers || !loads) return unusable(unknown_neighbour);
  if (drivers->empty() && loads->empty()) return unusable("what drives it and what it drives is not stated");
  const Ratings& mine = *c.substitute.ratings;
  Margins margins;
  for (const Neighbour& driver : *drivers) {
    if (!add_pair(margins, c.rule, *driver.ratings, mine, "from " + driver.name))
      return unusable("a level of the substitute or of " + driver.name + " is not guaranteed");
  }
  for (const Neighbour& load : *loads) {
    if (!add_pair(margins, c.rule, mine, *load.ratings, "into " + load.name))
      return unusable("a level of the substitute or of " + load.name + " is not guaranteed");
  }
  Finding finding;
  finding.required = "a noise margin of " + show(*parameter(c.rule, "least-high"), dimension::voltage) + " high and " +
                     show(*parameter(c.rule, "least-low"), dimension::voltage) + " low";
  finding.met = margins.met;
  finding.margin = margins.worst;
  finding.working = margins.working;
  return finding;
}

Finding fan_out(const Comparison& c) {
  const auto drivers = neighbours(c, "driven-by"), loads = neighbours(c, "drives");
  if (!drivers || !loads) return unusable(unknown_neighbour);
  const Ratings& mine = *c.substitute.ratings;
  Finding finding;
  finding.required = "outputs that carry what the inputs take";
  finding.met = true;
  for (const Neighbour& driver : *drivers) {
    Load load;
    if (!add_inputs(load, mine, 1)) return unusable("an input current of the substitute is not guaranteed");
    const auto carried = carries(finding, *driver.ratings, load, driver.name + " drives it");
    if (!carried) return unusable("an output current of " + driver.name + " is not stated");
    finding.met = finding.met && *carried;
  }
  Load load;
  for (const Neighbour& driven : *loads) {
    if (!add_inputs(load, *driven.ratings, driven.count))
      return unusable("an input current of " + driven.name + " is not stated");
  }
  load.low += greatest(c.where.stress, "sink-current").value_or(0);
  if (load.low <= 0 && load.high <= 0) {
    return drivers->empty() ? unusable("what it drives is not stated") : finding;
  }
  const auto carried = carries(finding, mine, load, "it drives");
  if (!carried) return unusable("an output current of the substitute is not guaranteed");
  finding.met = finding.met && *carried;
  return finding;
}

Finding access_time_budget(const Comparison& c) {
  const auto window = least(c.where.stress, c.rule.stress.empty() ? std::string_view("access-window") : c.rule.stress);
  const auto time = greatest(*c.substitute.ratings, c.rule.rating);
  const auto share = parameter(c.rule, "share"), slack = parameter(c.rule, "slack");
  if (!window || !share || !slack) return unusable("the time that the machine leaves is not stated");
  if (!time) return unusable("the substitute's time is not guaranteed");
  const double kept = std::max(*share * *time, *slack);
  Finding finding;
  finding.required = "at most " + show(*window, dimension::time) + " less " + show(kept, dimension::time) + " of slack";
  finding.met = not_above(*time, *window - kept);
  finding.margin = (*window - kept - *time) / *window;
  finding.working = show(*window, dimension::time) + " − " + show(*time, dimension::time) + " leaves " +
                    show(*window - *time, dimension::time);
  return finding;
}

// A machine refreshes row after row; what counts is the time that it lets pass for each. A part with half the rows and
// half the interval is refreshed in time as well.
Finding refresh_rate(const Comparison& c) {
  auto spacing = [](const Ratings& ratings, std::string_view interval, std::string_view rows) {
    const auto time = least(ratings, interval), count = greatest(ratings, rows);
    return time && count && *count > 0 ? std::optional(*time / *count) : std::nullopt;
  };
  auto needed = greatest(c.where.stress, "refresh-spacing");
  if (!needed) needed = spacing(c.where.stress, "refresh-period", "refreshed-rows");
  if (!needed) needed = spacing(*c.original.ratings, "refresh-interval", "refresh-rows");
  const auto mine = spacing(*c.substitute.ratings, "refresh-interval", "refresh-rows");
  if (!mine) return unusable("the substitute's refresh interval or number of rows is not stated");
  if (!needed) return unusable("neither the place nor the original states how often rows are refreshed");
  Finding finding;
  finding.required = "a row that keeps its content while the machine passes on every " + show(*needed, dimension::time);
  finding.met = not_below(*mine, *needed);
  finding.margin = (*mine - *needed) / *needed;
  finding.working = "its rows ask for one every " + show(*mine, dimension::time);
  return finding;
}

} // namespace benchlore::computed
