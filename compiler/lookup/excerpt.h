// The piece of a note's text that shows best why it was found.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace benchlore {

// About `length` bytes of the text, whole words, where most different terms stand; with ` … ` where it is cut, and the
// marks around each word that has one of the terms. The text itself is not escaped.
std::string excerpt(std::string_view text, const std::vector<std::string>& terms, std::size_t length,
                    std::string_view mark_begin, std::string_view mark_end);

} // namespace benchlore
