// The stem of an English word: the Snowball English stemmer (algorithm: snowballstem.org), the same as
// compiler/base/stem.cpp. `Y` stands for a consonant y.
(function (root) {
  "use strict";
  const wholeWords = new Map(Object.entries({
    skis: "ski", skies: "sky", dying: "die", lying: "lie", tying: "tie", idly: "idl", gently: "gentl", ugly: "ugli",
    early: "earli", only: "onli", singly: "singl", sky: "sky", news: "news", howe: "howe", atlas: "atlas",
    cosmos: "cosmos", bias: "bias", andes: "andes",
  }));
  const staysAfterPlural = new Set(["inning", "outing", "canning", "herring", "earring", "proceed", "exceed", "succeed"]);
  const doubles = new Set(["bb", "dd", "ff", "gg", "mm", "nn", "pp", "rr", "tt"]);
  // Longest endings first: the first that fits is the one that counts.
  const secondStep = [["ization", "ize"], ["ational", "ate"], ["fulness", "ful"], ["ousness", "ous"],
    ["iveness", "ive"], ["tional", "tion"], ["biliti", "ble"], ["lessli", "less"], ["entli", "ent"], ["ation", "ate"],
    ["alism", "al"], ["aliti", "al"], ["ousli", "ous"], ["iviti", "ive"], ["fulli", "ful"], ["enci", "ence"],
    ["anci", "ance"], ["abli", "able"], ["izer", "ize"], ["ator", "ate"], ["alli", "al"], ["bli", "ble"],
    ["ogi", "og"], ["li", ""]];
  const thirdStep = [["ational", "ate"], ["tional", "tion"], ["alize", "al"], ["icate", "ic"], ["iciti", "ic"],
    ["ative", ""], ["ical", "ic"], ["ness", ""], ["ful", ""]];
  const fourthStep = ["ement", "ance", "ence", "able", "ible", "ment", "ant", "ent", "ism", "ate", "iti", "ous",
    "ive", "ize", "ion", "al", "er", "ic"];

  const vowel = (c) => c !== "" && c !== undefined && "aeiouy".includes(c);
  const hasVowel = (text) => /[aeiouy]/.test(text);

  function afterVowelGroup(text, from) {
    for (let i = from; i + 1 < text.length; i++) if (vowel(text[i]) && !vowel(text[i + 1])) return i + 2;
    return text.length;
  }

  function endsShort(text) {
    const n = text.length;
    if (n === 2) return vowel(text[0]) && !vowel(text[1]);
    if (n < 3) return false;
    return !vowel(text[n - 3]) && vowel(text[n - 2]) && !vowel(text[n - 1]) && !"wxY".includes(text[n - 1]);
  }

  function markConsonantY(text) {
    const letters = text.split("");
    for (let i = 0; i < letters.length; i++)
      if (letters[i] === "y" && (i === 0 || vowel(letters[i - 1]))) letters[i] = "Y";
    return letters.join("");
  }

  function dropPlural(text) {
    if (text.endsWith("sses")) return text.slice(0, -2);
    if (text.endsWith("ied") || text.endsWith("ies")) return text.slice(0, text.length > 4 ? -2 : -1);
    if (text.endsWith("us") || text.endsWith("ss") || !text.endsWith("s")) return text;
    return hasVowel(text.slice(0, -2)) ? text.slice(0, -1) : text;
  }

  function dropVerbEnding(text, region1) {
    const ending = ["eedly", "ingly", "edly", "eed", "ing", "ed"].find((e) => text.endsWith(e));
    if (!ending) return text;
    const left = text.slice(0, text.length - ending.length);
    if (ending.startsWith("eed")) return left.length >= region1 ? left + "ee" : text;
    if (!hasVowel(left)) return text;
    if (/(at|bl|iz)$/.test(left)) return left + "e";
    if (doubles.has(left.slice(-2))) return left.slice(0, -1);
    return region1 >= left.length && endsShort(left) ? left + "e" : left;
  }

  function allowed(text, ending, left, region2) {
    const before = left > 0 ? text[left - 1] : "";
    if (ending === "ogi") return before === "l";
    if (ending === "li") return before !== "" && "cdeghkmnrt".includes(before);
    if (ending === "ative") return left >= region2;
    if (ending === "ion") return before === "s" || before === "t";
    return true;
  }

  function swapEnding(text, swaps, region1, region2) {
    const swap = swaps.find((s) => text.endsWith(s[0]));
    if (!swap) return text;
    const left = text.length - swap[0].length;
    return left >= region1 && allowed(text, swap[0], left, region2) ? text.slice(0, left) + swap[1] : text;
  }

  function dropFinalLetter(text, region1, region2) {
    const left = text.length - 1;
    const shorter = text.slice(0, -1);
    if (text.endsWith("e")) return left >= region2 || (left >= region1 && !endsShort(shorter)) ? shorter : text;
    return text.endsWith("ll") && left >= region2 ? shorter : text;
  }

  function stem(word) {
    if (word.length <= 2 || (word[0] >= "0" && word[0] <= "9")) return word;
    let text = word[0] === "'" ? word.slice(1) : word;
    if (wholeWords.has(text)) return wholeWords.get(text);
    if (text.length < 3) return text;
    text = markConsonantY(text);
    const start = /^(gener|commun|arsen)/.exec(text);
    const region1 = start ? start[1].length : afterVowelGroup(text, 0);
    const region2 = afterVowelGroup(text, region1);
    text = dropPlural(text.replace(/('s'|'s|')$/, ""));
    if (staysAfterPlural.has(text)) return text;
    text = dropVerbEnding(text, region1);
    if (text.length > 2 && /[^aeiouy][yY]$/.test(text)) text = text.slice(0, -1) + "i";
    text = swapEnding(text, secondStep, region1, region2);
    text = swapEnding(text, thirdStep, region1, region2);
    const drop = fourthStep.find((e) => text.endsWith(e));
    if (drop && text.length - drop.length >= region2 && allowed(text, drop, text.length - drop.length, region2))
      text = text.slice(0, text.length - drop.length);
    return dropFinalLetter(text, region1, region2).replace(/Y/g, "y");
  }

  root.benchloreStem = stem;
})(typeof globalThis !== "undefined" ? globalThis : this);
