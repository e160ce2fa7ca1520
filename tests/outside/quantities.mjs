// Values and codes as the quantity layer reads them, against general-purpose npm packages:
//   electro-grammar 1.3 (MIT): descriptions of capacitors and resistors, IEC 60062 codes among them;
//   mathjs 15 (Apache-2.0): unit arithmetic.
import { execFileSync } from 'node:child_process';
import { createRequire } from 'node:module';
import path from 'node:path';
import { pathToFileURL } from 'node:url';

const require = createRequire(path.join(process.env.BENCHLORE_NODE, 'package.json'));
const load = async (name) => import(pathToFileURL(require.resolve(name)).href);
let passed = 0;
let failed = 0;
const check = (good, text) => {
  if (good) passed += 1;
  else {
    failed += 1;
    console.log(`not right: ${text}`);
  }
};
const near = (a, b) => Math.abs(a - b) <= 1e-9 * Math.abs(b);

function read(lines) {
  const out = execFileSync(path.join(process.env.BENCHLORE_BUILD, 'quantity_dump'), { input: `${lines.join('\n')}\n` });
  return out.toString().trim().split('\n').map((line) => (line.startsWith('refused') ? { refused: line } : Object.fromEntries(line.split(' ').map((x, i) => [['nominal', 'low', 'high'][i], Number(x)]))));
}

// IEC 60062 codes over the values of E12 (IEC 60063).
const e12 = [[1, 0], [1, 2], [1, 5], [1, 8], [2, 2], [2, 7], [3, 3], [3, 9], [4, 7], [5, 6], [6, 8], [8, 2]];
const capacitorCodes = e12.flatMap(([a, b]) => [['p', 1e-12], ['n', 1e-9], ['u', 1e-6]].map(([letter, scale]) => ({ text: `${a}${letter}${b}`, value: (a + b / 10) * scale })));
const resistorCodes = e12.flatMap(([a, b]) => [['R', 1], ['k', 1e3], ['M', 1e6]].map(([letter, scale]) => ({ text: `${a}${letter}${b}`, value: (a + b / 10) * scale })));

const grammar = await load('electro-grammar');
const parse = grammar.parse ?? grammar.default.parse;
const ours = read([...capacitorCodes.map((c) => `capacitance ${c.text}`), ...resistorCodes.map((c) => `resistance ${c.text}`)]);
capacitorCodes.forEach((code, i) => {
  check(near(ours[i].nominal, code.value), `${code.text} by arithmetic: ${JSON.stringify(ours[i])}`);
  const component = parse(`cap ${code.text}`);
  check(component?.capacitance !== undefined && near(ours[i].nominal, component.capacitance), `${code.text} by electro-grammar: ${component?.capacitance}`);
});
resistorCodes.forEach((code, i) => {
  const mine = ours[capacitorCodes.length + i];
  check(near(mine.nominal, code.value), `${code.text} by arithmetic: ${JSON.stringify(mine)}`);
  const component = parse(`resistor ${code.text}`);
  check(component?.resistance !== undefined && near(mine.nominal, component.resistance), `${code.text} by electro-grammar: ${component?.resistance}`);
});

// Descriptions with tolerance.
const described = ['100 nF', '4.7 uF', '22 pF', '1 nF', '0.47 uF', '10 uF'].flatMap((value) => ['5%', '10%', '20%'].map((tolerance) => [value, tolerance]));
read(described.map(([value, tolerance]) => `capacitance ${value} ±${tolerance}`)).forEach((mine, i) => {
  const [value, tolerance] = described[i];
  const component = parse(`capacitor ${value.replace(' ', '')} ${tolerance}`);
  check(component?.capacitance !== undefined && near(mine.nominal, component.capacitance), `${value}: ${JSON.stringify(component)}`);
  if (component?.tolerance) check(near(mine.high, component.capacitance * (1 + component.tolerance / 100)), `${value} ${tolerance}: ${JSON.stringify(component)}`);
});

// Prefixes and units.
const math = (await load('mathjs')).default ?? (await load('mathjs'));
const units = [['capacitance', 'F', ['p', 'n', 'u', '']], ['resistance', 'ohm', ['m', '', 'k', 'M']], ['voltage', 'V', ['u', 'm', '', 'k']]];
const amounts = ['1', '2.2', '4.7', '0.33', '68', '150', '470'];
const rows = units.flatMap(([name, unit, prefixes]) => prefixes.flatMap((prefix) => amounts.map((amount) => ({ name, unit, text: `${amount} ${prefix}${unit}` }))));
read(rows.map((row) => `${row.name} ${row.text}`)).forEach((mine, i) => {
  const theirs = math.unit(rows[i].text).toNumber(rows[i].unit);
  check(near(mine.nominal, theirs), `${rows[i].text} by mathjs: ${theirs}, here ${JSON.stringify(mine)}`);
});

console.log(`${passed} passed, ${failed} failed`);
process.exit(failed > 0 ? 1 : 0);
