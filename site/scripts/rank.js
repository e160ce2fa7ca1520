// Finds and ranks notes as the index does (compiler/emit/index/ranking.h): BM25 over clauses, one for each word of the
// query; a clause counts the best of its terms.
(function (root) {
  "use strict";
  const shards = root.benchloreShards;
  const words = root.benchloreWords;
  const completion = root.benchloreCompletion;
  const mostCompleted = 12;
  const mostNear = 5;
  let lengths = null;

  function readLengths(meta) {
    if (lengths) return lengths;
    const read = shards.reader(meta.lengths);
    lengths = new Uint32Array(meta.count + 1);
    for (let i = 1; i <= meta.count; i++) lengths[i] = read.number();
    return lengths;
  }

  // A query is a tree: a term, or {best | any | all: [queries]}, or {lesser: query}; as compiler/lookup/word_query.cpp
  // builds it.
  const together = (terms, how) => (terms.length === 1 ? terms[0] : { [how]: terms });

  function synonymGroups(meta) {
    if (!meta.groups)
      meta.groups = meta.synonyms
        .map((group) => group.map((said) => words.tokens(said).filter((t) => t.sort === "word" || t.sort === "part")
          .map((t) => words.term(t.text))).filter((member) => member.length > 0))
        .filter((group) => group.length > 1);
    return meta.groups;
  }

  const same = (a, b) => a.length === b.length && a.every((term, i) => term === b[i]);
  const contains = (list, part) => list.some((_, i) => same(list.slice(i, i + part.length), part));
  const synonym = (member) => ({ lesser: together(member, "all") });

  function wordClause(meta, term, word, choices) {
    const out = [term, ...choices];
    for (const group of synonymGroups(meta))
      if (group.some((member) => same(member, [term])))
        for (const member of group) if (!same(member, [term])) out.push(synonym(member));
    return { best: out, word };
  }

  function chunkClauses(meta, tokens, standing) {
    const parts = tokens.filter((t) => t.sort === "word" || t.sort === "part");
    const terms = parts.map((t) => words.term(t.text));
    const joined = tokens.filter((t) => t.sort === "joined");
    const choices = joined.map((t) => words.term(t.text));
    for (const token of tokens) if (token.sort === "base") choices.push({ lesser: words.term(token.text) });
    standing.push(...terms);
    if (joined.length === 0) return parts.map((t, i) => wordClause(meta, terms[i], t.text, choices));
    if (terms.length > 0) choices.push({ lesser: together(terms, "any") });
    return [{ best: choices, word: joined[0].text }];
  }

  function clauses(meta, query) {
    const chunks = new Map();
    for (const token of words.tokens(query)) chunks.set(token.chunk, [...(chunks.get(token.chunk) || []), token]);
    const standing = [];
    const out = [...chunks.values()].flatMap((tokens) => chunkClauses(meta, tokens, standing));
    for (const group of synonymGroups(meta))
      for (const member of group)
        if (member.length > 1 && contains(standing, member))
          out.push({ best: group.filter((other) => other !== member).map(synonym), word: "" });
    const name = words.name(query);
    if (name !== "" && standing.length > 1) out.push({ best: [name], word: "" });
    return out;
  }

  async function completeLast(list, query) {
    const typed = /([a-z0-9.]+)$/i.exec(query);
    if (!typed || typed[1].length < 2) return;
    const start = typed[1].toLowerCase();
    const completed = await completion.beginning(start, mostCompleted);
    const choices = completed.map((word) => ({ lesser: words.term(word) }));
    const last = list.find((clause) => clause.word === start);
    if (last) last.best.push(...choices);
    else if (choices.length > 0) list.push({ best: choices, word: start });
  }

  async function termScores(meta, term) {
    const scores = new Map();
    const postings = await shards.entry("terms", term);
    if (!postings) return scores;
    const read = shards.reader(postings);
    const having = read.number();
    let idf = (meta.count - having + 0.5) / (having + 0.5);
    idf = Math.log(idf < 2 ? idf / 2 + 1 : idf);
    const mean = meta.sum / meta.count;
    for (let i = 0, note = 0; i < having; i++) {
      const step = read.number();
      note += step >> 1;
      const f = step & 1 ? read.number() : 1;
      const length = Math.max(lengths[note] / mean, meta.shortest);
      scores.set(note, (idf * (meta.k1 + 1) * f) / (meta.k1 * (1 - meta.b + meta.b * length) + f));
    }
    return scores;
  }

  function combined(lists, how) {
    const scores = new Map();
    for (const list of lists)
      for (const [note, score] of list) {
        const before = scores.get(note) || 0;
        scores.set(note, how === "best" ? Math.max(before, score) : before + score);
      }
    if (how === "all")
      for (const note of [...scores.keys()]) if (!lists.every((list) => list.has(note))) scores.delete(note);
    return scores;
  }

  async function evaluate(meta, query) {
    if (typeof query === "string") return termScores(meta, query);
    if (query.lesser) {
      const scores = await evaluate(meta, query.lesser);
      return new Map([...scores].map(([note, score]) => [note, score * meta.lesser]));
    }
    const how = query.best ? "best" : query.all ? "all" : "any";
    return combined(await Promise.all(query[how].map((part) => evaluate(meta, part))), how);
  }

  // A clause that finds nothing is read as the words that are one slip away from it. Not so a type number: one figure
  // aside is another part.
  async function clauseScores(meta, clause, slips) {
    const scores = await evaluate(meta, clause);
    if (scores.size > 0 || !/^[a-z]{4,}$/.test(clause.word)) return scores;
    const near = (await completion.near(clause.word, mostNear)).filter((word) => !/[0-9]/.test(word));
    slips.push(...near);
    return near.length > 0 ? evaluate(meta, { best: near.map(words.term) }) : scores;
  }

  // {hits: [[note, score], …] best first, counts by kind, slips: words read in place of misspelt ones}.
  async function rank(query, options) {
    const meta = await shards.meta();
    readLengths(meta);
    const list = clauses(meta, query);
    if (options.unfinished) await completeLast(list, query);
    const slips = [];
    const total = new Map();
    for (const clause of list)
      for (const [note, score] of await clauseScores(meta, clause, slips)) total.set(note, (total.get(note) || 0) + score);
    const kinds = new Map();
    const kindOf = (note) => meta.kinds[shards.reader(meta.kind_of.slice(note - 1)).number()][0];
    for (const note of total.keys()) kinds.set(kindOf(note), (kinds.get(kindOf(note)) || 0) + 1);
    const hits = [...total].filter(([note]) => !options.kind || kindOf(note) === options.kind);
    hits.sort((a, b) => b[1] - a[1] || a[0] - b[0]);
    return { hits, kinds, slips, meta };
  }

  root.benchloreRank = { rank };
})(globalThis);
