// Both ports against one set of facts, then what only the disk can get wrong.
#include "base/files.h"

#include <doctest/doctest.h>

#include <filesystem>
#include <fstream>
#include <unistd.h>

using namespace benchlore;
using Strings = std::vector<std::string>;
namespace fs = std::filesystem;

namespace {

// A folder of its own for each test case, gone at the end.
struct Folder {
  fs::path path = fs::temp_directory_path() / ("benchlore-files-" + std::to_string(::getpid()));
  Folder() {
    fs::remove_all(path);
    fs::create_directories(path / "root");
  }
  ~Folder() { fs::remove_all(path); }
  std::unique_ptr<Files> files() const { return disk_files((path / "root").string()); }
};

void check_port(Files& files) {
  CHECK(files.list("").empty());
  CHECK(files.write("b/two.md", "2"));
  CHECK(files.write("./b//one.md", "1"));
  CHECK(files.write("a.md", ""));
  CHECK(files.write("b-1.md", "x"));
  CHECK(files.write(".hidden/x.md", "x"));
  CHECK(files.write("b/.hidden.md", "x"));
  CHECK(files.list("") == Strings{"a.md", "b-1.md", "b/one.md", "b/two.md"});
  CHECK(files.list("b") == Strings{"b/one.md", "b/two.md"});
  CHECK(files.list("b/") == Strings{"b/one.md", "b/two.md"});
  CHECK(files.list("a.md").empty());
  CHECK(files.list("missing").empty());
  CHECK(files.read("b/two.md") == "2");
  CHECK(files.read("a.md") == "");
  CHECK_FALSE(files.read("b"));
  CHECK_FALSE(files.read("missing"));
  CHECK(files.is_folder(""));
  CHECK(files.is_folder("b"));
  CHECK_FALSE(files.is_folder("a.md"));
  CHECK(files.is_file("a.md"));
  CHECK_FALSE(files.is_file("b"));
  CHECK(files.write("a.md", "longer"));
  CHECK(files.read("a.md") == "longer");
  CHECK(files.read("a.md", 6) == "longer");
  CHECK_FALSE(files.read("a.md", 5));
  for (const char* path : {"..", "../x", "b/../a.md", "/etc/passwd"}) {
    CHECK_FALSE(files.read(path));
    CHECK_FALSE(files.write(path, "x"));
    CHECK(files.list(path).empty());
  }
  CHECK_FALSE(files.write("", "x"));
  CHECK_FALSE(files.write("b", "x"));
  CHECK_FALSE(files.write(std::string_view("a\0b", 3), "x"));
}

} // namespace

TEST_CASE("files in memory behave as a port") {
  MemoryFiles files;
  check_port(files);
}

TEST_CASE("files on the disk behave as a port") {
  const Folder folder;
  check_port(*folder.files());
}

TEST_CASE("a root that is missing holds nothing and is made by writing") {
  const Folder folder;
  const auto files = disk_files((folder.path / "new/deeper/").string());
  CHECK_FALSE(files->is_folder(""));
  CHECK(files->list("").empty());
  CHECK_FALSE(files->read("a"));
  CHECK(files->write("a", "x"));
  CHECK(files->read("a") == "x");
}

TEST_CASE("a link that leads out of the root is as good as missing") {
  const Folder folder;
  std::ofstream(folder.path / "secret") << "s";
  fs::create_directories(folder.path / "outside");
  std::ofstream(folder.path / "outside/x") << "x";
  fs::create_symlink(folder.path / "secret", folder.path / "root/link");
  fs::create_directory_symlink(folder.path / "outside", folder.path / "root/folder");
  const auto files = folder.files();
  CHECK_FALSE(files->read("link"));
  CHECK_FALSE(files->read("folder/x"));
  CHECK_FALSE(files->is_file("link"));
  CHECK_FALSE(files->is_folder("folder"));
  CHECK_FALSE(files->write("link", "y"));
  CHECK_FALSE(files->write("folder/y", "y"));
  CHECK(files->list("").empty());
  CHECK_FALSE(fs::exists(folder.path / "outside/y"));
}

TEST_CASE("a link within the root is followed, a circle of links is not") {
  const Folder folder;
  const auto files = folder.files();
  CHECK(files->write("real", "r"));
  fs::create_symlink("real", folder.path / "root/link");
  fs::create_directory_symlink(".", folder.path / "root/circle");
  fs::create_symlink("self", folder.path / "root/self");
  CHECK(files->read("link") == "r");
  CHECK(files->list("") == Strings{"link", "real"});
  CHECK_FALSE(files->read("self"));
}

TEST_CASE("a root beside one with a longer name does not reach into it") {
  const Folder folder;
  fs::create_directories(folder.path / "root-other");
  std::ofstream(folder.path / "root-other/x") << "x";
  fs::create_symlink(folder.path / "root-other/x", folder.path / "root/x");
  CHECK_FALSE(folder.files()->read("x"));
}

TEST_CASE("writing leaves no temporary file behind, whether it works or not") {
  const Folder folder;
  const auto files = folder.files();
  CHECK(files->write("a", "x"));
  CHECK_FALSE(files->write("a/b", "x")); // a file stands where a folder is needed
  std::size_t count = 0;
  for ([[maybe_unused]] const auto& entry : fs::directory_iterator(folder.path / "root")) ++count;
  CHECK(count == 1);
}
