// The steps of reading a record that stand beside the tree builder: the raw text before, the fault after.
#pragma once

#include "record/marks.h"
#include "record/record.h"

namespace benchlore {

// Size, encoding and characters. Reports the first fault; true when there is none.
bool check_text(const Sources& sources, Span region, Report& report, const RecordLimits& limits);

// Says in plain words what libyaml stumbled over.
void report_fault(const yaml_parser_t& parser, const Marks& marks, Report& report);

} // namespace benchlore
