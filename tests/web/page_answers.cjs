// In: the page's program, the script that asks it, its data as text, a file of requests (an object of JSON a line).
// Out: the answers as a page gets them, each followed by a line of its own that parts them; on stderr the milliseconds of each.
const fs = require("fs");
const vm = require("vm");
const [program, ask, data, requests] = process.argv.slice(2);

globalThis.benchleafProgram = require(program);
globalThis.benchleafData = fs.readFileSync(data, "utf8");
vm.runInThisContext(fs.readFileSync(ask, "utf8"));
(async () => {
  for (const line of fs.readFileSync(requests, "utf8").split("\n").slice(0, -1)) {
    const before = performance.now();
    process.stdout.write((await globalThis.benchleafAsk(JSON.parse(line))) + "====\n");
    process.stderr.write(`${Math.round(performance.now() - before)} ms: ${line.slice(0, 60)}\n`);
  }
})();
