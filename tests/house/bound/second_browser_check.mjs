// second_browser_check.mjs BOUND: the bound pages in Firefox ESR, driven by WebDriver BiDi (W3C) and opened from the disk: search, a
// calculator, the ticket's form, the switch for light and dark, and the single file answer as in the first browser.
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';

const [bound] = process.argv.slice(2);
const PATIENCE = 60000;
let faults = 0, looked = 0;

function hold(what, right) {
  ++looked;
  if (right) return;
  ++faults;
  console.error(`wrong: ${what}`);
}

/** `html/calculator/rinse.html#times=3`: the part behind the sign is no part of the file's name. */
function address(name) {
  const [file, ...place] = name.split('#');
  return [pathToFileURL(path.resolve(bound, file)).href, ...place].join('#');
}

/** A browser and the way to ask it. */
async function start() {
  const profile = mkdtempSync(path.join(tmpdir(), 'benchleaf-second-'));
  const browser = spawn('firefox-esr', ['--headless', '--no-remote', '--profile', profile, '--remote-debugging-port', '0'], { stdio: ['ignore', 'ignore', 'pipe'] });
  const socketAt = await new Promise((found, failed) => {
    const late = setTimeout(() => failed(new Error('the browser does not answer')), PATIENCE);
    browser.stderr.on('data', (data) => {
      const said = /WebDriver BiDi listening on (ws:\S+)/.exec(data.toString());
      if (said !== null) {
        clearTimeout(late);
        found(said[1]);
      }
    });
  });
  const socket = new WebSocket(`${socketAt}/session`);
  await new Promise((opened) => socket.addEventListener('open', opened));
  const waiting = new Map();
  socket.addEventListener('message', ({ data }) => {
    const answer = JSON.parse(data);
    if (answer.method === 'network.beforeRequestSent') hold(`asked for ${answer.params.request.url}`, /^(file|data|blob|about):/.test(answer.params.request.url));
    waiting.get(answer.id)?.(answer);
  });
  let last = 0;
  const ask = (method, params) => new Promise((done, failed) => {
    const id = ++last;
    waiting.set(id, (answer) => answer.type === 'error' ? failed(new Error(`${method}: ${answer.message}`)) : done(answer.result));
    socket.send(JSON.stringify({ id, method, params }));
  });
  const stop = () => {
    socket.close();
    browser.kill();
    browser.on('exit', () => rmSync(profile, { recursive: true, force: true }));
  };
  return { ask, stop };
}

const { ask, stop } = await start();
await ask('session.new', { capabilities: {} });
await ask('session.subscribe', { events: ['network.beforeRequestSent'] });
const context = (await ask('browsingContext.getTree', {})).contexts[0].context;
const open = (name) => ask('browsingContext.navigate', { context, url: address(name), wait: 'complete' });

/** The value of an expression in the page; a promise is waited for. */
async function value(expression) {
  const { result, exceptionDetails } = await ask('script.evaluate', { expression, target: { context }, awaitPromise: true });
  if (exceptionDetails !== undefined) throw new Error(exceptionDetails.text);
  return result.value;
}

const until = (condition) => value(`new Promise((done, failed) => {
  const late = setTimeout(() => failed(new Error('waited in vain')), ${PATIENCE});
  (function look() { if (${condition}) { clearTimeout(late); done(true); } else setTimeout(look, 50); })();
})`);
const type = (field, words) => value(`{
  const input = document.querySelector(${JSON.stringify(field)});
  input.value = ${JSON.stringify(words)};
  input.dispatchEvent(new Event('input', { bubbles: true }));
}`);

async function search() {
  await open('html/index.html');
  await type('#search_field', '393');
  await until("document.querySelector('.results a') !== null");
  hold('393 brings SR754W first', (await value("document.querySelector('.results a').textContent")).includes('SR754W'));
}

async function calculator() {
  await open('html/calculator/gasket-fit.html#seat=31.85mm&section=0.8mm&series=round-0-8');
  await until("document.querySelector('.answer') !== null");
  hold('gasket-fit says 31 mm', /31\smm/.test(await value("document.querySelector('.answer').textContent")));
  hold('gasket-fit says 2.74 %', /2\.74\s%/.test(await value("document.querySelector('.outputs').textContent")));
}

async function ticket() {
  await open('html/ticket.html');
  await until("document.querySelector('.ticket-form') !== null");
  await type('#answer-gasket-seat', '28.60 mm');
  await type('#answer-gasket', 'round-0-7');
  await value("document.querySelector('.ticket-form').requestSubmit()");
  await until("document.querySelector('.plan:not([hidden]) .ticket h3') !== null");
  hold('the form plans', (await value('globalThis.benchleafTicketText')).includes('2.14 %'));
}

async function theme() {
  await open('html/cell/sr754w.html');
  const ground = 'getComputedStyle(document.body).backgroundColor';
  const before = await value(ground);
  await value("document.querySelector('.theme').click()");
  hold('the switch changes the ground', (await value(ground)) !== before);
}

async function singleFile() {
  await open('handbook.html');
  await type('#search_field', '393');
  await until("document.querySelector('.results a') !== null");
  hold('the single file finds 393', (await value("document.querySelector('.results a').textContent")).includes('SR754W'));
}

try {
  for (const part of [search, calculator, ticket, theme, singleFile]) await part();
} catch (error) {
  hold(error.message, false);
}
stop();
console.log(`${looked} looked at, ${faults} faults`);
process.exitCode = faults > 0 || looked < 6 ? 1 : 0;
