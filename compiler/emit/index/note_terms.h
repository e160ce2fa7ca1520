// What a note is found by: its words with their weights, its filters and its values.
#pragma once

#include "emit/index/index_format.h"
#include "substitute/judged.h"

#include <cstdint>
#include <string>
#include <string_view>

namespace benchlore {

// Takes the terms of one note as they are read off it. The same term may come several times; its weights add up.
struct TermSink {
  virtual ~TermSink() = default;
  virtual void word(const std::string& term, std::uint32_t place, unsigned weight) = 0; // a word of running text
  virtual void extra(const std::string& term, unsigned weight) = 0;                     // joined, base or name
  virtual void filter(const std::string& term) = 0;                                     // does not count in the length
  virtual void value(std::uint32_t slot, double si) = 0;
  virtual void spelling(const std::string& word) = 0; // a word as it stands, for suggestions
};

// What the terms are read from; one for all notes.
struct TermSource {
  TermSource(const Shop& the_shop, const JudgedShop& judged);
  const Shop& shop;
  RatingSlots slots;
  std::multimap<NoteId, const Position*> on_board, of_component;
  std::multimap<NoteId, const JudgedSubstitute*> substitutes; // by original
};

void note_terms(const TermSource& source, NoteId note, TermSink& sink);

StoredNote stored_note(const Note& note);

} // namespace benchlore
