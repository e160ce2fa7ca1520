// Writes the pages one after the other, then what they load.
#include "emit/site/site.h"

#include "emit/site/calculation_pages.h"
#include "emit/site/findings_page.h"
#include "emit/site/list_pages.h"
#include "emit/site/note_page.h"
#include "emit/site/rules_page.h"
#include "emit/site/search_data.h"
#include "emit/site/tool_pages.h"

namespace benchlore {
namespace {

constexpr std::size_t largest_attachment = 32u << 20;

struct SiteWriter {
  const SiteInput& in;
  const Gathered& gathered;
  const std::string& frame;
  Files& out;
  bool written = true;

  // Makes the page with a view from its own depth, and writes it.
  template <class MakePage> void page(const std::string& path, MakePage make) {
    View view{in, frame, root_of(path)};
    Page made = make(view);
    written = out.write(path, framed(view, made)) && written;
  }

  void tool_pages() {
    page("index.html", [&](const View& view) { return home_page(view, gathered); });
    page("search.html", [](const View& view) { return search_page(view); });
    page("substitute.html", [](const View& view) { return substitute_page(view); });
    page("notes.html", [&](const View& view) { return notes_page(view, gathered); });
    page("findings.html", [](const View& view) { return findings_page(view); });
    page("calculations.html", [](const View& view) { return calculations_page(view); });
    for (const Calculation& one : calculations())
      page(calculation_path(one), [&](const View& view) { return calculation_page(view, one); });
    page("rules.html", [](const View& view) { return rules_page(view); });
    for (const Rule& rule : in.shop.schema->rules)
      page(rule_path(rule.name), [&](const View& view) { return rule_page(view, rule); });
  }

  void lists() {
    for (const auto& [name, kind] : in.shop.schema->kinds)
      page(kind_path(name), [&](const View& view) { return kind_page(view, gathered, kind); });
    for (const auto& [name, component_class] : in.shop.schema->classes)
      page(class_path(name), [&](const View& view) { return class_page(view, gathered, component_class); });
  }

  void notes() {
    for (const auto& [path, id] : gathered.by_path)
      page(page_path(in.shop.note(id)), [&](const View& view) { return note_page(view, gathered, id); });
  }

  void attachments() {
    for (const std::string& path : in.shop.attachments) {
      auto published = attachment_path(path);
      auto bytes = published ? in.content.read(path, largest_attachment) : std::nullopt;
      if (bytes) written = out.write(*published, *bytes) && written;
    }
  }

  void assets() {
    std::string style;
    for (const std::string& path : in.site_files.list("styles")) style += in.site_files.read(path).value_or("") + "\n";
    written = out.write("assets/style.css", style) && written;
    for (const std::string& path : in.site_files.list("scripts"))
      if (auto bytes = in.site_files.read(path))
        written = out.write("assets/" + path.substr(path.rfind('/') + 1), *bytes) && written;
  }
};

} // namespace

bool write_site(const SiteInput& input, Files& out) {
  auto frame = input.site_files.read("templates/page.html");
  if (!frame) return false;
  Gathered gathered = gather(input);
  SiteWriter writer{input, gathered, *frame, out};
  writer.tool_pages();
  writer.lists();
  writer.notes();
  writer.attachments();
  writer.assets();
  return write_search_data(View{input, *frame, ""}, gathered, out) && writer.written;
}

} // namespace benchlore
