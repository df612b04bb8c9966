// screen_check.mjs BOUND PART: the bound pages as they lie under a thumb, in Debian's Chromium, opened from the disk.
//   widths   at 320, 390, 768 and 1366 dots no column of running text is narrower than a line can be read in
//   lengths  a page longer than three screens of a telephone (844 dots) has contents of its own, if it has sections
//   rows     each page has its way to report an error, its edition and its neighbours; each heading can be linked to; no row of
//            trust is without its value; a caution begins with first aid, a procedure leads to its steps
//   targets  whatever is tapped is 24 dots high and wide at least (WCAG 2.2, 2.5.8, links in a sentence apart)
//   forced   in the colours of the system all that is known by its ground has an edge
//   zoom     at twice the size of letters nothing is cut and no page scrolls sideways
//   files    hostile watch files leave the form as it was, and say why
import { readdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';

import { count, fileAddress, finish, hold } from './tally.mjs';

const packages = createRequire(path.resolve(import.meta.dirname, '../../../.ci/package.json'));
const { chromium } = packages('playwright-core');
const [bound, part] = process.argv.slice(2);
const site = path.resolve(bound, 'html');
const PHONE = { width: 390, height: 844 };

const address = (name) => fileAddress(site, name);

function pages(folder = '') {
  return readdirSync(path.join(site, folder), { withFileTypes: true }).flatMap((entry) => {
    const name = path.posix.join(folder, entry.name);
    return entry.isDirectory() ? pages(name) : name.endsWith('.html') ? [name] : [];
  }).sort();
}

/** The first page of each kind, and what is full of text. */
function templates() {
  const first = new Map();
  for (const name of pages()) {
    const kind = name.includes('/') ? name.split('/')[0] : name;
    if (!first.has(kind)) first.set(kind, name);
  }
  return [...new Set([...first.values(), 'cell/sr754w.html', 'chemistry/white-vinegar.html', 'procedure/clear-alkaline-crust.html', 'calculator/gasket-fit.html'])];
}

const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox', '--disable-gpu'] });

async function open(viewport, options = {}) {
  const page = await (await browser.newContext({ offline: true, viewport, hasTouch: viewport.width < 500, ...options })).newPage();
  page.on('pageerror', (error) => hold(`${page.url()}: ${error.message}`, false));
  page.on('console', (message) => { if (message.type() === 'error') hold(`${page.url()}: ${message.text()}`, false); });
  return page;
}

/** A calculator or the ticket is a form as soon as the program is there. */
async function go(page, name) {
  await page.goto(address(name));
  if (name.startsWith('calculator/') || ['ticket.html', 'labels.html'].includes(name)) await page.waitForSelector('form.calculator');
}

/* Common practice, no source: 16 characters of 9 dots is the least that running text is read in; 8 words are running text. */
const LEAST_TEXT = 140, RUNNING = 8;

async function widths() {
  for (const width of [320, 390, 768, 1366]) {
    const page = await open({ width, height: 844 });
    for (const name of templates()) {
      await go(page, name);
      const narrow = await page.evaluate(([least, running]) => {
        const walker = document.createTreeWalker(document.querySelector('main'), NodeFilter.SHOW_TEXT);
        const found = [];
        let count = 0;
        for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
          if (node.data.trim().split(/\s+/).length < running) continue;
          let box = node.parentElement;
          while (getComputedStyle(box).display.startsWith('inline')) box = box.parentElement;
          if (box.closest('svg, nav, .unseen, thead, datalist') !== null || box.getClientRects().length === 0) continue;
          ++count;
          const across = box.getBoundingClientRect().width;
          if (across < least) found.push(`${Math.round(across)} dots: ${node.data.trim().slice(0, 40)}`);
        }
        return { found, count };
      }, [LEAST_TEXT, RUNNING]);
      hold(`${name} at ${width}: ${narrow.found.slice(0, 3).join('; ')}`, narrow.found.length === 0);
      count(narrow.count);
    }
    await page.context().close();
  }
}

async function lengths() {
  const page = await open(PHONE);
  let long = 0;
  for (const name of pages()) {
    await page.goto(address(name));
    const seen = await page.evaluate(() => ({ screens: document.documentElement.scrollHeight / innerHeight,
      own: document.querySelector('.own-contents, .contents, .letters, .calculators, .doors, form') !== null, heads: document.querySelectorAll('main h2:not(#legend_title)').length }));
    if (seen.screens <= 3) continue;
    ++long;
    hold(`${name} is ${seen.screens.toFixed(1)} screens long with ${seen.heads} sections and no contents`, seen.own || seen.heads < 2);
    hold(`${name} is ${seen.screens.toFixed(1)} screens long and has no contents`, seen.own || seen.screens < 12);
  }
  hold(`${long} long pages`, long >= 10);
}

async function rows() {
  const page = await open(PHONE);
  const names = pages();
  for (const name of names) {
    await page.goto(address(name));
    const seen = await page.evaluate(() => {
      const all = (selector) => [...document.querySelectorAll(selector)];
      const words = (selector) => document.querySelector(selector)?.textContent ?? '';
      return { report: words('.foot .report'), edition: words('.foot time'), turns: all('.turn a').length,
        bare: all('main :is(h2, h3)[id]').filter((one) => one.querySelector('.permalink') === null).length,
        empty: all('.margin-value').filter((one) => one.textContent.trim() === '').length, rows: all('.margin-value').length,
        afterHead: words('.entry-head + *'), aid: words('main[data-record^="caution/"]').includes('First aid'), contents: words('.own-contents') };
    });
    count(seen.rows);
    hold(`${name} names its file and the edition: ${seen.report}`, /(content|html)\/\S+\.(yaml|md|html)/.test(seen.report) && /edition \S/.test(seen.report));
    hold(`${name} has its date`, /20[0-9]{2}/.test(seen.edition));
    hold(`${name} has its neighbours`, seen.turns >= 1);
    hold(`${name} has ${seen.bare} headings without a link`, seen.bare === 0);
    hold(`${name} has ${seen.empty} rows without a value`, seen.empty === 0);
    if (seen.aid) hold(`${name} begins with ${seen.afterHead.slice(0, 20)}`, seen.afterHead.startsWith('First aid'));
    if (name.startsWith('procedure/') && seen.contents !== '') hold(`${name} leads to its steps`, seen.contents.includes('Steps'));
  }
  hold(`${names.length} pages`, names.length >= 500);
}

async function targets() {
  const page = await open(PHONE);
  for (const name of templates()) {
    await go(page, name);
    const small = await page.evaluate(() => [...document.querySelectorAll('main :is(a, button, summary, input, select, label), nav a')].filter((one) => {
      const box = one.getBoundingClientRect();
      if (box.width === 0 || one.closest('p, li, td, dd, .margin') !== null && one.matches('a') && getComputedStyle(one).display === 'inline') return false;
      if (one.matches('label, .switch input, .opener input')) return false;  // the label is the target of those, and is seen by its field
      return box.width < 23.5 || box.height < 23.5;
    }).map((one) => one.outerHTML.slice(0, 90)));
    hold(`${name}: ${small.length} small targets: ${small.slice(0, 3).join(' ')}`, small.length === 0);
  }
}

const unfold = (page) => page.evaluate(() => document.querySelectorAll('.part').forEach((one) => { one.open = true; }));

const HOSTILE = {
  'a circle': 'id: a\ntitle: b\nextra: &a [*a]\n',
  'nested aliases': `a: &a [x, x]\n${[...'bcdefghijklmnop'].map((one, i) => `${one}: &${one} [${Array(9).fill('*' + 'abcdefghijklmno'[i])}]`).join('\n')}\n`,
  'an alias of words': 'number: &n D-001\nfound: *n\n',
  'a list for words': 'number: [a, b]\n',
  'fields for words': 'found: {a: b}\n',
  'a word for a list': 'symptoms: dead\n',
  'words for fields': 'case: gold\ncell-size: {diameter: [1]}\n',
  'a megabyte of text': `found: "${'x'.repeat(1 << 20)}"\n`,
  'many values': `symptoms: [${Array(30000).fill('a').join(', ')}]\n`,
  'deep brackets': '['.repeat(5000),
  'a script': '</script><script>window.hit=1</script>: 1',
  'another tag': 'id: !!js/function "function () { window.hit = 1 }"\n',
  'a prototype': '__proto__: {hit: 1}\nnumber: [1]\n',
  'nothing': '',
};

async function files() {
  const page = await open(PHONE);
  await go(page, 'ticket.html');
  await page.evaluate(() => benchleafAsk({ ask: 'ticket' }));  // from here on it is loaded
  await unfold(page);
  await page.fill('#answer-number', 'D-001');
  for (const [what, text] of Object.entries(HOSTILE)) {
    await page.evaluate(() => { document.querySelector('.plan-bar .search-status').textContent = ''; });
    await page.evaluate(() => {
      window.gap = 0;
      let last = performance.now();
      window.ticker = setInterval(() => {
        window.gap = Math.max(window.gap, performance.now() - last);
        last = performance.now();
      }, 10);
    });
    await page.setInputFiles('#watch_file', { name: 'hostile.yaml', mimeType: 'text/yaml', buffer: Buffer.from(text) });
    await page.waitForFunction(() => document.querySelector('.plan-bar .search-status').textContent !== '', null, { timeout: 10000 }).catch(() => {});
    const said = await page.locator('.plan-bar .search-status').textContent();
    hold(`${what}: "${said}"`, said.startsWith('hostile.yaml cannot be read'));
    const gap = await page.evaluate(() => { clearInterval(window.ticker); return window.gap; });
    hold(`${what} stops the page for ${Math.round(gap)} ms`, gap < 1000);
    hold(`${what} leaves the form as it was`, (await page.inputValue('#answer-number')) === 'D-001');
    hold(`${what} runs nothing`, await page.evaluate(() => window.hit === undefined && {}.hit === undefined));
  }
}

/** What stands on a coloured ground alone is lost when the system takes all grounds away. */
async function forced() {
  const page = await open({ width: 1366, height: 768 }, { forcedColors: 'active' });
  for (const name of templates()) {
    await go(page, name);
    const bare = await page.evaluate(() => {
      const edged = (one) => ['borderTopWidth', 'borderBottomWidth', 'outlineWidth'].some((edge) => parseFloat(getComputedStyle(one)[edge]) >= 1 &&
        getComputedStyle(one)[edge.replace('Width', 'Style')] !== 'none');
      return [...document.querySelectorAll('[aria-current], button, input, select, .message .word, .here, .card, .plan-bar')]
        .filter((one) => !(one.type === 'checkbox' && getComputedStyle(one).appearance !== 'none'))  // the browser draws its edge
        .filter((one) => one.checkVisibility({ visibilityProperty: true, opacityProperty: true }) && !edged(one)).map((one) => one.outerHTML.slice(0, 90));
    });
    hold(`${name}: without an edge: ${bare.slice(0, 3).join(' ')}`, bare.length === 0);
  }
}

/** WCAG 2.2, 1.4.4: letters of twice the size, by the browser's zoom (half the dots across) and by its size of letters. */
async function zoom() {
  for (const [width, letters] of [[683, ''], [1366, 'html { font-size: 200% !important; }']]) {
    const page = await open({ width, height: 768 }, { bypassCSP: true });
    for (const name of templates()) {
      await go(page, name);
      if (letters !== '') await page.addStyleTag({ content: letters });
      const lost = await page.evaluate(() => ({ over: document.documentElement.scrollWidth - document.documentElement.clientWidth,
        cut: [...document.querySelectorAll('body *')].filter((one) => {
          const style = getComputedStyle(one);
          return ['hidden', 'clip'].includes(style.overflowY) && one.clientHeight > 1 && one.scrollHeight > one.clientHeight + 2 &&
            style.textOverflow !== 'ellipsis' && one.closest('.strip, svg, .unseen') === null;
        }).map((one) => one.outerHTML.slice(0, 80)) }));
      hold(`${name} at ${width} ${letters}: ${lost.over} dots too wide`, lost.over <= 0);
      hold(`${name} at ${width} ${letters}: cut: ${lost.cut.slice(0, 2).join(' ')}`, lost.cut.length === 0);
    }
    await page.context().close();
  }
}

const parts = { widths, lengths, rows, targets, files, forced, zoom };
await parts[part]();
await browser.close();
finish(8);
