// The published networks, through the code that serves the shop.
#include "diagnosis/network.h"

#include <doctest/doctest.h>
#include <random>

using namespace benchlore;
using doctest::Approx;

namespace {

constexpr std::size_t no = 0, yes = 1;

// Adds a yes/no variable; `given` holds P(yes) for each combination of parents, the last one fastest, `no` first.
std::size_t add(Network& network, const std::vector<std::size_t>& parents, const std::vector<double>& given) {
  const std::size_t made = network.variable(2);
  std::vector<double> rows;
  for (double p : given) {
    rows.push_back(1 - p);
    rows.push_back(p);
  }
  network.table(made, parents, rows);
  return made;
}

// Lauritzen and Spiegelhalter's chest clinic, tables as in gRain's demo/asia.R.
struct Clinic {
  Network network;
  std::size_t asia = add(network, {}, {0.01});
  std::size_t tub = add(network, {asia}, {0.01, 0.05});
  std::size_t smoke = add(network, {}, {0.5});
  std::size_t lung = add(network, {smoke}, {0.01, 0.1});
  std::size_t bronc = add(network, {smoke}, {0.3, 0.6});
  std::size_t either = add(network, {tub, lung}, {0, 1, 1, 1});
  std::size_t xray = add(network, {either}, {0.05, 0.98});
  std::size_t dysp = add(network, {bronc, either}, {0.1, 0.7, 0.8, 0.9});

  double p(std::size_t variable, const Network::Evidence& evidence = {}) const {
    return (*network.posterior(variable, evidence))[yes];
  }
};

} // namespace

TEST_CASE("the chest clinic has its published posteriors to six digits") { // gRain tests/testthat/test-misc.R; full
                                                                           // enumeration
  const Clinic c;
  auto near = [](double found, double expected) { CHECK(std::abs(found - expected) < 0.0000006); };
  near(c.p(c.tub), 0.0104);
  near(c.p(c.lung), 0.055);
  near(c.p(c.bronc), 0.45);
  near(c.p(c.either), 0.064828);
  near(c.p(c.xray), 0.110290);
  near(c.p(c.dysp), 0.435971);
  CHECK(std::abs(c.network.probability({{c.asia, yes}, {c.dysp, yes}}) - 0.004501375) < 5e-10);
  near(c.p(c.tub, {{c.dysp, yes}}), 0.018845);
  near(c.p(c.bronc, {{c.dysp, yes}}), 0.833967);
  near(c.p(c.tub, {{c.asia, yes}, {c.dysp, yes}}), 0.087751);
  near(c.p(c.lung, {{c.asia, yes}, {c.dysp, yes}}), 0.099525);
  near(c.p(c.smoke, {{c.xray, yes}}), 0.687754);
  near(c.p(c.tub, {{c.asia, yes}, {c.dysp, yes}, {c.xray, yes}}), 0.391712);
  near(c.p(c.lung, {{c.asia, yes}, {c.dysp, yes}, {c.xray, yes}}), 0.444271);
  near(c.p(c.bronc, {{c.smoke, yes}, {c.xray, yes}}), 0.6);
  near(c.p(c.lung, {{c.smoke, no}, {c.dysp, yes}}), 0.023815);
  near(c.p(c.tub, {{c.asia, yes}, {c.dysp, yes}, {c.smoke, yes}, {c.xray, no}}), 0.001931);
  near(c.p(c.bronc, {{c.asia, yes}, {c.dysp, yes}, {c.smoke, yes}, {c.xray, no}}), 0.921596);
}

TEST_CASE("knowing a smoker does not move tuberculosis") { // chest-clinic page of Hugin's biotracer site
  const Clinic c;
  CHECK(c.p(c.tub, {{c.smoke, yes}}) == Approx(c.p(c.tub)));
}

TEST_CASE("evidence that cannot be has no posterior") {
  const Clinic c;
  CHECK_FALSE(c.network.posterior(c.asia, {{c.tub, yes}, {c.either, no}}).has_value());
  CHECK(c.network.probability({{c.tub, yes}, {c.either, no}}) == 0);
}

TEST_CASE("the burglary network has its published values") { // worksheet "Burglary System Calculation"; enumeration
  Network n;
  const std::size_t b = add(n, {}, {0.001}), e = add(n, {}, {0.002});
  const std::size_t a = add(n, {b, e}, {0.001, 0.29, 0.94, 0.95});
  const std::size_t j = add(n, {a}, {0.05, 0.90}), m = add(n, {a}, {0.01, 0.70});
  CHECK((*n.posterior(a, {{b, yes}}))[yes] == Approx(0.94002));
  CHECK((*n.posterior(j, {{b, yes}}))[yes] == Approx(0.849017));
  CHECK((*n.posterior(m, {{b, yes}}))[yes] == Approx(0.6586138));
  CHECK((*n.posterior(b, {{j, yes}, {m, yes}}))[yes] == Approx(0.284172).epsilon(0.000002));
  CHECK(n.probability({{j, yes}, {m, yes}}) == Approx(0.0020841));
}

TEST_CASE("rain explains the sprinkler away") { // sprinkler example; tables from memory
  Network n;
  const std::size_t c = add(n, {}, {0.5}), s = add(n, {c}, {0.5, 0.1}), r = add(n, {c}, {0.2, 0.8});
  const std::size_t w = add(n, {s, r}, {0, 0.9, 0.9, 0.99});
  CHECK(n.probability({{w, yes}}) == Approx(0.6471));
  CHECK((*n.posterior(s, {{w, yes}}))[yes] == Approx(0.429764).epsilon(0.000002));
  CHECK((*n.posterior(r, {{w, yes}}))[yes] == Approx(0.707928).epsilon(0.000002));
  CHECK((*n.posterior(s, {{w, yes}, {r, yes}}))[yes] == Approx(0.194499).epsilon(0.000003));
}

TEST_CASE("on random networks elimination gives what a full enumeration gives") {
  std::mt19937 random(5);
  auto chance = [&] { return static_cast<double>(random() % 1000) / 1000; };
  for (int round = 0; round < 100; ++round) {
    Network network;
    std::vector<std::vector<std::size_t>> parents;
    std::vector<std::vector<double>> given;
    for (std::size_t v = 0; v < 6; ++v) {
      std::vector<std::size_t> mine;
      for (std::size_t p = 0; p < v; ++p) {
        if (random() % 3 == 0 && mine.size() < 2) mine.push_back(p);
      }
      std::vector<double> rows(std::size_t{1} << mine.size());
      for (double& row : rows) row = chance();
      add(network, mine, rows);
      parents.push_back(mine);
      given.push_back(rows);
    }
    const std::size_t asked = random() % 6, seen = (asked + 1 + random() % 5) % 6;
    double with = 0, all = 0;
    for (std::size_t world = 0; world < 64; ++world) {
      if ((world >> seen & 1) == 0) continue;
      double p = 1;
      for (std::size_t v = 0; v < 6; ++v) {
        std::size_t row = 0;
        for (std::size_t parent : parents[v]) row = row * 2 + (world >> parent & 1);
        p *= (world >> v & 1) != 0 ? given[v][row] : 1 - given[v][row];
      }
      all += p;
      if ((world >> asked & 1) != 0) with += p;
    }
    CHECK(network.probability({{seen, yes}}) == Approx(all));
    if (all > 0) CHECK((*network.posterior(asked, {{seen, yes}}))[yes] == Approx(with / all));
  }
}
