// hostile_check.mjs PROGRAM [ROUNDS]: forty strings that would be markup, script or an address if anything took them for it, put into every
// field of prose of a record of each kind (npm yaml writes them). The bound pages, the single file and the search show them as text, in Chromium, and so does
// a ticket that is planned of them. Each round gives each field the next string; after forty every field has had all.
import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import os from 'node:os';
import path from 'node:path';

import { count, fileAddress, finish, hold } from './tally.mjs';

const packages = createRequire(path.resolve(import.meta.dirname, '../../../.ci/package.json'));
const { chromium } = packages('playwright-core');
const { isScalar, parseDocument, visit } = packages('yaml');
const program = path.resolve(process.argv[2]);
const HIT = 'window.hit=1';
const STRINGS = [
  `<script>${HIT}</script>`, `</script><script>${HIT}</script>`, `<img src=x onerror=${HIT}>`, `<svg onload=${HIT}>`, `"><script>${HIT}</script>`,
  `' onmouseover='${HIT}`, `" onfocus="${HIT}" autofocus="`, `<a href="javascript:${HIT}">a</a>`, `javascript:${HIT}`, `</title><script>${HIT}</script>`,
  `</style><script>${HIT}</script>`, `<!--<script>${HIT}</script>-->`, `--><script>${HIT}</script>`, `<![CDATA[<script>${HIT}</script>]]>`,
  `<iframe srcdoc="<script>parent.${HIT}</script>">`, `<body onload=${HIT}>`, `<math><mtext><script>${HIT}</script></mtext></math>`,
  `<details open ontoggle=${HIT}>`, `<base href="https://example.invalid/">`, `<meta http-equiv=refresh content=0>`, `<link rel=stylesheet href=x>`,
  `<form action=x><input></form>`, `<object data=x></object>`, `<embed src=x>`, `<video><source onerror=${HIT}></video>`, `&lt;b&gt;`, `&#60;b&#62;`,
  `&amp;&quot;&apos;`, `<b>bold</b>`, `\\x3Cscript\\x3E`, `\\u003cscript\\u003e`, `\${${HIT}}`, `{{${HIT}}}`, `\`${HIT}\``, `%3Cscript%3E`, `';${HIT};//`,
  `";${HIT};//`, `\\";${HIT};//`, `</textarea><script>${HIT}</script>`, `<plaintext>`];
// One record of each kind, the watch and the drawer among them.
const KINDS = readdirSync('content', { withFileTypes: true }).filter((entry) => entry.isDirectory() && !['page', 'chart'].includes(entry.name)).map((entry) => entry.name);
// Fields that are no prose: names of records, codes, quantities, where a work names its places.
const CODES = /^(id|.*classes.*|.*basis.*|.*aliases.*|.*signs.*|designation|formula|address|edition|licence|date-read|year|form|kind)$/;
let put = 0;

/** How long the fields of a kind may be at most, by the last part of their names: what is too long would be refused, and nothing seen. */
function limitsOf(kind) {
  const limits = new Map();
  const walk = (name, node) => {
    if (node === null || typeof node !== 'object') return;
    if (node.maxLength !== undefined) limits.set(name, Math.min(node.maxLength, limits.get(name) ?? Infinity));
    for (const [key, inner] of Object.entries(node)) {
      if (key === 'properties') for (const [field, shape] of Object.entries(inner)) walk(field, shape);
      else walk(name, inner);
    }
  };
  walk('', JSON.parse(readFileSync(`schema/shapes/${kind}.schema.json`, 'utf8')));
  return limits;
}

/** A record with a string behind every stretch of prose that has room for it, and the strings. */
function spoiled(kind, text, next) {
  const limits = limitsOf(kind);
  const document = parseDocument(text);
  const used = [];
  visit(document, {
    Scalar(key, node, ancestors) {
      const names = ancestors.filter((one) => one.key !== undefined).map((one) => String(one.key.value)).join('.');
      const prose = isScalar(node) && key === 'value' && typeof node.value === 'string' && / [a-z]/i.test(node.value) && !CODES.test(names);
      if (!prose || /^([-0-9.]+|not) /.test(node.value)) return;  // a quantity
      if (/(^|\.)short(\.|$)/.test(names)) return;  // harm and what keeps it off share one line, and fill it
      const one = next();
      const room = (limits.get(names.split('.').at(-1)) ?? Infinity) - one.length - 1;
      if (room < 1) return;
      used.push(one);
      node.value = `${node.value.slice(0, room)} ${one}`;
      node.type = 'QUOTE_DOUBLE';
    },
  });
  return { text: document.toString({ lineWidth: 0 }), used };
}

const folder = mkdtempSync(path.join(os.tmpdir(), 'hostile-'));
const site = path.join(folder, 'out/handbook');

/** The content with hostile records, bound; the pages of those records and what was put into them. */
function bindSpoiled(round) {
  rmSync(path.join(folder, 'content'), { recursive: true, force: true });
  cpSync('content', path.join(folder, 'content'), { recursive: true });
  const pages = new Map();
  let number = round;
  for (const kind of KINDS) {
    const name = readdirSync(path.join('content', kind)).sort()[0];
    const file = path.join(folder, 'content', kind, name);
    const { text, used } = spoiled(kind, readFileSync(file, 'utf8'), () => STRINGS[number++ % STRINGS.length]);
    writeFileSync(file, text);
    put += used.length;
    pages.set(`${kind}/${name.replace('.yaml', '.html')}`, used);
  }
  hold(`${number - round} strings are put in, each of the ${STRINGS.length} at least once`, number - round >= STRINGS.length);
  const bound = spawnSync(program, ['bind', 'content', '--only', 'html', '--to', 'out', '--quiet', '--schema', path.resolve('schema')], { cwd: folder, encoding: 'utf8' });
  hold(`the content is bound: ${bound.stderr.split('\n').filter((line) => /: error:/.test(line)).slice(0, 5).join('\n')}`, bound.status === 0);
  return bound.status === 0 ? pages : null;
}

const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox', '--disable-gpu'] });
const page = await (await browser.newContext({ offline: true })).newPage();
page.on('dialog', (dialog) => { hold(`a dialog: ${dialog.message()}`, false); dialog.dismiss(); });
page.on('request', (request) => hold(`asked for ${request.url()}`, /^(file|data):/.test(request.url())));
page.on('pageerror', (error) => hold(`${page.url()}: ${error.message}`, false));
const plain = (text) => text.replace(/\s+/g, '');

async function hasNoHit(what) {
  hold(`${what} runs nothing of a record`, await page.evaluate(() => window.hit === undefined));
  hold(`${what} has no element of a record`, (await page.locator('iframe, object, embed, form:not(.calculator), base, img, video, math').count()) === 0);
}

const addressOf = (name) => fileAddress(site, name);

async function lookAtEntries(pages) {
  for (const [name, used] of pages) {
    if (!existsSync(path.join(site, 'html', name))) continue;
    await page.goto(addressOf(`html/${name}`));
    await hasNoHit(name);
    const text = plain(await page.evaluate(() => document.body.textContent));
    for (const one of new Set(used)) count(text.includes(plain(one)) ? 1 : 0);
  }
}

async function lookAtSearchAndWhole() {
  for (const name of ['html/index.html', 'html/contents.html', 'handbook.html']) {
    await page.goto(addressOf(name));
    for (const query of ['script', 'window.hit', 'bold']) {
      await page.fill('#search_field', query);
      await page.waitForFunction((words) => globalThis.benchleafAnswered === words, query);
      await hasNoHit(`${name}, search for ${query}`);
    }
  }
  const whole = plain(await page.evaluate(() => document.body.textContent));
  for (const one of STRINGS) hold(`shown as text: ${one}`, whole.includes(plain(one)));
}

/** The form shows hostile records to choose from, and plans a watch whose owner says all of it. */
async function lookAtTicket() {
  await page.goto(addressOf('html/ticket.html'));
  await page.waitForSelector('.ticket-form');
  await hasNoHit('the ticket form');
  const half = STRINGS.length / 2;
  await page.evaluate(() => document.querySelectorAll('.part').forEach((one) => { one.open = true; }));
  await page.fill('#answer-found', STRINGS.slice(0, half).join(' '));
  await page.fill('#answer-wants', STRINGS.slice(half).join(' '));
  await page.click('.ticket-form button[type=submit]');
  await page.waitForSelector('.plan:not([hidden]) .ticket h3', { timeout: 60000 });
  await hasNoHit('a planned ticket');
  const text = plain(await page.locator('.ticket').textContent());
  for (const one of STRINGS) hold(`shown as text on the ticket: ${one}`, text.includes(plain(one)));
}

for (let round = 0; round < Number(process.argv[3] ?? 1); ++round) {
  const pages = bindSpoiled(round);
  if (pages === null) break;
  await lookAtEntries(pages);
  if (round > 0) continue;  // search, single file and form take the same words by the same ways
  await lookAtSearchAndWhole();
  await lookAtTicket();
}
await browser.close();
rmSync(folder, { recursive: true });
console.log(`${put} strings put in`);
finish(1);
