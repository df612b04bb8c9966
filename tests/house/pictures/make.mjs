// make.mjs BOUND OUT: the pictures of README, out of a bound folder: pages as poppler paints them, screens as Chromium shows them.
// pictures.json says of each where it comes from and how large it is. All are kept small as WebP, which Chromium writes.
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { pathToFileURL } from 'node:url';

const packages = createRequire(path.resolve(import.meta.dirname, '../../../.ci/package.json'));
const { chromium } = packages('playwright-core');
const [bound, out] = process.argv.slice(2);
const QUALITY = 0.72;
const LIMITS = { maxBuffer: 1 << 28 };

function output(program, ...words) {
  const run = spawnSync(program, words, LIMITS);
  if (run.status !== 0) throw new Error(`${program} ${words.join(' ')}: ${run.stderr}`);
  return run.stdout;
}

/** The first page of a PDF that holds all the words. */
function pageThatHolds(pdf, words) {
  const pages = output('pdftotext', '-layout', pdf, '-').toString().split('\f');
  const at = pages.findIndex((page) => words.every((word) => page.includes(word)));
  if (at < 0) throw new Error(`no page of ${pdf} holds ${words}`);
  return at + 1;
}

/** Painted twice as large, so that the browser makes it small smoothly. */
function paint(picture) {
  const pdf = path.join(bound, picture.pdf);
  const page = pageThatHolds(pdf, picture.holds);
  return output('pdftoppm', '-png', '-f', page, '-l', page, '-singlefile', '-scale-to-x', 2 * picture.width, '-scale-to-y', 2 * picture.height, pdf);
}

async function show(browser, picture) {
  const page = await browser.newPage({ offline: true, viewport: picture.view, colorScheme: 'light' });
  await page.goto(`${pathToFileURL(path.resolve(bound, 'html', picture.page)).href}#${picture.hash}`);
  await page.waitForSelector(picture.wait);
  await page.evaluate(() => scrollTo(0, 0));
  const bytes = await page.screenshot({ type: 'png' });
  await page.close();
  return bytes;
}

async function asWebp(browser, bytes, { width, height }) {
  const page = await browser.newPage();
  const address = await page.evaluate(async ([source, width, height, quality]) => {
    const image = new Image();
    image.src = source;
    await image.decode();
    const canvas = Object.assign(document.createElement('canvas'), { width, height });
    const brush = canvas.getContext('2d');
    brush.imageSmoothingQuality = 'high';
    brush.drawImage(image, 0, 0, width, height);
    return canvas.toDataURL('image/webp', quality);
  }, [`data:image/png;base64,${bytes.toString('base64')}`, width, height, QUALITY]);
  await page.close();
  return Buffer.from(address.slice(address.indexOf(',') + 1), 'base64');
}

const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox', '--disable-gpu'] });
mkdirSync(out, { recursive: true });
for (const picture of JSON.parse(readFileSync(path.join(import.meta.dirname, 'pictures.json'), 'utf8'))) {
  const bytes = picture.pdf ? paint(picture) : await show(browser, picture);
  const made = await asWebp(browser, bytes, picture);
  writeFileSync(path.join(out, picture.name), made);
  console.log(`${picture.name}: ${picture.width} x ${picture.height}, ${made.length} bytes`);
}
await browser.close();
