// ask_page.mjs FOLDER: reads one query a line and writes what the pages of a bound folder answer, a line each, in the JSON of
// `find --json`. The program, its data and the script that asks it are those of FOLDER/html/assets.
import { createRequire } from "node:module";
import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import vm from "node:vm";

const assets = resolve(process.argv[2], "html/assets");
globalThis.benchleafProgram = createRequire(import.meta.url)(`${assets}/program.js`);
for (const name of ["data.js", "ask.js"]) vm.runInThisContext(readFileSync(`${assets}/${name}`, "utf8"), { filename: name });
const queries = readFileSync(0, "utf8").split("\n");
if (queries.at(-1) === "") queries.pop();
for (const query of queries) {
  const answer = await globalThis.benchleafAsk({ ask: "find", query });
  process.stdout.write(`${JSON.stringify(JSON.parse(answer))}\n`);
}
