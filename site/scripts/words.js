// How text becomes search words: the same policy as compiler/emit/index/search_terms.h; tests/tables/search_tokens.txt
// holds both to it.
(function (root) {
  "use strict";
  const stopWords = new Set(("a an are as be by for from had has have is it its of that the this to was").split(" "));
  const units = new Set(("a ah b c cm db f gb ghz h hz j k kb kg khz kohm kv kw m ma mah mb mf mh mhz min mj mm mohm ms " +
    "mv mw na nf nh ns ohm pf ppm rpm s ua uf uh us uv v va w").split(" "));
  // U+00C0..U+017F, one after the other; `-` is no letter.
  const latin = ("a a a a a a ae c e e e e i i i i d n o o o o o - o u u u u y th ss " +
    "a a a a a a ae c e e e e i i i i d n o o o o o - o u u u u y th y " +
    "a a a a a a c c c c c c c c d d d d e e e e e e e e e e g g g g " +
    "g g g g h h h h i i i i i i i i i i ij ij j j k k k l l l l l l l " +
    "l l l n n n n n n n n n o o o o o o oe oe r r r r r r s s s s s s " +
    "s s t t t t t t u u u u u u u u u u u u w w y y y z z z z z z s").split(" ");
  const longest = 60;
  const encoder = new TextEncoder();
  const bytes = (text) => encoder.encode(text).length;
  const between = (point, first, last) => point >= first && point <= last;

  function foldAscii(char) {
    if (/[a-zA-Z0-9]/.test(char)) return ["word", char.toLowerCase()];
    if (char === "'") return ["nothing"];
    if (char === "-" || char === "/" || char === "_") return ["joiner"];
    if (char === ".") return ["point"];
    return [char === " " ? "space" : "other"];
  }

  function lowerLetter(point) {
    if (between(point, 0x391, 0x3a9) || between(point, 0x410, 0x42f)) return point + 0x20;
    return between(point, 0x400, 0x40f) ? point + 0x50 : point;
  }

  function otherLetter(point) {
    return between(point, 0x180, 0x1fff) || between(point, 0x3041, 0xd7ff) || between(point, 0xf900, 0xfaff) ||
      point >= 0x20000;
  }

  function fold(char) {
    const point = char.codePointAt(0);
    if (point < 0x80) return foldAscii(char);
    if (point === 0xa0 || point === 0x2009 || point === 0x202f) return ["space"];
    if (point === 0xad || between(point, 0x300, 0x36f) || point === 0x2019) return ["nothing"];
    if (point === 0x2010 || point === 0x2011) return ["joiner"];
    if (point === 0xb5 || point === 0x3bc) return ["word", "u"];
    if (point === 0x3a9 || point === 0x2126) return ["word", "ohm"];
    if (between(point, 0xc0, 0x17f)) return latin[point - 0xc0] === "-" ? ["other"] : ["word", latin[point - 0xc0]];
    return otherLetter(point) ? ["word", String.fromCodePoint(lowerLetter(point))] : ["other"];
  }

  // Words with what stands before each: `none`, `blank` or `join`.
  function readWords(text) {
    const chars = Array.from(text);
    const words = [];
    let word = null, full = false, link = "none";
    const finish = () => {
      if (word) words.push(word);
      word = null;
      full = false;
    };
    chars.forEach((char, i) => {
      let [sort, out] = fold(char);
      if (sort === "nothing") return;
      const insideNumber = sort === "point" && word && /[0-9]$/.test(word.text) && /[0-9]/.test(chars[i + 1] || "");
      if (sort === "word" || insideNumber) {
        if (!word) word = { text: "", before: link };
        if (insideNumber) out = ".";
        full = full || bytes(word.text) + bytes(out) > longest;
        if (!full) word.text += out;
        return;
      }
      const afterWord = word !== null;
      finish();
      link = !afterWord || sort === "other" ? "none" : sort === "space" ? "blank" : "join";
    });
    finish();
    return words;
  }

  function joinUnits(words) {
    const kept = [];
    for (const word of words) {
      const last = kept[kept.length - 1];
      if (last && word.before === "blank" && /^[0-9.]+$/.test(last.text) && units.has(word.text)) last.text += word.text;
      else kept.push(word);
    }
    return kept;
  }

  const hasDigit = (text) => /[0-9]/.test(text);
  const hasLetter = (text) => /[^0-9.]/.test(text);

  function isValue(text) {
    const unit = text.search(/[^0-9.]/);
    return unit !== 0 && unit !== -1 && units.has(text.slice(unit));
  }

  function withoutSuffix(text) {
    const found = /^(.*[0-9])([^0-9]+)$/s.exec(text);
    return found && bytes(found[2]) <= 3 ? found[1] : "";
  }

  function goodBase(base) {
    const digits = (base.match(/[0-9]/g) || []).length;
    return digits >= 4 || (digits >= 1 && bytes(base) >= 3 && hasLetter(base));
  }

  function baseOf(text, lastWord) {
    const letters = bytes(lastWord) <= 3 && /^[^0-9.]*$/.test(lastWord) && lastWord.length < text.length;
    const base = letters ? text.slice(0, text.length - lastWord.length) : withoutSuffix(text);
    return goodBase(base) ? base : "";
  }

  function joinKey(words) {
    if (words.length < 2 || words.length > 4) return "";
    const joined = words.map((w) => w.text).join("");
    return hasDigit(joined) && hasLetter(joined) && bytes(joined) <= longest ? joined : "";
  }

  function compound(words, chunk, tokens) {
    const joined = joinKey(words);
    const whole = joined === "" && words.length === 1 ? words[0].text : joined;
    const values = words.every((word) => isValue(word.text));
    const base = whole === "" || values ? "" : baseOf(whole, words[words.length - 1].text);
    const sort = words.length === 1 ? "word" : "part";
    for (const word of words)
      if (!stopWords.has(word.text) && word.text !== "") tokens.push({ text: word.text, sort, chunk });
    if (joined !== "") tokens.push({ text: joined, sort: "joined", chunk });
    if (base !== "") tokens.push({ text: base, sort: "base", chunk });
  }

  // Tokens of sort word, part, joined or base; those of one compound share a chunk.
  function tokens(text) {
    const words = joinUnits(readWords(text));
    const out = [];
    let chunk = 0;
    for (let i = 0; i < words.length; chunk++) {
      let end = i + 1;
      while (end < words.length && words[end].before === "join") end++;
      compound(words.slice(i, end), chunk, out);
      i = end;
    }
    return out;
  }

  // The key of a type number or marking: letters in lower case; spaces, hyphens, dots and slashes dropped.
  const typeKey = (text) => text.replace(/[A-Z]/g, (c) => c.toLowerCase()).replace(/[ \-./]/g, "");

  // A short name as one token, blanks and all: `1N 4007` gives `1n4007`.
  function name(text) {
    const found = readWords(text);
    const key = found.map((word) => word.text).join("");
    return hasDigit(key) && hasLetter(key) && found.length <= 3 && bytes(key) <= longest ? key : "";
  }

  root.benchloreWords = {
    tokens,
    name,
    typeKey,
    term: (text) => (hasDigit(text) ? text : root.benchloreStem(text)),
  };
})(typeof globalThis !== "undefined" ? globalThis : this);
