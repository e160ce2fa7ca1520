// Combinations: worked examples, and the search against a rival that tries everything.
#include "substitute/combine.h"

#include "made_schema.h"
#include "substitute/closest_sums.h"
#include "support.h"

#include <algorithm>
#include <deque>
#include <random>

using namespace benchlore;

namespace {

// Parts of the project's schema, written as notes write them.
struct Bench {
  const Schema& schema = test::project_schema();
  test::Made made; // only to read ratings
  std::deque<Ratings> kept;

  Bench() { made.schema = schema; }

  Part part(const std::string& id, const std::string& class_name, const std::string& text) {
    kept.push_back(made.ratings(class_name, text));
    return {id, id, schema.find_class(class_name), &kept.back()};
  }

  CombinedPart combined(const std::string& way, const std::vector<Part>& parts, const std::string& stress = {}) {
    const CombinationWay* found = find_way(schema, way, parts.front().component_class->name);
    REQUIRE(found != nullptr);
    auto whole = combine(schema, *found, parts, {"", "", made.stress(stress)});
    REQUIRE(whole.has_value());
    return *whole;
  }
};

std::string text(const CombinedPart& whole, const std::string& rating) {
  const auto found = whole.ratings.find(rating);
  return found == whole.ratings.end() ? "not stated" : to_text(found->second.value);
}

double low(const CombinedPart& whole, const std::string& rating) {
  return *std::get<Quantity>(whole.ratings.at(rating).value).low();
}

double high(const CombinedPart& whole, const std::string& rating) {
  return *std::get<Quantity>(whole.ratings.at(rating).value).high();
}

} // namespace

TEST_CASE("two equal electrolytics in parallel have twice the capacitance and current and half the resistance") {
  Bench bench;
  const Part part = bench.part("a", "low-impedance-electrolytic",
                               "capacitance: 2200 uF ±20%\nrated-voltage: 25 V\nesr: max 60 mohm @ 100 kHz\n"
                               "ripple-current: 1.5 A @ 100 kHz\ntemperature: -40..105 °C\n");
  const CombinedPart whole = bench.combined("parallel", {part, part});
  CHECK(low(whole, "capacitance") == doctest::Approx(3520e-6));
  CHECK(high(whole, "capacitance") == doctest::Approx(5280e-6));
  CHECK(text(whole, "rated-voltage") == "25 V");
  CHECK(high(whole, "esr") == doctest::Approx(30e-3));
  CHECK(low(whole, "ripple-current") == doctest::Approx(3.0));
}

TEST_CASE("ripple current of unlike parts divides by resistance at 100 kHz and by capacitance at 100 Hz") {
  Bench bench;
  const std::string rest = "rated-voltage: 25 V\n";
  const Part a = bench.part("a", "low-impedance-electrolytic",
                            "capacitance: 1000 uF ±0%\nesr: max 80 mohm @ 100 kHz\nripple-current: 1.0 A @ 100 kHz\n");
  const Part b = bench.part("b", "low-impedance-electrolytic",
                            "capacitance: 470 uF ±0%\nesr: max 200 mohm @ 100 kHz\nripple-current: 0.5 A @ 100 kHz\n");
  CHECK(low(bench.combined("parallel", {a, b}), "ripple-current") == doctest::Approx(1.40));
  const Part c =
      bench.part("c", "aluminium-electrolytic", "capacitance: 1000 uF ±0%\nripple-current: 1.0 A @ 100 Hz\n");
  const Part d = bench.part("d", "aluminium-electrolytic", "capacitance: 470 uF ±0%\nripple-current: 0.5 A @ 100 Hz\n");
  CHECK(low(bench.combined("parallel", {c, d}), "ripple-current") == doctest::Approx(1.47));
}

TEST_CASE("100 nF 10 % and 47 nF 5 % in parallel are 147 nF between 134.65 nF and 159.35 nF") {
  Bench bench;
  const CombinedPart whole = bench.combined("parallel", {bench.part("a", "film-capacitor", "capacitance: 100 nF ±10%"),
                                                         bench.part("b", "film-capacitor", "capacitance: 47 nF ±5%")});
  CHECK(whole.value == doctest::Approx(147e-9));
  CHECK(low(whole, "capacitance") == doctest::Approx(134.65e-9));
  CHECK(high(whole, "capacitance") == doctest::Approx(159.35e-9));
}

TEST_CASE("two 250 V electrolytics in series bear 400 V with balancing resistors of at most 500 k") {
  Bench bench;
  const Part part = bench.part("a", "aluminium-electrolytic",
                               "capacitance: 100 uF ±20%\nrated-voltage: 250 V\nleakage-current: max 200 uA\n");
  const CombinedPart whole = bench.combined("series", {part, part}, "applied-voltage: 400 V");
  CHECK(whole.value == doctest::Approx(50e-6));
  CHECK(low(whole, "rated-voltage") == doctest::Approx(416.6)); // 250 V / 0.6, cut off
  CHECK(whole.conditions.back() == "fit a balancing resistor of at most 500 kΩ across each part");
}

TEST_CASE("two polar parts back to back are one bipolar part of half the capacitance at the same voltage") {
  Bench bench;
  const Part part = bench.part("a", "aluminium-electrolytic", "capacitance: 100 uF ±20%\nrated-voltage: 50 V\n");
  const CombinedPart whole = bench.combined("back-to-back", {part, part});
  CHECK(whole.component_class->name == "bipolar-electrolytic");
  CHECK(whole.value == doctest::Approx(50e-6));
  CHECK(text(whole, "rated-voltage") == "50 V");
}

TEST_CASE("two Y2 capacitors of 4.7 nF in series are 2.35 nF, and get no credit for sharing the voltage") {
  Bench bench;
  const Part part = bench.part("a", "suppression-capacitor",
                               "capacitance: 4.7 nF ±20%\nrated-ac-voltage: 250 V\nsuppression-class: Y2\n");
  const CombinedPart whole = bench.combined("series", {part, part});
  CHECK(whole.value == doctest::Approx(2.35e-9));
  CHECK(text(whole, "rated-ac-voltage") == "250 V");
  CHECK(text(whole, "suppression-class") == "Y2");
}

TEST_CASE("1 k 1 % and 10 k 5 % in series are 11 k within 4.6 %") {
  Bench bench;
  const CombinedPart whole = bench.combined("series", {bench.part("a", "film-resistor", "resistance: 1 kohm ±1%"),
                                                       bench.part("b", "film-resistor", "resistance: 10 kohm ±5%")});
  CHECK(whole.value == doctest::Approx(11e3));
  CHECK((high(whole, "resistance") - 11e3) / 11e3 == doctest::Approx(0.0464).epsilon(0.001));
}

TEST_CASE("10 ohm and 15 ohm 5 % in parallel are 5.70 to 6.30 ohm, and the smaller one sets the power") {
  Bench bench;
  const CombinedPart whole =
      bench.combined("parallel", {bench.part("a", "film-resistor", "resistance: 10 ohm ±5%\npower: 1 W"),
                                  bench.part("b", "film-resistor", "resistance: 15 ohm ±5%\npower: 1 W")});
  CHECK(low(whole, "resistance") == doctest::Approx(5.70));
  CHECK(high(whole, "resistance") == doctest::Approx(6.30));
  CHECK(low(whole, "power") < 1 / 0.6);
  CHECK(low(whole, "power") > 1.5);
}

TEST_CASE("four 470 ohm quarter-watt resistors in two strings are 470 ohm again") {
  Bench bench;
  const Part part =
      bench.part("r", "film-resistor",
                 "resistance: 470 ohm ±0%\npower: 0.25 W\nlimiting-voltage: 250 V\nwinding: non-inductive\n"
                 "temperature: -55..155 °C\ntemperature-coefficient: 100 ppm/K\n");
  const Part original = bench.part("o", "film-resistor",
                                   "resistance: 470 ohm ±5%\npower: 1 W\nlimiting-voltage: 350 V\n"
                                   "winding: non-inductive\ntemperature: -55..155 °C\n"
                                   "temperature-coefficient: 200 ppm/K\n");
  const auto search = find_combinations(bench.schema, original, {{part, 4}}, {"", "general-resistor", {}}, 3);
  REQUIRE(search.found.size() == 1);
  CHECK(combination_text(search.found.front(), {{part, 4}}) ==
        "4 × r, two strings of two in series, the strings in parallel");
  CHECK(text(search.found.front().whole, "power") == "1 W");
  CHECK(search.found.front().judgement.verdict == Verdict::conditional);
}

TEST_CASE("what one part does not guarantee the whole does not state") {
  Bench bench;
  const Part full = bench.part("a", "film-resistor", "resistance: 1 kohm ±1%\npower: 0.25 W");
  const Part loose = bench.part("b", "film-resistor", "resistance: 1 kohm\npower: 0.25 W");
  const Part typical = bench.part("c", "film-resistor", "resistance: 1 kohm ±1%\npower: typ 0.25 W");
  CHECK(text(bench.combined("series", {full, loose}), "power") == "not stated"); // the share is not known
  CHECK(text(bench.combined("series", {full, typical}), "power") == "not stated");
}

TEST_CASE("closest sums are those that a rival finds by trying all") {
  std::mt19937 random(7);
  for (int round = 0; round < 300; ++round) {
    std::vector<double> numbers;
    for (auto i = 1 + random() % 9; i > 0; --i) numbers.push_back(1 + static_cast<double>(random() % 400) / 8);
    std::sort(numbers.begin(), numbers.end());
    numbers.erase(std::unique(numbers.begin(), numbers.end()), numbers.end());
    const double wanted = 1 + static_cast<double>(random() % 1600) / 8;
    for (std::size_t count = 2; count <= 4; ++count) {
      std::vector<ClosestSum> rival;
      std::vector<std::uint32_t> places(count, 0);
      for (bool more = true; more;) {
        double sum = 0;
        for (std::uint32_t place : places) sum += numbers[place];
        rival.push_back({deviation_of(sum, wanted), places});
        std::size_t at = count;
        while (at > 0 && places[at - 1] + 1 == numbers.size()) --at;
        more = at > 0;
        if (more) std::fill(places.begin() + static_cast<std::ptrdiff_t>(at) - 1, places.end(), places[at - 1] + 1);
      }
      std::sort(rival.begin(), rival.end(), [](auto& a, auto& b) {
        return a.deviation != b.deviation ? a.deviation < b.deviation : a.places < b.places;
      });
      const std::size_t most = 1 + random() % 12;
      if (rival.size() > most) rival.resize(most);
      const auto found = closest_sums(numbers, wanted, count, most);
      REQUIRE(found.size() == rival.size());
      for (std::size_t i = 0; i < found.size(); ++i) {
        CHECK(found[i].deviation == rival[i].deviation);
        CHECK(found[i].places == rival[i].places);
      }
    }
  }
}

namespace {

// Judges every way of joining two to four parts, strings in parallel included, and keeps what is usable.
std::vector<Combination> rival_search(Bench& bench, const Part& original, const std::vector<CombinationSource>& sources,
                                      const Where& where, std::size_t limit) {
  std::vector<Combination> best;
  for (std::size_t count = 2; count <= 4; ++count) {
    std::vector<std::pair<std::size_t, Combination>> usable;
    std::vector<std::size_t> chosen(count, 0);
    for (bool more = !sources.empty(); more;) {
      bool enough = true;
      for (std::size_t source : chosen)
        enough = enough && std::count(chosen.begin(), chosen.end(), source) <= sources[source].available;
      for (std::size_t way = 0; enough && way < bench.schema.combinations.size(); ++way) {
        const CombinationWay& one = bench.schema.combinations[way];
        std::vector<std::vector<const CombinationWay*>> plans{{&one}};
        const bool all_one = std::count(chosen.begin(), chosen.end(), chosen.front()) == 4;
        const auto* outer = find_way(bench.schema, "parallel", sources[chosen.front()].part.component_class->name);
        if (count == 4 && all_one && one.name == "series" && outer != nullptr) plans.push_back({&one, outer});
        for (const auto& plan : plans) {
          auto made = judge_combination(bench.schema, original, sources, plan, chosen, where);
          if (made && made->judgement.verdict >= Verdict::conditional) usable.emplace_back(way, std::move(*made));
        }
      }
      std::size_t at = count;
      while (at > 0 && chosen[at - 1] + 1 == sources.size()) --at;
      more = at > 0;
      if (more) std::fill(chosen.begin() + static_cast<std::ptrdiff_t>(at) - 1, chosen.end(), chosen[at - 1] + 1);
    }
    std::stable_sort(usable.begin(), usable.end(), [](auto& a, auto& b) {
      if (a.second.deviation != b.second.deviation) return a.second.deviation < b.second.deviation;
      return a.first != b.first ? a.first < b.first : a.second.parts < b.second.parts;
    });
    if (usable.size() > limit) usable.resize(limit);
    for (auto& [unused, made] : usable) best.push_back(std::move(made));
  }
  return best;
}

void same_answer(Bench& bench, const Part& original, const std::vector<CombinationSource>& sources,
                 const Where& where) {
  const auto search = find_combinations(bench.schema, original, sources, where, 3);
  const auto rival = rival_search(bench, original, sources, where, 3);
  CHECK(search.complete);
  REQUIRE(search.found.size() == rival.size());
  for (std::size_t i = 0; i < rival.size(); ++i) {
    CHECK(search.found[i].parts == rival[i].parts);
    CHECK(search.found[i].ways == rival[i].ways);
    CHECK(search.found[i].deviation == rival[i].deviation);
    CHECK(search.found[i].judgement.verdict == rival[i].judgement.verdict);
  }
}

template <typename T> const T& one_of(std::mt19937& random, const std::vector<T>& choices) {
  return choices[random() % choices.size()];
}

} // namespace

TEST_CASE("on random small drawers of resistors the best combinations are those of a rival that tries all") {
  Bench bench;
  std::mt19937 random(11);
  std::size_t usable = 0;
  const std::vector<std::string> values{"100 ohm", "150 ohm", "220 ohm", "330 ohm", "470 ohm", "1 kohm", "2.2 kohm"};
  for (int round = 0; round < 40; ++round) {
    std::vector<CombinationSource> sources;
    for (auto i = 2 + random() % 4; i > 0; --i) {
      sources.push_back(
          {bench.part("r" + std::to_string(i), "film-resistor",
                      "resistance: " + one_of(random, values) + one_of<std::string>(random, {" ±5%", " ±1%"}) +
                          "\npower: " + one_of<std::string>(random, {"0.25 W", "0.5 W", "1 W"}) +
                          "\nlimiting-voltage: " + one_of<std::string>(random, {"200 V", "350 V"}) +
                          "\nwinding: non-inductive\ntemperature: -55..155 °C\n"
                          "temperature-coefficient: 100 ppm/K\n"),
           static_cast<int>(1 + random() % 4)});
    }
    const Part original = bench.part("o", "film-resistor",
                                     "resistance: " + one_of(random, values) +
                                         " ±10%\npower: 0.5 W\n"
                                         "limiting-voltage: 300 V\nwinding: non-inductive\ntemperature: -55..125 °C\n"
                                         "temperature-coefficient: 200 ppm/K\n");
    same_answer(bench, original, sources, {"", "general-resistor", {}});
    usable += find_combinations(bench.schema, original, sources, {"", "general-resistor", {}}, 3).found.size();
  }
  CHECK(usable > 40); // the drawers are not all useless
}

TEST_CASE("on random small drawers of electrolytics the best combinations are those of a rival that tries all") {
  Bench bench;
  std::mt19937 random(13);
  std::size_t usable = 0;
  for (int round = 0; round < 25; ++round) {
    std::vector<CombinationSource> sources;
    for (auto i = 2 + random() % 3; i > 0; --i) {
      sources.push_back(
          {bench.part("c" + std::to_string(i), "aluminium-electrolytic",
                      "capacitance: " + one_of<std::string>(random, {"10 uF", "22 uF", "47 uF", "100 uF"}) + " ±20%" +
                          "\nrated-voltage: " + one_of<std::string>(random, {"16 V", "35 V", "63 V"}) +
                          "\ntemperature: -40..105 °C\nleakage-current: max 50 uA\nesr: max 1 ohm @ 100 Hz\n"
                          "ripple-current: 0.2 A @ 100 Hz\nendurance: 2000 h @ 105 °C\nmounting: radial\n"),
           static_cast<int>(1 + random() % 4)});
    }
    const Part original = bench.part("o", "aluminium-electrolytic",
                                     "capacitance: " + one_of<std::string>(random, {"22 uF", "47 uF", "100 uF"}) +
                                         " -10/+50%\nrated-voltage: 25 V\ntemperature: -25..85 °C\n"
                                         "leakage-current: max 300 uA\nesr: max 3 ohm @ 100 Hz\n"
                                         "ripple-current: 0.2 A @ 100 Hz\nendurance: 1000 h @ 85 °C\n");
    const Where where{"", "decoupling", bench.made.stress("applied-voltage: 12 V")};
    same_answer(bench, original, sources, where);
    usable += find_combinations(bench.schema, original, sources, where, 3).found.size();
  }
  CHECK(usable > 25);
}
