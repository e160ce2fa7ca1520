// Opens Chromium without a network for the browser tests, and watches what pages ask for and complain about.
import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import { createRequire } from "node:module";
import { pathToFileURL } from "node:url";

const modules = process.env.BENCHLORE_NODE;
const site = process.env.BENCHLORE_SITE;
if (!modules || !site) {
  console.log("not ok BENCHLORE_NODE and BENCHLORE_SITE must be set");
  process.exit(1);
}
export const require = createRequire(path.join(path.resolve(modules), "x.js"));
export const address = (page) => {
  const [file, anchor] = page.split("#");
  return pathToFileURL(path.join(path.resolve(site), file)).href + (anchor === undefined ? "" : "#" + anchor);
};
export const exists = (page) => fs.existsSync(path.join(site, page));
export const pagesIn = (folder) =>
  fs.existsSync(path.join(site, folder)) ? fs.readdirSync(path.join(site, folder)).sort().map((f) => folder + "/" + f) : [];
export const read = (page) => fs.readFileSync(path.join(site, page), "utf8");

export async function openBrowser() {
  const { chromium } = require("playwright-core");
  const profile = fs.mkdtempSync(path.join(os.tmpdir(), "benchlore-browser-"));
  const browser = await chromium.launchPersistentContext(profile, {
    executablePath: process.env.BENCHLORE_CHROMIUM || "/usr/bin/chromium",
    args: ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
      "--disable-component-update", "--disable-sync"],
  });
  const close = async () => {
    await browser.close();
    fs.rmSync(profile, { recursive: true, force: true });
  };
  return { browser, close };
}

// A page whose console errors and requests that leave the disk are collected in `page.complaints`.
export async function openPage(browser, at, options = {}) {
  const page = await browser.newPage();
  page.complaints = [];
  page.on("console", (m) => m.type() === "error" && page.complaints.push(m.text()));
  page.on("pageerror", (e) => page.complaints.push(String(e)));
  page.on("request", (r) => r.url().startsWith("file:") || page.complaints.push("request to " + r.url()));
  page.on("requestfailed", (r) => page.complaints.push("failed " + r.url()));
  if (options.size) await page.setViewportSize(options.size);
  if (options.scheme) await page.emulateMedia({ colorScheme: options.scheme });
  await page.goto(address(at), { waitUntil: "load" });
  return page;
}

let failures = 0;
export async function check(name, test) {
  try {
    await test();
    console.log("ok " + name);
  } catch (error) {
    failures++;
    console.log("not ok " + name + "\n# " + String(error.message || error).split("\n").slice(0, 12).join("\n# "));
  }
}
export function assert(condition, message) {
  if (!condition) throw new Error(message);
}
export const finish = () => process.exit(failures > 0 ? 1 : 0);

// One page of each kind, and each of the pages at the root.
export function samplePages() {
  const roots = ["index.html", "notes.html", "findings.html", "rules.html", "calculations.html", "calculations/bleed-down.html", "rules/tantalum-voltage-in-the-heat.html", "search.html", "substitute.html"];
  const kinds = pagesIn("kinds");
  const notes = new Map();
  for (const page of pagesIn("notes")) {
    const kind = /class="trail"><a href="\.\.\/(kinds\/[^"]+)"/.exec(read(page));
    const better = kind && (!notes.has(kind[1]) || read(page).length > read(notes.get(kind[1])).length);
    if (better) notes.set(kind[1], page);
  }
  const classes = pagesIn("classes").sort((a, b) => read(b).length - read(a).length);
  return [...roots, kinds.find((k) => k.includes("component")) || kinds[0], classes[0], ...notes.values()].filter(Boolean);
}
