// What a class says about one rating, and what a position may say about one stress.
#pragma once

#include "quantity/value.h"
#include "report/message.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace benchlore {

enum class RatingForm {
  quantity, // a value with a unit
  words,    // one or several of a list of words, or free words when the list is empty
};

// Converts a rating between test conditions, by a published table of factors. Between two rows the factor that
// flatters the part less counts; outside the table nothing is converted.
struct Conversion {
  std::string condition; // `frequency` or `temperature`
  struct Row {
    double at;     // SI value of the condition
    double factor; // of the rating there
  };
  std::vector<Row> rows;              // ascending
  std::string when_rating;            // applies only if this rating of the part …
  std::optional<Quantity> when_value; // … lies inside this range
  std::string source;
};

struct RatingType {
  std::string name;
  std::string title;
  std::string meaning;
  RatingForm form = RatingForm::quantity;
  Dimension dimension;
  std::string unit;               // as schema/ writes it
  std::vector<std::string> words; // the words it may hold; for grades, lowest first
  std::vector<std::string>
      compare_at; // conditions that must be alike: a dimension (`frequency`, `temperature`) or a name
  std::vector<Conversion> conversions;
};

// A value that a note or a rule example states, and where.
struct StatedValue {
  Value value;
  Span span;
  std::string source; // id of a source, or empty
  // Where makers differ: what each states. `value` then spans them all; the worst of them counts.
  std::vector<std::pair<std::string, Value>> by_maker;
};

using Ratings = std::map<std::string, StatedValue, std::less<>>;

} // namespace benchlore
