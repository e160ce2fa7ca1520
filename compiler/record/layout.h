// What YAML 1.2 forbids in the layout of a text and libyaml lets pass: each would be read differently elsewhere.
#pragma once

#include "record/marks.h"
#include "report/message.h"

namespace benchlore {

class Layout {
public:
  Layout(const Marks& marks, Span region, Report& report) : marks_(marks), file_(region.file), report_(report) {}

  // How deep the text stands: inside how many brackets, and behind which column of a block.
  struct Level {
    std::size_t flow = 0;
    std::ptrdiff_t indent = -1;
  };
  Level enter(bool flow, std::size_t column);
  void leave(Level outer) { level_ = outer; }

  // Looks through what stands between two events: blanks, comments and signs. False after a report.
  bool check_gap(std::uint32_t from, std::uint32_t to);
  // Looks through a scalar as written.
  bool check_scalar(Span span, yaml_scalar_style_t style);

private:
  bool check_start_of_line(std::uint32_t start);
  bool check_lines(Span span);
  bool check_block_head(Span span);
  bool refuse_comment(std::uint32_t at);
  bool is_blank(std::uint32_t at) const;

  const Marks& marks_;
  FileId file_;
  Report& report_;
  Level level_;
};

} // namespace benchlore
