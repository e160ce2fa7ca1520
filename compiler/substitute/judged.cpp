// Judges every declared substitute of a shop: in general or for its roles, and where its original sits.
#include "substitute/judged.h"

#include <algorithm>
#include <cmath>

namespace benchlore {
namespace {

bool role_fits(const DeclaredSubstitute& declared, const std::string& role) {
  return declared.roles.empty() ||
         std::find(declared.roles.begin(), declared.roles.end(), role) != declared.roles.end();
}

JudgedSubstitute judge_one(const Shop& shop, NoteId original, const DeclaredSubstitute& declared,
                           const Position* position, Where where) {
  JudgedSubstitute judged{original, declared.component, declared.roles, position, std::move(where), {}, declared.span};
  judged.judgement = judge(*shop.schema, shop.part(original), shop.part(declared.component), judged.where);
  return judged;
}

void judge_declared(const Shop& shop, NoteId original, const DeclaredSubstitute& declared, JudgedShop& judged) {
  if (declared.roles.empty()) judged.substitutes.push_back(judge_one(shop, original, declared, nullptr, {}));
  for (const std::string& role : declared.roles) {
    judged.substitutes.push_back(
        judge_one(shop, original, declared, nullptr, {.position = {}, .role = role, .stress = {}}));
  }
  for (const Position* position : shop.positions_of(original)) {
    if (role_fits(declared, position->role)) {
      judged.substitutes.push_back(judge_one(shop, original, declared, position, shop.where(*position)));
    }
  }
}

bool before(const Shop& shop, const JudgedSubstitute& a, const JudgedSubstitute& b) {
  const auto key = [&shop](const JudgedSubstitute& j) {
    return std::tuple(std::string_view(shop.note(j.original).id), std::string_view(shop.note(j.substitute).id),
                      j.position != nullptr, std::string_view(j.where.position), std::string_view(j.where.role));
  };
  return key(a) < key(b);
}

// What decides counts in full, what is met with room to spare only a little: a capacitor of forty times the value is
// further off than one of twice the voltage.
double distance_of(const Judgement& judgement) {
  double deciding = 0, spare = 0;
  for (const Reason& reason : judgement.reasons) {
    const double margin = reason.margin ? std::fabs(*reason.margin) : 0;
    if (reason.outcome == Outcome::meets) {
      spare += std::min(margin, 10.0);
    } else {
      deciding += std::min(margin, 1000.0);
    }
  }
  return deciding + 0.01 * spare;
}

} // namespace

JudgedShop judge_shop(const Shop& shop) {
  JudgedShop judged;
  for (const auto& [original, list] : shop.substitutes) {
    for (const DeclaredSubstitute& declared : list) judge_declared(shop, original, declared, judged);
  }
  std::stable_sort(judged.substitutes.begin(), judged.substitutes.end(),
                   [&](auto& a, auto& b) { return before(shop, a, b); });
  for (const Position& position : shop.positions) {
    if (!position.component.known()) continue;
    auto reasons = judge_in_place(*shop.schema, shop.part(position.component), shop.where(position));
    if (!reasons.empty()) judged.places.push_back({&position, std::move(reasons)});
  }
  return judged;
}

std::vector<Candidate> candidates(const Shop& shop, NoteId original, const Where& where) {
  std::vector<Candidate> found;
  const auto declared = shop.substitutes.find(original);
  const auto is_declared = [&](NoteId id) {
    if (declared == shop.substitutes.end()) return false;
    return std::any_of(declared->second.begin(), declared->second.end(), [id](auto& d) { return d.component == id; });
  };
  for (const auto& [id, note] : shop.by_id) {
    if (note == original || shop.note(note).kind != "component") continue;
    Candidate candidate{note, judge(*shop.schema, shop.part(original), shop.part(note), where), shop.in_stock(note),
                        is_declared(note), 0};
    if (candidate.judgement.deciding == std::vector<std::string>{"class"} && !candidate.declared) continue;
    candidate.distance = distance_of(candidate.judgement);
    found.push_back(std::move(candidate));
  }
  std::stable_sort(found.begin(), found.end(), [](const Candidate& a, const Candidate& b) {
    if (a.judgement.verdict != b.judgement.verdict) return a.judgement.verdict > b.judgement.verdict;
    if ((a.in_stock > 0) != (b.in_stock > 0)) return a.in_stock > 0;
    return a.distance < b.distance;
  });
  return found;
}

} // namespace benchlore
