// editor_check.mjs PROGRAM: what an editor says of records, by npm yaml-language-server over its protocol, without a network: it
// reads the first line of a record, finds the shape beside the content, says nothing of a good record and of a draft whose
// required fields are filled, and names the line of each fault of a bad one.
import { spawn, spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';

const program = path.resolve(process.argv[2]);
const server = path.resolve(import.meta.dirname, '../../.ci/node_modules/yaml-language-server/bin/yaml-language-server');
const folder = mkdtempSync(path.join(os.tmpdir(), 'editor-'));
let looked = 0;

function hold(what, right) {
  ++looked;
  if (right) return;
  console.error(`wrong: ${what}`);
  process.exitCode = 1;
}

/** The protocol: messages of JSON with their length before them. */
class Editor {
  constructor() {
    this.process = spawn(process.execPath, [server, '--stdio'], { cwd: folder, stdio: ['pipe', 'pipe', 'inherit'] });
    this.rest = Buffer.alloc(0);
    this.waiting = new Map();
    this.told = new Map();
    this.number = 0;
    this.process.stdout.on('data', (bytes) => this.take(bytes));
  }

  take(bytes) {
    this.rest = Buffer.concat([this.rest, bytes]);
    for (;;) {
      const head = this.rest.indexOf('\r\n\r\n');
      if (head < 0) return;
      const length = Number(/Content-Length: (\d+)/i.exec(this.rest.toString('latin1', 0, head))[1]);
      if (this.rest.length < head + 4 + length) return;
      const message = JSON.parse(this.rest.toString('utf8', head + 4, head + 4 + length));
      this.rest = this.rest.subarray(head + 4 + length);
      this.read(message);
    }
  }

  read(message) {
    if (message.method === 'textDocument/publishDiagnostics') this.told.get(message.params.uri)?.(message.params.diagnostics);
    else if (message.method !== undefined && message.id !== undefined) {
      this.send({ id: message.id, result: message.method === 'workspace/configuration' ? message.params.items.map(() => ({})) : null });
    } else if (message.id !== undefined) this.waiting.get(message.id)?.(message.result);
  }

  send(message) {
    const text = JSON.stringify({ jsonrpc: '2.0', ...message });
    this.process.stdin.write(`Content-Length: ${Buffer.byteLength(text)}\r\n\r\n${text}`);
  }

  ask(method, params) {
    const id = ++this.number;
    return new Promise((done) => {
      this.waiting.set(id, done);
      this.send({ id, method, params });
    });
  }

  /** What is said of a file. */
  open(name) {
    const uri = pathToFileURL(path.join(folder, name)).href;
    const said = new Promise((done) => this.told.set(uri, done));
    const text = readFileSync(path.join(folder, name), 'utf8');
    this.send({ method: 'textDocument/didOpen', params: { textDocument: { uri, languageId: 'yaml', version: 1, text } } });
    return said;
  }
}

cpSync('schema', path.join(folder, 'schema'), { recursive: true });
mkdirSync(path.join(folder, 'content/tool'), { recursive: true });
const write = (name, text) => writeFileSync(path.join(folder, name), text);
const draft = spawnSync(program, ['draft', 'tool', 'small-lamp', '--stdout', '--quiet'], { encoding: 'utf8', cwd: folder });
hold('the program drafts a tool', draft.status === 0 && draft.stdout.startsWith('# yaml-language-server: $schema='));
write('content/tool/small-lamp.yaml', draft.stdout.replace(/^title:.*$/m, 'title: Small lamp').replace(/^use:.*$/m, 'use: Light from the side.'));
write('content/tool/good.yaml', readFileSync('content/tool/loupe.yaml', 'utf8'));
write('content/tool/bad.yaml', '# yaml-language-server: $schema=../../schema/shapes/tool.schema.json\nid: bad\ntitel: Bad\nuse: 5\n');

const editor = new Editor();
await editor.ask('initialize', { processId: process.pid, rootUri: pathToFileURL(folder).href,
  capabilities: { workspace: { configuration: true }, textDocument: { publishDiagnostics: {} } } });
editor.send({ method: 'initialized', params: {} });
for (const name of ['content/tool/small-lamp.yaml', 'content/tool/good.yaml']) {
  const said = await editor.open(name);
  hold(`nothing is said of ${name}, not ${JSON.stringify(said.slice(0, 2))}`, said.length === 0);
}
const faults = await editor.open('content/tool/bad.yaml');
const lines = new Set(faults.map((fault) => fault.range.start.line + 1));
hold(`the key that no shape has is found at line 3, not ${[...lines]}`, lines.has(3));
hold(`the number where words belong is found at line 4, not ${[...lines]}`, lines.has(4));
hold('the missing title is said', faults.some((fault) => /title/.test(fault.message)));
editor.process.kill();
rmSync(folder, { recursive: true });
console.log(`${looked} looked at`);
