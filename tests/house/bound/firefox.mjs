// Firefox ESR, which `.ci/install wide` installs, driven by WebDriver BiDi (W3C), with the few things that a walk does.
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';

import { waited } from './waited.mjs';

const PATIENCE = 60000;
const KEYS = { Escape: '\uE00C', Enter: '\uE007', Tab: '\uE004', Control: '\uE009' };

function socketOf(browser) {
  return new Promise((found, failed) => {
    const late = setTimeout(() => failed(new Error('the browser does not answer')), PATIENCE);
    browser.stderr.on('data', (data) => {
      const said = /WebDriver BiDi listening on (ws:\S+)/.exec(data.toString());
      if (said === null) return;
      clearTimeout(late);
      found(said[1]);
    });
  });
}

/** The protocol: `ask(method, parameters)` gives its result, `next(event)` the parameters of the next event of that name. */
async function connect(address, listen) {
  const socket = new WebSocket(address);
  await new Promise((opened) => socket.addEventListener('open', opened));
  const waiting = new Map(), awaited = new Map();
  let last = 0;
  socket.addEventListener('message', ({ data }) => {
    const answer = JSON.parse(data);
    if (answer.method !== undefined) {
      listen(answer.method, answer.params);
      awaited.get(answer.method)?.(answer.params);
      awaited.delete(answer.method);
    }
    waiting.get(answer.id)?.(answer);
    waiting.delete(answer.id);
  });
  const ask = (method, params) => new Promise((done, failed) => {
    const id = ++last;
    waiting.set(id, (answer) => answer.type === 'error' ? failed(new Error(`${method}: ${answer.message}`)) : done(answer.result));
    socket.send(JSON.stringify({ id, method, params }));
  });
  const next = (event) => new Promise((done, failed) => {
    const late = setTimeout(() => failed(new Error(`no ${event}`)), PATIENCE);
    awaited.set(event, (params) => { clearTimeout(late); done(params); });
  });
  return { ask, next, close: () => socket.close() };
}

/** A browser; `fault(words)` is called for what no page may do: ask for something beside files, fail, complain. */
export async function start(fault) {
  const scratch = mkdtempSync(path.join(tmpdir(), 'benchleaf-walk-'));
  const browser = spawn('firefox-esr', ['--headless', '--no-remote', '--profile', scratch, '--remote-debugging-port', '0'],
    { stdio: ['ignore', 'ignore', 'pipe'] });
  const { ask, next, close } = await connect(`${await socketOf(browser)}/session`, (event, params) => {
    if (event === 'network.beforeRequestSent' && !/^(file|data|blob|about):/.test(params.request.url)) fault(`asked for ${params.request.url}`);
    if (event === 'log.entryAdded' && params.level === 'error') fault(`${params.source.context}: ${params.text}`);
  });
  await ask('session.new', { capabilities: {} });
  await ask('session.subscribe', { events: ['network.beforeRequestSent', 'log.entryAdded', 'browsingContext.downloadEnd'] });
  await ask('browser.setDownloadBehavior', { downloadBehavior: { type: 'allowed', destinationFolder: scratch } });

  async function open(viewport) {
    const { userContext } = await ask('browser.createUserContext', {});  // one for each page, or the ticks of one would be found in the next
    const { context } = await ask('browsingContext.create', { type: 'tab', userContext });
    await ask('browsingContext.setViewport', { context, viewport });
    const evaluate = async (expression) => {
      const { result, exceptionDetails } = await ask('script.evaluate', { expression, target: { context }, awaitPromise: true });
      if (exceptionDetails !== undefined) throw new Error(exceptionDetails.text);
      return result;
    };
    const value = async (expression) => (await evaluate(expression)).value;
    const found = async (field) => {
      const at = `document.querySelector(${JSON.stringify(field)})`;
      await value(`${at}.scrollIntoView({ block: 'center', behavior: 'instant' })`);
      return { sharedId: (await evaluate(at)).sharedId };
    };
    const keys = (words) => ask('input.performActions', { context,
      actions: [{ type: 'key', id: 'keys', actions: [...words].flatMap((key) => [{ type: 'keyDown', value: key }, { type: 'keyUp', value: key }]) }] });
    /** `Control+k`: the first is held while the last is pressed. */
    const chord = (names) => {
      const held = names.map((name) => KEYS[name] ?? name);
      return ask('input.performActions', { context, actions: [{ type: 'key', id: 'keys', actions: [
        ...held.map((value) => ({ type: 'keyDown', value })), ...[...held].reverse().map((value) => ({ type: 'keyUp', value }))] }] });
    };
    const click = async (field) => ask('input.performActions', { context,
      actions: [{ type: 'pointer', id: 'pointer', actions: [
        { type: 'pointerMove', x: 0, y: 0, origin: { type: 'element', element: await found(field) } },
        { type: 'pointerDown', button: 0 }, { type: 'pointerUp', button: 0 }] }] });
    return {
      goto: (url) => ask('browsingContext.navigate', { context, url, wait: 'complete' }),
      reload: () => ask('browsingContext.reload', { context, wait: 'complete' }),
      value,
      until: (condition) => value(waited(condition)),
      click,
      async fill(field, words) {
        await value(`document.querySelector(${JSON.stringify(field)}).select?.()`);
        await click(field);
        await value(`document.querySelector(${JSON.stringify(field)}).select?.()`);
        await keys(words);
      },
      back: () => ask('browsingContext.traverseHistory', { context, delta: -1 }),
      press: (key) => chord(key.split('+')),
      type: keys,
      give: async (field, file) => ask('input.setFiles', { context, element: await found(field), files: [file] }),
      async saved(button) {
        const [{ filepath }] = await Promise.all([next('browsingContext.downloadEnd'), click(button)]);
        return filepath;
      },
      async printed() {
        const file = path.join(scratch, 'printed.pdf');
        const { data } = await ask('browsingContext.print', { context, page: { width: 21, height: 29.7 } });
        writeFileSync(file, Buffer.from(data, 'base64'));
        return file;
      },
      close: () => ask('browser.removeUserContext', { userContext }),
    };
  }

  async function stop() {
    close();
    await new Promise((ended) => { browser.on('exit', ended); browser.kill(); });
    rmSync(scratch, { recursive: true, force: true });
  }
  return { open, stop };
}
