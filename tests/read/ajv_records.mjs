// ajv_records.mjs FILE: writes what npm ajv says about every record and about 500 damaged copies of them, for
// ajv_records_test.cc. Run in the project's root. Fixed seed, no network: the packages are pinned in .ci.
import { readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { packages } from './plain_tree.mjs';

const Ajv = packages('ajv').default;
const YAML = packages('yaml');
const COPIES = 500;

/** Numbers from 0 up to `most`, the same in every run (mulberry32). */
let state = 393;
function draw(most) {
  state = (state + 0x6d2b79f5) | 0;
  let t = Math.imul(state ^ (state >>> 15), 1 | state);
  t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
  return ((t ^ (t >>> 14)) >>> 0) % most;
}
const pick = (list) => list[draw(list.length)];

const validators = new Map();
function validator(kind) {
  if (!validators.has(kind)) {
    const shape = JSON.parse(readFileSync(`schema/shapes/${kind}.schema.json`, 'utf8'));
    validators.set(kind, new Ajv({ strict: false, allErrors: false, logger: false }).compile(shape));
  }
  return validators.get(kind);
}

/** The YAML of a file: all of it, or the head of a page. */
function yamlOf(file) {
  const text = readFileSync(file, 'utf8');
  return file.endsWith('.md') ? text.split(/^---$/m)[1].replace(/^\n/, '') : text;
}

function records() {
  const list = [{ kind: 'handbook', file: 'content/handbook.yaml' }, { kind: 'fonts', file: 'schema/fonts.yaml' }];
  for (const folder of readdirSync('content', { withFileTypes: true })) {
    if (!folder.isDirectory()) continue;
    for (const name of readdirSync(`content/${folder.name}`)) list.push({ kind: folder.name, file: `content/${folder.name}/${name}` });
  }
  for (const name of readdirSync('schema/tables')) list.push({ kind: 'table', file: `schema/tables/${name}` });
  return list.map((one) => ({ ...one, text: yamlOf(one.file) }));
}

/** Every list and mapping of a value, itself included. */
function containers(value, found = []) {
  if (value === null || typeof value !== 'object') return found;
  found.push(value);
  for (const inner of Object.values(value)) containers(inner, found);
  return found;
}

const STRANGE = [null, true, 0, -1, 1.5, 1000000, '', 'x', 'none', 'not stated', '7.9 mm', [], {}, ['x'], ['x', 'x'], { id: 'x' }];

/** Upper case of a to z alone: the capital of µ is a Greek letter, which our reader refuses in a name and no shape speaks of. */
const capitals = (text) => text.replace(/[a-z]/g, (letter) => letter.toUpperCase());

/** One slip of the pen somewhere in `record`. */
function damage(record) {
  const place = pick(containers(record).filter((one) => Object.keys(one).length > 0));
  const key = pick(Object.keys(place));
  const value = place[key];
  const slips = [
    () => { Array.isArray(place) ? place.splice(Number(key), 1) : delete place[key]; },
    () => { place[key] = structuredClone(pick(STRANGE)); },
    () => { Array.isArray(place) ? place.push(structuredClone(value)) : (place[`${key}s`] = value); },
    () => { if (!Array.isArray(place)) { delete place[key]; place[key.slice(0, -1)] = value; } },
    () => { place[key] = typeof value === 'string' ? capitals(value) : [value]; },
    () => { place[key] = typeof value === 'string' ? value + 'é'.repeat(draw(3000)) : String(value); },
    () => { place[key] = typeof value === 'number' ? value * pick([-1, 1000, 0.5]) : { value }; },
    () => { place[key] = Array.isArray(value) ? [] : structuredClone(pick(Object.values(pick(containers(record)))) ?? null); },
    () => { place[key] = typeof value === 'string' ? value + pick(['.', ' ', 'x', '-', '']) : value; },
  ];
  pick(slips)();
}

const list = records();
const whole = list.map(({ kind, file, text }) => ({ kind, file, text, valid: validator(kind)(YAML.parse(text)) }));
const damaged = [];
while (damaged.length < COPIES) {
  const { kind, file, text } = pick(list);
  const copy = YAML.parse(text);
  const before = JSON.stringify(copy);
  for (let slips = 1 + draw(2); slips > 0; --slips) damage(copy);
  const after = JSON.stringify(copy);
  if (after !== before) damaged.push({ kind, file, text: after, valid: validator(kind)(JSON.parse(after)) });
}
writeFileSync(process.argv[2], JSON.stringify({ whole, damaged }));
