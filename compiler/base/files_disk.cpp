// Files under one folder of the disk. Every path is resolved through its symbolic links first, and what does
// not lie under the resolved root is treated as missing. The only place in Benchlore that touches the disk.
#include "base/files.h"

#include <algorithm>
#include <atomic>
#include <filesystem>
#include <fstream>
#include <system_error>
#include <unistd.h>

namespace benchlore {

namespace {

namespace fs = std::filesystem;

bool lies_under(const fs::path& path, const fs::path& root) {
  const auto [rest_of_root, rest] = std::mismatch(root.begin(), root.end(), path.begin(), path.end());
  return rest_of_root == root.end();
}

std::optional<std::string> read_stream(const fs::path& path, std::size_t most) {
  std::ifstream in(path, std::ios::binary);
  std::string bytes;
  char buffer[1 << 14];
  while (in && bytes.size() <= most) {
    in.read(buffer, sizeof buffer);
    bytes.append(buffer, static_cast<std::size_t>(in.gcount()));
  }
  if (!in.eof() || bytes.size() > most) return std::nullopt;
  return bytes;
}

bool write_stream(const fs::path& path, std::string_view bytes) {
  std::ofstream out(path, std::ios::binary | std::ios::trunc);
  out.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
  out.close();
  return !out.fail();
}

fs::path temporary_beside(const fs::path& path) {
  static std::atomic<unsigned> count{0};
  return path.parent_path() / (".benchlore-" + std::to_string(::getpid()) + "-" + std::to_string(count++));
}

class DiskFiles : public Files {
public:
  explicit DiskFiles(const std::string& root) {
    std::error_code error;
    root_ = fs::weakly_canonical(fs::absolute(root.empty() ? "." : root, error), error);
    if (!root_.has_filename() && root_.has_relative_path()) root_ = root_.parent_path(); // a slash at the end
  }

  std::optional<std::string> read(std::string_view path, std::size_t most) const override {
    const auto found = resolve(path);
    std::error_code error;
    if (!found || !fs::is_regular_file(*found, error)) return std::nullopt;
    if (fs::file_size(*found, error) > most || error) return std::nullopt;
    return read_stream(*found, most);
  }

  std::vector<std::string> list(std::string_view folder) const override {
    std::vector<std::string> paths;
    const auto tidy = tidy_path(folder);
    if (tidy && is_folder(*tidy)) gather(*tidy, paths);
    std::sort(paths.begin(), paths.end());
    return paths;
  }

  bool is_folder(std::string_view path) const override {
    const auto found = resolve(path);
    std::error_code error;
    return found && fs::is_directory(*found, error);
  }

  bool is_file(std::string_view path) const override {
    const auto found = resolve(path);
    std::error_code error;
    return found && fs::is_regular_file(*found, error);
  }

  bool write(std::string_view path, std::string_view bytes) override {
    const auto target = resolve(path);
    if (!target || *target == root_ || path.ends_with('/')) return false;
    std::error_code error;
    fs::create_directories(target->parent_path(), error);
    if (error) return false;
    const fs::path temporary = temporary_beside(*target);
    const bool written = write_stream(temporary, bytes);
    if (written) fs::rename(temporary, *target, error);
    if (written && !error) return true;
    fs::remove(temporary, error);
    return false;
  }

private:
  // The path with its links followed; nothing when it is refused or leads out of the root.
  std::optional<fs::path> resolve(std::string_view path) const {
    const auto tidy = tidy_path(path);
    if (!tidy || root_.empty()) return std::nullopt;
    if (tidy->empty()) return root_;
    std::error_code error;
    const fs::path real = fs::weakly_canonical(root_ / *tidy, error);
    if (error || !lies_under(real, root_)) return std::nullopt;
    return real;
  }

  // Folders behind links are not entered: they may lead in a circle.
  void gather(const std::string& first, std::vector<std::string>& paths) const {
    std::vector<std::string> folders{first};
    while (!folders.empty()) {
      const std::string folder = std::move(folders.back());
      folders.pop_back();
      std::error_code error;
      for (fs::directory_iterator at(root_ / folder, error), end; !error && at != end; at.increment(error)) {
        const std::string name = at->path().filename().string();
        if (name.starts_with('.')) continue;
        const std::string path = folder.empty() ? name : folder + '/' + name;
        std::error_code ignored;
        const bool real_folder = at->symlink_status(ignored).type() == fs::file_type::directory;
        if (real_folder) folders.push_back(path);
        if (!real_folder && is_file(path)) paths.push_back(path);
      }
    }
  }

  fs::path root_;
};

} // namespace

std::unique_ptr<Files> disk_files(std::string root) { return std::make_unique<DiskFiles>(root); }

} // namespace benchlore
