// findings_files.mjs PROGRAM [only NAME]: what `check` writes as JSON and as SARIF, held against the schema of SARIF 2.1.0 (OASIS) that
// npm @microsoft/jest-sarif carries, by the ajv that comes with it. Run in the project's root; the packages are pinned in .ci.
import { execFileSync, spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import os from 'node:os';
import path from 'node:path';

const packages = createRequire(path.resolve(import.meta.dirname, '../../.ci/package.json'));
const Ajv = createRequire(packages.resolve('@microsoft/jest-sarif'))('ajv');  // a version that knows draft-04
const schema = packages('@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json');
const validate = new Ajv({ schemaId: 'auto', meta: false, format: false, allErrors: true })
  .addMetaSchema(createRequire(packages.resolve('@microsoft/jest-sarif'))('ajv/lib/refs/json-schema-draft-04.json')).compile(schema);
const program = path.resolve(process.argv[2]);
const RECORDS = 5000;
let checks = 0;

function hold(what, right) {
  ++checks;
  if (right) return;
  console.error(`wrong: ${what}`);
  process.exitCode = 1;
}

/** Runs `check` on a content of files; gives exit code, findings of --json, results of --sarif. */
function check(files) {
  const folder = mkdtempSync(path.join(os.tmpdir(), 'findings-'));
  const content = path.join(folder, 'content');
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(path.dirname(path.join(content, name)), { recursive: true });
    writeFileSync(path.join(content, name), text);
  }
  const words = ['check', '--json', '--sarif', 'log.sarif', '--schema', path.resolve('schema'), '--content', 'content'];
  const run = spawnSync(program, words, { cwd: folder, maxBuffer: 1 << 28, encoding: 'utf8' });
  const log = JSON.parse(readFileSync(path.join(folder, 'log.sarif'), 'utf8'));
  rmSync(folder, { recursive: true });
  hold(`a log that the schema takes: ${JSON.stringify(validate.errors?.slice(0, 3))}`, validate(log));
  return { code: run.status, findings: JSON.parse(run.stdout).findings, log, results: log.runs[0].results };
}

const handbook = readFileSync('tests/cases/handbook.yaml', 'utf8');

/** Line and column of a stretch of text, from 1, in code points. */
function place(text, stretch) {
  const before = text.slice(0, text.indexOf(stretch)).split('\n');
  return { line: before.length, column: [...before.at(-1)].length + 1 };
}

function cleanTree() {
  const files = {};
  const folder = 'tests/cases/clean/content';
  const names = execFileSync('find', [folder, '-type', 'f'], { encoding: 'utf8' }).trim().split('\n');
  for (const name of names) files[path.relative(folder, name)] = readFileSync(name, 'utf8');
  files['handbook.yaml'] ??= handbook;
  const { code, findings, results } = check(files);
  hold('a clean tree ends with 0', code === 0);
  hold('a clean tree gives an empty list of results', Array.isArray(results) && results.length === 0);
  hold('a clean tree gives no findings in JSON', findings.length === 0);
}

function brokenTree() {
  const term = 'id: grüße\nterm: "Grüße 𝄞"\nmeaning: Words.\nsee: [term/nowhere]\n';
  const wide = 'id: wide\nterm: w\nalso: ["größer 𝄞 µ", größer 𝄞 µ]\nmeaning: "ä 𝄞 µ"\nsee: ["𝄞", nowhere-at-all]\n';
  const cell = readFileSync('tests/cases/clean/content/cell/' + execFileSync('ls', ['tests/cases/clean/content/cell'], { encoding: 'utf8' })
    .split('\n')[0], 'utf8');
  const flow = cell.replace(/^size:.*$/m, 'size: { height: 5.4 mm, "µ𝄞": 1, diameter: 7.9 xm }');
  const name = /^id: (\S+)/m.exec(cell)[1];
  const { code, findings, results, log } = check({ 'handbook.yaml': handbook, 'term/grusse.yaml': term, 'term/wide.yaml': wide, [`cell/${name}.yaml`]: flow });
  hold('a broken tree ends with 1', code === 1);
  hold('columns are counted in code points', log.runs[0].columnKind === 'unicodeCodePoints');
  hold('JSON and SARIF carry the same number', findings.length === results.length && results.length >= 4);
  const faults = [
    [`cell/${name}.yaml`, flow, 'xm }'],
    ['term/wide.yaml', wide, 'nowhere-at-all'],
    ['term/wide.yaml', wide, '"𝄞", nowhere'],
  ];
  for (const [file, text, stretch] of faults) {
    const { line, column } = place(text, stretch);
    const at = results.map(({ locations: [one] }) => one?.physicalLocation).filter((one) => one?.artifactLocation.uri === `content/${file}`)
      .map(({ region }) => `${region.startLine}:${region.startColumn}`);
    hold(`a result at ${file}:${line}:${column}, not only at ${at}`, at.includes(`${line}:${column}`));
    hold(`a finding at ${file}:${line}:${column}`, findings.some((one) => one.file === `content/${file}` && one.line === line && one.column === column));
  }
}

function manyRecords() {
  const files = { 'handbook.yaml': handbook };
  for (let i = 0; i < RECORDS; ++i) {
    const id = `word-${String(i).padStart(4, '0')}`;
    files[`term/${id}.yaml`] = `id: ${id}\nterm: word ${i}\nmeaning: A word.\nsee: [term/nowhere-${i}]\n`;
  }
  const begun = process.hrtime.bigint();
  const { code, findings, results } = check(files);
  const seconds = Number(process.hrtime.bigint() - begun) / 1e9;
  hold('5,000 records with a fault end with 1', code === 1);
  for (const [form, list, at] of [
    ['JSON', findings, (one) => [one.file, one.line, one.column]],
    ['SARIF', results, ({ locations: [{ physicalLocation: { artifactLocation, region } }] }) => [artifactLocation.uri, region.startLine, region.startColumn]],
  ]) {
    const places = list.map(at);
    const unknown = list.filter((one) => (one.rule ?? one.ruleId) === 'reference.unknown');
    hold(`${form} carries all ${RECORDS} findings, not ${unknown.length}`, unknown.length === RECORDS);
    hold(`${form}: each record has its own`, new Set(unknown.map((one) => at(one)[0])).size === RECORDS);
    const sorted = places.every((one, i) => i === 0 || places[i - 1][0] < one[0] || (places[i - 1][0] === one[0] && places[i - 1][1] <= one[1]));
    hold(`${form} is sorted`, sorted);
  }
  console.log(`${RECORDS} records with ${findings.length} findings, read, checked, written twice and validated: ${seconds.toFixed(1)} s`);
}

/** A checker that takes anything holds nothing. */
function checkerRefuses() {
  hold('the schema refuses a log without results of a shape', !validate({ version: '2.1.0', runs: [{ results: [{}] }] }));
}

cleanTree();
brokenTree();
manyRecords();
checkerRefuses();
hold('enough was looked at', checks >= 20);
