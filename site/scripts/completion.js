// Words that are in the notes: those that begin with what is typed, and those that are one slip of a letter away.
(function (root) {
  "use strict";
  const shards = root.benchloreShards;
  const unpacked = new Map();

  async function wordsOf(number) {
    if (!unpacked.has(number)) {
      const read = shards.reader(await shards.load("words/" + number));
      const words = [];
      while (read.more()) {
        const word = read.letters(read.number());
        words.push([word, read.number()]);
      }
      unpacked.set(number, words);
    }
    return unpacked.get(number);
  }

  const usualFirst = (a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1);

  async function beginning(start, most) {
    const meta = await shards.meta();
    const found = [];
    for (let i = shards.shardOf(meta.words, start); i < meta.words.length; i++) {
      if (meta.words[i] > start && !meta.words[i].startsWith(start)) break;
      for (const word of await wordsOf(i)) if (word[0].startsWith(start)) found.push(word);
    }
    return found.sort(usualFirst).slice(0, most).map((word) => word[0]);
  }

  // True when one letter added, dropped, changed or swapped makes one of the other.
  function oneSlip(a, b) {
    if (a.length > b.length) [a, b] = [b, a];
    if (b.length - a.length > 1) return false;
    let i = 0;
    while (i < a.length && a[i] === b[i]) i++;
    if (a.length < b.length) return a.slice(i) === b.slice(i + 1);
    if (a.slice(i + 1) === b.slice(i + 1)) return i < a.length;
    return a[i] === b[i + 1] && a[i + 1] === b[i] && a.slice(i + 2) === b.slice(i + 2);
  }

  async function near(word, most) {
    const meta = await shards.meta();
    const found = [];
    for (let i = 0; i < meta.words.length; i++)
      for (const known of await wordsOf(i)) if (oneSlip(word, known[0])) found.push(known);
    return found.sort(usualFirst).slice(0, most).map((known) => known[0]);
  }

  // Offers whole words under a search box while the last one is being typed.
  function attach(input) {
    const list = document.createElement("datalist");
    list.id = input.id + "_words";
    input.after(list);
    input.setAttribute("list", list.id);
    let turn = 0;
    input.addEventListener("input", async () => {
      const mine = ++turn;
      const typed = /^(.*?)([a-z0-9.]+)$/i.exec(input.value);
      const words = typed && typed[2].length > 1 ? await beginning(typed[2].toLowerCase(), 8) : [];
      if (mine !== turn) return;
      list.replaceChildren(...words.map((word) => {
        const option = document.createElement("option");
        option.value = typed[1] + word;
        return option;
      }));
    });
  }

  root.benchloreCompletion = { beginning, near };
  const box = document.getElementById("ask_q");
  if (box) attach(box);
})(globalThis);
