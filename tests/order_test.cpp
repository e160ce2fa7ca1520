// Reads every #include under compiler/ and holds the layers to their order and outside libraries to their homes.
#include "base/files.h"
#include "base/text.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <set>

namespace {

using namespace benchlore;
using Names = std::set<std::string, std::less<>>;

// What each layer may include besides itself. The three emitters are strangers to one another.
std::map<std::string, Names, std::less<>> allowed_layers() {
  std::map<std::string, Names, std::less<>> allowed;
  allowed["base"] = {};
  allowed["report"] = {"base"};
  allowed["quantity"] = {"base"};
  allowed["workings"] = {"base", "quantity"};
  allowed["calculations"] = {"base", "quantity", "workings"};
  allowed["decode"] = {"base", "quantity"};
  Names below{"base", "report"};
  allowed["record"] = below;
  below.insert({"record", "quantity"});
  for (const char* layer : {"schema", "notes", "link"}) {
    allowed[layer] = below;
    below.insert(layer);
  }
  below.insert("workings");
  allowed["substitute"] = below;
  below.insert({"substitute", "calculations", "diagnosis"});
  allowed["diagnosis"] = {"base", "report", "record", "quantity", "schema", "notes", "link"};
  allowed["bench"] = below;
  allowed["bench"].erase("calculations");
  allowed["bench"].erase("diagnosis");
  below.insert("bench");
  for (const char* layer : {"emit/site", "emit/index", "emit/catalogue", "lookup"}) allowed[layer] = below;
  allowed["lookup"].insert("emit/index"); // what writes the index and what asks it must cut words alike
  below.insert({"emit/site", "emit/index", "emit/catalogue"});
  allowed["compile"] = below;
  below.insert({"compile", "lookup", "decode", "diagnosis"});
  allowed["command"] = below;
  below.insert("command");
  allowed["main.cpp"] = below;
  return allowed;
}

// Headers of outside libraries, by how their names begin, and the layers that may include them. Databases are
// written by their own libraries, past the Files port, so their folders are handled beside them.
const std::map<std::string, Names> homes = {
    {"yaml.h", {"record"}},
    {"cmark", {"notes"}},
    {"xapian", {"emit/index", "lookup"}},
    {"sqlite3", {"emit/catalogue", "lookup"}},
    {"CLI/", {"command"}},
    {"fstream", {"base"}},
    {"filesystem", {"base", "emit/index", "emit/catalogue"}},
};

// The layer of a path below compiler/: its folder, two folders for emit, or main.cpp.
std::string layer_of(std::string_view path) {
  const auto parts = split(path, '/');
  if (parts.size() > 1 && parts[0] == "emit") return "emit/" + std::string(parts[1]);
  return std::string(parts[0]);
}

struct Include {
  std::string file;
  std::string name;
  bool quoted;
};

std::vector<Include> includes() {
  const auto files = disk_files(std::string(BENCHLORE_ROOT) + "/compiler");
  std::vector<Include> found;
  for (const std::string& path : files->list("")) {
    if (!path.ends_with(".cpp") && !path.ends_with(".h")) continue;
    const std::string text = files->read(path).value_or("");
    for (std::string_view line : split(text, '\n')) {
      if (!line.starts_with("#include ")) continue;
      line.remove_prefix(9);
      const std::size_t end = line.find_first_of("\">", 1);
      found.push_back({path, std::string(line.substr(1, end - 1)), line.front() == '"'});
    }
  }
  return found;
}

} // namespace

TEST_CASE("the includes of the compiler are found") { CHECK(includes().size() > 50); }

TEST_CASE("a layer includes itself and the layers below it") {
  const auto allowed = allowed_layers();
  for (const Include& include : includes()) {
    if (!include.quoted) continue;
    const std::string from = layer_of(include.file), to = layer_of(include.name);
    CAPTURE(include.file);
    CAPTURE(include.name);
    const auto row = allowed.find(from);
    REQUIRE(row != allowed.end());
    CHECK((from == to || row->second.contains(to)));
  }
}

TEST_CASE("a header of the compiler is included by its layer and name") {
  const auto files = disk_files(std::string(BENCHLORE_ROOT) + "/compiler");
  for (const Include& include : includes()) {
    if (!include.quoted) continue;
    CAPTURE(include.file);
    CAPTURE(include.name);
    CHECK(files->is_file(include.name));
  }
}

TEST_CASE("an outside library has one home") {
  for (const Include& include : includes()) {
    for (const auto& [begin, layers] : homes) {
      if (include.quoted || !include.name.starts_with(begin)) continue;
      CAPTURE(include.file);
      CAPTURE(include.name);
      CHECK(layers.contains(layer_of(include.file)));
    }
  }
}
