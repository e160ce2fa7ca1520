// How long a search for combinations takes in a drawer of two thousand parts, beside reading and checking the same shop:
// `BENCHLORE_BUILD=build node tests/bench/drawer.mjs`. Medians of five; nothing is asserted.
import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const build = process.env.BENCHLORE_BUILD ?? "build";
const shop = mkdtempSync(join(tmpdir(), "benchlore-drawer-"));
mkdirSync(join(shop, "components"));

// A generator of its own, so that every run has the same drawer.
let state = 12345;
const random = (n) => { state = (state * 1103515245 + 12345) % 2147483648; return Math.floor(state / 65536) % n; };
const pick = (list) => list[random(list.length)];
const e24 = [1, 1.1, 1.2, 1.3, 1.5, 1.6, 1.8, 2, 2.2, 2.4, 2.7, 3, 3.3, 3.6, 3.9, 4.3, 4.7, 5.1, 5.6, 6.2, 6.8, 7.5, 8.2, 9.1];
const value = (decades) => (pick(e24) * 10 ** random(decades) * (0.97 + random(61) / 1000)).toPrecision(4);

let stock = "component,quantity,bin,from\n";
const component = (id, className, ratings) => writeFileSync(join(shop, "components", `${id}.md`),
  `---\nkind: component\nclass: ${className}\ntitle: ${id}\nratings:\n${ratings.map((r) => `  ${r}\n`).join("")}---\nA part.\n`);
for (let i = 0; i < 1000; ++i) {
  component(`r${i}`, "film-resistor", [`resistance: ${value(6)} ohm ±${pick([1, 5])}%`, `power: ${pick([0.25, 0.5, 1])} W`,
    `limiting-voltage: ${pick([200, 250, 350])} V`, "winding: non-inductive", "temperature: -55..155 °C", "temperature-coefficient: max 100 ppm/K"]);
  component(`c${i}`, "aluminium-electrolytic", [`capacitance: ${value(4)} uF ±20%`, `rated-voltage: ${pick([10, 16, 25, 35, 50, 63])} V`,
    "temperature: -40..105 °C", "leakage-current: max 10 uA", "esr: max 0.5 ohm @ 100 Hz", "ripple-current: 0.5 A @ 100 Hz", "endurance: 2000 h @ 105 °C"]);
  stock += `r${i},${1 + random(9)},A${i},\nc${i},${1 + random(9)},B${i},\n`;
}
component("wanted-resistor", "film-resistor", ["resistance: 12.34 kohm ±1%", "power: 0.5 W", "limiting-voltage: 300 V", "winding: non-inductive",
  "temperature: -55..125 °C", "temperature-coefficient: max 200 ppm/K"]);
component("wanted-capacitor", "aluminium-electrolytic", ["capacitance: 3456 uF -10/+50%", "rated-voltage: 25 V", "temperature: -25..85 °C",
  "leakage-current: max 900 uA", "esr: max 1 ohm @ 100 Hz", "ripple-current: 0.8 A @ 100 Hz", "endurance: 1000 h @ 85 °C"]);
writeFileSync(join(shop, "stock.csv"), stock);
writeFileSync(join(shop, "shop.yaml"), "name: Drawer\nmains: {voltage: 230 V, frequency: 50 Hz}\n");

const median = (command) => {
  const times = [];
  for (let i = 0; i < 5; ++i) {
    const start = process.hrtime.bigint();
    spawnSync(`${build}/benchlore`, [...command, "--content", shop], { maxBuffer: 1 << 28 });
    times.push(Number(process.hrtime.bigint() - start) / 1e6);
  }
  return times.sort((a, b) => a - b)[2];
};
const check = median(["check", "--format", "json"]);
const say = (name, time) => console.log(`${name.padEnd(34)} ${time.toFixed(0).padStart(6)} ms  ${(time / check).toFixed(2)} of check`);
say("check", check);
say("combine a resistor from stock", median(["combine", "wanted-resistor", "--role", "general-resistor", "--from-stock"]));
say("combine a capacitor from stock", median(["combine", "wanted-capacitor", "--role", "smoothing", "--stress", "applied-voltage=12V", "--from-stock"]));
say("substitute for a capacitor", median(["substitute", "wanted-capacitor", "--role", "smoothing"]));
rmSync(shop, { recursive: true });
