// The inverted index for the browser. Numbers are code points, so that a file is half the size and read without
// parsing.
#include "emit/site/search_data.h"

#include "base/json.h"
#include "emit/site/body.h"
#include "emit/site/part_data.h"
#include "emit/site/shards.h"

#include <algorithm>
#include <set>

namespace benchlore {
namespace {

constexpr std::size_t excerpt_bytes = 150;

struct Posting {
  std::uint32_t note;
  std::uint32_t weight;
};

struct SearchIndex {
  std::map<std::string, std::vector<Posting>> terms;
  std::map<std::string, std::uint32_t> words; // with the number of notes that have them
  std::vector<std::uint32_t> lengths;         // from note 1
};

bool has_digit(std::string_view text) {
  return std::any_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

void add_note(SearchIndex& index, const NoteTerms& found, std::uint32_t number) {
  std::uint32_t length = 0;
  std::set<std::string> words(found.spellings.begin(), found.spellings.end());
  for (const auto& [term, weight] : found.terms) {
    index.terms[term].push_back({number, weight});
    length += weight;
    if (term.size() > 2 && has_digit(term)) words.insert(term);
  }
  for (const std::string& word : words) ++index.words[word];
  index.lengths.push_back(length);
}

SearchIndex make_index(const View& view, const std::vector<NoteId>& notes) {
  SearchIndex index;
  for (std::size_t i = 0; i < notes.size(); ++i)
    add_note(index, view.in.terms_of(notes[i]), static_cast<std::uint32_t>(i + 1));
  return index;
}

std::string encoded(const std::vector<Posting>& postings) {
  std::string out = as_code_point(static_cast<std::uint32_t>(postings.size()));
  std::uint32_t before = 0;
  for (const Posting& posting : postings) {
    std::uint32_t step = posting.note - before;
    before = posting.note;
    out += posting.weight == 1 ? as_code_point(step * 2) : as_code_point(step * 2 + 1) + as_code_point(posting.weight);
  }
  return out;
}

std::vector<ShardEntry> term_entries(const SearchIndex& index) {
  std::vector<ShardEntry> out;
  for (const auto& [term, postings] : index.terms) out.push_back({term, "\"" + encoded(postings) + "\""});
  return out;
}

// Each word is written whole behind its letters' count: a shard must be readable by itself.
std::vector<ShardEntry> word_entries(const SearchIndex& index) {
  std::vector<ShardEntry> out;
  for (const auto& [word, count] : index.words) {
    bool plain =
        std::all_of(word.begin(), word.end(), [](char c) { return c > 0x20 && c < 0x7F && c != '"' && c != '\\'; });
    if (plain)
      out.push_back({word, as_code_point(static_cast<std::uint32_t>(word.size())) + word + as_code_point(count)});
  }
  return out;
}

std::string note_entry(const View& view, NoteId id) {
  const Note& note = view.shop().note(id);
  JsonWriter json;
  json.list();
  json.value(std::string_view(note.title));
  json.value(std::string_view(page_path(note)));
  json.value(std::string_view(note.kind));
  json.value(std::string_view(excerpt(note, excerpt_bytes)));
  json.end();
  return json.text();
}

std::string padded(std::size_t number) {
  std::string digits = std::to_string(number);
  return std::string(digits.size() < 7 ? 7 - digits.size() : 0, '0') + digits;
}

std::vector<ShardEntry> note_entries(const View& view, const std::vector<NoteId>& notes) {
  std::vector<ShardEntry> out;
  for (std::size_t i = 0; i < notes.size(); ++i) out.push_back({padded(i + 1), note_entry(view, notes[i])});
  return out;
}

void write_keys(JsonWriter& json, std::string_view name, const std::vector<std::string>& keys) {
  json.key(name);
  json.list();
  for (const std::string& key : keys) json.value(std::string_view(key));
  json.end();
}

void write_kinds(JsonWriter& json, const View& view, const std::vector<NoteId>& notes) {
  std::vector<std::string> names;
  std::string of;
  for (const auto& [name, kind] : view.schema().kinds) names.push_back(name);
  for (NoteId id : notes) {
    auto found = std::find(names.begin(), names.end(), view.shop().note(id).kind);
    of += as_code_point(static_cast<std::uint32_t>(found - names.begin()));
  }
  json.key("kinds");
  json.list();
  for (const std::string& name : names) {
    json.list();
    json.value(std::string_view(name));
    json.value(std::string_view(view.schema().kinds.at(name).plural));
    json.end();
  }
  json.end();
  json.field("kind_of", std::string_view(of));
}

void write_ranking(JsonWriter& json, const SearchIndex& index, const RankingNumbers& numbers) {
  std::string lengths;
  double sum = 0;
  for (std::uint32_t length : index.lengths) {
    lengths += as_code_point(length);
    sum += length;
  }
  json.field("count", index.lengths.size());
  json.field("sum", sum);
  json.field("lengths", std::string_view(lengths));
  json.field("k1", numbers.k1);
  json.field("b", numbers.b);
  json.field("shortest", numbers.shortest);
  json.field("lesser", numbers.lesser);
}

void write_synonyms(JsonWriter& json, const Schema& schema) {
  json.key("synonyms");
  json.list();
  for (const auto& group : schema.synonyms) {
    json.list();
    for (const std::string& word : group) json.value(std::string_view(word));
    json.end();
  }
  json.end();
}

} // namespace

std::vector<NoteId> numbered_notes(const Shop& shop) {
  std::vector<NoteId> out;
  for (const auto& [id, note] : shop.by_id) out.push_back(note);
  return out;
}

bool write_search_data(const View& view, const Gathered& gathered, Files& out) {
  std::vector<NoteId> notes = numbered_notes(view.shop());
  SearchIndex index = view.in.terms_of ? make_index(view, notes) : SearchIndex{};
  ShardFiles terms = write_shards("terms", term_entries(index), ShardJoin::object, out);
  ShardFiles words = write_shards("words", word_entries(index), ShardJoin::string, out);
  ShardFiles titles = write_shards("notes", note_entries(view, notes), ShardJoin::object, out);
  ShardFiles names = write_shards("names", name_entries(view.shop(), notes), ShardJoin::object, out);
  ShardFiles parts = write_shards("parts", part_entries(view, gathered, notes), ShardJoin::object, out);
  JsonWriter json;
  json.object();
  write_ranking(json, index, view.in.ranking);
  write_kinds(json, view, notes);
  write_synonyms(json, view.schema());
  write_keys(json, "terms", terms.first_keys);
  write_keys(json, "words", words.first_keys);
  write_keys(json, "notes", titles.first_keys);
  write_keys(json, "names", names.first_keys);
  write_keys(json, "parts", parts.first_keys);
  json.end();
  bool written = terms.written && words.written && titles.written && names.written && parts.written;
  return out.write("data/meta.js", "benchloreData(\"meta\"," + json.text() + ");\n") && written;
}

} // namespace benchlore
