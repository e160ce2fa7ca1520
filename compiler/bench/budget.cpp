// Sums of loads against the rails that carry them.
#include "bench/budget.h"

#include "base/text.h"

#include <algorithm>
#include <cmath>

namespace benchlore {
namespace {

constexpr double comfortable = 0.8; // of a rating, common practice
constexpr double efficiency = 0.75; // of a supply, common practice

std::string amperes(double value) { return show_number(value, dimension::current); }

struct Ends {
  double low = 0, high = 0;
};

// A stated value as an amount; nothing when the entry is missing or holds none.
std::optional<Ends> ends_of(const Node& map, std::string_view key, Dimension dimension) {
  const Node* node = map.find(key);
  if (node == nullptr || !node->is_scalar()) return std::nullopt;
  const auto read = parse_quantity(node->text, dimension);
  if (!read.quantity || !read.quantity->centre()) return std::nullopt;
  const double centre = *read.quantity->centre();
  const double low = std::fabs(read.quantity->low().value_or(centre)),
               high = std::fabs(read.quantity->high().value_or(centre));
  return Ends{std::min(low, high), std::max(low, high)};
}

std::optional<double> nominal_of(const Node& map, std::string_view key, Dimension dimension) {
  const Node* node = map.find(key);
  const auto read = node != nullptr && node->is_scalar() ? parse_quantity(node->text, dimension) : QuantityResult{};
  return read.quantity && read.quantity->centre() ? std::optional(std::fabs(*read.quantity->centre())) : std::nullopt;
}

RailBudget read_rail(const std::string& name, const Node& node) {
  RailBudget rail;
  rail.rail = name;
  rail.span = node.span;
  rail.voltage = nominal_of(node, "voltage", dimension::voltage).value_or(0);
  rail.rated = nominal_of(node, "current", dimension::current);
  rail.peak = nominal_of(node, "peak", dimension::current);
  if (!rail.peak) rail.peak = rail.rated;
  rail.minimum = nominal_of(node, "minimum-load", dimension::current);
  return rail;
}

// `+5V` is `5v` in names of ratings, `-12V` is `minus-12v`.
std::string rail_key(const std::string& rail) {
  std::string key;
  for (char c : rail) {
    if (c == '+' || c == ' ') continue;
    if (c == '-') {
      key += "minus-";
    } else {
      key += lower(std::string(1, c));
    }
  }
  return key;
}

std::optional<Ends> current_rating(const Shop& shop, NoteId component, const std::string& name) {
  const Ratings& ratings = shop.note(component).ratings;
  const auto found = ratings.find(name);
  const Quantity* quantity = found == ratings.end() ? nullptr : std::get_if<Quantity>(&found->second.value);
  if (quantity == nullptr || quantity->only_typical() || !quantity->high()) return std::nullopt;
  return Ends{quantity->low().value_or(0), *quantity->high()};
}

// What a component says that it draws from a rail.
std::optional<ModuleLoad> drawn_by(const Shop& shop, const Exchange& exchange, const std::string& rail) {
  const auto running = current_rating(shop, exchange.component, "running-current-" + rail_key(rail));
  const auto starting = current_rating(shop, exchange.component, "start-current-" + rail_key(rail));
  if (!running && !starting) return std::nullopt;
  ModuleLoad load{exchange.module, exchange.component, 0, 0, 0, !running};
  if (running) {
    load.running = running->high;
    load.least = running->low;
  }
  load.starting = std::max(load.running, starting ? starting->high : 0.0);
  return load;
}

RailBudget* find_rail(Budget& budget, const std::string& name) {
  const auto found = std::find_if(budget.rails.begin(), budget.rails.end(), [&](auto& r) { return r.rail == name; });
  return found == budget.rails.end() ? nullptr : &*found;
}

void add_finding(Budget& budget, BudgetTrouble trouble, const std::string& rail, std::string text,
                 std::string way_out) {
  budget.findings.push_back({trouble, rail, std::move(text), std::move(way_out)});
}

void read_loads(Budget& budget, const Shop& shop, const Node& loads, const std::vector<Exchange>& exchanges) {
  for (const Node& item : loads.items) {
    const Node* module = item.find("module");
    const Node* rail_name = item.find("rail");
    const auto running = ends_of(item, "running", dimension::current);
    if (module == nullptr || rail_name == nullptr || !running) continue;
    const bool exchanged =
        std::any_of(exchanges.begin(), exchanges.end(), [&](auto& e) { return e.module == module->text; });
    if (exchanged) continue;
    RailBudget* rail = find_rail(budget, rail_name->text);
    if (rail == nullptr) {
      add_finding(budget, BudgetTrouble::no_such_rail, rail_name->text,
                  "`" + module->text + "` draws from `" + rail_name->text + "`, which the supply does not list",
                  "list the rail under `supply`");
      continue;
    }
    const auto starting = ends_of(item, "start-up", dimension::current);
    const Node* component = item.find("component");
    const auto note = component == nullptr ? std::nullopt : shop.find(component->text);
    rail->loads.push_back({module->text, note.value_or(NoteId{}), running->high, running->low,
                           std::max(running->high, starting ? starting->high : 0.0), false});
  }
}

void put_in(Budget& budget, const Shop& shop, const Exchange& exchange) {
  bool stated = false;
  for (RailBudget& rail : budget.rails) {
    if (auto load = drawn_by(shop, exchange, rail.rail)) {
      stated = true;
      if (load->not_stated)
        add_finding(budget, BudgetTrouble::load_not_stated, rail.rail,
                    "`" + shop.note(exchange.component).id + "` does not state what it draws from `" + rail.rail +
                        "` while it runs",
                    "look up or measure `running-current-" + rail_key(rail.rail) + "`");
      rail.loads.push_back(std::move(*load));
    }
  }
  if (!stated)
    add_finding(budget, BudgetTrouble::load_not_stated, "",
                "`" + shop.note(exchange.component).id + "` does not state what it draws from any rail",
                "look up or measure its running and starting currents");
}

void add_up(RailBudget& rail) {
  double worst_start = 0;
  for (const ModuleLoad& load : rail.loads) {
    rail.running += load.running;
    rail.least += load.least;
    rail.starting += load.starting;
    worst_start = std::max(worst_start, load.starting - load.running);
  }
  rail.staggered = rail.running + worst_start;
}

bool above(double sum, double limit) { return sum > limit * (1 + 1e-9); }

std::string too_much(const RailBudget& rail, const char* what, double sum, double limit) {
  return "rail `" + rail.rail + "`: " + amperes(sum) + " " + what + " of " + amperes(limit) + ", " +
         amperes(sum - limit) + " too much";
}

void judge_rail(Budget& budget, const RailBudget& rail) {
  if (!rail.rated) {
    if (!rail.loads.empty())
      add_finding(budget, BudgetTrouble::rating_not_stated, rail.rail,
                  "rail `" + rail.rail + "` carries " + amperes(rail.running) + " and its rating is not stated",
                  "read it off the label of the supply");
    return;
  }
  if (above(rail.running, *rail.rated))
    add_finding(budget, BudgetTrouble::running_too_high, rail.rail,
                too_much(rail, "running", rail.running, *rail.rated),
                "leave a module out, or fit a supply with more current on this rail");
  else if (above(rail.running, comfortable * *rail.rated))
    add_finding(budget, BudgetTrouble::little_to_spare, rail.rail,
                "rail `" + rail.rail + "` runs at " +
                    show_number(100 * rail.running / *rail.rated, dimension::none, 3) + " % of its rating",
                "four fifths is common practice; measure the rail and its ripple under load");
  if (above(rail.staggered, *rail.peak))
    add_finding(budget, BudgetTrouble::starting_too_high, rail.rail,
                too_much(rail, "when starting", rail.starting, *rail.peak),
                "take a drive with a smaller start current, feed it apart, or fit a supply with more on this rail");
  else if (above(rail.starting, *rail.peak))
    add_finding(budget, BudgetTrouble::start_in_turn, rail.rail,
                "rail `" + rail.rail + "`: " + amperes(rail.starting) + " when all start at once, of " +
                    amperes(*rail.peak),
                "let the drives start one after the other: " + amperes(rail.staggered) + " at most");
  if (rail.minimum && rail.least < *rail.minimum * (1 - 1e-9)) {
    const double missing = *rail.minimum - rail.least;
    add_finding(budget, BudgetTrouble::load_too_low, rail.rail,
                "rail `" + rail.rail + "` may carry only " + amperes(rail.least) + "; it needs " +
                    amperes(*rail.minimum) + " to regulate",
                "a dummy load of " + show_number(rail.voltage / missing, dimension::resistance) +
                    " makes up for it; it gets hot");
  }
}

void judge_power(Budget& budget) {
  for (const RailBudget& rail : budget.rails) {
    budget.running_power += rail.voltage * rail.running;
    budget.starting_power += rail.voltage * rail.starting;
  }
  budget.lamp_power = 4 * budget.running_power / efficiency;
  if (budget.rated_power && above(budget.running_power, *budget.rated_power))
    add_finding(budget, BudgetTrouble::power_too_high, "",
                "all rails together take " + show_number(budget.running_power, dimension::power) + " of " +
                    show_number(*budget.rated_power, dimension::power),
                "leave a module out, or fit a larger supply");
}

MessageKind kind_of(const BudgetFinding& finding) {
  if (finding.unfit()) return MessageKind::supply_overload;
  return finding.trouble == BudgetTrouble::load_not_stated || finding.trouble == BudgetTrouble::rating_not_stated
             ? MessageKind::supply_unknown
             : MessageKind::supply_tight;
}

void report_one(const Shop& shop, const BudgetFinding& finding, NoteId equipment, Span span, const std::string& change,
                Report& report) {
  Message& message = report.add(kind_of(finding), span,
                                "`" + shop.note(equipment).id + "`" + change + ": " + finding.text, finding.way_out);
  message.subject = shop.note(equipment).id;
  if (finding.unfit()) message.verdict = "unfit";
}

bool same_finding(const BudgetFinding& a, const BudgetFinding& b) { return a.trouble == b.trouble && a.rail == b.rail; }

// With each declared substitute of a module: only what the exchange itself brings about.
void report_exchanges(const Shop& shop, const Budget& as_it_is, Report& report) {
  std::vector<std::pair<std::string, NoteId>> seen;
  for (const RailBudget& rail : as_it_is.rails) {
    for (const ModuleLoad& load : rail.loads) {
      const auto declared = load.component.known() ? shop.substitutes.find(load.component) : shop.substitutes.end();
      if (declared == shop.substitutes.end()) continue;
      for (const DeclaredSubstitute& substitute : declared->second) {
        const std::pair exchange(load.module, substitute.component);
        if (std::find(seen.begin(), seen.end(), exchange) != seen.end()) continue;
        seen.push_back(exchange);
        const auto changed = budget_of(shop, as_it_is.equipment, {{load.module, substitute.component}});
        for (const BudgetFinding& finding : changed->findings) {
          const bool before = std::any_of(as_it_is.findings.begin(), as_it_is.findings.end(),
                                          [&](auto& f) { return same_finding(f, finding); });
          if (finding.unfit() && !before)
            report_one(shop, finding, as_it_is.equipment, substitute.span,
                       " with `" + shop.note(substitute.component).id + "` as " + load.module, report);
        }
      }
    }
  }
}

} // namespace

bool BudgetFinding::unfit() const {
  return trouble == BudgetTrouble::running_too_high || trouble == BudgetTrouble::starting_too_high ||
         trouble == BudgetTrouble::power_too_high;
}

std::optional<Budget> budget_of(const Shop& shop, NoteId equipment, const std::vector<Exchange>& exchanges) {
  const Note& note = shop.note(equipment);
  const Node* supply = note.field("supply");
  const Node* rails = supply == nullptr ? nullptr : supply->find("rails");
  if (note.kind != "equipment" || rails == nullptr || !rails->is_map()) return std::nullopt;
  Budget budget;
  budget.equipment = equipment;
  budget.rated_power = nominal_of(*supply, "power", dimension::power);
  for (const Entry& entry : rails->entries) budget.rails.push_back(read_rail(entry.key, entry.value));
  if (const Node* loads = note.field("loads")) read_loads(budget, shop, *loads, exchanges);
  for (const Exchange& exchange : exchanges) put_in(budget, shop, exchange);
  for (RailBudget& rail : budget.rails) {
    add_up(rail);
    judge_rail(budget, rail);
  }
  judge_power(budget);
  std::stable_sort(budget.findings.begin(), budget.findings.end(),
                   [](auto& a, auto& b) { return a.unfit() > b.unfit(); });
  return budget;
}

void report_budgets(const Shop& shop, Report& report) {
  for (const auto& [id, note] : shop.by_id) {
    const auto budget = budget_of(shop, note);
    if (!budget) continue;
    const Node* supply = shop.note(note).field("supply");
    for (const BudgetFinding& finding : budget->findings) report_one(shop, finding, note, supply->span, "", report);
    report_exchanges(shop, *budget, report);
  }
}

} // namespace benchlore
