// For every choice of all but one number (or, for four, of one pair) the rest is found by bisection, and its neighbours
// are tried outwards until they can no longer be among the best.
#include "substitute/closest_sums.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <queue>

namespace benchlore {
namespace {

using Places = std::array<std::uint32_t, 4>;

struct Found {
  std::int64_t deviation;
  Places places;
  bool operator<(const Found& other) const {
    return deviation != other.deviation ? deviation < other.deviation : places < other.places;
  }
};

// The best so far; the worst of them is on top.
class Best {
public:
  Best(double wanted, std::size_t most) : wanted_(wanted), most_(most) {}

  // False when a sum so far off can no longer be among the best.
  bool may_enter(double sum) const {
    return heap_.size() < most_ || deviation_of(sum, wanted_) <= heap_.top().deviation;
  }

  void add(double sum, const Places& places) {
    heap_.push({deviation_of(sum, wanted_), places});
    if (heap_.size() > most_) heap_.pop();
  }

  std::vector<Found> sorted() {
    std::vector<Found> all;
    for (; !heap_.empty(); heap_.pop()) all.push_back(heap_.top());
    std::reverse(all.begin(), all.end());
    return all;
  }

private:
  double wanted_;
  std::size_t most_;
  std::priority_queue<Found> heap_;
};

struct Pair {
  double sum;
  std::uint32_t a, b;
};

std::vector<Pair> pairs_of(const std::vector<double>& numbers) {
  std::vector<Pair> pairs;
  pairs.reserve(numbers.size() * (numbers.size() + 1) / 2);
  for (std::uint32_t a = 0; a < numbers.size(); ++a) {
    for (std::uint32_t b = a; b < numbers.size(); ++b) pairs.push_back({numbers[a] + numbers[b], a, b});
  }
  return pairs;
}

// Tries everything from the wanted rest outwards: `sum_at(i)` ascends with i, `visit(i)` adds what is there.
template <typename SumAt, typename Visit>
void outwards(std::size_t from, std::size_t begin, std::size_t end, const Best& best, SumAt sum_at, Visit visit) {
  for (std::size_t up = std::max(from, begin); up < end && best.may_enter(sum_at(up)); ++up) visit(up);
  for (std::size_t down = std::min(from, end); down > begin && best.may_enter(sum_at(down - 1)); --down)
    visit(down - 1);
}

std::size_t first_not_below(const std::vector<double>& numbers, double rest) {
  return static_cast<std::size_t>(std::lower_bound(numbers.begin(), numbers.end(), rest) - numbers.begin());
}

void last_of(const std::vector<double>& numbers, double wanted, Places places, std::size_t chosen, Best& best) {
  double sum = 0;
  for (std::size_t i = 0; i < chosen; ++i) sum += numbers[places[i]];
  const std::uint32_t begin = places[chosen - 1];
  outwards(
      first_not_below(numbers, wanted - sum), begin, numbers.size(), best,
      [&](std::size_t i) { return sum + numbers[i]; },
      [&](std::size_t i) {
        Places all = places;
        all[chosen] = static_cast<std::uint32_t>(i);
        best.add(sum + numbers[i], all);
      });
}

void two(const std::vector<double>& numbers, double wanted, Best& best) {
  for (std::uint32_t a = 0; a < numbers.size(); ++a) last_of(numbers, wanted, {a, 0, 0, 0}, 1, best);
}

void three(const std::vector<double>& numbers, double wanted, Best& best) {
  for (const Pair& pair : pairs_of(numbers)) last_of(numbers, wanted, {pair.a, pair.b, 0, 0}, 2, best);
}

// Each set of four is two pairs of which the second begins where the first ends, or later.
void four(const std::vector<double>& numbers, double wanted, Best& best) {
  std::vector<Pair> pairs = pairs_of(numbers);
  std::sort(pairs.begin(), pairs.end(), [](auto& x, auto& y) {
    return x.sum != y.sum ? x.sum < y.sum : x.a != y.a ? x.a < y.a : x.b < y.b;
  });
  for (const Pair& first : pairs) {
    if (first.sum > wanted && !best.may_enter(first.sum + 2 * numbers[first.b])) break;
    const auto at = std::lower_bound(pairs.begin(), pairs.end(), wanted - first.sum,
                                     [](const Pair& pair, double rest) { return pair.sum < rest; });
    outwards(
        static_cast<std::size_t>(at - pairs.begin()), 0, pairs.size(), best,
        [&](std::size_t i) { return first.sum + pairs[i].sum; },
        [&](std::size_t i) {
          const Pair& second = pairs[i];
          if (second.a >= first.b) best.add(first.sum + second.sum, {first.a, first.b, second.a, second.b});
        });
  }
}

} // namespace

std::int64_t deviation_of(double a, double b) {
  const double ratio = a < b ? b / a : a / b;
  const double parts = (ratio - 1) * 1e9;
  return parts < 9e18 ? static_cast<std::int64_t>(std::llround(parts)) : INT64_MAX;
}

std::vector<ClosestSum> closest_sums(const std::vector<double>& numbers, double wanted, std::size_t count,
                                     std::size_t most) {
  std::vector<ClosestSum> result;
  if (numbers.empty() || count < 2 || count > 4 || most == 0 || !(wanted > 0)) return result;
  Best best(wanted, most);
  if (count == 2) two(numbers, wanted, best);
  if (count == 3) three(numbers, wanted, best);
  if (count == 4) four(numbers, wanted, best);
  for (const Found& found : best.sorted())
    result.push_back(
        {found.deviation, {found.places.begin(), found.places.begin() + static_cast<std::ptrdiff_t>(count)}});
  return result;
}

} // namespace benchlore
