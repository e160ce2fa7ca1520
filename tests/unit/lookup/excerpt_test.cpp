// Excerpts: where the window goes, what is marked, and that nothing is cut in two.
#include "lookup/excerpt.h"

#include "base/text.h"

#include <doctest/doctest.h>

using namespace benchlore;

TEST_CASE("a short text is shown whole") {
  CHECK(excerpt("The relay clicks.", {"relay"}, 100, "<", ">") == "The <relay> clicks.");
  CHECK(excerpt("", {"relay"}, 100, "<", ">") == "");
  CHECK(excerpt("Nothing here", {}, 100, "<", ">") == "Nothing here");
}

TEST_CASE("the window goes where most different terms stand") {
  std::string text;
  for (int i = 0; i < 40; ++i) text += "relay filler ";
  text += "the relay burns its coil and then ";
  for (int i = 0; i < 40; ++i) text += "filler words ";
  const std::string shown = excerpt(text, {"relay", "coil", "burn"}, 80, "<", ">");
  CHECK(shown.find("<burns> its <coil>") != std::string::npos);
  CHECK(shown.starts_with("… "));
  CHECK(shown.ends_with(" …"));
}

TEST_CASE("no cut falls inside a code point, for any length") {
  const std::string text = "Größe über Öl und Käse — größer als je zuvor, größe und höhe, überall übel";
  for (std::size_t length = 1; length < text.size() + 4; ++length) {
    CAPTURE(length);
    CHECK(valid_utf8(excerpt(text, {"hohe", "grosse"}, length, "<", ">")));
    CHECK(valid_utf8(excerpt("ÄÄÄÄÄÄÄÄÄÄÄÄÄÄÄÄÄÄÄÄÄÄÄ", {}, length, "<", ">")));
  }
}
