// Orders of leads and pinouts.
#include "substitute/pins.h"

#include "base/text.h"

#include <algorithm>

namespace benchlore {
namespace {

using Names = std::vector<std::string>;

Finding unusable(std::string why) {
  Finding finding;
  finding.unusable = std::move(why);
  return finding;
}

// `EBC` is three leads, `[T1, T2, G]` is three as well.
Names leads_of(const Value& value) {
  const Words& words = std::get<Words>(value);
  if (words.items.size() != 1) return words.items;
  Names leads;
  for (char letter : words.items.front()) leads.emplace_back(1, letter);
  return leads;
}

std::string view_of(const Part& part) {
  const auto found = part.ratings->find("lead-view");
  const Words* words = found == part.ratings->end() ? nullptr : std::get_if<Words>(&found->second.value);
  return words == nullptr || words->items.size() != 1 ? std::string() : words->items.front();
}

Names sorted(Names names) {
  std::sort(names.begin(), names.end());
  return names;
}

Names reversed(Names names) {
  std::reverse(names.begin(), names.end());
  return names;
}

bool mirrored(const std::string& a, const std::string& b) {
  return (a == "front-leads-down" && b == "back-leads-down") || (a == "back-leads-down" && b == "front-leads-down");
}

// `hole 1 (E) takes lead 3; …`
std::string crossing(const Names& holes, const Names& leads) {
  std::string text;
  for (std::size_t hole = 0; hole < holes.size(); ++hole) {
    const auto lead = static_cast<std::size_t>(std::find(leads.begin(), leads.end(), holes[hole]) - leads.begin());
    text += (text.empty() ? "" : ", ") + std::string("hole ") + std::to_string(hole + 1) + " (" + holes[hole] +
            ") takes lead " + std::to_string(lead + 1);
  }
  return text;
}

constexpr std::string_view unconnected = "NC";

// Whether what the substitute has on a pin is as good as what the original had there.
bool as_good(const Rule& rule, const std::string& original, const std::string& substitute) {
  if (original == substitute) return true;
  const auto row = rule.table.find(original);
  return row != rule.table.end() && std::find(row->second.begin(), row->second.end(), substitute) != row->second.end();
}

std::string pin_text(std::size_t pin, const std::string& original, const std::string& substitute) {
  return "pin " + std::to_string(pin + 1) + " is " + substitute + " instead of " + original;
}

// What is wrong with one pin; empty when nothing is.
std::string trouble(const Rule& rule, const Names& original, const Names& substitute, std::size_t pin) {
  const std::string& was = original[pin];
  const std::string& is = substitute[pin];
  if (as_good(rule, was, is)) return {};
  if (rule.looks_for_extra) return was == unconnected ? pin_text(pin, "unconnected", is) : std::string();
  if (was == unconnected) return {};
  const auto moved =
      std::find_if(substitute.begin(), substitute.end(), [&](auto& name) { return as_good(rule, was, name); });
  std::string text = pin_text(pin, was, is == unconnected ? "unconnected" : is);
  if (moved != substitute.end())
    return text + " (" + was + " has moved to pin " + std::to_string(moved - substitute.begin() + 1) + ")";
  return text + (is == unconnected ? " (lost)" : " (in conflict)");
}

} // namespace

Finding leads(const Comparison& c) {
  const Names holes = leads_of(*c.reference);
  Names mine = leads_of(*c.value);
  const std::string their_view = view_of(c.original), my_view = view_of(c.substitute);
  if (their_view.empty() || my_view.empty()) return unusable("an order of leads means nothing without its view");
  if (mirrored(their_view, my_view))
    mine = reversed(mine);
  else if (their_view != my_view)
    return unusable("the orders of leads are given in views that cannot be converted");
  Finding finding;
  finding.required = join(holes, " ") + " in the holes from left to right, " + their_view;
  finding.met = mine == holes;
  if (finding.met) return finding;
  if (sorted(mine) != sorted(holes)) {
    finding.working = "the leads are not the same: " + join(mine, " ") + " where the board has " + join(holes, " ");
    return finding;
  }
  finding.working = crossing(holes, mine);
  if (reversed(mine) == holes) finding.working += "; turned round, every lead falls into its own hole";
  return finding;
}

Finding pins(const Comparison& c) {
  const Names& original = std::get<Words>(*c.reference).items;
  const Names& substitute = std::get<Words>(*c.value).items;
  Finding finding;
  finding.required = c.rule.looks_for_extra
                         ? "no function on a pin that was unconnected"
                         : "the same function on each of " + std::to_string(original.size()) + " pins";
  if (original.size() != substitute.size()) {
    finding.met = c.rule.looks_for_extra; // the rule about conflicts says it
    finding.working =
        std::to_string(substitute.size()) + " pins where the original has " + std::to_string(original.size());
    return finding;
  }
  std::vector<std::string> troubles;
  for (std::size_t pin = 0; pin < original.size(); ++pin) {
    std::string text = trouble(c.rule, original, substitute, pin);
    if (!text.empty()) troubles.push_back(std::move(text));
  }
  finding.met = troubles.empty();
  finding.working = finding.met ? "all " + std::to_string(original.size()) + " pins compared" : join(troubles, "; ");
  return finding;
}

} // namespace benchlore
