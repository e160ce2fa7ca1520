// The stem of an English word, so that `capacitors` and `capacitor` meet in the search.
#pragma once

#include <string>
#include <string_view>

namespace benchlore {

// The Snowball English stemmer (algorithm: snowballstem.org, as in libstemmer 2.2). The word is of lower-case ASCII
// letters, digits and apostrophes; a word that starts with a digit is a type number and stays as it is.
// site/scripts/stem.js is the same for the browser; tests/unit/site/stems.txt holds both to it.
std::string stem(std::string_view word);

} // namespace benchlore
