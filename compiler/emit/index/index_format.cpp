// Writing and reading what the index holds beside words.
#include "emit/index/index_format.h"

#include "base/text.h"
#include "emit/index/search_terms.h"

#include <algorithm>
#include <charconv>
#include <set>

namespace benchlore {
namespace {

constexpr std::size_t longest_term = 200; // of the 245 bytes that a term may have

// Both sides cut alike, so that a long name still finds itself.
std::string cut_term(std::string term) {
  if (term.size() > longest_term) term.resize(longest_term);
  return term;
}

std::uint32_t hash_of(std::string_view text) { // FNV-1a
  std::uint32_t hash = 2166136261u;
  for (const char c : text) hash = (hash ^ static_cast<unsigned char>(c)) * 16777619u;
  return hash;
}

std::uint32_t number_of(std::string_view text) {
  std::uint32_t number = 0;
  std::from_chars(text.data(), text.data() + text.size(), number);
  return number;
}

std::vector<std::string> terms_of(std::string_view text) {
  std::vector<std::string> terms;
  for (const SearchToken& token : search_tokens(text))
    if (token.sort == SearchToken::Sort::word || token.sort == SearchToken::Sort::part)
      terms.push_back(search_term(token));
  return terms;
}

std::vector<std::string_view> lines_of(std::string_view text) {
  std::vector<std::string_view> lines = split(text, '\n');
  std::erase_if(lines, [](std::string_view line) { return line.empty(); });
  return lines;
}

} // namespace

std::string filter_term(std::string_view filter, std::string_view value) {
  for (const FilterRow& row : filter_rows)
    if (row.name == filter) return cut_term(std::string(row.prefix) + lower(trim(value)));
  return {};
}

std::string rating_term(std::string_view rating, std::string_view word) {
  return cut_term("XR" + std::string(rating) + ":" + lower(trim(word)));
}

RatingSlots rating_slots(const Schema& schema) {
  std::set<std::pair<std::string, std::string>> known;
  for (const auto& [class_name, component_class] : schema.classes)
    for (const auto& [name, rating] : component_class.ratings)
      known.emplace(name, rating.form == RatingForm::quantity ? rating.unit : std::string{});
  RatingSlots slots;
  std::set<std::uint32_t> taken{0, UINT32_MAX};
  for (const auto& [name, unit] : known) {
    std::uint32_t slot = hash_of(name + "\t" + unit);
    while (!taken.insert(slot).second) ++slot;
    slots.emplace(name, RatingSlot{unit, slot});
  }
  return slots;
}

std::uint32_t slot_of(const RatingSlots& slots, std::string_view rating, std::string_view unit) {
  const auto [first, last] = slots.equal_range(rating);
  const auto found = std::find_if(first, last, [&](const auto& entry) { return entry.second.unit == unit; });
  return found == last ? 0 : found->second.slot;
}

std::string to_metadata(const RatingSlots& slots) {
  std::string text;
  for (const auto& [name, slot] : slots) text += name + "\t" + slot.unit + "\t" + std::to_string(slot.slot) + "\n";
  return text;
}

RatingSlots slots_from(std::string_view metadata) {
  RatingSlots slots;
  for (const std::string_view line : lines_of(metadata)) {
    const std::vector<std::string_view> cells = split(line, '\t');
    if (cells.size() == 3) slots.emplace(cells[0], RatingSlot{std::string(cells[1]), number_of(cells[2])});
  }
  return slots;
}

std::vector<SynonymGroup> synonym_groups(const Schema& schema) {
  std::vector<SynonymGroup> groups;
  for (const std::vector<std::string>& words : schema.synonyms) {
    SynonymGroup group;
    for (const std::string& word : words) {
      std::vector<std::string> terms = terms_of(word);
      if (!terms.empty() && std::ranges::count(group, terms) == 0) group.push_back(std::move(terms));
    }
    if (group.size() > 1) groups.push_back(std::move(group));
  }
  return groups;
}

std::string to_metadata(const std::vector<SynonymGroup>& groups) {
  std::string text;
  for (const SynonymGroup& group : groups) {
    for (std::size_t i = 0; i < group.size(); ++i) text += (i > 0 ? "\t" : "") + join(group[i], " ");
    text += "\n";
  }
  return text;
}

std::vector<SynonymGroup> groups_from(std::string_view metadata) {
  std::vector<SynonymGroup> groups;
  for (const std::string_view line : lines_of(metadata)) {
    SynonymGroup& group = groups.emplace_back();
    for (const std::string_view member : split(line, '\t')) {
      const std::vector<std::string_view> terms = split(member, ' ');
      group.emplace_back(terms.begin(), terms.end());
    }
  }
  return groups;
}

std::string to_lines(const StoredNote& note) {
  std::string lines;
  for (const std::string* field : {&note.id, &note.kind, &note.title, &note.path, &note.class_name})
    lines += flat_text(*field, 4096) + "\n";
  return lines + flat_text(note.text, stored_text);
}

StoredNote note_from(std::string_view lines) {
  const std::vector<std::string_view> cells = split(lines, '\n');
  auto cell = [&](std::size_t i) { return i < cells.size() ? std::string(cells[i]) : std::string{}; };
  return {cell(0), cell(1), cell(2), cell(3), cell(4), cell(5)};
}

std::string flat_text(std::string_view text, std::size_t most) {
  std::string flat;
  bool blank = false;
  for (const char c : text) {
    if (static_cast<unsigned char>(c) <= ' ') {
      blank = !flat.empty();
      continue;
    }
    if (blank) flat += ' ';
    blank = false;
    flat += c;
    if (flat.size() > most + 4) break;
  }
  if (flat.size() <= most) return flat;
  std::size_t end = most;
  while (end > 0 && (static_cast<unsigned char>(flat[end]) & 0xC0) == 0x80) --end;
  flat.resize(end);
  return flat;
}

} // namespace benchlore
