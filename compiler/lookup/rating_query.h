// `capacitance:10uF..47uF`: a filter by a rating's value.
#pragma once

#include "emit/index/index_format.h"

#include <optional>
#include <string>
#include <string_view>
#include <xapian.h>

namespace benchlore {

// A rating's range in any of the units that it is stated in, or its word. Nothing, with the reason, when the text is
// neither.
std::optional<Xapian::Query> rating_query(std::string_view rating, std::string_view text, const RatingSlots& slots,
                                          std::string& error);

} // namespace benchlore
