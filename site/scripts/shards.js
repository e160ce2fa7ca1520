// Loads the data of the site piece by piece: a page from a memory stick may not fetch, but it may add a script element.
(function (root) {
  "use strict";
  const waiting = new Map();
  const kept = new Map();
  const mostKept = 400;
  const base = new URL("..", document.currentScript ? document.currentScript.src : "assets/").href;

  root.benchloreData = (name, content) => {
    const entry = waiting.get(name);
    if (entry) entry.arrived(content);
  };

  function request(name) {
    return new Promise((arrived, failed) => {
      waiting.set(name, { arrived });
      const script = document.createElement("script");
      script.src = base + "data/" + name + ".js";
      script.onload = () => script.remove();
      script.onerror = () => {
        kept.delete(name);
        failed(new Error("missing data " + name));
      };
      document.head.appendChild(script);
    });
  }

  function load(name) {
    let found = kept.get(name);
    if (found === undefined) {
      found = request(name);
      kept.set(name, found);
      if (kept.size > mostKept) kept.delete(kept.keys().next().value);
    }
    return found;
  }

  // Index of the file whose range holds the key.
  function shardOf(firstKeys, key) {
    let low = 0, high = firstKeys.length - 1, found = 0;
    while (low <= high) {
      const middle = (low + high) >> 1;
      if (firstKeys[middle] <= key) {
        found = middle;
        low = middle + 1;
      } else high = middle - 1;
    }
    return found;
  }

  // The entry of a key, or undefined.
  async function entry(kind, key) {
    const meta = await load("meta");
    if (meta[kind].length === 0) return undefined;
    const shard = await load(kind + "/" + shardOf(meta[kind], key));
    return Object.prototype.hasOwnProperty.call(shard, key) ? shard[key] : undefined;
  }

  // Reads numbers that are written as code points, and letters between them.
  function reader(text) {
    let at = 0;
    const number = () => {
      let code = text.charCodeAt(at++);
      if (code === 33) {
        const upper = number();
        return upper * 32768 + number();
      }
      if (code >= 0xe000) code -= 0x800;
      return (code > 0x5c ? code - 1 : code) - 35;
    };
    const letters = (count) => text.slice(at, (at += count));
    return { number, letters, more: () => at < text.length };
  }

  const padded = (number) => String(number).padStart(7, "0");

  root.benchloreShards = { load, entry, reader, shardOf, base, meta: () => load("meta"), padded };
})(globalThis);
