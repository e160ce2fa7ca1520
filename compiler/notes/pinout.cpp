// Pins by number.
#include "notes/pinout.h"

#include <map>

namespace benchlore {
namespace {

constexpr int most_pins = 1000;

// The number of a pin; nothing for `tab` and the like.
std::optional<int> pin_number(const std::string& key) {
  if (key.empty() || key.size() > 3) return std::nullopt;
  int number = 0;
  for (char c : key) {
    if (c < '0' || c > '9') return std::nullopt;
    number = number * 10 + (c - '0');
  }
  return number >= 1 && number < most_pins ? std::optional(number) : std::nullopt;
}

} // namespace

void take_pinout(Note& note, const Schema& schema, Report& report) {
  const ComponentClass* made = schema.find_class(note.class_name);
  const Node* written = note.field("pinout");
  if (made == nullptr || written == nullptr || !written->is_map() || note.ratings.contains("pinout")) return;
  const auto type = made->ratings.find("pinout");
  if (type == made->ratings.end() || type->second.form != RatingForm::words) return;
  std::map<int, std::string> pins;
  for (const Entry& entry : written->entries) {
    const auto number = pin_number(entry.key);
    if (number && entry.value.is_scalar()) pins[*number] = entry.value.text;
  }
  Words words;
  for (const auto& [number, function] : pins) {
    if (number != static_cast<int>(words.items.size()) + 1) {
      report.add(MessageKind::wrong_type, written->span,
                 "`pinout` has no pin " + std::to_string(words.items.size() + 1), "write `NC` for an unconnected pin");
      return;
    }
    words.items.push_back(function);
  }
  if (!words.items.empty()) note.ratings["pinout"] = StatedValue{words, written->span, {}, {}};
}

} // namespace benchlore
