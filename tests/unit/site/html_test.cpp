// What a note says cannot become mark-up, and templates fill their slots.
#include "emit/site/html.h"

#include <array>
#include <doctest/doctest.h>

using namespace benchlore;

TEST_CASE("text is escaped for content and for quoted attributes") {
  CHECK(text("a<b> & \"c\" 'd'").str() == "a&lt;b&gt; &amp; &quot;c&quot; &#39;d&#39;");
  CHECK(text("4.7 µF, −5 %").str() == "4.7 µF, −5 %");
  CHECK(text(std::string_view("a\0b\x1b", 4)).str() == "a\uFFFD"
                                                       "b\uFFFD");
}

TEST_CASE("an address cannot leave its attribute") {
  CHECK(link("x\" onclick=\"y", text("<b>")).str() == "<a href=\"x&quot; onclick=&quot;y\">&lt;b&gt;</a>");
}

TEST_CASE("only constants and escaped pieces can be put together") {
  Html out{"<p>"};
  out << text("1 < 2") << "</p>";
  CHECK(out.str() == "<p>1 &lt; 2</p>");
  // A std::string does not convert; this would not compile: out << std::string("<p>");
  CHECK_FALSE(std::is_convertible_v<std::string, Html>);
  CHECK_FALSE(std::is_convertible_v<std::string, Markup>);
}

TEST_CASE("a template's slots are filled once") {
  const std::array<Slot, 2> slots{{{"title", text("{{main}}")}, {"main", rendered("<p>x</p>")}}};
  CHECK(fill("<h1>{{title}}</h1>{{ main }}{{missing}}!", slots.data(), slots.size()).str() ==
        "<h1>{{main}}</h1><p>x</p>!");
  CHECK(fill("open {{title", slots.data(), slots.size()).str() == "open {{title");
}

TEST_CASE("names are spoken with blanks") {
  CHECK(spoken("before-power-on") == "Before power on");
  CHECK(spoken("") == "");
}
