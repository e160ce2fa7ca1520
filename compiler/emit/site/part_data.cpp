// Writes what the substitute look-up shows; the working itself stays on the component's page.
#include "emit/site/part_data.h"

#include "base/json.h"
#include "emit/site/verdict_view.h"

#include <algorithm>

namespace benchlore {
namespace {

std::string padded(std::size_t number) {
  std::string digits = std::to_string(number);
  return std::string(digits.size() < 7 ? 7 - digits.size() : 0, '0') + digits;
}

void write_texts(JsonWriter& json, const std::vector<std::string>& texts) {
  json.list();
  for (const std::string& one : texts) json.value(std::string_view(one));
  json.end();
}

std::string where_words(const View& view, const JudgedSubstitute& judged) {
  std::string out = judged.position ? "at " + judged.position->name(view.shop()) : "in general";
  if (!judged.where.role.empty()) out += ", as " + role_title(view.schema(), judged.where.role);
  return out;
}

void write_judged(JsonWriter& json, const View& view, const JudgedSubstitute& judged) {
  const Note& substitute = view.shop().note(judged.substitute);
  std::vector<std::string> deciding;
  for (const std::string& name : judged.judgement.deciding) deciding.push_back(rating_title(view.schema(), name));
  json.list();
  json.value(std::string_view(substitute.title));
  json.value(std::string_view(page_path(view.shop().note(judged.original)) + "#" + judgement_anchor(view, judged)));
  json.value(to_text(judged.judgement.verdict));
  json.value(std::string_view(where_words(view, judged)));
  write_texts(json, deciding);
  write_texts(json, judged.judgement.conditions);
  json.value(view.shop().in_stock(judged.substitute));
  json.end();
}

std::string part_entry(const View& view, const Gathered& gathered, NoteId id) {
  const Note& note = view.shop().note(id);
  JsonWriter json;
  json.object();
  json.field("title", std::string_view(note.title));
  json.field("page", std::string_view(page_path(note)));
  json.field("stock", view.shop().in_stock(id));
  json.key("judged");
  json.list();
  if (auto found = gathered.by_original.find(id); found != gathered.by_original.end())
    for (const JudgedSubstitute* judged : found->second) write_judged(json, view, *judged);
  json.end();
  json.end();
  return json.text();
}

} // namespace

std::vector<ShardEntry> name_entries(const Shop& shop, const std::vector<NoteId>& notes) {
  std::map<NoteId, std::size_t> numbers;
  for (std::size_t i = 0; i < notes.size(); ++i)
    if (shop.note(notes[i]).kind == "component") numbers[notes[i]] = i + 1;
  std::vector<ShardEntry> out;
  for (auto at = shop.by_name.begin(); at != shop.by_name.end();) {
    auto end = shop.by_name.upper_bound(at->first);
    std::string list;
    for (auto one = at; one != end; ++one)
      if (auto number = numbers.find(one->second); number != numbers.end())
        list += (list.empty() ? "" : ",") + std::to_string(number->second);
    if (!list.empty() && !at->first.empty()) out.push_back({at->first, "[" + list + "]"});
    at = end;
  }
  return out;
}

std::vector<ShardEntry> part_entries(const View& view, const Gathered& gathered, const std::vector<NoteId>& notes) {
  std::vector<ShardEntry> out;
  for (std::size_t i = 0; i < notes.size(); ++i)
    if (view.shop().note(notes[i]).kind == "component")
      out.push_back({padded(i + 1), part_entry(view, gathered, notes[i])});
  return out;
}

} // namespace benchlore
