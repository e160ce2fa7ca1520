// Hands the terms of a note to Xapian.
#include "emit/index/document.h"

#include <unordered_set>

namespace benchlore {
namespace {

class DocumentSink : public TermSink {
public:
  explicit DocumentSink(SpellingCounts& spellings) : spellings_(spellings) {}

  void word(const std::string& term, std::uint32_t place, unsigned weight) override {
    document.add_posting(term, place, weight);
  }
  void extra(const std::string& term, unsigned weight) override { document.add_term(term, weight); }
  void filter(const std::string& term) override { document.add_boolean_term(term); }
  void value(std::uint32_t slot, double si) override { document.add_value(slot, Xapian::sortable_serialise(si)); }
  void spelling(const std::string& word) override {
    if (seen_.insert(word).second) ++spellings_[word];
  }

  Xapian::Document document;

private:
  SpellingCounts& spellings_;
  std::unordered_set<std::string> seen_;
};

} // namespace

std::string id_term(std::string_view id) { return filter_term("id", id); }

Xapian::Document make_document(const TermSource& source, NoteId note, SpellingCounts& spellings) {
  DocumentSink sink(spellings);
  note_terms(source, note, sink);
  sink.document.set_data(to_lines(stored_note(source.shop.note(note))));
  return sink.document;
}

} // namespace benchlore
