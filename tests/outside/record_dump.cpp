// Reads framed YAML texts (`<length>\n<bytes>` each) from standard input and prints, a line each, either the tree
// as JSON or the refusal. For comparing the record layer with the YAML test suite.
#include "base/json.h"
#include "record/record.h"

#include <cstdio>
#include <cstdlib>

namespace {

using namespace benchlore;

// {"text":…,"quoted":…}, {"list":[…]} or {"map":[[key, value]…]}.
void dump(const Node& node, JsonWriter& json) {
  json.object();
  if (node.is_scalar()) {
    json.field("text", node.text);
    json.field("quoted", node.quoted);
  } else {
    json.key(node.is_list() ? "list" : "map");
    json.list();
    for (const Node& item : node.items) dump(item, json);
    for (const Entry& entry : node.entries) {
      json.list();
      json.value(entry.key);
      dump(entry.value, json);
      json.end();
    }
    json.end();
  }
  json.end();
}

std::string answer(std::string text) {
  Sources sources;
  Report report;
  const auto size = static_cast<std::uint32_t>(text.size());
  const FileId file = sources.add("case.yaml", std::move(text));
  const auto node = read_record(sources, {file, 0, size}, report);
  JsonWriter json;
  if (node) {
    dump(*node, json);
  } else {
    json.object();
    json.field("refused", report.messages().size() == 1 ? report.messages()[0].text : std::string());
    json.end();
  }
  return json.text();
}

} // namespace

int main() {
  char line[32];
  while (std::fgets(line, sizeof line, stdin)) {
    std::string text(std::strtoul(line, nullptr, 10), '\0');
    if (std::fread(text.data(), 1, text.size(), stdin) != text.size()) return 1;
    std::printf("%s\n", answer(std::move(text)).c_str());
  }
}
