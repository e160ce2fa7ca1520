// Bodies: links with exact places, headings with anchors, plain text, and HTML.
#include "unit/notes/small_schema.h"

using namespace benchlore;
using namespace benchlore::test;

namespace {

ReadNote page(const std::string& body) { return ReadNote("---\nkind: page\ntitle: P\n---\n" + body, "pages/p.md"); }

std::string html(const std::string& text) { return render_markdown(text, AllLinks{}); }

} // namespace

TEST_CASE("the place of a link is its bytes, whatever stands around it") {
  const ReadNote read =
      page("para with [one](a.md)\n   continued [two](b.md \"t\") and ![img](c.png)\n\n- item [three](d.md)\n"
           "  more [four](e.md)\n  > quote [five](f.md)\n  > cont [six][ref]\nlazy [seven](g.md)\n\n| a | b |\n"
           "|---|---|\n| [eight](h.md) | x [nine](i.md) |\n\n# Head [ten](j.md)\n\nfoo\n   [eleven](k.md)\n===\n\n"
           "<https://x.y>\n\n**b [in `code`](l.md) é [z](m.md)**\n\n[multi\nline](o.md) x\n\n[ref]: zz.md\n");
  const std::vector<std::string> written = {
      "[one](a.md)",   "[two](b.md \"t\")", "![img](c.png)", "[three](d.md)",      "[four](e.md)", "[five](f.md)",
      "[six][ref]",    "[seven](g.md)",     "[eight](h.md)", "[nine](i.md)",       "[ten](j.md)",  "[eleven](k.md)",
      "<https://x.y>", "[in `code`](l.md)", "[z](m.md)",     "[multi\nline](o.md)"};
  REQUIRE(read.note.links.size() == written.size());
  for (std::size_t at = 0; at < written.size(); ++at) CHECK(read.sources.text(read.note.links[at].span) == written[at]);
}

TEST_CASE("a destination is taken apart into path and anchor") {
  const ReadNote read = page("[a](<../x y/b%20c.md#some-place>) [b](#here) [c](https://e.org/a#b)\n");
  REQUIRE(read.note.links.size() == 3);
  CHECK(read.note.links[0].target == "../x y/b c.md");
  CHECK(read.note.links[0].anchor == "some-place");
  CHECK(read.note.links[1].target.empty());
  CHECK(read.note.links[1].anchor == "here");
  CHECK(read.note.links[2].target == "https://e.org/a#b");
}

TEST_CASE("anchors are those of the forges") {
  const ReadNote read = page("# Before power-on!\n\n## C201 / C202\n\n## Ärger `x_y`\n\n# Same\n\n# Same\n\n# !!!\n");
  const std::vector<std::string> anchors = {"before-power-on", "c201--c202", "ärger-x_y", "same", "same-1", "section"};
  REQUIRE(read.note.headings.size() == anchors.size());
  for (std::size_t at = 0; at < anchors.size(); ++at) CHECK(read.note.headings[at].anchor == anchors[at]);
}

TEST_CASE("plain text holds the words and no marks") {
  CHECK(
      page("# A *b*\n\n- c `d`\n- e ![f](g.png)\n\n| h | i |\n|---|---|\n| j | k |\n\n```\nl\n```\n").note.plain_text ==
      "A b\nc d\ne f\nh i \nj k \nl\n");
}

TEST_CASE("headings go one level down, with an id that no part of a page has") {
  CHECK(html("# A & B\n") == "<h2 id=\"s-a--b\">A &amp; B</h2>\n");
  CHECK(html("###### F\n") == "<h6 id=\"s-f\">F</h6>\n");
}

TEST_CASE("raw HTML is shown, not obeyed and not lost") {
  CHECK(html("a <b onclick=\"x\">c</b>\n") ==
        "<p>a <span class=\"raw\">&lt;b onclick=&quot;x&quot;&gt;</span>c<span class=\"raw\">&lt;/b&gt;</span></p>\n");
  CHECK(html("<script>\nalert(1)\n</script>\n") ==
        "<pre class=\"raw\">&lt;script&gt;\nalert(1)\n&lt;/script&gt;</pre>\n");
}

TEST_CASE("only what the caller allows becomes a link, and nothing that runs ever does") {
  CHECK(render_markdown("[a *b*](c.md) ![d](e.png)\n", NoLinks{}) == "<p>a <em>b</em> d</p>\n");
  CHECK(html("[a](javascript:alert(1)) [b](DATA:text/html,x) [c](<java\tscript:x>)\n") == "<p>a b c</p>\n");
  CHECK(html("[a](https://e.org)\n") == "<p><a href=\"https://e.org\" rel=\"noreferrer\">a</a></p>\n");
  CHECK(html("![a \"b\"](c.png 'd')\n") ==
        "<p><img src=\"c.png\" alt=\"a &quot;b&quot;\" title=\"d\" loading=\"lazy\" /></p>\n");
  CHECK(html("![a](https://e.org/x.png)\n") == "<p>a</p>\n");
}

TEST_CASE("blocks, tables and tasks keep what the page needs") {
  CHECK(html("```pinout dip-8\n1 <\n```\n") == "<pre class=\"block-pinout\"><code>1 &lt;\n</code></pre>\n");
  CHECK(html("|a|b|\n|-:|-|\n|~~c~~|d|\n") ==
        "<table>\n<thead>\n<tr>\n<th class=\"right\">a</th>\n<th>b</th>\n</tr>\n</thead>\n<tbody>\n<tr>\n"
        "<td class=\"right\"><del>c</del></td>\n<td>d</td>\n</tr>\n</tbody>\n</table>\n");
  CHECK(html("- [x] a\n- [ ] b\n") == "<ul>\n<li><input type=\"checkbox\" checked=\"\" disabled=\"\" /> a</li>\n"
                                      "<li><input type=\"checkbox\" disabled=\"\" /> b</li>\n</ul>\n");
}

TEST_CASE("link paths stay inside") {
  CHECK(link_path("faults/a.md", "../boards/b.md") == "boards/b.md");
  CHECK(link_path("faults/a.md", "./x//y") == "faults/x/y");
  CHECK(link_path("faults/a.md", "") == "faults/a.md");
  CHECK_FALSE(link_path("faults/a.md", "../../x"));
  CHECK_FALSE(link_path("a.md", "/etc/passwd"));
  CHECK(link_sort("mailto:a@b") == LinkSort::outward);
  CHECK(link_sort("ftp://a") == LinkSort::refused);
  CHECK(link_sort("a/b:c") == LinkSort::relative);
}
