// Files in a map from tidy path to bytes; a folder is whatever stands before a slash in some path.
#include "base/files.h"

#include "base/text.h"

namespace benchlore {

namespace {

bool has_hidden_part(std::string_view path) {
  for (const std::string_view part : split(path, '/')) {
    if (part.starts_with('.')) return true;
  }
  return false;
}

std::string folder_prefix(const std::string& folder) { return folder.empty() ? folder : folder + '/'; }

} // namespace

std::optional<std::string> tidy_path(std::string_view path) {
  if (path.starts_with('/') || path.find('\0') != std::string_view::npos) return std::nullopt;
  std::string tidy;
  for (const std::string_view part : split(path, '/')) {
    if (part == "..") return std::nullopt;
    if (part.empty() || part == ".") continue;
    if (!tidy.empty()) tidy += '/';
    tidy += part;
  }
  return tidy;
}

std::optional<std::string> MemoryFiles::read(std::string_view path, std::size_t most) const {
  const auto tidy = tidy_path(path);
  const auto found = tidy ? files_.find(*tidy) : files_.end();
  if (found == files_.end() || found->second.size() > most) return std::nullopt;
  return found->second;
}

std::vector<std::string> MemoryFiles::list(std::string_view folder) const {
  std::vector<std::string> paths;
  const auto tidy = tidy_path(folder);
  if (!tidy) return paths;
  const std::string prefix = folder_prefix(*tidy);
  for (auto at = files_.lower_bound(prefix); at != files_.end() && at->first.starts_with(prefix); ++at) {
    if (!has_hidden_part(std::string_view(at->first).substr(prefix.size()))) paths.push_back(at->first);
  }
  return paths;
}

bool MemoryFiles::is_folder(std::string_view path) const {
  const auto tidy = tidy_path(path);
  if (!tidy) return false;
  const std::string prefix = folder_prefix(*tidy);
  const auto at = files_.lower_bound(prefix);
  return prefix.empty() || (at != files_.end() && at->first.starts_with(prefix));
}

bool MemoryFiles::is_file(std::string_view path) const {
  const auto tidy = tidy_path(path);
  return tidy && files_.contains(*tidy);
}

bool MemoryFiles::write(std::string_view path, std::string_view bytes) {
  const auto tidy = tidy_path(path);
  if (!tidy || tidy->empty() || path.ends_with('/') || is_folder(*tidy)) return false;
  files_.insert_or_assign(*tidy, std::string(bytes));
  return true;
}

} // namespace benchlore
