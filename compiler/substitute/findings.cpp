// Verdicts become findings; a note may accept one, except where that could hurt someone.
#include "substitute/judged.h"

#include <algorithm>

namespace benchlore {
namespace {

MessageKind kind_of(Verdict verdict) {
  switch (verdict) {
  case Verdict::unsafe:
    return MessageKind::unsafe_substitute;
  case Verdict::unfit:
    return MessageKind::unfit_substitute;
  case Verdict::unknown:
    return MessageKind::unknown_substitute;
  case Verdict::conditional:
  case Verdict::suitable:
    return MessageKind::conditional_substitute;
  }
  return MessageKind::unsafe_substitute;
}

std::string place_text(const Where& where) {
  if (!where.position.empty()) return " at `" + where.position + "`";
  if (!where.role.empty()) return " as " + where.role;
  return {};
}

std::string reason_text(const Reason& reason) {
  std::string text = reason.rating + ": " + reason.substitute;
  if (!reason.required.empty()) text += ", wanted " + reason.required;
  return text;
}

void label_rating(const Shop& shop, NoteId note, const std::string& rating, Message& message, const std::string& text) {
  const auto found = shop.note(note).ratings.find(rating);
  if (found != shop.note(note).ratings.end()) message.labels.push_back({found->second.span, text});
}

// Places where an unsafe finding stays, whatever a note says.
bool never_accepted(const Shop& shop, NoteId original, const Where& where) {
  const auto role = shop.schema->roles.find(where.role);
  if (role != shop.schema->roles.end() && role->second.safety) return true;
  const ComponentClass* made = shop.part(original).component_class;
  return made != nullptr && made->otherwise == Shortfall::unsafe;
}

struct Matcher {
  const Shop& shop;
  Report& report;
  std::vector<const AcceptedFinding*> used;

  // The acceptance in the note of the original, or of the board, that speaks of this finding.
  const AcceptedFinding* find(NoteId holder, std::string_view kind, const std::vector<Reason>& reasons,
                              std::string_view about) {
    const auto list = shop.accepts.find(holder);
    if (list == shop.accepts.end()) return nullptr;
    for (const AcceptedFinding& accepted : list->second) {
      const bool by_rule =
          std::any_of(reasons.begin(), reasons.end(), [&](auto& r) { return r.rule_name == accepted.finding; });
      if ((accepted.finding != kind && !by_rule) || (!accepted.about.empty() && accepted.about != about)) continue;
      return &accepted;
    }
    return nullptr;
  }

  // Messages are looked up by index: reporting a refusal may move them.
  void settle(std::size_t index, const AcceptedFinding* accepted, bool refused) {
    if (accepted == nullptr) return;
    used.push_back(accepted);
    if (!refused) {
      report.messages()[index].accepted = accepted->acceptance;
      return;
    }
    report.add(MessageKind::acceptance_refused, accepted->span, "`" + accepted->finding + "` cannot be accepted here",
               "an unsafe finding on a mains, suppression, fuse, battery-charging or EHT place stays; change the part",
               {{report.messages()[index].span, "the finding that stays"}});
  }
};

void report_substitute(const Shop& shop, const JudgedSubstitute& judged, Matcher& matcher) {
  const Judgement& judgement = judged.judgement;
  if (judgement.verdict == Verdict::suitable) return;
  const bool may_hurt = judgement.verdict == Verdict::unknown && never_accepted(shop, judged.original, judged.where);
  if (judged.position != nullptr && judgement.verdict > Verdict::unfit && !may_hurt) return;
  const Note& original = shop.note(judged.original);
  const Note& substitute = shop.note(judged.substitute);
  std::string text = "`" + substitute.id + "` in place of `" + original.id + "`" + place_text(judged.where) + " is " +
                     std::string(to_text(judgement.verdict)) + ": " + reason_text(judgement.reasons.front());
  std::string way_out = judgement.reasons.front().because;
  if (!judgement.conditions.empty()) way_out = judgement.conditions.front() + (way_out.empty() ? "" : " — " + way_out);
  const std::size_t index = matcher.report.messages().size();
  Message& message = matcher.report.add(kind_of(judgement.verdict), judged.span, std::move(text), std::move(way_out));
  message.subject = original.id;
  message.verdict = std::string(to_text(judgement.verdict));
  if (!judgement.deciding.empty()) {
    label_rating(shop, judged.substitute, judgement.deciding.front(), message, "the substitute states this");
    label_rating(shop, judged.original, judgement.deciding.front(), message, "the original states this");
  }
  if (judged.position != nullptr) message.labels.push_back({judged.position->span, "the position"});
  const std::string about = judged.position != nullptr ? judged.where.position : substitute.id;
  const AcceptedFinding* accepted =
      matcher.find(judged.original, row(kind_of(judgement.verdict)).name, judgement.reasons, about);
  if (accepted == nullptr && judged.position != nullptr) {
    accepted = matcher.find(judged.original, row(kind_of(judgement.verdict)).name, judgement.reasons, substitute.id);
  }
  matcher.settle(index, accepted,
                 judgement.verdict == Verdict::unsafe && never_accepted(shop, judged.original, judged.where));
}

void report_place(const Shop& shop, const JudgedPlace& place, Matcher& matcher) {
  const Reason& worst = place.reasons.front();
  const bool unsafe = worst.verdict == Verdict::unsafe;
  const MessageKind kind = unsafe ? MessageKind::overstressed_position : MessageKind::unsuited_position;
  const Position& position = *place.position;
  const std::string name = shop.where(position).position;
  const std::size_t index = matcher.report.messages().size();
  Message& message = matcher.report.add(kind, position.span,
                                        "`" + shop.note(position.component).id + "` at `" + name +
                                            "` does not meet its own place: " + reason_text(worst),
                                        worst.because);
  message.subject = shop.note(position.board).id;
  message.verdict = std::string(to_text(worst.verdict));
  label_rating(shop, position.component, worst.rating, message, "the part states this");
  const AcceptedFinding* accepted = matcher.find(position.board, row(kind).name, place.reasons, position.ref);
  if (accepted == nullptr) accepted = matcher.find(position.board, row(kind).name, place.reasons, name);
  matcher.settle(index, accepted, unsafe && never_accepted(shop, position.component, shop.where(position)));
}

void report_idle(const Shop& shop, const Matcher& matcher) {
  for (const auto& [holder, list] : shop.accepts) {
    for (const AcceptedFinding& accepted : list) {
      if (std::find(matcher.used.begin(), matcher.used.end(), &accepted) != matcher.used.end()) continue;
      matcher.report.add(MessageKind::acceptance_idle, accepted.span,
                         "`" + accepted.finding + "` is accepted here, but is not found", "take the acceptance out");
    }
  }
}

} // namespace

void report_judgements(const Shop& shop, const JudgedShop& judged, Report& report) {
  Matcher matcher{shop, report, {}};
  for (const JudgedSubstitute& substitute : judged.substitutes) report_substitute(shop, substitute, matcher);
  for (const JudgedPlace& place : judged.places) report_place(shop, place, matcher);
  report_idle(shop, matcher);
}

} // namespace benchlore
