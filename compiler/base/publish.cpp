// The exchange is one renameat2 call; where the file system has none, two renames leave the old folder beside the new.
#include "base/publish.h"

#include <fcntl.h>
#include <filesystem>
#include <fstream>
#include <stdio.h>
#include <sys/file.h>
#include <system_error>

namespace benchlore {
namespace {

namespace fs = std::filesystem;
constexpr const char* marker = ".benchlore-output";

// A target may be replaced when it is missing, empty, or carries our mark. A link is never followed.
bool replaceable(const fs::path& target, std::string& error) {
  std::error_code code;
  const auto status = fs::symlink_status(target, code);
  if (status.type() == fs::file_type::not_found) return true;
  if (status.type() != fs::file_type::directory) {
    error = "`" + target.string() + "` is there and is no folder; name another output folder";
    return false;
  }
  if (fs::is_empty(target, code) && !code) return true;
  if (fs::is_regular_file(fs::symlink_status(target / marker, code))) return true;
  error = "`" + target.string() + "` holds files that this program did not write; name an empty or new output folder";
  return false;
}

fs::path beside(const fs::path& target) {
  const fs::path absolute = fs::absolute(target).lexically_normal();
  const fs::path clean = absolute.has_filename() ? absolute : absolute.parent_path();
  return clean.parent_path() / ("." + clean.filename().string() + ".next");
}

} // namespace

std::optional<Staging> Staging::open(const std::string& target, std::string& error) {
  if (target.empty()) {
    error = "the output folder has no name";
    return std::nullopt;
  }
  if (!replaceable(target, error)) return std::nullopt;
  const fs::path folder = beside(target);
  std::error_code code;
  fs::remove_all(folder, code);
  fs::create_directories(folder, code);
  if (!code) std::ofstream(folder / marker) << "written by benchlore; replaced at the next build\n";
  if (code || !fs::exists(folder / marker, code)) {
    error = "cannot write beside `" + target + "`; nothing was built";
    return std::nullopt;
  }
  return Staging(target, folder.string());
}

Staging::Staging(Staging&& other) noexcept : target_(std::move(other.target_)), folder_(std::move(other.folder_)) {
  other.folder_.clear();
}

Staging::~Staging() {
  std::error_code code;
  if (!folder_.empty()) fs::remove_all(folder_, code);
}

bool Staging::publish(std::string& error) {
  std::error_code code;
  if (!replaceable(target_, error)) return false;
  if (!fs::exists(fs::symlink_status(target_, code))) {
    fs::rename(folder_, target_, code);
    if (!code) folder_.clear();
  } else if (::renameat2(AT_FDCWD, folder_.c_str(), AT_FDCWD, target_.c_str(), RENAME_EXCHANGE) != 0) {
    const fs::path old = folder_ + ".old";
    fs::remove_all(old, code);
    fs::rename(target_, old, code);
    if (!code) fs::rename(folder_, target_, code);
    if (!code) {
      fs::remove_all(old, code);
      folder_.clear();
      return true;
    }
  }
  if (code) error = "cannot publish into `" + target_ + "`: " + code.message();
  return !code;
}

bool make_folder(const std::string& path) {
  std::error_code code;
  fs::create_directories(path, code);
  return !code && fs::is_directory(path, code);
}

std::string program_folder() {
  std::error_code code;
  const fs::path program = fs::read_symlink("/proc/self/exe", code);
  return code ? std::string() : program.parent_path().string();
}

} // namespace benchlore
