// A note as a Xapian document.
#pragma once

#include "emit/index/note_terms.h"

#include <map>
#include <string>
#include <xapian.h>

namespace benchlore {

using SpellingCounts = std::map<std::string, Xapian::termcount>;

// Counts the words that are spelt as they stand into `spellings`, each once for the note.
Xapian::Document make_document(const TermSource& source, NoteId note, SpellingCounts& spellings);

// The term that names a note's document.
std::string id_term(std::string_view id);

} // namespace benchlore
