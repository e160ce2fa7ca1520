// Markings as the command decodes them, against values that electro-grammar 1.3 (MIT) reads from a description, and against
// tables written out here: figures of the colour code after the Wikipedia article on it, E12 and E24 after IEC 60063.
import { execFileSync } from 'node:child_process';
import { createRequire } from 'node:module';
import path from 'node:path';
import { tmpdir } from 'node:os';
import { pathToFileURL } from 'node:url';

const require = createRequire(path.join(process.env.BENCHLORE_NODE, 'package.json'));
const grammar = await import(pathToFileURL(require.resolve('electro-grammar')).href);
const parse = grammar.parse ?? grammar.default.parse;
let passed = 0;
let failed = 0;
const check = (good, text) => {
  if (good) passed += 1;
  else {
    failed += 1;
    console.log(`not right: ${text}`);
  }
};
const near = (a, b) => typeof a === 'number' && typeof b === 'number' && Math.abs(a - b) <= 1e-9 * Math.abs(b);

// In a folder without notes, so that the answer is readings alone.
function decode(text) {
  const program = path.join(process.env.BENCHLORE_BUILD, 'benchlore');
  const answer = JSON.parse(execFileSync(program, ['decode', '--format', 'json', ...text.split(' ')], { cwd: tmpdir() }));
  if (answer.format !== 'benchlore-decode' || answer.version !== 1) throw new Error('another format');
  return answer.readings;
}

// The best reading in this unit is the value that electro-grammar reads from the description, with its tolerance in per cent.
function compare(text, unit, description) {
  const mine = decode(text).find((reading) => reading.unit === unit);
  const theirs = parse(description);
  const value = unit === 'F' ? theirs.capacitance : theirs.resistance;
  check(near(mine?.value, value), `${text}: ${JSON.stringify(mine)}, ${description}: ${JSON.stringify(theirs)}`);
  if (theirs.tolerance !== undefined) check(near(mine?.tolerance?.plus, theirs.tolerance / 100), `tolerance of ${text}: ${JSON.stringify(mine)}`);
}

const e12 = [10, 12, 15, 18, 22, 27, 33, 39, 47, 56, 68, 82];
const figure = ['black', 'brown', 'red', 'orange', 'yellow', 'green', 'blue', 'violet', 'grey', 'white'];
const multiplier = { '-2': 'silver', '-1': 'gold', 0: 'black', 1: 'brown', 2: 'red', 3: 'orange', 4: 'yellow', 5: 'green' };
const tolerance = { 0.1: 'violet', 0.25: 'blue', 0.5: 'green', 1: 'brown', 2: 'red', 5: 'gold', 10: 'silver' };
const power = (n) => Number(`1e${n}`);
const ohms = (figures, n) => `${Number((figures * power(n)).toPrecision(3))}`;

// Four bands: every value of E12 with each multiplier in turn.
e12.forEach((value, i) => {
  for (const n of [-2, -1, 0, 1, 2, 3, 4, 5]) {
    const percent = (i + n) % 2 ? 5 : 10;
    const bands = [figure[Math.floor(value / 10)], figure[value % 10], multiplier[n], tolerance[percent]];
    compare(bands.join(' '), 'ohm', `resistor ${ohms(value, n)} ohm ${percent}%`);
  }
});

// Five bands: both directions are readings; the value is among them with its tolerance.
e12.forEach((value, i) => {
  const percent = [0.1, 0.25, 0.5, 1, 2][i % 5];
  const n = i % 5;
  const bands = [figure[Math.floor(value / 10)], figure[value % 10], 'black', multiplier[n], tolerance[percent]];
  const wanted = parse(`resistor ${ohms(value * 10, n)} ohm ${percent}%`);
  for (const text of [bands.join(' '), [...bands].reverse().join(' ')]) {
    const found = decode(text).find((reading) => near(reading.value, wanted.resistance) && near(reading.tolerance?.plus, percent / 100));
    check(found !== undefined, `${text}: ${wanted.resistance} ohm is not among ${JSON.stringify(decode(text))}`);
  }
});

// Codes: three digits with a tolerance letter, letters for the point, and descriptions that both read.
const percentOf = { F: 1, G: 2, J: 5, K: 10, M: 20 };
e12.forEach((value, i) => {
  const letter = 'JKM'[i % 3];
  const n = 1 + (i % 5);
  compare(`${value}${n}${letter}`, 'F', `capacitor ${ohms(value, n)}pF ${percentOf[letter]}%`);
  compare(`${Math.floor(value / 10)}k${value % 10}${letter}`, 'ohm', `resistor ${Math.floor(value / 10)}k${value % 10} ${percentOf[letter]}%`);
  compare(`${Math.floor(value / 10)}n${value % 10}`, 'F', `capacitor ${Math.floor(value / 10)}n${value % 10}`);
  compare(`${value}R`, 'ohm', `resistor ${value}R`);
  compare(`${value}uF`, 'F', `capacitor ${value}uF`);
  compare(`${value}00`, 'ohm', `resistor ${value * 10} ohm`);
});
for (const [text, description] of [['100nF X7R 50V', 'capacitor 100nF X7R 50V'], ['22pF C0G 100V', 'capacitor 22pF C0G 100V'], ['10uF X5R 16V', 'capacitor 10uF X5R 16V']]) {
  const best = decode(text)[0];
  const theirs = parse(description);
  check(near(best.value, theirs.capacitance) && best.text.includes(`${theirs.voltage_rating} V`), `${text}: ${JSON.stringify(best)}, ${JSON.stringify(theirs)}`);
}

console.log(`${passed} passed, ${failed} failed`);
process.exit(failed > 0 ? 1 : 0);
