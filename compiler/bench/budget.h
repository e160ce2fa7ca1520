// What the supply of a machine has to carry: rail by rail, running and starting, and what changes when a module is
// exchanged. Amperes and volts; rails that are negative count by their amounts.
#pragma once

#include "link/shop.h"

#include <optional>
#include <string>
#include <vector>

namespace benchlore {

struct ModuleLoad {
  std::string module;
  NoteId component;        // its note, when the equipment names one
  double running = 0;      // at its greatest
  double least = 0;        // running, at its least
  double starting = 0;     // at its greatest; the running current when it states none
  bool not_stated = false; // what was put in does not say what it draws here
};

struct RailBudget {
  std::string rail;
  double voltage = 0;            // nominal, as an amount
  std::optional<double> rated;   // continuous
  std::optional<double> peak;    // while drives start; the rated current when no peak is stated
  std::optional<double> minimum; // least load for regulation
  std::vector<ModuleLoad> loads;
  double running = 0, least = 0;
  double starting = 0;  // all at once
  double staggered = 0; // one after the other: the worst start on top of all that run
  Span span;
};

// What a module is exchanged for, or a new one.
struct Exchange {
  std::string module;
  NoteId component;
};

enum class BudgetTrouble {
  running_too_high,  // unfit
  starting_too_high, // unfit: even one after the other
  start_in_turn,     // together too much, one after the other not
  little_to_spare,   // above four fifths of the rating
  load_too_low,      // below the least load
  load_not_stated,   // of a module
  rating_not_stated, // of the rail
  no_such_rail,      // a load names a rail that the supply does not list
  power_too_high,    // the sum of all rails
};

struct BudgetFinding {
  BudgetTrouble trouble{};
  std::string rail;
  std::string text; // a sentence with sum, limit and shortfall
  std::string way_out;
  bool unfit() const;
};

struct Budget {
  NoteId equipment;
  std::vector<RailBudget> rails; // as the note lists them
  double running_power = 0, starting_power = 0;
  std::optional<double> rated_power;
  std::vector<BudgetFinding> findings; // unfit ones first
  double lamp_power = 0;               // of a series lamp that the machine can start behind: four times its input power
};

// Nothing when the note is no equipment or lists no supply.
std::optional<Budget> budget_of(const Shop& shop, NoteId equipment, const std::vector<Exchange>& exchanges = {});

// Reports what the supplies of all machines cannot carry, as they are and with each declared substitute of a module.
void report_budgets(const Shop& shop, Report& report);

} // namespace benchlore
