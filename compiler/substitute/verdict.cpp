// The words of verdicts and outcomes, and a judgement as JSON.
#include "substitute/verdict.h"

#include "base/json.h"

namespace benchlore {
namespace {

void write_reason(JsonWriter& json, const Reason& reason) {
  json.object();
  json.field("rule", std::string_view(reason.rule_name));
  json.field("rating", std::string_view(reason.rating));
  json.field("original", std::string_view(reason.original));
  json.field("substitute", std::string_view(reason.substitute));
  json.field("required", std::string_view(reason.required));
  json.field("outcome", to_text(reason.outcome));
  json.field("severity", to_text(reason.verdict));
  json.key("margin");
  if (reason.margin) {
    json.value(*reason.margin);
  } else {
    json.null();
  }
  json.field("by_tolerance", reason.by_tolerance);
  json.field("working", std::string_view(reason.working));
  json.field("action", std::string_view(reason.action));
  json.field("only_in_role", std::string_view(reason.only_in_role));
  json.field("because", std::string_view(reason.because));
  json.field("source", std::string_view(reason.source));
  json.field("changed", std::string_view(reason.changed));
  json.end();
}

void write_reasons(JsonWriter& json, std::string_view key, const std::vector<Reason>& reasons) {
  json.key(key);
  json.list();
  for (const Reason& reason : reasons) write_reason(json, reason);
  json.end();
}

} // namespace

std::string_view to_text(Verdict verdict) {
  switch (verdict) {
  case Verdict::unsafe:
    return "unsafe";
  case Verdict::unfit:
    return "unfit";
  case Verdict::unknown:
    return "unknown";
  case Verdict::conditional:
    return "conditional";
  case Verdict::suitable:
    return "suitable";
  }
  return {};
}

Verdict verdict_of(Shortfall shortfall) {
  switch (shortfall) {
  case Shortfall::unsafe:
    return Verdict::unsafe;
  case Shortfall::unfit:
    return Verdict::unfit;
  case Shortfall::care:
    return Verdict::conditional;
  }
  return Verdict::unsafe;
}

std::string_view to_text(Outcome outcome) {
  switch (outcome) {
  case Outcome::meets:
    return "meets";
  case Outcome::falls_short:
    return "falls short";
  case Outcome::differs:
    return "differs";
  case Outcome::not_stated:
    return "not stated";
  }
  return {};
}

std::vector<std::string> loosened_rules(const Judgement& judgement) {
  std::vector<std::string> rules;
  for (const Reason& reason : judgement.reasons) {
    if (reason.rule != nullptr && reason.rule->loosened) rules.push_back(reason.rule_name + ": " + reason.changed);
  }
  return rules;
}

std::string to_json(const Judgement& judgement, const Part& original, const Part& substitute, const Where& where) {
  JsonWriter json;
  json.object();
  json.field("format", "benchlore-judgement");
  json.field("version", 1);
  json.field("original", std::string_view(original.id));
  json.field("substitute", std::string_view(substitute.id));
  json.field("position", std::string_view(where.position));
  json.field("role", std::string_view(where.role));
  json.field("verdict", to_text(judgement.verdict));
  json.field("deciding", judgement.deciding);
  json.field("conditions", judgement.conditions);
  json.field("loosened", loosened_rules(judgement));
  write_reasons(json, "reasons", judgement.reasons);
  write_reasons(json, "original_reasons", judgement.original_reasons);
  json.end();
  return json.text();
}

} // namespace benchlore
