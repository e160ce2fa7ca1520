// Everything that schema/ says, checked: kinds of notes, classes of component, rules, roles, stresses, cautions.
#pragma once

#include "base/files.h"
#include "record/record.h"
#include "schema/combination.h"
#include "schema/rule.h"

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace benchlore {

// One field of a kind of note.
struct Field {
  enum class Type { text, words, word, flag, count, date, quantity, ref, list, map, ratings, stress, any };
  std::string name;
  Type type = Type::text;
  bool required = false;
  std::string meaning;
  std::string unit;                   // of a quantity, as schema/ writes it
  Dimension dimension;                // of a quantity
  std::vector<std::string> choices;   // of a word; empty: any
  std::vector<std::string> refers_to; // kinds that a ref may name; empty: any kind
  std::vector<Field> fields;          // of a map (empty: free keys, each of `element`), or the one element of a list
  bool free_keys = false;             // a map from names (designators, rails) to values of fields[0]
};

struct Kind {
  std::string name;   // `component`
  std::string title;  // `Component`
  std::string plural; // `Components`
  std::string folder; // `components`
  std::string meaning;
  std::vector<Field> fields;
  const Field* field(std::string_view name) const;
};

// Which other class may stand in for a class, and where.
struct StandIn {
  std::string substitute;         // class name
  std::vector<std::string> roles; // empty: every role
  std::string because;
  std::string source;
};

struct ComponentClass {
  std::string name;
  std::string title;
  std::string plural;
  std::string meaning;
  std::string extends;                                    // parent class, or empty
  bool general = false;                                   // only there to be extended; no component has it
  std::map<std::string, RatingType, std::less<>> ratings; // own and inherited
  std::vector<std::string> order;                         // ratings in the order in which they are shown
  std::vector<std::string> roles;                         // that it plays
  std::vector<StandIn> stand_ins;
  Shortfall otherwise = Shortfall::unfit; // when a part of a class that is not listed is proposed
  std::string otherwise_because;
  std::vector<std::string> cautions;
  Span span;
};

struct Role {
  std::string name, title, meaning;
  bool safety =
      false; // a mains, suppression, fuse, battery-charging or EHT place: an unsafe finding is never accepted away
  std::vector<std::string> cautions;
};

struct Caution {
  std::string name, title, wording, source;
  // Applies to notes with one of these classes, roles, tags, or words in a `hazard` field; thresholds are in data.
  std::vector<std::string> classes, roles, tags;
  struct Threshold {
    std::string rating; // of a component, or stress of a position
    Quantity at_least;
  };
  std::vector<Threshold> thresholds;
};

struct SourceEntry {
  std::string name, title, publisher, trust; // trust: published, common-practice, from-memory
};

// A family of parts that share ratings, such as a logic family with its levels and currents. A part whose rating
// `family` names it takes from here what it does not state itself.
struct Family {
  std::string name, title, source;
  Ratings ratings;
};

// A table of drive types that some firmware knows.
struct DriveType {
  int number = 0;
  int cylinders = 0, heads = 0, sectors = 0;
  std::string precompensation; // a cylinder, `never` or `always`
  int landing = 0;
};
struct DriveTypeTable {
  std::string name, title, meaning, source;
  std::vector<DriveType> types;
};

struct Schema {
  std::map<std::string, Kind, std::less<>> kinds;
  std::map<std::string, ComponentClass, std::less<>> classes;
  std::map<std::string, Role, std::less<>> roles;
  std::map<std::string, RatingType, std::less<>> stresses;
  std::map<std::string, Family, std::less<>> families;
  std::vector<DriveTypeTable> drive_types;
  std::map<std::string, double, std::less<>> likelihood; // word to probability
  std::map<std::string, Caution, std::less<>> cautions;
  std::map<std::string, SourceEntry, std::less<>> sources;
  std::vector<std::vector<std::string>> synonyms; // groups of words that the trade uses for one thing
  std::vector<Rule> rules;
  // Places of the rules whose original may be of this class, in order; filled by read_schema. A class that is not here
  // is asked about with every rule.
  std::map<std::string, std::vector<std::size_t>, std::less<>> rules_from;
  std::vector<CombinationWay> combinations;

  const ComponentClass* find_class(std::string_view name) const;
  const Kind* find_kind(std::string_view name) const;
  // True when the class is the other one or descends from it.
  bool is_a(std::string_view name, std::string_view ancestor) const;
  const Rule* find_rule(std::string_view name) const;
  // Calls visit(rule) for each rule that may speak of an original of this class.
  template <typename Visit> void each_rule(std::string_view original_class, Visit visit) const {
    const auto places = rules_from.find(original_class);
    if (places == rules_from.end()) {
      for (const Rule& rule : rules) visit(rule);
    } else {
      for (std::size_t place : places->second) visit(rules[place]);
    }
  }
};

// Where a schema lies. The first one read is the project's and whole; a shop's own may hold any part of the layout.
struct SchemaFolder {
  const Files& files;
  std::string folder; // empty, or a path that ends with `/`
};

// Reads and checks schema folders, each adding to the ones before. A shop's folder adds classes, rules and words; it
// may tighten a rule, and loosen one only where that says so (`changes`). A message of kind `schema_error` means that
// nothing may be judged; nothing is returned then.
std::optional<Schema> read_schema(const std::vector<SchemaFolder>& folders, Sources& sources, Report& report);

// Reads one value of a rating or stress from a scalar or a map with `value`, `at`, `source`; reports and returns
// nothing when it cannot. `name` is for the message.
std::optional<StatedValue> read_value(const Node& node, const RatingType& type, const Sources& sources, Report& report,
                                      MessageKind kind = MessageKind::bad_quantity);

} // namespace benchlore
