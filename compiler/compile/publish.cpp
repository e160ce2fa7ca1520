// The three writers, one after another, into a folder that becomes visible only when all of them are done.
#include "base/publish.h"
#include "compile/compile.h"
#include "compile/site_terms.h"
#include "emit/catalogue/catalogue.h"
#include "emit/index/index.h"
#include "emit/site/site.h"

namespace benchlore {

bool publish(const Compiled& compiled, const BuildInput& input, const Progress& progress, std::string& error) {
  const auto schema_files = disk_files(input.schema);
  const auto tables = schema_files->read("catalogue.sql");
  if (!tables) {
    error = "`" + input.schema + "/catalogue.sql` cannot be read; nothing was built";
    return false;
  }
  auto staging = Staging::open(input.output, error);
  if (!staging) return false;
  const std::string data = staging->folder() + "/data";
  if (!make_folder(data)) {
    error = "cannot write into `" + staging->folder() + "`; nothing was built";
    return false;
  }
  progress("index", 0, 3);
  if (!write_index(compiled.shop, compiled.judged, data + "/index", {}, error)) return false;
  progress("catalogue", 1, 3);
  if (!write_catalogue(compiled.shop, compiled.judged, compiled.report, *tables, data + "/catalogue.sqlite", error))
    return false;
  progress("site", 2, 3);
  const auto content = disk_files(input.content);
  const auto site = disk_files(input.site);
  const auto output = disk_files(staging->folder());
  if (!write_site({compiled.shop, compiled.judged, compiled.report, compiled.sources, *site, *content,
                   terms_for_site(compiled.shop, compiled.judged), ranking_for_site()},
                  *output)) {
    error = "the site could not be written: a template in `" + input.site + "` is missing, or the disk is full";
    return false;
  }
  progress("published", 3, 3);
  return staging->publish(error);
}

} // namespace benchlore
