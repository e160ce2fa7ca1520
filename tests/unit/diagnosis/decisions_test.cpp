// Information, repair order, half-split and smoothing against published and enumerated values.
#include "diagnosis/decisions.h"

#include <algorithm>
#include <doctest/doctest.h>
#include <numeric>
#include <random>

using namespace benchlore;
using doctest::Approx;

TEST_CASE(
    "nine yes and five no are 0.940 bits, and the weather tells what its table says") { // play-tennis table, vendor's
                                                                                        // decision-tree page
  CHECK(entropy({9.0 / 14, 5.0 / 14}) == Approx(0.940286).epsilon(0.000002));
  // Outlook: sunny 2/3, overcast 4/0, rain 3/2; humidity: high 3/4, normal 6/1; wind: weak 6/2, strong 3/3.
  CHECK(information_gain({9.0 / 14, 5.0 / 14}, {{2.0 / 9, 4.0 / 9, 3.0 / 9}, {3.0 / 5, 0, 2.0 / 5}}) ==
        Approx(0.246750).epsilon(0.000005));
  CHECK(information_gain({9.0 / 14, 5.0 / 14}, {{3.0 / 9, 6.0 / 9}, {4.0 / 5, 1.0 / 5}}) ==
        Approx(0.151836).epsilon(0.000005));
  CHECK(information_gain({9.0 / 14, 5.0 / 14}, {{6.0 / 9, 3.0 / 9}, {2.0 / 5, 3.0 / 5}}) ==
        Approx(0.048127).epsilon(0.00001));
}

TEST_CASE("the cheapest bit first: tap, ohms, ripple") { // worked example of a dead 5 V rail; figures enumerated
  const std::vector<double> causes{0.45, 0.20, 0.15, 0.10, 0.10};
  auto gain = [&](std::vector<double> bad) {
    std::vector<std::vector<double>> outcomes;
    for (double p : bad) outcomes.push_back({1 - p, p});
    return information_gain(causes, outcomes);
  };
  CHECK(entropy(causes) == Approx(2.0577).epsilon(0.00005));
  const double ripple = gain({0.90, 0.30, 0.20, 0.05, 0.20}), ohms = gain({0.02, 0.05, 0.10, 0.95, 0.30}),
               tap = gain({0.10, 0.70, 0.10, 0.05, 0.20});
  CHECK(ripple == Approx(0.4024).epsilon(0.0002));
  CHECK(ohms == Approx(0.3239).epsilon(0.0002));
  CHECK(tap == Approx(0.2107).epsilon(0.0003));
  CHECK(tap / 0.5 > ohms / 1);
  CHECK(ohms / 1 > ripple / 6);
}

TEST_CASE("probability over cost gives the published expected costs") { // Breese and Heckerman MSR-TR-96-06 for the
                                                                        // rule; figures enumerated
  auto cost = [](const std::vector<double>& p, const std::vector<double>& c) {
    return expected_cost(p, c, repair_order(p, c));
  };
  CHECK(cost({0.25, 0.40, 0.20, 0.15}, {5, 30, 10, 20}) == Approx(32.0));
  CHECK(cost({0.5, 0.3, 0.2}, {10, 2, 8}) == Approx(10.6));
  CHECK(cost({0.6, 0.4}, {60, 20}) == Approx(56));
  CHECK(expected_cost({0.5, 0.3, 0.2}, {10, 2, 8}, {0, 1, 2}) == Approx(12.6));
}

TEST_CASE("the order is the best of all orders on random small problems") {
  std::mt19937 random(3);
  for (int round = 0; round < 300; ++round) {
    std::vector<double> p, c;
    for (std::size_t i = 0; i < 2 + random() % 5; ++i) {
      p.push_back(1 + static_cast<double>(random() % 20));
      c.push_back(1 + static_cast<double>(random() % 40));
    }
    c.resize(p.size());
    const double sum = std::accumulate(p.begin(), p.end(), 0.0);
    for (double& one : p) one /= sum;
    std::vector<std::size_t> order(p.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    double best = 1e300;
    do best = std::min(best, expected_cost(p, c, order));
    while (std::next_permutation(order.begin(), order.end()));
    CHECK(expected_cost(p, c, repair_order(p, c)) == Approx(best));
  }
}

TEST_CASE("information gain is what direct enumeration over outcomes gives") {
  std::mt19937 random(9);
  for (int round = 0; round < 200; ++round) {
    std::vector<double> causes(4);
    std::vector<std::vector<double>> outcomes;
    for (double& one : causes) one = 1 + static_cast<double>(random() % 50);
    const double sum = std::accumulate(causes.begin(), causes.end(), 0.0);
    for (double& one : causes) {
      one /= sum;
      const double bad = static_cast<double>(random() % 101) / 100;
      outcomes.push_back({1 - bad, bad});
    }
    double expected = entropy(causes);
    for (std::size_t o = 0; o < 2; ++o) {
      std::vector<double> after;
      double chance = 0;
      for (std::size_t i = 0; i < 4; ++i) {
        after.push_back(causes[i] * outcomes[i][o]);
        chance += after.back();
      }
      if (chance == 0) continue;
      for (double& one : after) one /= chance;
      expected -= chance * entropy(after);
    }
    CHECK(information_gain(causes, outcomes) == Approx(expected).scale(1));
  }
}

TEST_CASE("counts are smoothed as Laplace and stated priors say") { // add-one rule; pseudo-counts of strength 4
  CHECK(smoothed({0, 10, 0, 0, 0}, {0.2, 0.2, 0.2, 0.2, 0.2}, 5)[0] == Approx(0.0667).epsilon(0.001));
  CHECK(smoothed({7, 3, 0, 0, 0}, {0.2, 0.2, 0.2, 0.2, 0.2}, 5)[0] == Approx(0.5333).epsilon(0.0002));
  CHECK(smoothed({3, 0}, {0.5, 0.5}, 2)[0] == Approx(0.8));
  const auto words = smoothed({6, 1, 1}, {0.75 / 1.55, 0.50 / 1.55, 0.30 / 1.55}, 4);
  CHECK(words[0] == Approx(0.6613).epsilon(0.0001));
  CHECK(words[1] == Approx(0.1909).epsilon(0.0003));
  CHECK(words[2] == Approx(0.1478).epsilon(0.0003));
}

TEST_CASE("a chain is cut where the probabilities are nearest to half, not in the middle") { // half-split by
                                                                                             // probability, IT0338
  CHECK(half_split(std::vector<double>(8, 0.125)) == 4);
  CHECK(half_split({0.50, 0.20, 0.10, 0.05, 0.05, 0.05, 0.03, 0.02}) == 1);
  CHECK(half_split({0.05, 0.05, 0.10, 0.40, 0.20, 0.10, 0.05, 0.05}) == 4);
}
