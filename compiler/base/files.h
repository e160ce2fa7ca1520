// The Files port: everything the compiler reads and writes goes through it, so that tests can use memory.
#pragma once

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace benchlore {

// Paths are UTF-8, separated by `/`, relative to a root that the port was opened on. A path with a
// `..` part, an absolute path or one that leads out of the root through a symbolic link is refused.
class Files {
public:
  virtual ~Files() = default;

  // The bytes of a file; nothing when it is missing, unreadable or larger than `most` bytes.
  virtual std::optional<std::string> read(std::string_view path, std::size_t most = 64u << 20) const = 0;

  // Every regular file under the folder, as sorted paths relative to the root; hidden names are left out.
  virtual std::vector<std::string> list(std::string_view folder) const = 0;

  virtual bool is_folder(std::string_view path) const = 0;
  virtual bool is_file(std::string_view path) const = 0;

  // Writes the file whole (folders are made as needed). False when that failed; nothing is half written.
  virtual bool write(std::string_view path, std::string_view bytes) = 0;
};

// The path without `.` and empty parts; nothing when it is absolute, has a `..` part or a NUL byte.
std::optional<std::string> tidy_path(std::string_view path);

// Files under a folder on the disk; the folder may be missing, then nothing can be read.
std::unique_ptr<Files> disk_files(std::string root);

// Files in memory, for tests and for the browser.
class MemoryFiles : public Files {
public:
  MemoryFiles() = default;
  explicit MemoryFiles(std::map<std::string, std::string, std::less<>> files) : files_(std::move(files)) {}
  std::optional<std::string> read(std::string_view path, std::size_t most = 64u << 20) const override;
  std::vector<std::string> list(std::string_view folder) const override;
  bool is_folder(std::string_view path) const override;
  bool is_file(std::string_view path) const override;
  bool write(std::string_view path, std::string_view bytes) override;

private:
  std::map<std::string, std::string, std::less<>> files_;
};

} // namespace benchlore
