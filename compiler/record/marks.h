// libyaml counts in characters, spans in bytes: a table from the one to the other for one region of a file.
#pragma once

#include "report/span.h"

#include <algorithm>
#include <vector>
#include <yaml.h>

namespace benchlore {

class Marks {
public:
  Marks(const Sources& sources, Span region)
      : file_(region.file), begin_(region.begin), text_(sources.text(region.file)) {
    for (std::uint32_t at = region.begin; at < region.end; ++at) {
      if ((static_cast<unsigned char>(text_[at]) & 0xC0) != 0x80) bytes_.push_back(at);
    }
    bytes_.push_back(region.end);
  }

  std::uint32_t byte(const yaml_mark_t& mark) const { return bytes_[std::min(mark.index, bytes_.size() - 1)]; }
  std::uint32_t begin() const { return begin_; }
  std::uint32_t end() const { return bytes_.back(); }

  Span span(const yaml_mark_t& from, const yaml_mark_t& to) const { return {file_, byte(from), byte(to)}; }

  // The one character at a mark; at the end of a line nothing is marked.
  Span character(const yaml_mark_t& mark) const {
    const std::uint32_t from = byte(mark);
    const bool ends = from >= end() || text_[from] == '\n' || text_[from] == '\r';
    return {file_, from, ends ? from : bytes_[std::min(mark.index + 1, bytes_.size() - 1)]};
  }

  // From a mark up to the next space, comma or bracket: an anchor, a tag, an alias.
  Span word(const yaml_mark_t& mark) const {
    const std::uint32_t from = byte(mark);
    const std::size_t to = std::min<std::size_t>(text_.find_first_of(" \t\r\n,[]{}", from), end());
    return {file_, from, static_cast<std::uint32_t>(to)};
  }

  // From a mark to the end of its line.
  Span rest_of_line(const yaml_mark_t& mark) const {
    const std::uint32_t from = byte(mark);
    const std::size_t to = std::min<std::size_t>(text_.find_first_of("\r\n", from), end());
    return {file_, from, static_cast<std::uint32_t>(to)};
  }

  std::string_view text(Span span) const { return text_.substr(span.begin, span.end - span.begin); }
  char at(std::uint32_t byte) const { return byte < end() ? text_[byte] : '\0'; }

private:
  FileId file_;
  std::uint32_t begin_;
  std::string_view text_;
  std::vector<std::uint32_t> bytes_; // of each character, and the end
};

} // namespace benchlore
