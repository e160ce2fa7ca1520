// A rule of substitution as data: a form of comparison, what it compares, where it applies, why, and examples.
#pragma once

#include "schema/rating.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace benchlore {

// How a substitute's value must stand to its reference. Each has one function in compiler/substitute/forms.cpp.
enum class RuleForm {
  at_least,       // least guaranteed value >= factor * reference
  at_most,        // greatest guaranteed value <= factor * reference
  same,           // equal quantity (within `allowance`), or the same set of words
  same_or_higher, // grade not below the original's; grades are the rating's words, lowest first
  allowed,        // listed for the original's word in the rule's table
  within,         // inside a band around the reference
  covers,         // range contains the reference range
  inside,         // guaranteed interval lies inside the window that the position states
  fits,           // a dimension not greater than the reference, plus allowance
  withstands,     // like at_least, against a stress only; applies when the position states it
  leads,          // every lead falls into its own hole; views that are mirror images are converted
  pins,           // each pin has the same function, or one that the rule's table lists for it
  computed,       // a named computation of compiler/substitute/computed.cpp
};

// What happens when the rule is not met.
enum class Shortfall { unsafe, unfit, care };

// The rule applies only if a part or the position has one of these words, or a value in this range. When that is
// not stated, the rule counts as not stated, unless `missing` says otherwise.
struct WhenClause {
  enum class Of { original, substitute, position };
  Of of = Of::original;
  std::string rating; // or stress
  std::vector<std::string> words;
  std::optional<Quantity> range;
  bool negate = false;        // `is-not`
  bool missing_skips = false; // `unstated: skip`: no value, no rule
  std::optional<bool> stated; // `stated`: only whether the position states it at all
};

struct RuleExample {
  std::string kind; // passes, fails, lacks
  std::string original_class, substitute_class;
  Ratings original;
  Ratings substitute;
  Ratings stress;
  std::string role;
  Span span;
};

struct Rule {
  std::string name;
  RuleForm form{};
  std::string rating;             // what is compared; empty for some computed rules
  std::vector<std::string> from;  // classes of the original that it applies to (with their descendants)
  std::vector<std::string> to;    // classes of the substitute
  std::vector<std::string> roles; // empty: everywhere
  std::vector<std::string> not_roles;
  std::vector<WhenClause> when;
  std::string stress;  // the position's stress that replaces the original's rating as reference
  double factor = 1.0; // reference is multiplied by it
  std::map<std::string, double, std::less<>> factor_by_role;
  struct Relaxed { // another factor where a stress of the position is at least so much
    std::string stress;
    Quantity at_least;
    double factor = 1.0;
  };
  std::optional<Relaxed> relaxed;
  struct Band {
    double below = 0; // fractions of the reference: 0.2 is -20 %
    double above = 0;
  };
  Band band;
  std::map<std::string, Band, std::less<>> band_by_role;
  bool whole = false;                // `within`: the whole interval counts, both tolerances must be stated
  std::optional<Quantity> allowance; // `same` and `fits`
  std::optional<Value> limit;        // a constant reference in place of the original's rating
  std::map<std::string, std::vector<std::string>, std::less<>> table; // `allowed`, `pins`
  bool looks_for_extra = false;                                       // `pins`: a function on a pin that had none
  std::string computation;                                            // name of a `computed` check
  Ratings parameters;                                                 // its constants
  Shortfall falls_short = Shortfall::unfit;
  std::string action;      // what the repairer does when the shortfall is `care`
  bool may_loosen = false; // a shop may weaken it, visibly
  bool from_shop = false;  // stands in the shop's own schema
  bool loosened = false;   // by the shop
  std::string changed;     // by the shop: how, why, by whom; empty as delivered
  std::string because;
  std::string source; // id in schema/sources.yaml
  std::vector<RuleExample> examples;
  Span span;
};

std::string_view to_text(RuleForm form);
std::string_view to_text(Shortfall shortfall);

} // namespace benchlore
