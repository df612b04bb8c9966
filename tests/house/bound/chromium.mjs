// Debian's Chromium by npm playwright-core, with the few things that a walk does.
import { mkdtempSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import path from 'node:path';

import { waited } from './waited.mjs';

const packages = createRequire(path.resolve(import.meta.dirname, '../../../.ci/package.json'));
const { chromium } = packages('playwright-core');

/** A browser; `fault(words)` is called for what no page may do: ask for something beside files, fail, complain. */
export async function start(fault) {
  const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox', '--disable-gpu'] });
  const scratch = mkdtempSync(path.join(tmpdir(), 'benchleaf-walk-'));

  async function open(viewport) {
    const page = await (await browser.newContext({ offline: true, viewport, hasTouch: viewport.width < 500 })).newPage();
    page.on('request', (request) => { if (!/^(file|data|blob):/.test(request.url())) fault(`asked for ${request.url()}`); });
    page.on('pageerror', (error) => fault(`${page.url()}: ${error.message}`));
    page.on('console', (message) => { if (message.type() === 'error') fault(`${page.url()}: ${message.text()}`); });
    return {
      goto: (url) => page.goto(url),
      reload: () => page.reload(),
      back: () => page.goBack(),
      value: (expression) => page.evaluate(expression),
      until: (condition) => page.evaluate(waited(condition)),  // its own way to wait evaluates words in the page, which the policy forbids
      click: (field) => page.click(field),
      fill: (field, words) => page.fill(field, words),
      press: (key) => page.keyboard.press(key),
      type: (words) => page.keyboard.type(words),
      give: (field, file) => page.setInputFiles(field, file),
      async saved(button) {
        const [download] = await Promise.all([page.waitForEvent('download'), page.click(button)]);
        const file = path.join(scratch, download.suggestedFilename());
        await download.saveAs(file);
        return file;
      },
      async printed() {
        const file = path.join(scratch, 'printed.pdf');
        await page.pdf({ path: file, format: 'A4', preferCSSPageSize: true });
        return file;
      },
      close: () => page.context().close(),
    };
  }

  async function stop() {
    await browser.close();
    rmSync(scratch, { recursive: true, force: true });
  }
  return { open, stop };
}
