// browser_check.mjs BOUND PROGRAM PART [PAGE]: the bound pages in Debian's Chromium, opened from the disk with no network.
//   axe      npm axe-core (WCAG 2.0 to 2.2 A and AA, best practice) finds nothing: each template in light and narrow, dark and wide
//   every    the same on every page in all four: light and dark, narrow and wide
//   walk     search, entry, same-size cell, calculator, kept link, theme, keyboard
//   page     axe-core on PAGE alone
//   vectors  every vector of the calculators gives the text of the terminal
//   ticket   the form plans what the command plans for the file that it saves; its slips are said beside their fields
//   size     pictures are true to a card (ISO/IEC 7810 ID-1, 85.60 mm) once the screen is matched
// Nothing but file: and data: is ever asked for. The packages are pinned in .ci.
import { execFile, spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import path from 'node:path';

import { fileAddress, finish, hold } from './tally.mjs';

const packages = createRequire(path.resolve(import.meta.dirname, '../../../.ci/package.json'));
const { chromium } = packages('playwright-core');
const axe = readFileSync(packages.resolve('axe-core/axe.min.js'), 'utf8');
const [bound, program, part, one] = process.argv.slice(2);
const site = path.resolve(bound, 'html');
const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

const address = (name) => fileAddress(site, name);

function pages(folder = '') {
  return readdirSync(path.join(site, folder), { withFileTypes: true }).flatMap((entry) => {
    const name = path.posix.join(folder, entry.name);
    return entry.isDirectory() ? pages(name) : name.endsWith('.html') ? [name] : [];
  }).sort();
}

const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox', '--disable-gpu'] });

/** A page of its own, with the address of everything it asks for. */
async function open(options = {}) {
  const context = await browser.newContext({ offline: true, bypassCSP: options.check ?? false, viewport: { width: options.width ?? 1280, height: 900 },
    colorScheme: options.scheme ?? 'light', javaScriptEnabled: options.script ?? true });
  const page = await context.newPage();
  page.on('request', (request) => {
    if (!/^(file|data):/.test(request.url())) hold(`asked for ${request.url()}`, false);
  });
  page.on('pageerror', (error) => hold(`${page.url()}: ${error.message}`, false));
  page.on('console', (message) => {
    if (message.type() === 'error') hold(`${page.url()}: ${message.text()}`, false);
  });
  return page;
}

async function inspect(page, what) {
  if (await page.evaluate(() => globalThis.axe === undefined)) await page.evaluate(axe);
  const { violations } = await page.evaluate((values) => axe.run(document, { runOnly: { type: 'tag', values }, resultTypes: ['violations'], preload: false }), RULES);
  for (const one of violations) hold(`${what}: ${one.id}: ${one.help}: ${one.nodes[0].html.slice(0, 160)}`, false);
  const overflow = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  hold(`${what} is ${overflow} px wider than the window`, overflow <= 0);
}

/** The first page of each template, and the fullest one of the records. */
function templates() {
  const first = new Map();
  for (const name of pages()) {
    const kind = name.includes('/') ? name.split('/')[0] : name;
    if (!first.has(kind)) first.set(kind, name);
  }
  return [...first.values(), 'cell/sr754w.html', 'chemistry/white-vinegar.html', 'procedure/clear-alkaline-crust.html', 'calculator/gasket-fit.html'];
}

/* A ban, a fault, first aid, two cells, nothing. */
const QUERIES = ['bleach and vinegar', 'vinegar on acrylic', 'dim display', 'cell swallowed', '393 or 309', 'qqqqq'];

const PAIRS = [['light', 320], ['dark', 1280]];
const OTHER_PAIRS = [['dark', 320], ['light', 1280]];

async function axeOnTemplates(pairs = PAIRS) {
  const names = [...new Set(templates())];
  for (const [scheme, width] of pairs) {
    const page = await open({ scheme, width, check: true });
    for (const name of names) {
      await page.goto(address(name));
      if (/^(calculator\/|ticket|labels)/.test(name)) await page.waitForSelector('form.calculator');
      await inspect(page, `${name}, ${scheme}, ${width} px`);
    }
    await page.goto(address('index.html'));
    await page.fill('#search_field', '7.9x5.4');
    await page.waitForSelector('.results a');
    await inspect(page, `answers, ${scheme}, ${width} px`);
    for (const query of QUERIES) {
      await page.fill('#search_field', query);
      await page.waitForFunction((words) => globalThis.benchleafAnswered === words, query);
      await inspect(page, `answers to ${query}, ${scheme}, ${width} px`);
    }
    await page.goto(address('calculator/gasket-fit.html') + '#seat=31.85mm&section=0.8mm&series=round-0-8');
    await page.waitForSelector('.answer');
    await inspect(page, `reckoned, ${scheme}, ${width} px`);
    await page.context().close();
  }
}

async function axeOnEveryPage() {
  await axeOnTemplates(OTHER_PAIRS);
  const names = pages();
  const work = async (first) => {
    const page = await open({ check: true });
    for (let i = first; i < names.length; i += 2) {
      await page.goto(address(names[i]));
      for (const [scheme, width] of [...PAIRS, ...OTHER_PAIRS]) {
        await page.emulateMedia({ colorScheme: scheme });
        await page.setViewportSize({ width, height: 900 });
        await inspect(page, `${names[i]}, ${scheme}, ${width} px`);
      }
    }
  };
  await Promise.all([work(0), work(1)]);
  hold(`${names.length} pages`, names.length >= 500);
}

async function axeOnOnePage() {
  const page = await open({ check: true });
  await page.goto(address(one));
  await inspect(page, one);
}

/** Without a script each record is reached from the first page in three steps. */
function reachable() {
  const links = (name) => [...readFileSync(path.join(site, name), 'utf8').matchAll(/<a [^>]*href="([^"#]*)/g)]
    .map(([, href]) => path.posix.normalize(path.posix.join(path.posix.dirname(name), href)));
  let edge = ['index.html'];
  const seen = new Set(edge);
  for (let step = 0; step < 3; ++step) {
    edge = [...new Set(edge.flatMap(links))].filter((name) => name.endsWith('.html') && !seen.has(name));
    edge.forEach((name) => seen.add(name));
  }
  for (const name of pages()) hold(`${name} is reached in three steps`, seen.has(name));
}

async function withoutScript() {
  const page = await open({ script: false });
  await page.goto(address('calculator/gasket-fit.html'));
  hold('a calculator names its inputs without a script', (await page.locator('table.inputs tbody tr').count()) >= 8);
  hold('no dead control stands there', (await page.locator('input, button').count()) === 0);
  await page.goto(address('index.html'));
  hold('no dead control stands on the first page', (await page.locator('input, button').count()) === 0);
}

/** The single file asks for no other: its policy lets its own scripts run, and every address leads to a place in it. */
async function singleFile() {
  const page = await open();
  const file = fileAddress(bound, 'handbook.html');
  page.on('request', (request) => hold(`the single file asks for ${request.url()}`, request.url() === file));
  await page.goto(file);
  const lost = await page.evaluate(() => [...document.querySelectorAll('a[href]')].map((link) => link.getAttribute('href'))
    .filter((href) => !href.startsWith('#') || document.getElementById(href.slice(1)) === null));
  hold(`no place for ${lost.slice(0, 5)}`, lost.length === 0);
  const twice = await page.evaluate(() => {
    const names = [...document.querySelectorAll('[id]')].map((one) => one.id);
    return names.length - new Set(names).size;
  });
  hold(`${twice} names stand twice`, twice === 0);
  await page.fill('#search_field', '393');
  await page.waitForSelector('.results a');
  await page.locator('.results a').first().click();
  hold('the search leads to the entry', page.url() === `${file}#cell_sr754w`);
  hold('the entry is in sight', await page.locator('#cell_sr754w h3').first().isVisible());
}

async function walk() {
  reachable();
  await singleFile();
  await withoutScript();
  const page = await open();
  await page.goto(address('index.html'));
  await page.fill('#search_field', '393');
  await page.waitForSelector('.results a');
  const first = page.locator('.results a').first();
  hold('393 brings SR754W first', (await first.textContent()).includes('SR754W'));
  hold('the answer stands in the card', /7\.9\s×\s5\.4\smm.*1\.55\sV/.test(await page.locator('.results .card').first().textContent()));
  hold('the number of answers is said', /^\d+ answers?$/.test(await page.locator('.search-status').textContent()));
  await first.click();
  hold('the entry is open', page.url() === address('cell/sr754w.html'));
  await page.locator('main a', { hasText: '309' }).first().click();
  hold('the same-size cell is open', /cell\/sr754sw\.html/.test(page.url()));
  await page.goto(address('calculator/gasket-fit.html'));
  await page.waitForSelector('form.calculator');
  hold('the series have their names to choose from', (await page.locator('#gasket-fit-series-choices option').count()) > 8);
  await page.fill('input[name=seat]', '31.85 mm');
  await page.fill('input[name=section]', '0.8 mm');
  await page.fill('input[name=series]', 'round-0-8');
  await page.keyboard.press('Enter');
  await page.waitForSelector('.answer');
  hold('gasket-fit says 31 mm', /31\smm/.test(await page.locator('.answer').textContent()));
  hold('gasket-fit says 2.74 %', /2\.74\s%/.test(await page.locator('.outputs').textContent()));
  const kept = page.url();
  hold('the address keeps what was typed', kept.includes('seat='));
  const again = await open();
  await again.goto(kept);
  await again.waitForSelector('.answer');
  hold('a kept link opens the same answer', /31\smm/.test(await again.locator('.answer').textContent()));
  await again.fill('input[name=seat]', '31.85 litres');
  await again.keyboard.press('Enter');
  await again.waitForSelector('input[name=seat][aria-invalid]');
  hold('a slip is said beside its field', (await again.locator('#gasket-fit-seat-error').textContent()).length > 10);
  await keyboard();
  await theme();
}

async function keyboard() {
  const page = await open();
  await page.goto(address('cell/sr754w.html'));
  await page.focus('#search_field');
  await page.keyboard.type('ag5');
  await page.waitForSelector('.results a');
  await page.keyboard.press('ArrowDown');
  hold('an arrow leads to the first answer', await page.evaluate(() => document.activeElement.closest('.results') !== null));
  await page.keyboard.press('Enter');
  await page.waitForURL('**/cell/lr754.html');
  await page.fill('#search_field', 'acetome');
  await page.waitForSelector('.results a');
  hold('one slip finds acetone', /acetone/i.test(await page.locator('.results a').first().textContent()));
  await page.keyboard.press('Escape');
  hold('escape closes the answers', await page.locator('.search-panel').isHidden());
}

async function theme() {
  const page = await open();
  await page.goto(address('cell/sr754w.html'));
  const ground = () => page.evaluate(() => getComputedStyle(document.body).backgroundColor);
  const light = await ground();
  await page.click('.theme');
  hold('the switch changes the ground', (await ground()) !== light);
  await page.reload();
  hold('the choice lasts', (await ground()) !== light);
}

/** Requests of the file that the calculators are held against: `NAME; key=value; ...` before ` => `. */
function vectors() {
  const requests = new Set();
  for (const line of readFileSync('tests/bench/outside_vectors.txt', 'utf8').split('\n')) {
    const request = line.split(' | ')[0].trim();
    if (/^[a-z-]+;/.test(request)) requests.add(request);
  }
  return [...requests];
}

/** What the terminal says, while the page still reckons; nothing where it refuses. */
const said = (name, inputs) => new Promise((done) => {
  execFile(program, ['reckon', '--quiet', name, ...inputs], { encoding: 'utf8' }, (error, text) => done(error === null ? text : null));
});

async function answersOfVectors() {
  const page = await open();
  const requests = vectors();
  hold(`${requests.length} vectors`, requests.length >= 80);
  let shown = '';
  for (const request of requests) {
    const [name, ...inputs] = request.split('; ');
    const pairs = inputs.map((input) => [input.slice(0, input.indexOf('=')), input.slice(input.indexOf('=') + 1)]);
    const terminal = said(name, inputs);
    if (name !== shown) await page.goto(address(`calculator/${name}.html`));
    shown = name;
    await page.waitForSelector('.calculator');
    await page.evaluate(() => benchleafAsk({ ask: 'reckon' }));  // from here on it is loaded
    await page.evaluate((hash) => new Promise((done) => {
      addEventListener('hashchange', () => setTimeout(done), { once: true });
      location.hash = hash;
    }), new URLSearchParams(pairs).toString());
    const wanted = await terminal;
    const timeout = wanted === null ? 200 : 5000;  // a refusal shows none; an answer may be slow where others run beside it
    const text = await page.locator('.result pre').textContent({ timeout }).catch(() => null);
    hold(`${request}: the page says ${text}`, text === wanted);
  }
}

const unfold = (page) => page.evaluate(() => document.querySelectorAll('.part').forEach((one) => { one.open = true; }));

/** One of some: buttons, a list or a field, by how many there are. */
async function choose(page, id, value) {
  const control = page.locator(`[id="answer-${id}"]`);
  if ((await control.count()) === 0) return page.locator(`input[name="answer-${id}"][value="${value}"] + label`).click();
  return (await control.evaluate((one) => one.tagName)) === 'SELECT' ? control.selectOption(value) : control.fill(value);
}

/** Fills the form as somebody would who has the back open. */
async function fillTicket(page) {
  await page.goto(address('ticket.html'));
  await page.waitForSelector('.ticket-form');
  await unfold(page);
  await page.fill('#answer-number', 'D-004');
  await page.fill('#answer-found', 'Grey figures gone, "white" crust: at the minus leaf.');
  await page.fill('#answer-wants', 'Worn again; marks of age may stay.');
  for (const [id, value] of [['module', 'lcd-no-lamp'], ['back', 'snap'], ['case-metal', 'brass'], ['case-surface', 'gold-plate'], ['lume', 'none'],
    ['crust-colour', 'white'], ['crystal', 'acrylic-press-fit'], ['nail', 'catches'], ['gasket', 'round-0-7']]) await choose(page, id, value);
  for (const [id, words] of [['crust-place', 'at the minus leaf'], ['crystal-size-diameter', '26.0 mm'], ['crystal-size-thickness', '1.5 mm'],
    ['gasket-seat', '28.60 mm'], ['groove-depth', '0.55 mm'], ['groove-width', '0.95 mm'], ['lug-width', '18 mm'], ['on-hand-grades', 'P800, P1200, P2500']]) {
    await page.fill(`#answer-${id}`, words);
  }
  const tick = async (field, value) => {
    const box = page.locator(`[id^="answer-${field}-"][value="${value}"]`);
    const list = page.locator(`details:has([id^="answer-${field}-"][value="${value}"])`);
    await list.evaluateAll((all) => all.forEach((one) => { one.open = true; }));
    await box.check();
  };
  await tick('cells-found', 'lr754');
  await tick('symptoms', 'blank-display');
  await tick('inside', 'polariser');
  await tick('inside', 'epoxy-board');
  await tick('on-hand-liquids', 'white-vinegar');
  await page.selectOption('#answer-on-hand-gaskets-series-1', 'round-0-7');
  await page.fill('#answer-on-hand-gaskets-inside-1', '28 mm');
}

async function planned(page) {
  await page.click('.ticket-form button[type=submit]');
  await page.waitForFunction(() => /cannot be used|is planned/.test(document.querySelector('.plan-bar .search-status').textContent), null, { timeout: 60000 });
  return page.evaluate(() => globalThis.benchleafTicketText);
}

async function saved(page, name, folder) {
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name }).click()]);
  const file = path.join(folder, download.suggestedFilename());
  await download.saveAs(file);
  return file;
}

/** The command's ticket, from a folder where no book was bound: with one it names printed pages, which the page links instead. */
function ticketOf(file, folder) {
  return spawnSync(path.resolve(program), ['ticket', '--quiet', '--content', path.resolve('content'), file, '--to', folder],
    { cwd: folder, encoding: 'utf8' });
}

async function ticketForm() {
  const folder = mkdtempSync(path.join(tmpdir(), 'benchleaf-form-'));
  const page = await open();
  await fillTicket(page);
  const text = await planned(page);
  hold('the form plans', text.includes('2.14 %') && text.includes('[ ]'));
  hold('what is on the page is the ticket', (await page.locator('.ticket h3').count()) > 8);
  const file = await saved(page, 'Save the watch file', folder);
  const ran = ticketOf(file, folder);
  hold(`the command takes the saved file: ${ran.stderr}`, ran.status === 0);
  hold('the command plans the same for it', ran.stdout === text);
  const ticket = await saved(page, 'Save the ticket', folder);
  hold('the saved ticket is the one that the command writes',
    readFileSync(ticket, 'utf8') === readFileSync(path.join(folder, 'tickets', path.basename(ticket)), 'utf8'));
  const again = await open();
  await again.goto(address('ticket.html'));
  await again.waitForSelector('.ticket-form');
  await again.setInputFiles('#watch_file', file);
  await again.waitForFunction(() => document.getElementById('answer-number').value === 'D-004');
  hold('an opened file plans the same', (await planned(again)) === text);
  await again.setInputFiles('#watch_file', 'content/watch/quillfen-d-001.yaml');
  await again.waitForFunction(() => document.getElementById('answer-number').value === 'D-001');
  const example = ticketOf(path.resolve('content/watch/quillfen-d-001.yaml'), folder);
  hold('a file written by hand plans as at the terminal', (await planned(again)) === example.stdout);
  await unfold(again);
  await again.fill('#answer-gasket-seat', '28,60 mm');
  await planned(again);
  hold('a slip is said beside its field', /comma/.test(await again.locator('#answer-gasket-seat-error').textContent()));
  hold('a slip gives no ticket', (await again.locator('.ticket h3').count()) === 0);
  await again.setInputFiles('#watch_file', { name: 'broken.yaml', mimeType: 'text/yaml', buffer: Buffer.from('id: [a') });
  await again.waitForFunction(() => /cannot be read/.test(document.querySelector('.plan-bar .search-status').textContent));
  rmSync(folder, { recursive: true });
  for (const scheme of ['light', 'dark']) {
    for (const width of [320, 1280]) {
      const looked = await open({ scheme, width, check: true });
      await fillTicket(looked);
      await planned(looked);
      await inspect(looked, `planned, ${scheme}, ${width} px`);
      await looked.context().close();
    }
  }
}

/** A picture of 9.5 mm on a screen that a card proved to be 1.25 times finer than a browser thinks. */
async function trueSize() {
  const page = await open();
  const wide = () => page.locator('.entry-head svg.drawing:not(.scales), svg.drawing:not(.scales)').first().evaluate((one) => one.getBoundingClientRect().width);
  await page.goto(address('cell/sr754w.html'));
  const before = await wide();
  await page.locator('.match summary').click();
  await page.locator('#card_width').fill('1.25');
  hold('a picture follows the card', Math.abs((await wide()) / before - 1.25) < 0.005);
  const bar = await page.locator('.card-bar').evaluate((one) => one.getBoundingClientRect().width);
  hold('the bar is a card wide', Math.abs(bar - 85.6 * 96 / 25.4 * 1.25) < 4.5);  // its ends are lines of 2 dots
  await page.reload();
  hold('the match lasts', Math.abs((await wide()) / before - 1.25) < 0.005);
}

const parts = { ticket: ticketForm, size: trueSize, axe: axeOnTemplates, every: axeOnEveryPage, page: axeOnOnePage, walk, vectors: answersOfVectors };
await parts[part]();
await browser.close();
finish(1);
