// Where something was written: a file and a range of bytes, and how that becomes line and column.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace benchlore {

struct FileId {
  std::uint32_t index = UINT32_MAX;
  bool operator==(const FileId&) const = default;
  bool known() const { return index != UINT32_MAX; }
};

// Bytes [begin, end) of a file. A span without a file means "nowhere in the notes" (a command line, say).
struct Span {
  FileId file;
  std::uint32_t begin = 0;
  std::uint32_t end = 0;
  bool operator==(const Span&) const = default;
};

template <class T> struct Located {
  T value;
  Span span;
};

// Lines and columns count from 1; a column is a code point, not a byte.
struct Place {
  std::string path;
  std::uint32_t line = 0;
  std::uint32_t column = 0;
  std::uint32_t end_line = 0;
  std::uint32_t end_column = 0;
};

// The texts that spans point into.
class Sources {
public:
  FileId add(std::string path, std::string text);
  const std::string& path(FileId file) const;
  const std::string& text(FileId file) const;
  std::string_view text(Span span) const;
  // Bad spans are cut to the file; a span without a file has an empty path and line 0.
  Place place(Span span) const;
  // The whole line (without its end) that the span begins in.
  std::string_view line_of(Span span) const;
  std::size_t count() const { return files_.size(); }

private:
  struct File {
    std::string path;
    std::string text;
    std::vector<std::uint32_t> line_starts;
  };
  std::vector<File> files_;
};

} // namespace benchlore
