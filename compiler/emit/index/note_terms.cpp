// Reads the terms off a note: title, names, front matter, body, what its symptoms are called, filters and ratings.
#include "emit/index/note_terms.h"

#include "emit/index/ranking.h"
#include "emit/index/search_terms.h"

#include <algorithm>
#include <array>
#include <ranges>
#include <set>

namespace benchlore {
namespace {

constexpr std::uint32_t gap = 50; // places between two texts, so that no phrase reaches from one to the next
constexpr std::array<std::string_view, 3> name_fields{"markings", "aliases", "cross-reference"};
constexpr std::array<std::string_view, 4> own_fields{"kind", "title", "tags", "class"};

template <class T> auto entries(const std::multimap<NoteId, const T*>& map, NoteId key) {
  const auto [first, last] = map.equal_range(key);
  return std::ranges::subrange(first, last) | std::views::values;
}

class Reader {
public:
  Reader(const TermSource& source, NoteId id, TermSink& sink)
      : source_(source), shop_(source.shop), id_(id), note_(source.shop.note(id)), sink_(sink) {}

  void read() {
    text(note_.title, ranking.title);
    name(note_.title);
    if (note_.id != note_.title) text(note_.id, ranking.text);
    name(note_.id);
    front_matter();
    if (note_.kind != "symptom") symptoms();
    for (const Position* position : entries(source_.on_board, id_)) text(position->ref, ranking.text);
    text(note_.plain_text, ranking.text);
    filters();
    ratings();
  }

private:
  void text(std::string_view words, unsigned weight) {
    std::uint32_t last = 0;
    for (const SearchToken& token : search_tokens(words)) {
      const std::string term = search_term(token);
      last = token.place;
      if (token.sort == SearchToken::Sort::base)
        sink_.extra(term, ranking.text);
      else if (token.sort == SearchToken::Sort::joined)
        sink_.extra(term, weight);
      else
        word(token, term, weight);
    }
    place_ += last + gap;
  }

  void word(const SearchToken& token, const std::string& term, unsigned weight) {
    sink_.word(term, place_ + token.place, weight);
    if (token.text.size() >= 4 && std::ranges::all_of(token.text, [](char c) { return c >= 'a' && c <= 'z'; }))
      sink_.spelling(token.text);
  }

  // A name with a blank in it (`1N 4007`) is found without it too.
  void name(std::string_view words) {
    const std::string term = name_term(words);
    if (!term.empty() && words.find(' ') != std::string_view::npos) sink_.extra(term, ranking.name);
  }

  void front_matter() {
    for (const std::string& tag : note_.tags) text(tag, ranking.text);
    text(note_.class_name, ranking.text);
    for (const Entry& entry : note_.front.entries) {
      const std::string_view key = entry.key;
      if (std::ranges::count(own_fields, key) > 0) continue;
      const bool names = std::ranges::count(name_fields, key) > 0;
      scalars(entry.value, names ? ranking.name : key == "also-said" ? ranking.said : ranking.text, names);
    }
  }

  void scalars(const Node& node, unsigned weight, bool names) {
    if (node.is_scalar() && !node.text.empty()) text(node.text, weight);
    if (node.is_scalar() && names) name(node.text);
    for (const Node& item : node.items) scalars(item, weight, names);
    for (const Entry& entry : node.entries) scalars(entry.value, weight, names);
  }

  // A note that refers to a symptom is found by what people say for it.
  void symptoms() {
    std::set<std::string_view> seen;
    for (const Reference& reference : note_.references) {
      const Note* target = referred(reference);
      if (!target || target->kind != "symptom" || !seen.insert(target->id).second) continue;
      text(target->title, ranking.text);
      for (const Located<std::string>& said : target->texts("also-said")) text(said.value, ranking.text);
    }
  }

  const Note* referred(const Reference& reference) const {
    const auto found = shop_.by_id.find(reference.target);
    return found == shop_.by_id.end() ? nullptr : &shop_.note(found->second);
  }

  void filter(std::string_view name, std::string_view value) {
    const std::string term = filter_term(name, value);
    if (!value.empty() && filters_.insert(term).second) sink_.filter(term);
  }

  // The filter that a note of this kind stands for.
  void related(const Note& note) {
    if (note.kind == "component")
      filter("part", note.id);
    else if (note.kind == "equipment" || note.kind == "board" || note.kind == "symptom")
      filter(note.kind, note.id);
  }

  void filters() {
    filter("id", note_.id);
    filter("kind", note_.kind);
    for (const std::string& tag : note_.tags) filter("tag", tag);
    classes();
    related(note_);
    for (const Reference& reference : note_.references)
      if (const Note* target = referred(reference)) related(*target);
    machines(id_);
    for (const Position* position : entries(source_.of_component, id_)) {
      related(shop_.note(position->board));
      machines(position->board);
      filter("role", position->role);
    }
    for (const JudgedSubstitute* judged : entries(source_.substitutes, id_))
      filter("verdict", to_text(judged->judgement.verdict));
  }

  void classes() {
    std::string name = note_.class_name;
    for (int level = 0; !name.empty() && level < 32; ++level) {
      filter("class", name);
      const ComponentClass* found = shop_.schema ? shop_.schema->find_class(name) : nullptr;
      name = found ? found->extends : std::string{};
    }
  }

  // The equipment that has a board.
  void machines(NoteId board) {
    if (shop_.note(board).kind != "board" || board.index >= shop_.backlinks.size()) return;
    for (const Backlink& link : shop_.backlinks[board.index])
      if (!link.field.empty() && shop_.note(link.from).kind == "equipment") related(shop_.note(link.from));
  }

  void ratings() {
    const ComponentClass* found = shop_.schema ? shop_.schema->find_class(note_.class_name) : nullptr;
    if (!found) return;
    for (const auto& [name, stated] : note_.ratings) {
      const auto type = found->ratings.find(name);
      if (type == found->ratings.end()) continue;
      if (const Words* words = std::get_if<Words>(&stated.value)) {
        for (const std::string& item : words->items) sink_.filter(rating_term(name, item));
      } else if (const std::optional<double> centre = std::get<Quantity>(stated.value).centre()) {
        if (const auto slot = slot_of(source_.slots, name, type->second.unit)) sink_.value(slot, *centre);
      }
    }
  }

  const TermSource& source_;
  const Shop& shop_;
  NoteId id_;
  const Note& note_;
  TermSink& sink_;
  std::uint32_t place_ = 0;
  std::set<std::string> filters_;
};

} // namespace

TermSource::TermSource(const Shop& the_shop, const JudgedShop& judged) : shop(the_shop) {
  if (shop.schema) slots = rating_slots(*shop.schema);
  for (const Position& position : shop.positions) {
    on_board.emplace(position.board, &position);
    if (position.component.known()) of_component.emplace(position.component, &position);
  }
  for (const JudgedSubstitute& substitute : judged.substitutes) substitutes.emplace(substitute.original, &substitute);
}

void note_terms(const TermSource& source, NoteId note, TermSink& sink) { Reader(source, note, sink).read(); }

StoredNote stored_note(const Note& note) {
  return {note.id, note.kind, note.title, note.path, note.class_name, note.plain_text};
}

} // namespace benchlore
