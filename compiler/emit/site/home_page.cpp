// The first page: what the shop is, the two boxes to ask, what is unsafe, what was on the bench last.
#include "emit/site/findings_page.h"
#include "emit/site/list_pages.h"
#include "emit/site/table.h"

#include <algorithm>

namespace benchlore {
namespace {

constexpr std::size_t jobs_shown = 8;

Markup ask_boxes() {
  return "<div class=\"asks\">\n"
         "<form class=\"ask-box\" role=\"search\" aria-label=\"Notes\" action=\"search.html\" method=\"get\">\n"
         "<label for=\"ask_q\">What do you see, or what is it called?</label>\n"
         "<div class=\"ask-line\"><input id=\"ask_q\" name=\"q\" type=\"search\" autocomplete=\"off\" "
         "spellcheck=\"false\">"
         "<button>Search notes</button></div>\n"
         "</form>\n"
         "<form class=\"ask-box\" role=\"search\" aria-label=\"Substitutes\" action=\"substitute.html\" "
         "method=\"get\">\n"
         "<label for=\"ask_part\">Which part must be replaced?</label>\n"
         "<div class=\"ask-line\"><input id=\"ask_part\" name=\"part\" type=\"search\" autocomplete=\"off\" "
         "spellcheck=\"false\"><button>Find substitutes</button></div>\n"
         "</form>\n</div>\n";
}

Html counts_view(const View& view, const Gathered& gathered) {
  Html out{"<ul class=\"counts\">\n"};
  for (const auto& [name, kind] : view.schema().kinds) {
    auto found = gathered.by_kind.find(name);
    if (found == gathered.by_kind.end()) continue;
    Html inside{"<b>"};
    inside << text(std::to_string(found->second.size())) << "</b> "
           << text(found->second.size() == 1 ? kind.title : kind.plural);
    out << "<li>" << link(kind_path(name), inside) << "</li>\n";
  }
  return out << "</ul>\n";
}

Html unsafe_view(const View& view) {
  Html items;
  for (const Message& message : view.in.report.messages())
    if (message.severity == Severity::unsafe && !message.accepted) items << finding_view(view, message);
  if (items.empty()) return {};
  return section_heading("the_unsafe", "Unsafe, settle these first") << "<ul class=\"findings\">\n"
                                                                     << items << "</ul>\n";
}

std::vector<NoteId> recent_jobs(const View& view, const Gathered& gathered) {
  auto found = gathered.by_kind.find("job");
  if (found == gathered.by_kind.end()) return {};
  std::vector<NoteId> jobs = found->second;
  std::stable_sort(jobs.begin(), jobs.end(), [&](NoteId a, NoteId b) {
    return view.shop().note(a).text("received") > view.shop().note(b).text("received");
  });
  jobs.resize(std::min(jobs.size(), jobs_shown));
  return jobs;
}

Html jobs_view(const View& view, const Gathered& gathered) {
  Table table{"Jobs, latest first", {"Job", "Received", "Machine", "Outcome"}, {}, false};
  for (NoteId id : recent_jobs(view, gathered)) {
    const Note& note = view.shop().note(id);
    table.rows.push_back({{view.note_link(id), {}},
                          {Html("<span class=\"date\">") << text(note.text("received")) << "</span>", {}},
                          {view.note_link(note.text("equipment")), {}},
                          {text(spoken(note.text("outcome"))), {}}});
  }
  if (table.rows.empty()) return {};
  return section_heading("the_jobs", "Lately on the bench") << render(table);
}

} // namespace

Page home_page(const View& view, const Gathered& gathered) {
  const ShopFacts& facts = view.shop().facts;
  std::string name = facts.name.empty() ? "Repair bench" : facts.name;
  Html main{"<h1>"};
  main << text(name)
       << "</h1>\n<p class=\"lead\">What this bench knows about old machines and the parts that keep them "
          "running. Everything here works without a network.</p>\n"
       << ask_boxes() << unsafe_view(view) << section_heading("the_counts", "What is written down")
       << counts_view(view, gathered);
  std::string mains = facts.mains_voltage + (facts.mains_frequency.empty() ? "" : ", " + facts.mains_frequency);
  if (!facts.mains_voltage.empty()) main << "<p class=\"from\">Mains at this bench: " << text(mains) << "</p>\n";
  main << jobs_view(view, gathered);
  return {"index.html", "Bench", "home", main, {"shards.js", "completion.js"}};
}

} // namespace benchlore
