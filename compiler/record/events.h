// Owners of libyaml's parser and event: what it allocates is freed on every way out.
#pragma once

#include <string>
#include <string_view>
#include <yaml.h>

namespace benchlore {

// The last line is ended if it is not: libyaml reads an open line of a block differently.
struct Parser {
  yaml_parser_t raw{};
  std::string text;
  explicit Parser(std::string_view record) : text(record) {
    if (!text.ends_with('\n')) text += '\n';
    yaml_parser_initialize(&raw);
    yaml_parser_set_encoding(&raw, YAML_UTF8_ENCODING);
    yaml_parser_set_input_string(&raw, reinterpret_cast<const unsigned char*>(text.data()), text.size());
  }
  Parser(const Parser&) = delete;
  Parser& operator=(const Parser&) = delete;
  ~Parser() { yaml_parser_delete(&raw); }
};

struct Event {
  yaml_event_t raw{};
  Event() = default;
  Event(const Event&) = delete;
  Event& operator=(const Event&) = delete;
  ~Event() { yaml_event_delete(&raw); }
};

} // namespace benchlore
