// A judgement for a person: the verdict first, then what decides, then every reason with its working.
#include "command/command.h"

#include <sstream>

namespace benchlore {
namespace {

std::string percent(double fraction) { return show_number(fraction * 100, dimension::none, 3) + " %"; }

void write_values(std::ostringstream& out, const Reason& reason) {
  out << "      original    " << reason.original << "\n      substitute  " << reason.substitute << "\n";
  if (!reason.required.empty()) out << "      wanted      " << reason.required << "\n";
  if (reason.margin)
    out << "      margin      " << percent(*reason.margin) << (reason.by_tolerance ? " (the tolerance decides)" : "")
        << "\n";
  if (!reason.working.empty()) out << "      working     " << reason.working << "\n";
}

std::string source_title(const Schema& schema, const std::string& id) {
  const auto found = schema.sources.find(id);
  if (found == schema.sources.end()) return id;
  const SourceEntry& source = found->second;
  std::string text = source.title;
  if (source.trust == "from-memory") text += " (from memory)";
  return text;
}

void write_reason(std::ostringstream& out, const Schema& schema, const Reason& reason) {
  out << "  " << to_text(reason.outcome) << "  " << reason.rating << "  [" << reason.rule_name << "]";
  if (reason.outcome != Outcome::meets) out << "  -> " << to_text(reason.verdict);
  out << "\n";
  write_values(out, reason);
  if (!reason.action.empty()) out << "      to do       " << reason.action << "\n";
  if (!reason.because.empty()) out << "      because     " << reason.because << "\n";
  if (!reason.changed.empty()) out << "      changed     " << reason.changed << "\n";
  if (!reason.source.empty()) out << "      source      " << source_title(schema, reason.source) << "\n";
}

void write_cautions(std::ostringstream& out, const Compiled& compiled, const Part& original) {
  const auto note = compiled.shop.find(original.id);
  if (!note) return;
  write_cautions(compiled, *note, out);
}

std::string words(const std::vector<std::string>& items) {
  std::string text;
  for (const std::string& item : items) text += (text.empty() ? "" : ", ") + item;
  return text;
}

} // namespace

std::string judgement_text(const Compiled& compiled, const Part& original, const Part& substitute, const Where& where,
                           const Judgement& judgement) {
  std::ostringstream out;
  out << to_text(judgement.verdict) << ": " << substitute.id << " in place of " << original.id;
  if (!where.position.empty()) out << " at " << where.position;
  if (!where.role.empty()) out << " as " << where.role;
  out << "\ndecided by " << words(judgement.deciding) << "\n";
  for (const std::string& condition : judgement.conditions) out << "  - " << condition << "\n";
  for (const std::string& rule : loosened_rules(judgement)) out << "  ! " << rule << "\n";
  write_cautions(out, compiled, original);
  out << "\n";
  for (const Reason& reason : judgement.reasons) write_reason(out, compiled.schema, reason);
  if (!judgement.original_reasons.empty()) out << "\nthe original itself does not meet its place:\n";
  for (const Reason& reason : judgement.original_reasons) write_reason(out, compiled.schema, reason);
  return out.str();
}

} // namespace benchlore
