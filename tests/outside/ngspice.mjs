// Discharge, charge and ripple against ngspice, a general-purpose circuit simulator that Debian carries.
import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const build = process.env.BENCHLORE_BUILD ?? "build";
let passed = 0, failed = 0;
const check = (good, text) => {
  if (good) passed += 1;
  else {
    failed += 1;
    console.log(`not ok: ${text}`);
  }
};

const calculated = (name, output, ...inputs) => {
  const text = execFileSync(`${build}/benchlore`, ["calc", "--format", "json", name, ...inputs], { encoding: "utf8" });
  return JSON.parse(text).results.find((r) => r.name === output).value;
};

// The value of each `.meas` line of a netlist, in lower case.
const folder = mkdtempSync(join(tmpdir(), "benchlore-circuits-"));
const simulated = (netlist) => {
  const file = join(folder, "circuit.cir");
  writeFileSync(file, netlist);
  const run = spawnSync("ngspice", ["-b", file], { encoding: "utf8" });
  const values = new Map();
  for (const [, name, value] of run.stdout.matchAll(/^(\w+)\s*=\s*([-+0-9.e]+)/gim)) values.set(name.toLowerCase(), Number(value));
  return values;
};
const near = (a, b, share) => Math.abs(a - b) <= share * Math.abs(b);

// A capacitor that a resistor empties.
const discharges = [
  [220e-6, 220e3, 325, 60], [220e-6, 2.2e3, 325, 10], [470e-6, 100e3, 358, 60], [0.47e-6, 470e3, 373, 34],
  [1e-6, 1e6, 339, 60], [4700e-6, 4.7e3, 35, 1], [110e-6, 2.2e3, 325, 10],
];
for (const [c, r, from, to] of discharges) {
  const wanted = calculated("bleed-down", "time", `capacitance=${c} F`, `resistance=${r} ohm`, `from=${from} V`, `to=${to} V`);
  const end = 8 * r * c;
  const found = simulated(`* discharge\nC1 1 0 ${c} IC=${from}\nR1 1 0 ${r}\n.tran ${end / 20000} ${end} UIC\n` +
    `.meas tran reached WHEN v(1)=${to} FALL=1\n.end\n`).get("reached");
  check(near(found, wanted, 0.002), `discharge of ${c} F through ${r} ohm to ${to} V: ${found} s simulated, ${wanted} s calculated`);
}

// A capacitor that a resistor charges to a threshold.
for (const [r, c, supply, threshold] of [[10e3, 10e-6, 5, 1.4], [10e3, 10e-6, 5, 1.9], [10e3, 10e-6, 5, 3.5], [100e3, 1e-6, 12, 6]]) {
  const wanted = calculated("rc-time", "time", `resistance=${r} ohm`, `capacitance=${c} F`, `supply=${supply} V`, `threshold=${threshold} V`);
  const end = 4 * r * c;
  const found = simulated(`* charge\nV1 1 0 ${supply}\nR1 1 2 ${r}\nC1 2 0 ${c} IC=0\n.tran ${end / 20000} ${end} UIC\n` +
    `.meas tran reached WHEN v(2)=${threshold} RISE=1\n.end\n`).get("reached");
  check(near(found, wanted, 0.002), `charge of ${c} F to ${threshold} V: ${found} s simulated, ${wanted} s calculated`);
}

// Ripple behind a rectifier with a steady load: the formula leaves out the time of charging, so that it is somewhat high
// and never low.
const rectifiers = [
  { load: 1, c: 4700e-6, mains: 50, bridge: true, peak: 17 }, { load: 1, c: 4700e-6, mains: 60, bridge: true, peak: 17 },
  { load: 0.1, c: 1000e-6, mains: 50, bridge: false, peak: 17 }, { load: 0.5, c: 2200e-6, mains: 50, bridge: true, peak: 12 },
  { load: 2, c: 10000e-6, mains: 50, bridge: true, peak: 25 },
];
for (const { load, c, mains, bridge, peak } of rectifiers) {
  const frequency = bridge ? 2 * mains : mains;
  const wanted = calculated("ripple-voltage", "ripple", `current=${load} A`, `capacitance=${c} F`, `ripple-frequency=${frequency} Hz`);
  const diode = ".model D D(IS=1e-9 N=1 RS=5m)\n";
  const circuit = bridge
    ? `V1 a b SIN(0 ${peak} ${mains})\nRa a 0 1meg\nRb b 0 1meg\nD1 a o D\nD2 b o D\nD3 0 a D\nD4 0 b D\n`
    : `V1 a 0 SIN(0 ${peak} ${mains})\nD1 a o D\n`;
  const values = simulated(`* ripple\n${circuit}C1 o 0 ${c} IC=${peak - 1.5}\nI1 o 0 ${load}\n${diode}.tran 20u 0.5 0.3 20u UIC\n` +
    ".meas tran high MAX v(o) FROM=0.35 TO=0.5\n.meas tran low MIN v(o) FROM=0.35 TO=0.5\n.end\n");
  const found = values.get("high") - values.get("low");
  check(found <= wanted * 1.002 && found >= wanted * 0.65, `ripple of ${load} A on ${c} F at ${mains} Hz: ${found} V simulated, ${wanted} V calculated`);
}

rmSync(folder, { recursive: true });
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed > 0 ? 1 : 0);
