// The built site in a browser, opened from the disk: nothing is asked of a network, nothing complains, search and
// look-up find what is there, every sort of page is accessible in both colour schemes and at two sizes.
import fs from "node:fs";
import { address, assert, check, exists, finish, openBrowser, openPage, pagesIn, read, require, samplePages } from "./look/bench_browser.mjs";

const axe = require("axe-core").source;
const { browser, close } = await openBrowser();
const sizes = [{ width: 1024, height: 768 }, { width: 390, height: 844 }];
const aComponent = pagesIn("notes").find((page) => /id="the_substitutes"/.test(read(page)));
const decoded = (html) => html.replace(/&(lt|gt|quot|#39|amp);/g, (m) => ({ "&lt;": "<", "&gt;": ">", "&quot;": '"', "&#39;": "'", "&amp;": "&" })[m]);
const titleOf = (page) => decoded(/<h1>(.*?)<\/h1>/.exec(read(page))[1]);

// Tables that hold the scripts to the compiler: `word stem` a line, and text, a tab, tokens.
await check("the scripts stem and split words as the compiler does", async () => {
  const lines = (file) => fs.readFileSync(new URL(file, import.meta.url), "utf8").split("\n").filter((l) => l && !l.startsWith("#"));
  const page = await openPage(browser, "search.html");
  const wrong = await page.evaluate(([stems, texts]) => {
    const shown = { joined: "=", base: "~" };
    const tokens = (text) => benchloreWords.tokens(text).map((t) => (shown[t.sort] || "") + t.text).join(" ");
    return [...stems.map((l) => l.split(" ")).filter(([word, stem]) => benchloreStem(word) !== stem),
      ...texts.map((l) => l.split("\t")).filter(([text, expected]) => tokens(text) !== (expected || "")).map(([t]) => [t, tokens(t)])];
  }, [lines("../unit/site/stems.txt"), lines("../tables/search_tokens.txt")]);
  assert(wrong.length === 0, JSON.stringify(wrong.slice(0, 8)));
  await page.close();
});

await check("pages open from the disk without a complaint", async () => {
  for (const at of samplePages()) {
    const page = await openPage(browser, at);
    assert(page.complaints.length === 0, at + ": " + page.complaints.join("; "));
    await page.close();
  }
});

await check("every link of the site leads to a page and an anchor that are there", async () => {
  const all = ["index.html", "notes.html", "findings.html", "rules.html", "calculations.html", ...pagesIn("rules"), ...pagesIn("calculations"), ...pagesIn("notes"), ...pagesIn("kinds"), ...pagesIn("classes")];
  const wrong = [];
  for (const at of all)
    for (const [, raw] of read(at).matchAll(/(?:href|src)="([^"]*)"/g)) {
      if (/^(https?|mailto):/.test(raw)) continue;
      const url = new URL(decoded(raw), "file:///" + at);
      const target = decodeURIComponent(url.pathname.slice(1));
      const anchor = url.hash && !read(exists(target) ? target : at).includes('id="' + decodeURIComponent(url.hash.slice(1)) + '"');
      if (!exists(target) || anchor) wrong.push(at + " → " + raw);
    }
  assert(wrong.length === 0, wrong.slice(0, 10).join(", "));
});

await check("search finds a note by its title", async () => {
  const title = titleOf(aComponent);
  const page = await openPage(browser, "search.html");
  await page.fill("#ask_q", title);
  await page.press("#ask_q", "Enter");
  await page.waitForSelector("#search_hits h2 a");
  const hits = await page.locator("#search_hits h2 a").allTextContents();
  assert(hits.slice(0, 3).includes(title), title + " is not among " + hits.slice(0, 5).join(" | "));
  assert(page.complaints.length === 0, page.complaints.join("; "));
  await page.close();
});

await check("search takes its query from the address, and keys walk through the results", async () => {
  const page = await openPage(browser, "search.html#q=capacitor");
  await page.waitForSelector("#search_hits h2 a");
  await page.focus("#ask_q");
  await page.keyboard.press("ArrowDown");
  assert(await page.evaluate(() => document.activeElement.matches("#search_hits h2 a")), "the first result has no focus");
  await page.close();
});

await check("a word cut short or misspelt still finds", async () => {
  const page = await openPage(browser, "search.html");
  await page.locator("#ask_q").pressSequentially("capacit", { delay: 20 });
  await page.waitForSelector("#search_hits h2 a");
  assert((await page.locator("#ask_q_words option").count()) > 0, "no completion is offered");
  await page.fill("#ask_q", "capaictor");
  await page.press("#ask_q", "Enter");
  await page.waitForFunction(() => document.getElementById("search_state").textContent.includes("reading"));
  assert((await page.locator("#search_hits h2 a").count()) > 0, "a slip finds nothing");
  await page.close();
});

await check("results can be narrowed to one kind", async () => {
  const page = await openPage(browser, "search.html#q=supply");
  await page.waitForSelector("#search_kinds button");
  const before = await page.textContent("#search_state");
  await page.locator("#search_kinds button").last().click();
  await page.waitForFunction((text) => document.getElementById("search_state").textContent !== text, before);
  await page.close();
});

await check("the form of the first page leads to results", async () => {
  const page = await openPage(browser, "index.html");
  await page.fill("#ask_q", "capacitor");
  await page.press("#ask_q", "Enter");
  await page.waitForSelector("#search_hits h2 a");
  assert(page.complaints.length === 0, page.complaints.join("; "));
  await page.close();
});

await check("the look-up shows substitutes with their verdicts", async () => {
  const page = await openPage(browser, "substitute.html");
  await page.fill("#ask_part", aComponent.replace(/^notes\/|\.html$/g, ""));
  await page.press("#ask_part", "Enter");
  await page.waitForSelector("#part_answers .judged .mark");
  assert((await page.textContent("#part_answers h2")) === titleOf(aComponent), "another part is shown");
  await page.fill("#ask_part", "no such part at all");
  await page.waitForFunction(() => /No component/.test(document.getElementById("part_state").textContent));
  assert(page.complaints.length === 0, page.complaints.join("; "));
  await page.close();
});

await check("pages read without scripts", async () => {
  const client = await browser.newCDPSession(await browser.newPage());
  await client.send("Emulation.setScriptExecutionDisabled", { value: true });
  const page = browser.pages().at(-1);
  await page.goto(address(aComponent));
  const box = await page.locator("article.judged").first().boundingBox();
  assert(box && box.height > 0, "no substitute is shown");
  await page.goto(address("search.html"));
  assert(await page.locator("noscript").first().isVisible(), "the search page does not say where to look");
  await page.close();
});

await check("pages do not scroll sideways on a phone, nor at four times the size", async () => {
  for (const at of samplePages())
    for (const width of [390, 320]) {
      const page = await openPage(browser, at, { size: { width, height: 700 } });
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
      assert(wide <= 0, at + " is " + wide + " px too wide at " + width);
      await page.close();
    }
});

// Of a long row of like articles the first eight stand for all: the check takes minutes otherwise.
function shorten() {
  for (const item of document.querySelectorAll("article.rule:nth-of-type(n+9), .findings > li:nth-child(n+30)")) item.remove();
}

for (const at of samplePages())
  await check("accessible: " + at, async () => {
    for (const size of sizes)
      for (const scheme of ["light", "dark"]) {
        const page = await openPage(browser, at, { size, scheme });
        await page.evaluate(shorten);
        await page.evaluate(axe);
        const { violations } = await page.evaluate(() => axe.run(document, { runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] }));
        const said = violations.map((v) => v.id + " (" + v.nodes.length + "): " + v.nodes[0].html.slice(0, 160) + " " + (v.nodes[0].any[0] || v.nodes[0].all[0] || v.nodes[0].none[0] || {}).message);
        assert(violations.length === 0, scheme + " " + size.width + ": " + said.join("\n"));
        await page.close();
      }
  });

await close();
finish();
