// The search page: what is typed goes into the address (`#q=…&kind=…`), and the address decides what is shown.
(function (root) {
  "use strict";
  const shards = root.benchloreShards;
  const form = document.getElementById("search_form");
  const box = document.getElementById("ask_q");
  const state = document.getElementById("search_state");
  const list = document.getElementById("search_hits");
  const filters = document.getElementById("search_kinds");
  const shownAtOnce = 20;
  let kind = "", turn = 0;

  function element(name, className, text) {
    const out = document.createElement(name);
    if (className) out.className = className;
    if (text !== undefined) out.textContent = text;
    return out;
  }

  async function hit(note, meta) {
    const [title, page, noteKind, excerpt] = await shards.entry("notes", shards.padded(note));
    const item = element("li");
    const link = element("a", "", title);
    link.href = shards.base + page;
    const heading = element("h2");
    heading.append(link, " ", element("span", "kind-word", noteKind));
    item.append(heading);
    if (excerpt) item.append(element("p", "from", excerpt));
    return item;
  }

  function showKinds(result) {
    const button = (name, title, count) => {
      const out = element("button", "filter", title + " " + count);
      out.type = "button";
      out.setAttribute("aria-pressed", String(kind === name));
      out.addEventListener("click", () => {
        kind = name;
        show(box.value, false);
      });
      return out;
    };
    let all = 0;
    for (const count of result.kinds.values()) all += count;
    const buttons = [button("", "All", all)];
    for (const [name, title] of result.meta.kinds)
      if (result.kinds.has(name)) buttons.push(button(name, title, result.kinds.get(name)));
    const focused = [...filters.children].indexOf(document.activeElement);
    filters.replaceChildren(...buttons);
    filters.hidden = all === 0;
    if (focused >= 0 && buttons[focused]) buttons[focused].focus();
  }

  function sentence(result, query) {
    if (query.trim() === "") return "";
    let out = result.hits.length === 1 ? "One note" : result.hits.length + " notes";
    if (result.slips.length > 0) out += ", reading " + result.slips.join(", ");
    return result.hits.length === 0 ? "Nothing in the notes for this. Try fewer or other words." : out;
  }

  async function moreButton(result, from) {
    const item = element("li", "more");
    const button = element("button", "", "Show more");
    button.type = "button";
    button.addEventListener("click", async () => {
      item.remove();
      await append(result, from, turn);
    });
    item.append(button);
    return item;
  }

  async function append(result, from, mine) {
    const items = await Promise.all(result.hits.slice(from, from + shownAtOnce).map(([note]) => hit(note, result.meta)));
    if (mine !== turn) return;
    list.append(...items);
    if (result.hits.length > from + shownAtOnce) list.append(await moreButton(result, from + shownAtOnce));
    if (from > 0 && items[0]) items[0].querySelector("a").focus();
  }

  async function show(query, unfinished) {
    const mine = ++turn;
    const address = "#q=" + encodeURIComponent(query) + (kind ? "&kind=" + encodeURIComponent(kind) : "");
    history.replaceState(null, "", address);
    try {
      const result = await root.benchloreRank.rank(query, { unfinished, kind });
      if (mine !== turn) return;
      showKinds(result);
      state.textContent = sentence(result, query);
      list.replaceChildren();
      await append(result, 0, mine);
    } catch (error) {
      state.textContent = "The search data could not be read (" + error.message + "). Was the whole site copied?";
    }
  }

  // Arrow keys walk from the box through the results and back.
  function walk(event) {
    if (event.key !== "ArrowDown" && event.key !== "ArrowUp") return;
    if (event.target === box && event.key === "ArrowUp") return;
    const links = [...list.querySelectorAll("h2 a")];
    const at = links.indexOf(document.activeElement) + (event.key === "ArrowDown" ? 1 : -1);
    const next = at < 0 ? box : links[at];
    if (next && (event.target === box || list.contains(event.target))) {
      event.preventDefault();
      next.focus();
    }
  }

  function fromAddress() {
    const hash = new URLSearchParams(location.hash.slice(1));
    const asked = new URLSearchParams(location.search);
    kind = hash.get("kind") || "";
    box.value = hash.get("q") || asked.get("q") || "";
    if (box.value) show(box.value, false);
  }

  let typing = 0;
  box.addEventListener("input", () => {
    clearTimeout(typing);
    typing = setTimeout(() => show(box.value, true), 120);
  });
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    clearTimeout(typing);
    show(box.value, false);
  });
  document.addEventListener("keydown", walk);
  window.addEventListener("hashchange", fromAddress);
  fromAddress();
  if (!box.value) box.focus();
})(globalThis);
