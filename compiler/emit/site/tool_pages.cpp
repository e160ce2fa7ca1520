// Search and substitute look-up; the results are put in by site/scripts.
#include "emit/site/tool_pages.h"

#include "emit/site/verdict_view.h"

#include <array>

namespace benchlore {
namespace {

constexpr std::array<Verdict, 5> verdicts{Verdict::unsafe, Verdict::unfit, Verdict::unknown, Verdict::conditional,
                                          Verdict::suitable};

// The script copies these marks, so that they are drawn in one place.
Html marks_to_copy() {
  Html out{"<ul class=\"legend\" id=\"the_marks\" aria-label=\"Verdicts, worst first\">\n"};
  for (Verdict verdict : verdicts) {
    out << "<li data-verdict=\"" << text(to_text(verdict)) << "\">" << verdict_mark(verdict) << "</li>\n";
  }
  return out << "</ul>\n";
}

} // namespace

Page search_page(const View& view) {
  Html main{
      "<h1>Search</h1>\n"
      "<form id=\"search_form\" class=\"ask-box\" role=\"search\" aria-label=\"Notes\" action=\"search.html\" "
      "method=\"get\">\n<label for=\"ask_q\">What do you see, or what is it called?</label>\n"
      "<div class=\"ask-line\"><input id=\"ask_q\" name=\"q\" type=\"search\" autocomplete=\"off\" "
      "spellcheck=\"false\" aria-describedby=\"search_keys\"><button>Search notes</button></div>\n"
      "<p class=\"from\" id=\"search_keys\">Words may be cut short or misspelt by a letter. "
      "Arrow keys walk through the results.</p>\n"
      "</form>\n<div id=\"search_kinds\" class=\"filters\" role=\"group\" aria-label=\"Show only\" hidden></div>\n"
      "<p id=\"search_state\" role=\"status\"></p>\n<ol id=\"search_hits\" class=\"hits\"></ol>\n"
      "<noscript><p>Searching needs scripts. Without them, everything is listed under "};
  main << link(view.root + "notes.html", text("Notes")) << ".</p></noscript>\n";
  return {"search.html",
          "Search",
          "search",
          main,
          {"stem.js", "words.js", "shards.js", "completion.js", "rank.js", "search.js"}};
}

Page substitute_page(const View& view) {
  Html main{
      "<h1>Substitutes</h1>\n"
      "<form id=\"part_form\" class=\"ask-box\" role=\"search\" aria-label=\"Substitutes\" "
      "action=\"substitute.html\" method=\"get\">\n"
      "<label for=\"ask_part\">Part, marking, alias or cross-reference number</label>\n"
      "<div class=\"ask-line\"><input id=\"ask_part\" name=\"part\" type=\"search\" autocomplete=\"off\" "
      "spellcheck=\"false\"><button>Find substitutes</button></div>\n</form>\n"
      "<p id=\"part_state\" role=\"status\"></p>\n<div id=\"part_answers\"></div>\n"
      "<noscript><p>The look-up needs scripts. Without them, each part has its substitutes on its own page, under "};
  main
      << view.kind_link("component") << ".</p></noscript>\n"
      << section_heading("the_verdicts", "What the marks mean") << marks_to_copy()
      << "<dl class=\"facts\">"
         "<div><dt>Unsafe</dt><dd>can injure, burn, or destroy what it is fitted to</dd></div>"
         "<div><dt>Unfit</dt><dd>will not do the job or does not fit</dd></div>"
         "<div><dt>Unknown</dt><dd>a rating that decides is not stated, or not in a way that can be compared</dd></div>"
         "<div><dt>Conditional</dt><dd>works once the stated conditions are met</dd></div>"
         "<div><dt>Suitable</dt><dd>every deciding rating is stated, comparable, and meets its rule</dd></div></dl>\n";
  return {"substitute.html", "Substitutes", "substitute", main, {"words.js", "shards.js", "substitute.js"}};
}

} // namespace benchlore
