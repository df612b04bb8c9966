// first_answer.mjs HANDBOOK: how long the single file takes from its load to its first answer, on a processor slowed four times,
// and how long an empty page of the same size takes to load, in one run. Told, not asserted.
import { mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { cpus, loadavg, tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';

const packages = createRequire(path.resolve(import.meta.dirname, '../../.ci/package.json'));
const { chromium } = packages('playwright-core');
const [file] = process.argv.slice(2);
const ROUNDS = 5, SLOWER = 4;

const folder = mkdtempSync(path.join(tmpdir(), 'benchleaf-first-'));
const empty = path.join(folder, 'empty.html');
const head = '<!doctype html><title>empty</title><!--', foot = '-->';
writeFileSync(empty, head + ' '.repeat(statSync(file).size - head.length - foot.length) + foot);

const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox', '--disable-gpu'] });

/** Milliseconds from the request to the load, and from the load to `act`. */
async function timed(name, act) {
  const page = await (await browser.newContext({ viewport: { width: 390, height: 844 } })).newPage();
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
  const start = performance.now();
  await page.goto(pathToFileURL(path.resolve(name)).href, { waitUntil: 'load' });
  const load = performance.now() - start;
  await act(page);
  const answer = performance.now() - start - load;
  await page.context().close();
  return [load, answer];
}

const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
const books = [], floors = [];
for (let round = 0; round < ROUNDS; ++round) {
  books.push(await timed(file, async (page) => {
    await page.fill('#search_field', '393');
    await page.waitForSelector('.results a', { timeout: 60000 });
  }));
  floors.push(await timed(empty, async () => {}));
}
await browser.close();
rmSync(folder, { recursive: true });
const told = (values) => `${Math.round(median(values))} ms, at best ${Math.round(Math.min(...values))} ms`;
const loads = books.map(([load]) => load), answers = books.map(([, answer]) => answer), floor = floors.map(([load]) => load);
console.log(`load ${told(loads)}; of an empty page of the same size ${told(floor)}: ${(median(loads) / median(floor)).toFixed(1)} times`);
console.log(`first answer ${told(answers)} after the load: ${(median(answers) / median(floor)).toFixed(1)} times the empty page`);
console.log(`load of the machine ${loadavg()[0].toFixed(1)} on ${cpus().length} processors`);
