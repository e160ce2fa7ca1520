// Any bytes as a record: nothing crashes, a refusal has one message, and spans lie within the text.
#include "record/record.h"

#include <cstdlib>

namespace {

using namespace benchlore;

void check(bool holds) {
  if (!holds) std::abort();
}

void check_spans(const Node& node, std::uint32_t size) {
  check(node.span.begin <= node.span.end && node.span.end <= size);
  for (const Node& item : node.items) check_spans(item, size);
  for (const Entry& entry : node.entries) {
    check(entry.key_span.begin < entry.key_span.end && entry.key_span.end <= size);
    check_spans(entry.value, size);
  }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const unsigned char* data, std::size_t size) {
  Sources sources;
  Report report;
  const FileId file = sources.add("fuzz.yaml", std::string(reinterpret_cast<const char*>(data), size));
  const auto node = read_record(sources, {file, 0, static_cast<std::uint32_t>(size)}, report);
  check(report.messages().size() == (node ? 0u : 1u));
  if (node) check_spans(*node, static_cast<std::uint32_t>(size));
  return 0;
}
