// Finds and ranks notes as the index does (compiler/emit/index/ranking.h): BM25 over clauses, one for each word of the
// query; a clause counts the best of its terms.
(function (root) {
  "use strict";
  const shards = root.benchloreShards;
  const words = root.benchloreWords;
  const completion = root.benchloreCompletion;
  const mostCompleted = 12;
  let lengths = null;

  function readLengths(meta) {
    if (lengths) return lengths;
    const read = shards.reader(meta.lengths);
    lengths = new Uint32Array(meta.count + 1);
    for (let i = 1; i <= meta.count; i++) lengths[i] = read.number();
    return lengths;
  }

  function synonymsOf(meta, text) {
    const out = [];
    for (const group of meta.synonyms)
      if (group.includes(text)) for (const other of group) if (other !== text && !/\s/.test(other)) out.push(other);
    return out;
  }

  // One clause a chunk of the query: [[term, factor], …].
  function clauses(meta, query) {
    const chunks = new Map();
    for (const token of words.tokens(query)) {
      if (!chunks.has(token.chunk)) chunks.set(token.chunk, []);
      chunks.get(token.chunk).push(token);
    }
    const out = [];
    for (const tokens of chunks.values()) {
      const joined = tokens.some((t) => t.sort === "joined");
      const full = (t) => t.sort === "word" || t.sort === "joined" || (t.sort === "part" && !joined);
      if (joined || tokens.length === 1 || tokens[0].sort === "word") {
        out.push({ word: tokens[0].text, terms: tokens.map((t) => [words.term(t.text), full(t) ? 1 : meta.lesser]) });
      } else for (const t of tokens) out.push({ word: t.text, terms: [[words.term(t.text), full(t) ? 1 : meta.lesser]] });
    }
    for (const clause of out)
      for (const other of synonymsOf(meta, clause.word))
        for (const t of words.tokens(other)) clause.terms.push([words.term(t.text), meta.lesser]);
    return out;
  }

  async function completeLast(clauseList, query) {
    const last = clauseList[clauseList.length - 1];
    const typed = /([a-z0-9.]+)$/i.exec(query);
    if (!last || !typed || typed[1].length < 2) return;
    for (const word of await completion.beginning(typed[1].toLowerCase(), mostCompleted)) {
      const term = words.term(word);
      if (!last.terms.some((t) => t[0] === term)) last.terms.push([term, 0.5]);
    }
  }

  function weigh(meta, postings, factor, scores) {
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
      const weight = factor * idf * ((meta.k1 + 1) * f) / (meta.k1 * (1 - meta.b + meta.b * length) + f);
      if (weight > (scores.get(note) || 0)) scores.set(note, weight);
    }
  }

  async function clauseScores(meta, clause, slips) {
    const scores = new Map();
    const found = await Promise.all(clause.terms.map((t) => shards.entry("terms", t[0])));
    found.forEach((postings, i) => postings && weigh(meta, postings, clause.terms[i][1], scores));
    if (scores.size > 0 || clause.word.length < 4) return scores;
    for (const word of await completion.near(clause.word, 5)) {
      const postings = await shards.entry("terms", words.term(word));
      if (!postings) continue;
      slips.push(word);
      weigh(meta, postings, 1, scores);
    }
    return scores;
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
