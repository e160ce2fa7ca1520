// The command line: reads arguments, runs one command, and decides the exit code.
#pragma once

#include <iosfwd>

namespace benchlore {

struct Streams {
  std::istream& in;
  std::ostream& out;
  std::ostream& err;
  bool out_is_terminal = false;
  bool err_is_terminal = false;
};

// 0: clean, or a usable answer. 1: findings, or no usable answer. 2: wrong usage or input.
int run(int argc, char** argv, Streams& streams);

} // namespace benchlore
