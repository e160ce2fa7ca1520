// Any bytes as a marking: nothing crashes, the order holds, and each reading has words.
#include "decode/decode.h"

#include <cstdlib>

namespace {

void check(bool holds) {
  if (!holds) std::abort();
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const unsigned char* data, std::size_t size) {
  const auto readings = benchlore::decode({reinterpret_cast<const char*>(data), size});
  check(size <= benchlore::longest_marking || readings.empty());
  for (std::size_t i = 0; i < readings.size(); ++i) {
    check(!readings[i].text.empty() && !readings[i].why.empty());
    check(i == 0 || readings[i - 1].rank >= readings[i].rank);
  }
  return 0;
}
