// The look-up of substitutes: a name leads to components, and each of them shows what was judged for it.
(function (root) {
  "use strict";
  const shards = root.benchloreShards;
  const form = document.getElementById("part_form");
  const box = document.getElementById("ask_part");
  const state = document.getElementById("part_state");
  const answers = document.getElementById("part_answers");
  const mostParts = 12;
  // Only a conditional verdict may sound like a yes with conditions.
  const conditionsTitle = {
    unsafe: "To note, though it changes nothing:", unfit: "To note, though it changes nothing:",
    unknown: "Find out first:", conditional: "Only if:", suitable: "To note:",
  };
  let turn = 0;

  function element(name, className, text) {
    const out = document.createElement(name);
    if (className) out.className = className;
    if (text !== undefined) out.textContent = text;
    return out;
  }

  function link(page, text) {
    const out = element("a", "", text);
    out.href = shards.base + page;
    return out;
  }

  function mark(verdict) {
    const drawn = document.querySelector('#the_marks [data-verdict="' + verdict + '"] .mark');
    return drawn ? drawn.cloneNode(true) : element("strong", "", verdict);
  }

  // Words in `backticks` as code.
  function withCode(out, sentence) {
    sentence.split("`").forEach((piece, i) => out.append(i % 2 === 1 ? element("code", "", piece) : piece));
    return out;
  }

  function judgedItem([title, page, verdict, where, deciding, conditions, stock]) {
    const item = element("article", "judged edge-" + verdict);
    const heading = element("h3");
    heading.append(mark(verdict), " ", link(page, title));
    item.append(heading, element("p", "where", where + (stock > 0 ? "; " + stock + " in stock" : "")));
    if (deciding.length > 0) item.append(element("p", "", "Decided by " + deciding.join(", ")));
    if (conditions.length > 0) {
      item.append(element("p", "ask", conditionsTitle[verdict]));
      const list = element("ul");
      for (const condition of conditions) list.append(withCode(element("li"), condition));
      item.append(list);
    }
    return item;
  }

  function partSection(part) {
    const out = element("section");
    const heading = element("h2", "trace");
    heading.append(link(part.page, part.title));
    out.append(heading);
    if (part.stock > 0) out.append(element("p", "", part.stock + " of the part itself in stock"));
    out.append(...part.judged.map(judgedItem));
    if (part.judged.length === 0) out.append(element("p", "", "No substitute is declared for it."));
    return out;
  }

  // Components that bear the name; when there is none, those with a name that begins so.
  async function namedBy(key) {
    const exact = await shards.entry("names", key);
    if (exact) return exact;
    const meta = await shards.meta();
    const found = new Set();
    for (let i = shards.shardOf(meta.names, key); i < meta.names.length && found.size < mostParts; i++) {
      if (meta.names[i] > key && !meta.names[i].startsWith(key)) break;
      const shard = await shards.load("names/" + i);
      for (const name of Object.keys(shard)) if (name.startsWith(key)) shard[name].forEach((n) => found.add(n));
    }
    return [...found].slice(0, mostParts);
  }

  async function show() {
    const mine = ++turn;
    const key = root.benchloreWords.typeKey(box.value.trim());
    history.replaceState(null, "", "#part=" + encodeURIComponent(box.value));
    try {
      const numbers = key.length > 1 ? await namedBy(key) : [];
      const parts = await Promise.all(numbers.map((n) => shards.entry("parts", shards.padded(n))));
      if (mine !== turn) return;
      answers.replaceChildren(...parts.map(partSection));
      const count = parts.length === 1 ? "One component" : parts.length + " components";
      state.textContent = key.length < 2 ? "" : parts.length > 0 ? count : "No component bears this name.";
    } catch (error) {
      state.textContent = "The data could not be read (" + error.message + "). Was the whole site copied?";
    }
  }

  let typing = 0;
  box.addEventListener("input", () => {
    clearTimeout(typing);
    typing = setTimeout(show, 150);
  });
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    clearTimeout(typing);
    show();
  });
  function fromAddress() {
    const hash = new URLSearchParams(location.hash.slice(1));
    box.value = hash.get("part") || new URLSearchParams(location.search).get("part") || "";
    if (box.value) show();
    else box.focus();
  }
  window.addEventListener("hashchange", fromAddress);
  fromAddress();
})(globalThis);
