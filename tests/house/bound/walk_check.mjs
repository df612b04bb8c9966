// walk_check.mjs BOUND BROWSER PROGRAM: what is done at the bench, done by a script in `chromium` or `firefox` on the bound pages, opened
// from the disk, at 390 × 844 and 1366 × 768: look up a cell, come back from it, see first aid on top, tick through a procedure, reckon a gasket by a plain number and by
// an error, plan a ticket, reload, save, open again, print; print labels, which lie on their grid and say what PROGRAM prints; the switch for light and dark; the single file; each procedure printed.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';

import { fileAddress, finish, hold } from './tally.mjs';

const [bound, name, program] = process.argv.slice(2);
const VIEWPORTS = [{ width: 390, height: 844 }, { width: 1366, height: 768 }];

const address = (file) => fileAddress(bound, file);
const text = (page, field) => page.value(`document.querySelector(${JSON.stringify(field)})?.textContent ?? ''`);
const count = (page, field) => page.value(`document.querySelectorAll(${JSON.stringify(field)}).length`);
const printedText = async (page) => execFileSync('pdftotext', ['-layout', await page.printed(), '-'], { encoding: 'utf8' });
const printedPages = async (page) => Number(/Pages:\s+(\d+)/.exec(execFileSync('pdfinfo', [await page.printed()], { encoding: 'utf8' }))[1]);

/** Whether what a thumb would press is 44 dots high at least: the least that the main actions have. */
const isThumbSized = (page, field) => page.value(`document.querySelector(${JSON.stringify(field)}).getBoundingClientRect().height >= 43.5`);

async function lookUp(page) {
  await page.goto(address('html/index.html'));
  await page.press('/');
  hold('a stroke reaches the field', await page.value("document.activeElement.id === 'search_field'"));
  await page.type('393');
  await page.until("document.querySelector('.results a')?.textContent.includes('SR754W')");
  await page.click('.results a');
  await page.until("location.pathname.endsWith('cell/sr754w.html') && document.readyState === 'complete'");
  hold('the cell is open', (await text(page, 'h1')) === '393');
}

/** What the field holds and what stands under it. */
const asked = (page) => page.value("document.getElementById('search_field').value");
const ends = (name) => `location.pathname.endsWith('${name}') && document.readyState === 'complete'`;

/** Back from what was found brings the words and their answers, on a page and on the first one. */
async function comeBack(page) {
  for (const from of ['procedure/clear-alkaline-crust.html', 'index.html']) {
    await page.goto(address(`html/${from}`));
    await page.press('Control+k');
    hold('two keys reach the field', await page.value("document.activeElement.id === 'search_field'"));
    await page.type("back won't close");
    await page.until("document.querySelector('.results a')?.textContent.includes('will not close')");
    const found = await text(page, '.results');
    await page.click('.results a');
    await page.until(ends('symptom/back-will-not-close.html'));
    await page.back();
    await page.until(`${ends(from)} && document.querySelector('.results a') !== null`);
    hold(`Back to ${from} brings the words`, (await asked(page)) === "back won't close");
    hold('and what they found', (await text(page, '.results')) === found);
  }
}

/** The lines of the lists of look-ups that ask what can hurt. */
function dangerous() {
  return ['tests/spec/lay-queries.tsv', 'tests/spec/first-asked.tsv'].flatMap((list) => readFileSync(list, 'utf8').split('\n'))
    .filter((line) => !line.startsWith('#')).map((line) => line.split('\t')).filter(([, kind]) => kind === 'danger').map(([query]) => query);
}

/** What to do first stands on top of all answers, where it is seen without a scroll. */
async function firstAidOnTop(page, browser, viewport) {
  await page.goto(address('html/cell/sr754w.html'));
  const queries = dangerous();
  hold(`${queries.length} queries`, queries.length > 30);
  for (const query of queries) {
    await page.fill('#search_field', query);
    await page.until(`globalThis.benchleafAnswered === ${JSON.stringify(query)}`);
    const top = await page.value("document.querySelector('.results > *')?.matches('.danger-card') ? document.querySelector('.danger-card').getBoundingClientRect().top : -1");
    hold(`${query}: what to do first is seen`, top >= 0 && top < viewport.height * 2 / 3);
  }
}

async function tickThrough(page) {
  await page.goto(address('html/procedure/clear-alkaline-crust.html'));
  const steps = await count(page, '.step-tick');
  hold(`${steps} steps`, steps >= 5);
  const FULL = '.message:not(.strip)';
  const full = await count(page, FULL);
  hold('what a step endangers itself stands in full at first, the rest as strips', full > 0 && (await count(page, '.strip')) > 0);
  await page.click('.strip .unfold');
  hold('a strip opens', (await count(page, FULL)) === full + 1);
  await page.click('.unfold[aria-expanded=true]');
  for (let i = 1; i < steps; ++i) await page.click(`.ticking > li:nth-child(${i}) .step-tick`);
  hold('the place is said', (await text(page, '.here')).includes(`step ${steps} of ${steps}`));
  await page.reload();
  hold('ticks last', (await count(page, '.step-tick:checked')) === steps - 1);
  hold('what was read is short', (await count(page, FULL)) < full);
  await page.click('.ticking > li:nth-child(2) .step-tick');
  hold('unticking brings a step back', await page.value("document.querySelector('.ticking > li:nth-child(2) p').getBoundingClientRect().height > 0"));
  await page.click('.here button');
  hold('it starts over', (await count(page, '.step-tick:checked')) === 0);
}

async function reckonGasket(page, browser) {
  const button = 'form.calculator > button';
  await page.goto(address('html/calculator/gasket-fit.html'));
  await page.until("document.querySelector('form.calculator') !== null");
  hold('the button has the size of a thumb', await isThumbSized(page, button));
  await page.click(button);
  hold('an empty form says what to fill in', (await text(page, '.errors')).length > 20);
  hold('and leads there', await page.value("document.activeElement.name === 'seat'"));
  await page.fill('input[name=seat]', '31.85');
  await page.fill('input[name=series]', 'round-0-8');
  await page.fill('input[name=section]', '0.8o');
  await page.click(button);
  await page.until("document.querySelector('[aria-invalid=true]') !== null");
  hold('a slip is said beside its field', (await text(page, '#gasket-fit-section-error')) !== '');
  hold('the slip has the focus', await page.value("document.activeElement.name === 'section'"));
  await page.fill('input[name=section]', '0.8');
  await page.click(button);
  await page.until("document.querySelector('.answer') !== null");
  hold('a plain number is taken', /31\smm/.test(await text(page, '.answer')));
  hold('its stretch is said', /2\.74\s%/.test(await text(page, '.outputs')));
  hold('the answer has the focus', await page.value("document.activeElement.className === 'answer-head'"));
  const again = await browser.open(VIEWPORTS[1]);
  await again.goto(await page.value('location.href'));
  await again.until("document.querySelector('.answer') !== null");
  hold('a kept link gives the same answer', /31\smm/.test(await text(again, '.answer')));
  await again.close();
}

const PLAN = '.plan-bar button[type=submit]';
const PLANNED = "document.querySelector('.plan:not([hidden]) .own-contents') !== null";
const numberIs = (words) => `document.getElementById('answer-number')?.value === '${words}'`;

async function planTicket(page) {
  await page.goto(address('html/ticket.html'));
  await page.until("document.querySelector('form.calculator') !== null");
  await page.value("document.querySelectorAll('.part').forEach((one) => { one.open = true; })");
  await page.fill('#answer-number', 'D-009');
  await page.fill('#answer-gasket-seat', '28.60');
  await page.reload();
  await page.until("document.querySelector('form.calculator') !== null");
  hold('a draft lasts', await page.value(numberIs('D-009')));
  hold('Plan has the size of a thumb', await isThumbSized(page, PLAN));
  await page.click(PLAN);
  await page.until(PLANNED);
  hold('the ticket has contents', (await count(page, '.ticket .own-contents a')) > 3);
  await page.click('.ticket input.tick');
  const file = await page.saved('.plan-bar button[type=button]');
  await page.click('.ticket-form > .ticket-tools button');
  hold('the form is empty', await page.value(numberIs('')));
  await page.reload();
  await page.until("document.querySelector('form.calculator') !== null");
  hold('and stays so', await page.value(numberIs('')));
  await page.give('#watch_file', file);
  await page.until(numberIs('D-009'));
  await page.click(PLAN);
  await page.until(PLANNED);
  hold('a tick lasts for its watch', await page.value("document.querySelector('.ticket input.tick').checked"));
  const printed = await printedText(page);
  hold('print has the sheets', printed.includes('Ticket D-009') && printed.includes('Jobs, in this order'));
  hold('and not the form', !printed.includes('Save the watch file'));
}

/* A sheet of labels as stationers sell it, recalled: 2 by 5 labels of 99.1 × 57 mm, 101.6 mm from one to the next, centred on A4. */
const GRID = '99.1x57';
const PLACES = [...Array(10).keys()].map((place) => ({ left: (210 - 101.6 - 99.1) / 2 + place % 2 * 101.6, top: (297 - 5 * 57) / 2 + Math.floor(place / 2) * 57 }));
const NEAR_MM = 0.3;
const PUT = '.label-form button[type=submit]';
const ON_SHEET = '.label-sheets:not(.trial) .on-sheet';

const choose = (page, field, value) => page.value(`(() => {
  const one = document.querySelector('${field}');
  one.value = '${value}';
  one.dispatchEvent(new Event('change', { bubbles: true }));
})()`);

async function put(page, fields, labels) {
  for (const [field, words] of Object.entries(fields)) await page.fill(`#label-${field}`, words);
  await page.click(PUT);
  await page.until(`document.querySelectorAll('${ON_SHEET}').length === ${labels}`);
}

/** Letters and figures alone: lines break elsewhere on paper. */
const letters = (words) => words.replace(/[\s\u00ad\u2010-]/g, '');

/** The words of the labels that the program prints for a call. */
function terminalLetters(...call) {
  const folder = mkdtempSync(path.join(tmpdir(), 'benchleaf-labels-'));
  execFileSync(path.resolve(program), ['label', '--quiet', ...call, '--grid', GRID, '--to', folder], { stdio: 'pipe' });
  const text = execFileSync('pdftotext', ['-raw', path.join(folder, 'labels', `labels-${GRID}.pdf`), '-'], { encoding: 'utf8' });
  rmSync(folder, { recursive: true });
  return letters(text);
}

/** Each line of the labels on the page stands on the printed ones, and nothing else does. */
async function sameWords(page, call) {
  const printed = terminalLetters(...call);
  const lines = (await page.value(`[...document.querySelectorAll('${ON_SHEET} p, ${ON_SHEET} svg text')].map((one) => {
    const words = one.cloneNode(true);
    words.querySelectorAll('title').forEach((alternative) => alternative.remove());
    return words.textContent;
  })`)).map(letters);
  for (const line of lines) hold(`the label of ${call[0]} says ${line} at the terminal`, printed.includes(line));
  hold(`the label of ${call[0]} has the same letters`, lines.join('').length === printed.length);
}

/** Corners of the labels on the screen and heads on paper, in mm. */
async function onGrid(page) {
  const placed = await page.value(`(() => {
    const sheet = document.querySelector('.label-sheets:not(.trial) .label-sheet').getBoundingClientRect();
    return [...document.querySelectorAll('${ON_SHEET}')].map((label) => {
      const box = label.getBoundingClientRect(), range = document.createRange();
      range.selectNodeContents(label.querySelector('.label-head'));
      const head = range.getBoundingClientRect();
      return [box.left - sheet.left, box.top - sheet.top, head.left - box.left, head.top - box.top].map((dots) => dots / 96 * 25.4);
    });
  })()`);
  const words = execFileSync('pdftotext', ['-bbox', await page.printed(), '-'], { encoding: 'utf8' });
  const heads = [...words.matchAll(/xMin="([\d.]+)" yMin="([\d.]+)"[^>]*>393</g)].map(([, x, y]) => [x, y].map((dots) => Number(dots) / 72 * 25.4));
  hold(`${heads.length} labels are printed`, heads.length === PLACES.length && placed.length === PLACES.length);
  hold('on one sheet', words.match(/<page /g).length === 1 && /<page width="59[45]\.\d+" height="84[12]\.\d+"/.test(words));
  PLACES.forEach((place, at) => {
    const [left, top, right, down] = placed[at], [x, y] = heads[at];
    hold(`label ${at + 1} lies at ${left}, ${top}`, Math.abs(left - place.left) <= NEAR_MM && Math.abs(top - place.top) <= NEAR_MM);
    hold(`label ${at + 1} is printed ${x - right - place.left} mm off`, Math.abs(x - right - place.left) <= NEAR_MM);
    hold(`label ${at + 1} is printed ${y - down - place.top} mm low`, Math.abs(y - down - place.top) <= NEAR_MM);
  });
}

async function printLabels(page) {
  await page.goto(address('html/labels.html'));
  await page.until("document.querySelector('.label-form') !== null");
  await page.click(PUT);
  hold('an empty form says what to fill in', (await text(page, '.errors')).includes('Liquid'));
  hold('and leads there', await page.value("document.activeElement.id === 'label-liquid'"));
  hold('the button has the size of a thumb', await isThumbSized(page, PUT));
  await choose(page, '#label-grid', GRID);
  await put(page, { liquid: 'isopropanol', filled: '2026-11-30' }, 1);
  hold('the sheet has the focus', await page.value("document.activeElement.id === 'labels_head'"));
  await sameWords(page, ['isopropanol', '--date', '2026-11-30']);
  hold('the bottle shows two diamonds', /GHS02.*GHS07|GHS07.*GHS02/.test(await page.value("document.querySelector('.label-beside svg').outerHTML")));
  await choose(page, '#label-way', 'mixture');
  await page.fill('#label-name', 'Bath');
  await page.fill('#label-part', 'sodium-hypochlorite:5, acetic-acid:5');
  await page.click(PUT);
  await page.until("document.querySelector('#label-part[aria-invalid]') !== null");
  hold('a mixture that is refused says why', (await text(page, '#label-part-error')).includes('must never meet'));
  hold('and gives no label', (await count(page, ON_SHEET)) === 1);
  await page.click('.label-list button');
  hold('a label is taken off', (await count(page, ON_SHEET)) === 0);
  await put(page, { part: 'acetic-acid:5', flash: 'none' }, 1);
  await sameWords(page, ['--mixture', 'acetic-acid:5', '--name', 'Bath', '--flash', 'none']);
  await page.click('.label-list button');
  await choose(page, '#label-way', 'gasket');
  await put(page, { gasket: 'round-0-7', inside: '28' }, 1);
  await sameWords(page, ['round-0-7:28']);
  await page.click('.label-list button');
  await choose(page, '#label-way', 'cell');
  await put(page, { cell: '393', bought: '2026-11' }, 1);
  await sameWords(page, ['393', '--date', '2026-11']);
  await put(page, { copies: '9' }, 10);
  await onGrid(page);
  hold('print has the labels alone', !(await printedText(page)).includes('What gets a label'));
}

/** Every procedure, in the browser that the test has: what is handed to a helper is two sheets at most. */
async function handOuts(browser) {
  const page = await browser.open(VIEWPORTS[1]);
  for (const file of readdirSync(path.resolve(bound, 'html/procedure'))) {
    await page.goto(address(`html/procedure/${file}`));
    const sheets = await printedPages(page);
    hold(`the hand-out ${file} has ${sheets} sheets`, sheets >= 1 && sheets <= 2);
  }
  await page.close();
}

async function changeTheme(page) {
  await page.goto(address('html/cell/sr754w.html'));
  const ground = 'getComputedStyle(document.body).backgroundColor';
  const before = await page.value(ground);
  await page.click('.theme');
  hold('the switch changes the ground', (await page.value(ground)) !== before);
}

async function singleFile(page) {
  await page.goto(address('handbook.html'));
  await page.fill('#search_field', '393');
  await page.until("document.querySelector('.results a')?.textContent.includes('SR754W')");
  hold('the single file finds 393', (await text(page, '.results a')).includes('SR754W'));
  const crust = '#procedure_clear-alkaline-crust';
  await page.click(`${crust} .ticking > li:first-child .step-tick`);
  hold('a step of it is ticked', (await text(page, `${crust} .here`)).includes('step 2 of'));
  hold('and of no other procedure', (await count(page, '.step-tick:checked')) === 1);
  await page.reload();
  hold('its ticks last', await page.value(`document.querySelector('${crust} .step-tick').checked`));
}

const { start } = await import(`./${name}.mjs`);
const browser = await start((words) => hold(words, false));
for (const viewport of VIEWPORTS) {
  const page = await browser.open(viewport);
  for (const walk of [lookUp, comeBack, firstAidOnTop, tickThrough, reckonGasket, planTicket, printLabels, changeTheme, singleFile]) {
    await walk(page, browser, viewport).catch((error) => hold(`${walk.name} at ${viewport.width}: ${error.message}`, false));
  }
  await page.close();
}
await handOuts(browser).catch((error) => hold(`hand-outs: ${error.message}`, false));
await browser.stop();
finish(100);
