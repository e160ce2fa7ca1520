// Causes as bars, then the checks that tell most for each minute.
#include "emit/site/diagnosis_part.h"

#include "diagnosis/diagnose.h"
#include "emit/site/table.h"

namespace benchlore {
namespace {

constexpr std::size_t causes_shown = 12, checks_shown = 6;

std::string percent(double share) { return show_number(100 * share, dimension::none, 3) + " %"; }

// The number stands beside the bar.
Html bar(double share) {
  Html out{"<svg class=\"share\" viewBox=\"0 0 100 10\" width=\"100\" height=\"10\" aria-hidden=\"true\" "
           "focusable=\"false\"><rect width=\""};
  return out << text(show_number(100 * share, dimension::none, 3)) << "\" height=\"10\"/></svg> "
             << text(percent(share));
}

std::string origin(const CauseModel& cause) {
  if (cause.id.empty()) return "kept open, so that the rest stays honest";
  std::string from = cause.word.empty() ? "no word, counted as sometimes" : cause.word;
  return from + "; " + std::to_string(cause.jobs) + (cause.jobs == 1 ? " job" : " jobs");
}

Html causes_table(const View& view, const DiagnosisModel& model, const Diagnosis& found) {
  Table table{"Causes before anything is seen", {"Cause", "Share", "From"}, {}, false};
  for (std::size_t i = 0; i < found.causes.size() && i < causes_shown; ++i) {
    const CauseModel& cause = model.causes[found.causes[i].cause];
    const bool fault = cause.note.known() && view.shop().note(cause.note).kind == "fault";
    Html name = fault ? view.note_link(cause.note) : text(cause.title);
    if (cause.note.known() && !fault) name << " (" << view.note_link(cause.note) << ")";
    table.rows.push_back(
        {{name, {}}, {bar(found.causes[i].probability), found.causes[i].probability}, {text(origin(cause)), {}}});
  }
  return render(table);
}

Html checks_table(const DiagnosisModel& model, const Diagnosis& found) {
  Table table{"Checks with the power off, most told for each minute first",
              {"Check", "Minutes", "Risk", "When it is this fault", "When not"},
              {},
              false};
  for (std::size_t i = 0; i < found.next.size() && i < checks_shown; ++i) {
    const CheckModel& check = model.checks[found.next[i].check];
    table.rows.push_back({{text(check.text), {}},
                          {text(show_number(check.minutes, dimension::none)), check.minutes},
                          {text(check.risk), {}},
                          {text(check.bad), {}},
                          {text(check.good), {}}});
  }
  return table.rows.empty() ? Html() : render(table);
}

} // namespace

Html diagnosis_part(const View& view, NoteId equipment) {
  const DiagnosisModel model = diagnosis_model(view.shop(), equipment);
  if (model.causes.size() < 2) return {};
  const Diagnosis found = diagnose(model, {});
  Html out = section_heading("the_faults", "Known faults by likelihood");
  out << causes_table(view, model, found) << checks_table(model, found)
      << "<p>With what is seen and not seen: <code>benchlore diagnose " << text(view.shop().note(equipment).id)
      << " --seen …</code>. Words weigh as much as " << text(show_number(prior_strength, dimension::none))
      << " jobs.</p>\n";
  return out;
}

} // namespace benchlore
