// The words of a query as a query for Xapian: clauses, with bases, parts and synonyms at a lesser weight.
#pragma once

#include "emit/index/index_format.h"
#include "emit/index/search_terms.h"

#include <string>
#include <string_view>
#include <vector>
#include <xapian.h>

namespace benchlore {

// Any of the words, ranked. A clause for each compound or word: the best of
//   the joined token, or the word, in full;
//   its base, each of its parts' synonyms, and its parts together, times `ranking.lesser`.
// A synonym of several words counts where all of them stand. A synonym of several words of the query is a clause of its
// own. A short name with blanks (`1N 4007`) is a clause too.
Xapian::Query words_query(std::string_view words, const std::vector<SynonymGroup>& synonyms,
                          std::vector<std::string>& terms);

// The words in this order, one after the other.
Xapian::Query phrase_query(std::string_view words, std::vector<std::string>& terms);

} // namespace benchlore
