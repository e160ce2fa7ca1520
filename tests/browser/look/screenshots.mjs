// Pictures of the built site for a person to look at: `node screenshots.mjs FOLDER`. Ten pages as a tablet and a phone
// show them, light and dark, and two as paper.
import fs from "node:fs";
import path from "node:path";
import { openBrowser, openPage, samplePages } from "./bench_browser.mjs";

const folder = process.argv[2];
if (!folder) {
  console.error("name a folder for the pictures");
  process.exit(2);
}
fs.mkdirSync(folder, { recursive: true });
const tallest = 2200;
const views = [
  { name: "tablet-light", size: { width: 1024, height: 768 }, scheme: "light" },
  { name: "phone-dark", size: { width: 390, height: 844 }, scheme: "dark" },
];
const { browser, close } = await openBrowser();
const queries = { "search.html": "search.html#q=" + encodeURIComponent("hum capacitor"), "substitute.html": "substitute.html#part=" + encodeURIComponent(process.argv[3] || "tantalum") };
for (const at of samplePages()) {
  const plain = at.replace(/[/.]/g, "-");
  for (const view of views) {
    const page = await openPage(browser, queries[at] || at, view);
    await page.waitForTimeout(queries[at] ? 800 : 100);
    const height = Math.min(await page.evaluate(() => document.documentElement.scrollHeight), tallest);
    const clip = { x: 0, y: 0, width: view.size.width, height };
    await page.screenshot({ path: path.join(folder, plain + "-" + view.name + ".png"), fullPage: true, clip, timeout: 90000 });
    await page.close();
  }
  if (/notes\//.test(at)) {
    const page = await openPage(browser, at);
    await page.pdf({ path: path.join(folder, plain + ".pdf"), preferCSSPageSize: true, printBackground: true });
    await page.close();
  }
}
await close();
