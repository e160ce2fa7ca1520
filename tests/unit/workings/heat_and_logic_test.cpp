// Worked examples for heat and logic levels.
#include "workings/heat.h"
#include "workings/logic.h"

#include <cstdint>
#include <doctest/doctest.h>

using namespace benchlore;

TEST_CASE("a 7805 that drops 9 V to 5 V at 0.5 A without a heatsink is at 170 °C in a room of 40 °C") {
  // TO-220 in still air: 65 K/W (thermal data of LM340/LM78XX, SNOSBT0L); P = (9 - 5) x 0.5 = 2 W; 40 + 130 = 170.
  const Watts power = series_dissipation({9}, {5}, {0.5});
  CHECK(power.si == doctest::Approx(2.0));
  CHECK(junction_temperature({40}, power, {65}).si == doctest::Approx(170.0));
}

TEST_CASE(
    "noise margins are the least high output less the threshold, and the threshold less the greatest low output") {
  // SN74LS00, SDLS025: VOH 2.7 V, VIH 2 V, VIL 0.8 V, VOL 0.5 V.
  CHECK(high_noise_margin({2.7}, {2.0}).si == doctest::Approx(0.7));
  CHECK(low_noise_margin({0.8}, {0.5}).si == doctest::Approx(0.3));
}

TEST_CASE("fan-out is a whole number, rounded down but for the last bit") {
  CHECK(fan_out({8e-3}, {0.4e-3}) == 20);  // SDLS025: IOL 8 mA, IIL 0.4 mA
  CHECK(fan_out({16e-3}, {1.6e-3}) == 10); // SN7400, SDLS025
  CHECK(fan_out({4e-3}, {0.4e-3}) == 10);
  CHECK(fan_out({3.9e-3}, {0.4e-3}) == 9);
  CHECK(fan_out({4e-3}, {0}) == INT64_MAX);
}
