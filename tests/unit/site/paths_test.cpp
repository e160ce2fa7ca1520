// Pages lie where every file system can hold them, and nowhere else.
#include "emit/site/paths.h"

#include <doctest/doctest.h>
#include <set>
#include <string>

using namespace benchlore;

TEST_CASE("ordinary ids stay as they are") {
  Note note;
  note.id = "tantalum-10u-16v";
  CHECK(page_path(note) == "notes/tantalum-10u-16v.html");
  CHECK(kind_path("component") == "kinds/component.html");
  CHECK(class_path("film-capacitor") == "classes/film-capacitor.html");
}

TEST_CASE("no id leads out of the output or into another page") {
  std::set<std::string> names;
  for (const char* id :
       {"..", "../../etc/passwd", "/root", "a/b", "a\\b", "A", "a", "a_b", "a b", "con", "x<y", "a%2fb", ""}) {
    std::string name = safe_name(id);
    CHECK_MESSAGE(name.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789-_") == std::string::npos, name);
    CHECK_FALSE(name.empty());
    CHECK_MESSAGE(names.insert(name).second, name);
  }
  CHECK(safe_name("con") == "con_");
}

TEST_CASE("long names are cut and stay apart") {
  std::string first(250, 'a'), second = first + "b";
  CHECK(safe_name(first).size() <= 120);
  CHECK(safe_name(first) != safe_name(second));
}

TEST_CASE("only files that a browser does not run are published") {
  CHECK(attachment_path("pictures/Front panel.PNG") == "files/pictures/_46ront_20panel.png");
  CHECK(attachment_path("a/../../b.png") == "files/a/_2e_2e/_2e_2e/b.png");
  CHECK_FALSE(attachment_path("page.html"));
  CHECK_FALSE(attachment_path("code.js"));
  CHECK_FALSE(attachment_path("noextension"));
  CHECK(is_picture("x.webp"));
  CHECK_FALSE(is_picture("x.pdf"));
}
