// Front matter and schema files as located trees of keys and values: the plain subset of YAML 1.2, strictly read.
//
// libyaml's events are taken one by one and bounded as they come: 64 KiB, 16 levels, one document, no anchors,
// aliases, tags, complex or duplicate keys. Scalars stay text; the fields of a kind give them meaning.
#pragma once

#include "report/message.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace benchlore {

struct Entry;

struct Node {
  enum class Shape { scalar, list, map };
  Shape shape = Shape::scalar;
  Span span;                  // the value as written, without a comment after it
  std::string text;           // of a scalar, unquoted
  bool quoted = false;        // of a scalar: written in quotes or as a block
  std::vector<Node> items;    // of a list
  std::vector<Entry> entries; // of a map, in the order written

  bool is_scalar() const { return shape == Shape::scalar; }
  bool is_list() const { return shape == Shape::list; }
  bool is_map() const { return shape == Shape::map; }
  // A plain scalar with nothing in it (`key:`).
  bool is_empty() const { return is_scalar() && !quoted && text.empty(); }
  // The value of a key of a map; nothing when this is no map or has no such key.
  const Node* find(std::string_view key) const;
};

struct Entry {
  std::string key;
  Span key_span;
  Node value;
};

// The text of an entry of a map; empty when there is none or it is no scalar.
std::string text_in(const Node& map, std::string_view key);

struct RecordLimits {
  std::size_t bytes = 64 * 1024;
  std::size_t depth = 16;
};

// Reads bytes [begin, end) of a file as one record. Spans count from the start of the file.
// On the first fault a message is reported and nothing returned. An empty record is an empty map.
std::optional<Node> read_record(const Sources& sources, Span region, Report& report, RecordLimits limits = {});

} // namespace benchlore
