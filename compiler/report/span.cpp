// Spans to lines and columns: the starts of lines are found once per file, and a place by binary search.
#include "report/span.h"

#include "base/text.h"

#include <algorithm>

namespace benchlore {

namespace {

std::vector<std::uint32_t> starts_of_lines(const std::string& text) {
  std::vector<std::uint32_t> starts{0};
  for (std::size_t at = text.find('\n'); at != std::string::npos; at = text.find('\n', at + 1)) {
    starts.push_back(static_cast<std::uint32_t>(at + 1));
  }
  return starts;
}

std::size_t line_at(const std::vector<std::uint32_t>& starts, std::uint32_t byte) {
  return static_cast<std::size_t>(std::upper_bound(starts.begin(), starts.end(), byte) - starts.begin()) - 1;
}

std::uint32_t column_at(const std::string& text, std::uint32_t start, std::uint32_t byte) {
  return static_cast<std::uint32_t>(code_points(std::string_view(text).substr(start, byte - start)) + 1);
}

const std::string nothing;

} // namespace

FileId Sources::add(std::string path, std::string text) {
  auto starts = starts_of_lines(text);
  files_.push_back({std::move(path), std::move(text), std::move(starts)});
  return FileId{static_cast<std::uint32_t>(files_.size() - 1)};
}

const std::string& Sources::path(FileId file) const {
  return file.index < files_.size() ? files_[file.index].path : nothing;
}

const std::string& Sources::text(FileId file) const {
  return file.index < files_.size() ? files_[file.index].text : nothing;
}

std::string_view Sources::text(Span span) const {
  const std::string_view whole = text(span.file);
  const std::size_t begin = std::min<std::size_t>(span.begin, whole.size());
  const std::size_t end = std::clamp<std::size_t>(span.end, begin, whole.size());
  return whole.substr(begin, end - begin);
}

Place Sources::place(Span span) const {
  if (span.file.index >= files_.size()) return {};
  const File& file = files_[span.file.index];
  const auto size = static_cast<std::uint32_t>(file.text.size());
  const std::uint32_t begin = std::min(span.begin, size);
  const std::uint32_t end = std::clamp(span.end, begin, size);
  const std::size_t line = line_at(file.line_starts, begin), end_line = line_at(file.line_starts, end);
  return {file.path, static_cast<std::uint32_t>(line + 1), column_at(file.text, file.line_starts[line], begin),
          static_cast<std::uint32_t>(end_line + 1), column_at(file.text, file.line_starts[end_line], end)};
}

std::string_view Sources::line_of(Span span) const {
  if (span.file.index >= files_.size()) return {};
  const File& file = files_[span.file.index];
  const std::uint32_t begin = std::min(span.begin, static_cast<std::uint32_t>(file.text.size()));
  const std::uint32_t start = file.line_starts[line_at(file.line_starts, begin)];
  std::string_view line = std::string_view(file.text).substr(start);
  line = line.substr(0, line.find('\n'));
  if (line.ends_with('\r')) line.remove_suffix(1);
  return line;
}

} // namespace benchlore
