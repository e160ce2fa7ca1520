// What can hurt, before anything else on the page.
#include "emit/site/cautions_view.h"

namespace benchlore {

Html cautions_view(const View& view, const std::vector<const Caution*>& cautions) {
  if (cautions.empty()) return {};
  Html out{"<section class=\"cautions\" aria-labelledby=\"the_cautions\">\n<h2 id=\"the_cautions\">Before you touch "
           "it</h2>\n<ul>\n"};
  for (const Caution* caution : cautions) {
    out << "<li><strong>" << text(caution->title) << ".</strong> " << text(caution->wording);
    if (!caution->source.empty()) out << " <span class=\"from\">" << view.source_link(caution->source) << "</span>";
    out << "</li>\n";
  }
  out << "</ul>\n<p>Local codes and licensed practice come before anything written here.";
  if (!view.shop().facts.wording.empty()) out << " " << text(view.shop().facts.wording);
  return out << "</p>\n</section>\n";
}

} // namespace benchlore
