// What a word beside a value can add to it depends on the part: volts and dielectrics belong to capacitors, watts to
// resistors, amperes to coils; a tolerance to each.
#include "decode/joined.h"

#include "base/text.h"
#include "decode/families.h"
#include "quantity/quantity.h"

namespace benchlore {
namespace {

bool belongs(const Draft& beside, Part part) {
  if (beside.dimension == dimension::voltage) return part == Part::capacitor && beside.value;
  if (beside.dimension == dimension::temperature) return part == Part::capacitor;
  if (beside.code.find("dielectric") != std::string::npos || beside.code.starts_with("temperature coefficient"))
    return part == Part::capacitor;
  if (beside.dimension == dimension::power) return part == Part::resistor || part == Part::potentiometer;
  if (beside.dimension == dimension::current) return part == Part::inductor;
  return beside.code.find("date code") != std::string::npos;
}

std::string fact_of(const Draft& beside) {
  if (beside.dimension == dimension::voltage || beside.dimension == dimension::power ||
      beside.dimension == dimension::current || beside.dimension == dimension::temperature)
    return number_text(beside);
  return finished(beside, "").text;
}

bool add_draft(Draft& value, const ReadWord& word) {
  const Draft* best = nullptr;
  for (const Draft& beside : word.drafts) {
    if (belongs(beside, value.part) && (best == nullptr || beside.rank > best->rank)) best = &beside;
  }
  if (best == nullptr) return false;
  if (best->dimension == dimension::voltage) {
    add_rated_voltage(value, *best->value);
  } else {
    value.facts.push_back(fact_of(*best));
  }
  add_reason(value, "`" + word.text + "` beside it fits (" + best->code + ")");
  value.rank += 12;
  return true;
}

// `100n 63`: a usual voltage without its unit.
bool add_bare_voltage(Draft& value, const ReadWord& word) {
  const auto volts = word.text.size() <= 4 ? Decimal::parse(word.text) : std::nullopt;
  if (value.part != Part::capacitor || !volts || !usual_voltage(*volts)) return false;
  add_rated_voltage(value, *volts);
  add_reason(value, "`" + word.text + "` beside it is a usual voltage");
  value.rank += 4;
  return true;
}

// `J` or `5%`, where nothing has told a tolerance yet.
bool add_tolerance_word(Draft& value, const ReadWord& word) {
  if (value.tolerance) return false;
  if (word.text.size() == 1) return add_tolerance(value, word.text[0]);
  std::string_view text = word.text;
  for (std::string_view sign : {"±", "+/-", "+-"}) {
    if (text.starts_with(sign)) text.remove_prefix(sign.size());
  }
  if (!text.ends_with('%')) return false;
  const QuantityResult percent = parse_quantity(text, dimension::none);
  if (!percent.quantity || !percent.quantity->nominal || percent.quantity->nominal->negative()) return false;
  value.tolerance = ToleranceCode{*percent.quantity->nominal, *percent.quantity->nominal};
  add_reason(value, "`" + word.text + "` beside it is a tolerance");
  value.rank += 12;
  return true;
}

bool qualify(Draft& value, const ReadWord& word) {
  return add_tolerance_word(value, word) || add_bare_voltage(value, word) || add_draft(value, word);
}

bool qualified_by_all(Draft& value, const std::vector<ReadWord>& words, std::size_t own) {
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (i == own) continue;
    if (!qualify(value, words[i])) return false;
    if (i < own) value.rank -= 3; // the value is usually printed first
  }
  return true;
}

} // namespace

Drafts read_joined(const std::vector<ReadWord>& words) {
  Drafts found;
  for (std::size_t i = 0; i < words.size(); ++i) {
    for (Draft draft : words[i].drafts) {
      if (draft.part == Part::other || !draft.value) continue;
      if (qualified_by_all(draft, words, i)) found.push_back(std::move(draft));
    }
  }
  return found;
}

} // namespace benchlore
