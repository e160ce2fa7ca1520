// Hands the arguments and two streams to command/; nothing else prints or exits.
#include "command/run.h"

#include <iostream>
#include <unistd.h>

int main(int argc, char** argv) {
  benchlore::Streams streams{std::cin, std::cout, std::cerr, isatty(1) != 0, isatty(2) != 0};
  return benchlore::run(argc, argv, streams);
}
