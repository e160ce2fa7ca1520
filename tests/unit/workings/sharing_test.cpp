// Worked examples of sharing. The sums are circuit theory; the balancing formulas are those of a maker's guide for
// series connection and of the guide to electrolytics that divides the rated voltage by the leakage.
#include "workings/sharing.h"

#include <doctest/doctest.h>

using namespace benchlore;
using doctest::Approx;

namespace {

Spread around(double nominal, double fraction) { return {nominal * (1 - fraction), nominal * (1 + fraction)}; }
Spread inverse_around(double nominal, double fraction) {
  return {1 / (nominal * (1 + fraction)), 1 / (nominal * (1 - fraction))};
}

} // namespace

TEST_CASE("of two 100 uF 20 % capacitors in series on 400 V one can see 240 V, and on 450 V 270 V") {
  const std::vector<Spread> weights{inverse_around(100e-6, 0.2), inverse_around(100e-6, 0.2)};
  CHECK(400 * worst_share(weights, 0) == Approx(240));
  CHECK(450 * worst_share(weights, 0) == Approx(270));
  CHECK(shared_limit({250, 250}, weights) == Approx(250 / 0.6));
}

TEST_CASE("of three 22 nF 10 % capacitors in series on 1500 V the smallest sees 569 V with the others at nominal") {
  CHECK(1500 * worst_share({{1 / 22e-9, 1 / 19.8e-9}, {1 / 22e-9, 1 / 22e-9}, {1 / 22e-9, 1 / 22e-9}}, 0) ==
        Approx(535.7).epsilon(0.001));
  const std::vector<Spread> worst(3, inverse_around(22e-9, 0.1)); // the others at their greatest: 569 V
  CHECK(1500 * worst_share(worst, 0) == Approx(569).epsilon(0.001));
}

TEST_CASE("two 220 k 5 % resistors in series on 330 V see 173 V at the worst") {
  const std::vector<Spread> weights{around(220e3, 0.05), around(220e3, 0.05)};
  CHECK(330 * worst_share(weights, 0) == Approx(173.25));
}

TEST_CASE("of 10 ohm and 15 ohm in parallel the smaller one takes three fifths of the power") {
  CHECK(worst_share({{1 / 10.0, 1 / 10.0}, {1 / 15.0, 1 / 15.0}}, 0) == Approx(0.6));
}

TEST_CASE("80 mohm with 1.0 A and 200 mohm with 0.5 A together bear 1.40 A, not 1.5 A") {
  CHECK(heat_shared_current({1.0, 0.5}, {0.080, 0.200}) == Approx(1.40));
}

TEST_CASE("two equal capacitors bear twice the ripple current, and three less than three times when only the greatest "
          "resistance is known") {
  CHECK(heat_shared_current({1.5, 1.5}, {0.06, 0.06}) == Approx(3.0));
  CHECK(heat_shared_current({1, 1, 1}, {1, 1, 1}) == Approx(2.828).epsilon(0.001));
}

TEST_CASE("no lower resistance than stated makes a part hotter than its rating at the limit") {
  // Tried over a grid of true resistances below the stated ones: heat of each part against its rated heat.
  const std::vector<double> limits{1.0, 0.5}, stated{0.08, 0.2};
  const double total = heat_shared_current(limits, stated);
  for (double a = 0.02; a <= 1.0; a += 0.02) {
    for (double b = 0.02; b <= 1.0; b += 0.02) {
      const double r0 = stated[0] * a, r1 = stated[1] * b;
      const double i0 = total * r1 / (r0 + r1), i1 = total - i0;
      CHECK(i0 * i0 * r0 <= limits[0] * limits[0] * stated[0] * 1.000001);
      CHECK(i1 * i1 * r1 <= limits[1] * limits[1] * stated[1] * 1.000001);
    }
  }
}

TEST_CASE("the balancing resistance is the lower of the two published formulas") {
  // 2 x 250 V on 400 V: (500 - 400) / 200 uA = 500 k; 250 V / 200 uA = 1.25 M.
  CHECK(balancing_resistance(2, {250}, {400}, {200e-6}).si == Approx(500e3));
  CHECK(balancing_resistance(2, {250}, {400}, {43e-6}).si == Approx(2.33e6).epsilon(0.01));
  // 250 V / 0.25 mA = 1 M by the other guide, where little voltage is applied.
  CHECK(balancing_resistance(2, {250}, {0}, {250e-6}).si == Approx(1e6));
}
