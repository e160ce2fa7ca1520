// Reads lines `capacitance TEXT`, `resistance TEXT` or `voltage TEXT` and prints what the quantity layer makes of each:
// nominal, least and greatest value in SI units, or `refused` with the message. Driven by quantities.mjs.
#include "quantity/quantity.h"

#include <cstdio>
#include <iostream>
#include <string>

int main() {
  using namespace benchlore;
  for (std::string line; std::getline(std::cin, line);) {
    const std::size_t space = line.find(' ');
    const std::string name = line.substr(0, space);
    const Dimension dimension = name == "capacitance"  ? dimension::capacitance
                                : name == "resistance" ? dimension::resistance
                                                       : dimension::voltage;
    const QuantityResult result = parse_quantity(line.substr(space + 1), dimension);
    if (result.quantity && result.quantity->nominal) {
      std::printf("%.17g %.17g %.17g\n", result.quantity->nominal->value(), *result.quantity->low(),
                  *result.quantity->high());
    } else {
      std::printf("refused %s\n", result.error ? result.error->message.c_str() : "no nominal value");
    }
  }
}
