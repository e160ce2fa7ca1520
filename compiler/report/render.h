// Messages as text for a person, as JSON, and as SARIF 2.1.0 (OASIS standard).
#pragma once

#include "report/message.h"

#include <string>

namespace benchlore {

// With the line, a mark under the narrowest thing that is wrong, labels and the way out.
std::string render_text(const Report& report, const Sources& sources, bool colour);

// One object with `format`, `version` and `findings` (rule, severity, file, line, column, message, help, related).
std::string render_json(const Report& report, const Sources& sources);

std::string render_sarif(const Report& report, const Sources& sources);

} // namespace benchlore
