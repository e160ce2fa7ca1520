// The body of a note with its links turned to pages of the site.
#pragma once

#include "emit/site/gathered.h"
#include "emit/site/page.h"

namespace benchlore {

Html body_view(const View& view, const Gathered& gathered, const Note& note);

// The first words of the body, cut at a word, at most `most` bytes.
std::string excerpt(const Note& note, std::size_t most);

} // namespace benchlore
