// All notes, linked: names resolved, positions and stock typed, everything that refers to a note known to it.
// Read-only from then on.
#pragma once

#include "notes/note.h"
#include "schema/part.h"

#include <cstdint>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace benchlore {

struct NoteId {
  std::uint32_t index = UINT32_MAX;
  bool operator==(const NoteId&) const = default;
  auto operator<=>(const NoteId&) const = default;
  bool known() const { return index != UINT32_MAX; }
};

// A finding that a note accepts (`accepts` field): the rule or message name, the substitute or position it is about.
struct AcceptedFinding {
  std::string finding; // name of the message kind or of the rule
  std::string about;   // component id, position or empty
  Acceptance acceptance;
  Span span;
};

struct DeclaredSubstitute {
  NoteId component;
  std::vector<std::string> roles; // empty: in general
  std::string note;
  Span span;
};

struct Position {
  std::string ref; // `C201`
  NoteId board;
  NoteId component; // unknown when the board does not say
  std::string role;
  Ratings stress;
  std::string polarity;
  std::string note;
  Span span;
  std::string name(const struct Shop& shop) const; // `main-board:C201`
};

struct StockLine {
  NoteId component;
  int quantity = 0;
  std::string bin;
  std::string from;
  Span span;
};

struct Backlink {
  NoteId from;
  std::string field; // empty for a link in the body
};

// A meter of the shop, with its accuracy as the maker writes it.
struct Meter {
  std::string name, measures, accuracy, note;
  Span span;
};

struct ShopFacts {
  std::string name;
  std::string mains_voltage, mains_frequency; // as written
  std::string wording;                        // the shop's own safety wording
  std::vector<Meter> meters;
};

struct Shop {
  const Schema* schema = nullptr;
  const Sources* sources = nullptr;
  ShopFacts facts;
  std::vector<Note> notes;                                 // sorted by path; broken ones too
  std::map<std::string, NoteId, std::less<>> by_id;        // sound notes only
  std::vector<std::vector<Backlink>> backlinks;            // for each note
  std::multimap<std::string, NoteId, std::less<>> by_name; // type_key of id, title, marking, alias, cross-reference
  std::vector<Position> positions;                         // by board, then in the order written
  std::map<NoteId, std::vector<DeclaredSubstitute>> substitutes;
  std::map<NoteId, std::vector<AcceptedFinding>> accepts;
  std::vector<StockLine> stock;
  std::vector<std::string> attachments; // pictures and files to publish, paths in the content folder

  const Note& note(NoteId id) const { return notes[id.index]; }
  std::optional<NoteId> find(std::string_view id) const;
  // The note, sound or broken, in this file of the content folder.
  std::optional<NoteId> at_path(std::string_view path) const;
  // Components with this id, marking, alias or cross-reference number; sorted by id.
  std::vector<NoteId> named(std::string_view name) const;
  Part part(NoteId component) const;
  std::vector<const Position*> positions_of(NoteId component) const;
  std::vector<const Position*> positions_on(NoteId board) const;
  const Position* position(std::string_view board, std::string_view ref) const;
  int in_stock(NoteId component) const;
  Where where(const Position& position) const;
};

// Reads the content folder through the port and links it. Faults are reported; sound notes are never lost to a broken
// one.
Shop link_shop(const Files& files, std::string_view folder, const Schema& schema, Sources& sources, Report& report);

// The cautions that a note calls for, by its class, roles, tags and stated values.
std::vector<const Caution*> cautions_for(const Shop& shop, NoteId note);

} // namespace benchlore
