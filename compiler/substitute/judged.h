// Every substitute that the shop declares, judged in general, in its roles, and in each position of its original.
#pragma once

#include "link/shop.h"
#include "substitute/verdict.h"

#include <string>
#include <vector>

namespace benchlore {

struct JudgedSubstitute {
  NoteId original;
  NoteId substitute;
  std::vector<std::string> roles;     // for which it is declared; empty: in general
  const Position* position = nullptr; // judged there; null: for the role in `where`, or in general
  Where where;
  Judgement judgement;
  Span span; // of the declaration
};

// A position whose own component does not meet a rule there.
struct JudgedPlace {
  const Position* position = nullptr;
  std::vector<Reason> reasons;
};

struct JudgedShop {
  std::vector<JudgedSubstitute> substitutes; // by original id, then substitute id, then position
  std::vector<JudgedPlace> places;
};

JudgedShop judge_shop(const Shop& shop);

// The findings that follow: unsafe, unfit, unknown and conditional substitutes, overstressed positions; with those that
// a note accepts marked, and refused where they may not be.
void report_judgements(const Shop& shop, const JudgedShop& judged, Report& report);

struct Candidate {
  NoteId component;
  Judgement judgement;
  int in_stock = 0;
  bool declared = false;
  double distance = 0; // on the deciding ratings; smaller is closer
};

// Components of the shop that might stand in: by verdict, then in stock, then closeness, then id.
std::vector<Candidate> candidates(const Shop& shop, NoteId original, const Where& where);

} // namespace benchlore
