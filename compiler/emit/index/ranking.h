// The numbers of the ranking, for the index, the search and the browser's search alike.
#pragma once

namespace benchlore {

// The score of a note is the sum over the clauses of the query of the best of their terms' weights:
//
//   weight(term) = idf * (k1 + 1) * f / (k1 * (1 - b + b * max(length / mean_length, shortest)) + f)
//   idf          = log(x < 2 ? x / 2 + 1 : x),  x = (notes - with + 0.5) / (with + 0.5)
//
// f is how often the term counts in the note, length the sum of f over all terms of the note, `with` the number of
// notes that have the term. This is Xapian's BM25Weight(k1, 0, 1, b, shortest). Equal scores: by id.
//
// k1, b and the weight of the title were measured on three public test collections with judged answers: title words
// counted two or three times with k1 1.2 to 1.5 and b 0.75 beat the library's defaults (k1 1, b 0.5, no weight) by
// 3 to 9 % of nDCG@10; lower-casing the query before stemming gave another 0.06 on abstracts from electronics.
struct Ranking {
  double k1 = 1.2;
  double b = 0.75;
  double shortest = 0.5;
  unsigned title = 3;  // a word of the title counts so often
  unsigned name = 3;   // of markings, aliases and cross-reference numbers
  unsigned said = 2;   // of what people say for a symptom
  unsigned text = 1;   // of anything else
  double lesser = 0.5; // factor of synonyms, bases and the parts of a joined type number in a query
};
inline constexpr Ranking ranking;

} // namespace benchlore
