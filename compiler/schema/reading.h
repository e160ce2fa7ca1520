// Helpers for reading schema files strictly: every key must be known, every fault is reported at its place.
#pragma once

#include "schema/schema.h"

#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

namespace benchlore {

// What the readers of schema files share: where the texts are and where faults go.
struct SchemaReading {
  const Sources& sources;
  Report& report;
  Schema& schema;
  bool sound = true;
  bool shop = false; // reads a shop's own folder

  void fault(Span span, std::string text, std::string way_out = {});
  // Reports keys of a map that are none of these; false when the node is no map.
  bool check_keys(const Node& node, std::initializer_list<std::string_view> allowed);
  // The scalar under a key; empty when absent. Reports when required and absent, or when it is no scalar.
  std::string text(const Node& map, std::string_view key, bool required = false);
  bool flag(const Node& map, std::string_view key);
  // The scalars of a list, or the one scalar in its place.
  std::vector<std::string> texts(const Node& map, std::string_view key);
  std::vector<std::string> texts_of(const Node& node);
  std::optional<double> number(const Node& node);
  // A quantity whose dimension its own unit decides (reading against the expected one reports a mismatch).
  std::optional<Quantity> quantity(const Node& node, Dimension expected);
  // The dimension of a unit text; reports an unknown unit. `none` and an empty text are pure numbers.
  Dimension dimension(const std::string& unit, Span span);
  Shortfall shortfall(const Node& map, std::string_view key, Shortfall otherwise, bool required);
};

void read_kind(SchemaReading& reading, const Node& node);
void read_classes(SchemaReading& reading, const Node& node);
void finish_classes(SchemaReading& reading); // inheritance, and names that must exist
void read_combinations(SchemaReading& reading, const Node& node);
void read_drive_types(SchemaReading& reading, const Node& node);
void read_families(SchemaReading& reading, const Node& node); // after finish_classes
void read_rules(SchemaReading& reading, const Node& node);    // and a shop's `changes`
void check_rules(SchemaReading& reading);
void read_roles(SchemaReading& reading, const Node& node);
void read_stresses(SchemaReading& reading, const Node& node);
void read_cautions(SchemaReading& reading, const Node& node);
void read_likelihood(SchemaReading& reading, const Node& node);
void read_sources(SchemaReading& reading, const Node& node);
void read_synonyms(SchemaReading& reading, const Node& node);

// The definition of a rating as the first of these classes has it, and of a stress; null when there is none.
const RatingType* rating_of(const Schema& schema, const std::vector<std::string>& classes, const std::string& name);
const RatingType* stress_of(const Schema& schema, const std::string& name);

// The keys of a rule that a shop may change as well.
void read_band(SchemaReading& reading, const Node& node, Rule& rule);
void read_factor(SchemaReading& reading, const Node& node, Rule& rule);

// What a shop changes about a rule: tighter always, looser only where the rule says `may-loosen`.
void read_change(SchemaReading& reading, const Node& node);

// A rating or stress as a class file or stresses.yaml defines it.
RatingType read_rating_type(SchemaReading& reading, std::string name, const Node& node);

} // namespace benchlore
