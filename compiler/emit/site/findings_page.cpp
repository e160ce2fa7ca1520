// Findings: unsafe ones first, then by severity; accepted ones apart; notes that could not be published at the end.
#include "emit/site/findings_page.h"

#include "emit/site/table.h"
#include "emit/site/verdict_view.h"

#include <array>

namespace benchlore {
namespace {

struct Group {
  Severity severity;
  std::string_view title;
};
constexpr std::array<Group, 4> groups{{{Severity::unsafe, "Unsafe"},
                                       {Severity::error, "Errors"},
                                       {Severity::warning, "Warnings"},
                                       {Severity::note, "To know"}}};

Html place_view(const Place& place) {
  if (place.path.empty()) return {};
  Html out{"<code>"};
  return out << text(place.path + ":" + std::to_string(place.line) + ":" + std::to_string(place.column)) << "</code>";
}

Html label_view(const View& view, const Label& label) {
  Html out{"<li>"};
  return out << with_code(label.text) << " " << place_view(view.in.sources.place(label.span)) << "</li>\n";
}

// A finding about a substitute bears the mark of its verdict.
Html mark_of(const Message& message) {
  for (Verdict verdict : {Verdict::unsafe, Verdict::unfit, Verdict::unknown, Verdict::conditional, Verdict::suitable})
    if (to_text(verdict) == message.verdict) return verdict_mark(verdict);
  return severity_mark(message.severity);
}

Html accepted_view(const Acceptance& accepted) {
  Html out{"<p class=\"accepted\">Accepted"};
  if (!accepted.by.empty()) out << " by " << text(accepted.by);
  if (!accepted.date.empty()) out << " on " << text(accepted.date);
  return out << ": " << text(accepted.reason) << "</p>";
}

Html group_view(const View& view, std::string_view anchor, std::string_view title, bool accepted,
                std::optional<Severity> severity) {
  Html items;
  std::size_t count = 0;
  for (const Message& message : view.in.report.messages()) {
    if (message.accepted.has_value() != accepted || (severity && message.severity != *severity)) continue;
    items << finding_view(view, message);
    ++count;
  }
  if (count == 0) return {};
  std::string heading = std::string(title) + " (" + std::to_string(count) + ")";
  return section_heading(anchor, heading) << "<ul class=\"findings\">\n" << items << "</ul>\n";
}

Html broken_view(const View& view) {
  std::vector<Html> items;
  for (const Note& note : view.shop().notes)
    if (note.broken) items.push_back(Html("<code>") << text(note.path) << "</code> " << text(note.title));
  if (items.empty()) return {};
  return section_heading("the_broken", "Notes that are not published") << bullets(items);
}

} // namespace

Html finding_view(const View& view, const Message& message) {
  Html out{"<li class=\"finding edge-"};
  out << text(to_text(message.severity)) << "\">" << mark_of(message) << " <span class=\"finding-text\">"
      << with_code(message.text) << "</span>";
  out << "<p class=\"from\">" << place_view(view.in.sources.place(message.span));
  if (auto subject = view.shop().find(message.subject)) out << " " << view.note_link(*subject);
  out << " <span class=\"kind-word\">" << text(row(message.kind).name) << "</span></p>";
  if (!message.way_out.empty()) out << "<p class=\"way-out\">" << with_code(message.way_out) << "</p>";
  if (message.accepted) out << accepted_view(*message.accepted);
  Html labels;
  for (const Label& label : message.labels) labels << label_view(view, label);
  if (!labels.empty()) out << "<ul>" << labels << "</ul>";
  return out << "</li>\n";
}

Page findings_page(const View& view) {
  Html main{"<h1>Findings</h1>\n"};
  if (view.in.report.messages().empty()) main << "<p>Nothing was found.</p>\n";
  for (const Group& group : groups)
    main << group_view(view, "the_" + std::string(to_text(group.severity)), group.title, false, group.severity);
  main << group_view(view, "the_accepted", "Accepted", true, std::nullopt) << broken_view(view);
  return {"findings.html", "Findings", "findings", main, {}};
}

} // namespace benchlore
