// Publishing a folder whole: it is written beside the old one and takes its place in one step, or not at all.
#pragma once

#include <optional>
#include <string>

namespace benchlore {

// A folder being written. Removed again unless published.
class Staging {
public:
  // Prepares a folder beside `target`. Refused, with a sentence in `error`, when the target exists, is not empty and
  // was not written by this program, or when the place beside it cannot be written.
  static std::optional<Staging> open(const std::string& target, std::string& error);
  Staging(Staging&& other) noexcept;
  Staging& operator=(Staging&&) = delete;
  ~Staging();

  const std::string& folder() const { return folder_; }
  // Exchanges the folders; the old one is removed. False, with a sentence, when that failed; the old one stays then.
  bool publish(std::string& error);

private:
  Staging(std::string target, std::string folder) : target_(std::move(target)), folder_(std::move(folder)) {}
  std::string target_;
  std::string folder_;
};

// Makes a folder and its parents; false when that failed.
bool make_folder(const std::string& path);

// The folder of the running program, without a stroke at the end; empty when unknown.
std::string program_folder();

} // namespace benchlore
