// Marks and workings of judgements.
#include "emit/site/verdict_view.h"

#include "emit/site/table.h"

#include <cmath>

namespace benchlore {
namespace {

Markup drawing(Verdict verdict) {
  switch (verdict) {
  case Verdict::unsafe:
    return "<path d=\"M6 10l6-7 3 9 5-10 2 7h4\"/><path class=\"pad\" d=\"M2 7h5v6H2zM25 7h5v6h-5z\"/>";
  case Verdict::unfit:
    return "<path d=\"M5 12L23 3M2 12h3\"/><path d=\"M26 9h4v6h-4z\"/>";
  case Verdict::unknown:
    return "<path d=\"M2 5h5v6H2zM25 5h5v6h-5z\"/><path class=\"dots\" d=\"M11 8h11\"/>";
  case Verdict::conditional:
    return "<path d=\"M2 8h9M21 8h9M11 3h10v10H11z\"/>";
  case Verdict::suitable:
    return "<path d=\"M4 8h24\"/><path class=\"pad\" d=\"M2 5h5v6H2zM25 5h5v6h-5z\"/>";
  }
  return "";
}

Html percent(double margin) {
  double rounded = std::round(margin * 100);
  std::string sign = rounded < 0 ? "\u2212" : "+";
  return text(sign + std::to_string(std::llround(std::fabs(rounded))) + " %");
}

Html rule_link(const View& view, const Reason& reason) {
  if (!reason.rule) return {};
  return link(view.root + rule_path(reason.rule->name), text(spoken(reason.rule->name)));
}

Html reason_values(const View& view, const Reason& reason) {
  std::vector<NamedValue> values{
      {"Original", with_code(reason.original)},
      {"Substitute", with_code(reason.substitute)},
      {"Required", with_code(reason.required)},
      {"Margin", reason.margin ? percent(*reason.margin) : Html()},
      {"Working", with_code(reason.working)},
      {"To do", with_code(reason.action)},
      {"Counts only as",
       text(reason.only_in_role.empty() ? std::string() : role_title(view.schema(), reason.only_in_role))},
      {"Because", with_code(reason.because)},
      {"Changed", with_code(reason.changed)},
      {"Rule", rule_link(view, reason)},
      {"Source", view.source_link(reason.source)}};
  return render(values);
}

Html reason_view(const View& view, const Reason& reason) {
  Html out{"<li class=\"reason outcome-"};
  out << text(safe_name(spoken(to_text(reason.outcome)))) << "\"><p class=\"reason-head\"><strong>"
      << text(reason.rating.empty() ? spoken(reason.rule_name) : rating_title(view.schema(), reason.rating))
      << "</strong> " << text(to_text(reason.outcome));
  if (reason.by_tolerance) out << " (turns on the tolerance)";
  if (reason.outcome != Outcome::meets) out << " " << verdict_mark(reason.verdict);
  return out << "</p>" << reason_values(view, reason) << "</li>\n";
}

Html deciding_view(const View& view, const Judgement& judgement) {
  Html out;
  for (const std::string& name : judgement.deciding) {
    if (!out.empty()) out << ", ";
    out << text(rating_title(view.schema(), name));
  }
  return out;
}

// Only a conditional verdict may sound like a yes with conditions.
Markup conditions_title(Verdict verdict) {
  switch (verdict) {
  case Verdict::unsafe:
  case Verdict::unfit:
    return "To note, though it changes nothing:";
  case Verdict::unknown:
    return "Find out first:";
  case Verdict::conditional:
    return "Only if:";
  case Verdict::suitable:
    return "To note:";
  }
  return "";
}

Html conditions_view(const Judgement& judgement) {
  if (judgement.conditions.empty()) return {};
  std::vector<Html> items;
  for (const std::string& condition : judgement.conditions) items.push_back(with_code(condition));
  Html out{"<p class=\"ask\">"};
  out << conditions_title(judgement.verdict) << "</p>";
  return out << bullets(items);
}

Html folded_reasons(const View& view, const JudgedSubstitute& judged) {
  const Judgement& judgement = judged.judgement;
  Html out;
  if (!judgement.reasons.empty()) {
    out << "<details><summary>Why: " << text(std::to_string(judgement.reasons.size()))
        << (judgement.reasons.size() == 1 ? Html(" reason") : Html(" reasons")) << " for "
        << text(view.shop().note(judged.substitute).title) << "</summary>" << reasons_view(view, judgement.reasons)
        << "</details>\n";
  }
  if (!judgement.original_reasons.empty())
    out << "<p class=\"ask\">The original itself does not meet these rules where it sits:</p>"
        << reasons_view(view, judgement.original_reasons);
  return out;
}

} // namespace

Html verdict_mark(Verdict verdict) {
  std::string word(to_text(verdict));
  Html out{"<span class=\"mark mark-"};
  return out << text(word)
             << "\"><svg viewBox=\"0 0 32 16\" width=\"32\" height=\"16\" aria-hidden=\"true\" focusable=\"false\">"
             << drawing(verdict) << "</svg>" << text(spoken(word)) << "</span>";
}

Html severity_mark(Severity severity) {
  if (severity == Severity::unsafe) return verdict_mark(Verdict::unsafe);
  Html out{"<span class=\"mark mark-"};
  return out << text(to_text(severity)) << "\">" << text(spoken(to_text(severity))) << "</span>";
}

std::string judgement_anchor(const View& view, const JudgedSubstitute& judged) {
  std::string out = "judged_" + safe_name(view.shop().note(judged.substitute).id);
  if (judged.position) return out + "_" + safe_name(judged.position->name(view.shop()));
  return judged.where.role.empty() ? out : out + "_" + safe_name(judged.where.role);
}

Html where_view(const View& view, const JudgedSubstitute& judged) {
  Html out;
  if (judged.position) {
    out << "at " << text(judged.position->ref) << " on " << view.note_link(judged.position->board);
  } else {
    out << "in general";
  }
  if (!judged.where.role.empty()) out << ", as " << text(role_title(view.schema(), judged.where.role));
  for (const auto& [name, stated] : judged.where.stress)
    out << ", " << text(stress_title(view.schema(), name)) << " " << text(to_text(stated.value));
  return out;
}

Html reasons_view(const View& view, const std::vector<Reason>& reasons) {
  Html out{"<ul class=\"reasons\">\n"};
  for (const Reason& reason : reasons) out << reason_view(view, reason);
  return out << "</ul>\n";
}

Html judged_view(const View& view, const JudgedSubstitute& judged) {
  const Judgement& judgement = judged.judgement;
  int stock = view.shop().in_stock(judged.substitute);
  Html out{"<article class=\"judged edge-"};
  out << text(to_text(judgement.verdict)) << "\" id=\"" << text(judgement_anchor(view, judged)) << "\">\n<h3>"
      << verdict_mark(judgement.verdict) << " " << view.note_link(judged.substitute) << "</h3>\n<p class=\"where\">"
      << where_view(view, judged) << "</p>\n";
  std::vector<NamedValue> facts{{"Decided by", deciding_view(view, judgement)},
                                {"In stock", stock > 0 ? text(std::to_string(stock)) : Html()}};
  for (const std::string& rule : loosened_rules(judgement))
    out << "<p class=\"loosened\"><strong>Loosened rule:</strong> " << text(rule) << "</p>\n";
  return out << render(facts) << conditions_view(judgement) << folded_reasons(view, judged) << "</article>\n";
}

std::string rating_title(const Schema& schema, std::string_view name, std::string_view class_name) {
  auto title_in = [&](const ComponentClass& one) {
    auto rating = one.ratings.find(name);
    return rating == one.ratings.end() ? std::string() : rating->second.title;
  };
  if (const ComponentClass* own = schema.find_class(class_name))
    if (std::string title = title_in(*own); !title.empty()) return title;
  for (const auto& [one, component_class] : schema.classes)
    if (std::string title = title_in(component_class); !title.empty()) return title;
  auto stress = schema.stresses.find(name);
  return stress == schema.stresses.end() || stress->second.title.empty() ? spoken(name) : stress->second.title;
}

std::string stress_title(const Schema& schema, std::string_view name) {
  auto stress = schema.stresses.find(name);
  return stress == schema.stresses.end() || stress->second.title.empty() ? rating_title(schema, name)
                                                                         : stress->second.title;
}

std::string role_title(const Schema& schema, std::string_view name) {
  auto role = schema.roles.find(name);
  return role == schema.roles.end() || role->second.title.empty() ? spoken(name) : role->second.title;
}

} // namespace benchlore
