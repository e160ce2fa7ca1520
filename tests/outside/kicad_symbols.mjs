// Reads an open dataset of component descriptions (Debian's kicad-symbols, used as data only), turns those of transistors,
// diodes and regulators into notes, and has the checker read and judge them. What the descriptions say of polarity and
// voltage is compared here once more, by other means: no pair that they rule out may come out as usable.
import { spawnSync } from "node:child_process";
import { mkdtempSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const build = process.env.BENCHLORE_BUILD ?? "build";
const folder = "/usr/share/kicad/symbols";
let passed = 0, failed = 0;
const check = (good, text) => {
  if (good) { passed += 1; return; }
  failed += 1;
  console.log(`not ok: ${text}`);
};

// Every symbol of a library with its description.
const symbolsOf = (library) => {
  const text = readFileSync(`${folder}/${library}.kicad_sym`, "utf8");
  const found = [];
  for (const piece of text.split(/^  \(symbol "/m).slice(1)) {
    const name = piece.slice(0, piece.indexOf('"'));
    const description = /"ki_description" "([^"]*)"/.exec(piece);
    if (description) found.push({ library, name, description: description[1] });
  }
  return found;
};

// The value as written, without a leading minus: the sign only repeats the polarity.
const first = (text, ...patterns) => {
  for (const pattern of patterns) {
    const match = pattern.exec(text);
    if (match) return match[1].replace(/^-/, "");
  }
  return undefined;
};
const amount = "(-?[0-9][0-9.,]*-?[munkM]?";

const classes = [
  { name: "bipolar-transistor", library: "Transistor_BJT", fits: (d) => /\b(NPN|PNP)\b/.test(d) && !/Darlington|[Dd]ual|NPN\/PNP|Input Resistor|array/i.test(d),
    ratings: (d) => ({ polarity: first(d, /\b(NPN|PNP)\b/), "collector-current": first(d, new RegExp(`${amount}A) I?c`, "i")), vceo: first(d, new RegExp(`${amount}V) Vce`, "i")) }) },
  { name: "darlington-transistor", library: "Transistor_BJT", fits: (d) => /Darlington/.test(d) && /\b(NPN|PNP)\b/.test(d),
    ratings: (d) => ({ polarity: first(d, /\b(NPN|PNP)\b/), "collector-current": first(d, new RegExp(`${amount}A) I?c`, "i")), vceo: first(d, new RegExp(`${amount}V) Vce`, "i")) }) },
  { name: "mosfet", library: "Transistor_FET", fits: (d) => /MOSFET/.test(d) && !/[Dd]ual|N\/P/.test(d),
    ratings: (d) => ({ channel: first(d, /\b([NP])-?(?:C|c)hannel/), "drain-current": first(d, new RegExp(`${amount}A) I?d`, "i")), "drain-voltage": first(d, new RegExp(`${amount}V) Vds`, "i")) }) },
  { name: "schottky-diode", library: "Diode", fits: (d) => /Schottky/.test(d) && !/[Dd]ual|bridge/i.test(d),
    ratings: (d) => ({ "reverse-voltage": first(d, new RegExp(`${amount}V)`)), "forward-current": first(d, new RegExp(`${amount}A)`)) }) },
  { name: "zener-diode", library: "Diode", fits: (d) => /Zener/.test(d),
    ratings: (d) => ({ dissipation: first(d, new RegExp(`${amount}W)`)), "zener-voltage": first(d, new RegExp(`${amount}V)`)) }) },
  { name: "tvs-diode", library: "Diode", fits: (d) => /Transient Voltage Suppressor/.test(d),
    ratings: (d) => ({ "pulse-power": first(d, new RegExp(`${amount}W)`)) }) },
  { name: "rectifier-diode", library: "Diode", fits: (d) => /[Rr]ectifier/.test(d) && !/Schottky|Fast|fast|Zener/.test(d),
    ratings: (d) => ({ "reverse-voltage": first(d, new RegExp(`${amount}V)`)), "forward-current": first(d, new RegExp(`${amount}A)`)) }) },
  { name: "low-dropout-regulator", library: "Regulator_Linear", fits: (d) => /[Ll]ow.?[Dd]rop/.test(d),
    ratings: (d) => ({ "output-current": first(d, new RegExp(`${amount}A)`)), "output-voltage": first(d, new RegExp(`${amount}V)`)) }) },
  { name: "fixed-regulator", library: "Regulator_Linear", fits: (d) => /[Ff]ixed/.test(d) && !/[Ll]ow.?[Dd]rop/.test(d),
    ratings: (d) => ({ "output-current": first(d, new RegExp(`${amount}A)`)), "output-voltage": first(d, new RegExp(`${amount}V)`)) }) },
  { name: "adjustable-regulator", library: "Regulator_Linear", fits: (d) => /[Aa]djustable/.test(d) && !/[Ll]ow.?[Dd]rop/.test(d),
    ratings: (d) => ({ "output-current": first(d, new RegExp(`${amount}A)`)) }) },
];

const records = [];
for (const library of new Set(classes.map((c) => c.library))) {
  for (const symbol of symbolsOf(library)) {
    const made = classes.find((c) => c.library === library && c.fits(symbol.description));
    if (made) records.push({ ...symbol, className: made.name, ratings: made.ratings(symbol.description) });
  }
}
check(records.length >= 2000, `only ${records.length} records`);

// Ids of notes: the library's name keeps two libraries apart.
const idOf = (record) => `${record.library}-${record.name}`.toLowerCase().replace(/[^a-z0-9]+/g, "-").replace(/-$/, "");
const byClass = new Map();
const seen = new Set();
for (const record of records) {
  record.id = idOf(record);
  if (seen.has(record.id)) continue;
  seen.add(record.id);
  if (!byClass.has(record.className)) byClass.set(record.className, []);
  byClass.get(record.className).push(record);
}

const shop = mkdtempSync(join(tmpdir(), "benchlore-dataset-"));
mkdirSync(join(shop, "components"));
writeFileSync(join(shop, "shop.yaml"), "name: Dataset\nmains: {voltage: 230 V, frequency: 50 Hz}\n");
const pairs = [];
for (const list of byClass.values()) {
  list.forEach((record, i) => {
    const substitute = list[(i + 7) % list.length];
    pairs.push([record, substitute]);
    const ratings = Object.entries(record.ratings).filter(([, value]) => value !== undefined);
    const lines = ratings.map(([name, value]) => `  ${name}: ${JSON.stringify(value)}`).join("\n");
    writeFileSync(join(shop, "components", `${record.id}.md`),
      `---\nkind: component\nclass: ${record.className}\ntitle: ${JSON.stringify(record.name)}\n` +
      (lines ? `ratings:\n${lines}\n` : "") + `substitutes:\n  - component: ${substitute.id}\n---\n` +
      `${record.description.replace(/[<>]/g, " ")}\n`);
  });
}

const started = Date.now();
const run = spawnSync(`${build}/benchlore`, ["check", "--content", shop, "--format", "json"],
  { encoding: "utf8", maxBuffer: 1 << 28 });
check(run.status === 0 || run.status === 1, `check ended with ${run.status ?? run.signal}: ${run.stderr.slice(0, 600)}`);
const findings = JSON.parse(run.stdout).findings;
const count = new Map();
for (const finding of findings) count.set(finding.rule, (count.get(finding.rule) ?? 0) + 1);
const refused = findings.filter((f) => f.rule === "bad-quantity" || f.rule === "bad-value");
const broken = new Set(refused.map((f) => f.file));

// What the descriptions themselves rule out, worked out here.
const number = (text) => {
  const match = /^([0-9.]+)-?([munkM]?)[AVW]$/.exec(text ?? "");
  return match ? Number(match[1]) * { "": 1, m: 1e-3, u: 1e-6, n: 1e-9, k: 1e3, M: 1e6 }[match[2]] : undefined;
};
const mustExceed = ["vceo", "collector-current", "drain-voltage", "drain-current", "reverse-voltage", "forward-current", "output-current"];
const mustEqual = ["polarity", "channel"];
const verdictOf = (original, substitute) => {
  const out = spawnSync(`${build}/benchlore`, ["judge", "--content", shop, "--format", "json", original.id, substitute.id], { encoding: "utf8" });
  return out.status === 0 || out.status === 1 ? JSON.parse(out.stdout).verdict : `exit ${out.status}: ${out.stderr.slice(0, 200)}`;
};
const reported = new Set(findings.filter((f) => /^(unsafe|unfit|unknown)-substitute$/.test(f.rule)).map((f) => f.file));
let ruledOut = 0;
for (const [original, substitute] of pairs) {
  const file = `components/${original.id}.md`;
  if (broken.has(file) || broken.has(`components/${substitute.id}.md`)) continue;
  const differs = mustEqual.some((r) => original.ratings[r] && substitute.ratings[r] && original.ratings[r] !== substitute.ratings[r]);
  const short = mustExceed.some((r) => number(substitute.ratings[r]) < number(original.ratings[r]));
  if (!differs && !short) continue;
  ruledOut += 1;
  check([...reported].some((f) => f.endsWith(file)), `${substitute.id} for ${original.id} is ruled out by its description and not reported`);
}
check(ruledOut > 200, `only ${ruledOut} pairs are ruled out by their descriptions`);

// A few through the judge command as well, one of each class.
for (const list of byClass.values()) {
  const sound = list.filter((r) => !broken.has(`components/${r.id}.md`));
  if (sound.length > 1) check(/^(unsafe|unfit|unknown|conditional|suitable)$/.test(verdictOf(sound[0], sound[1])), `${sound[0].id}: ${verdictOf(sound[0], sound[1])}`);
}
rmSync(shop, { recursive: true });

console.log(`${seen.size} records in ${byClass.size} classes read and judged in ${Date.now() - started} ms; ${ruledOut} pairs ruled out by their descriptions`);
for (const [name, list] of byClass) console.log(`  ${name}: ${list.length}`);
for (const [name, n] of count) console.log(`  finding ${name}: ${n}`);
console.log(`refused values: ${refused.length}, such as ${refused.slice(0, 5).map((f) => f.message).join(" | ")}`);
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed > 0 ? 1 : 0);
