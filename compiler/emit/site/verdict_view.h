// How a judgement looks: its mark (word, own shape and colour together), and the working that opens under it.
#pragma once

#include "emit/site/page.h"

#include <vector>

namespace benchlore {

// The marks are states of a contact: closed, closed through a block, not seen, open, arcing.
Html verdict_mark(Verdict verdict);
Html severity_mark(Severity severity);

// Ids of judgements within a page: `judged_ID_0`.
std::string judgement_anchor(const View& view, const JudgedSubstitute& judged);

// One judged substitute with conditions and, folded, every reason.
Html judged_view(const View& view, const JudgedSubstitute& judged);

// A list of reasons, each with both values, the relation that is required, the margin, why, and the source.
Html reasons_view(const View& view, const std::vector<Reason>& reasons);

// `in general`, or the position, role and stress for which it was judged.
Html where_view(const View& view, const JudgedSubstitute& judged);

// Title of a rating, of this class if it is one of its own, else of any class or of a stress; its name when it has
// none.
std::string rating_title(const Schema& schema, std::string_view name, std::string_view class_name = {});
std::string stress_title(const Schema& schema, std::string_view name);
std::string role_title(const Schema& schema, std::string_view name);

} // namespace benchlore
