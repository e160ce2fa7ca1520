// What the checker believes of a class stands in schema/, never in the engine.
#include "support.h"

#include <string>

using namespace benchlore;

TEST_CASE("no file under compiler/substitute names a class of component") {
  const auto files = disk_files(std::string(BENCHLORE_ROOT) + "/compiler/substitute");
  std::size_t read = 0;
  for (const std::string& path : files->list("")) {
    const std::string text = files->read(path).value_or("");
    ++read;
    for (const auto& [name, unused] : test::project_schema().classes) {
      // Some names are ordinary words (`switch`, `fuse`): what counts is a name that the code compares with.
      CHECK_MESSAGE(text.find("\"" + name + "\"") == std::string::npos, path << " names the class " << name);
      if (name.find('-') != std::string::npos)
        CHECK_MESSAGE(text.find(name) == std::string::npos, path << " names the class " << name);
    }
  }
  CHECK(read > 20);
}
