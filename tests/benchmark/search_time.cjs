// search_time.cjs INDEX SEARCH QUERIES: how long the pages' search takes for a query when the book has 10,000 records. The index of
// the bound book is repeated, each time under other names, so that words meet as many others as they would; nothing is asserted.
const fs = require("fs");
const vm = require("vm");
const [index, search, queries] = process.argv.slice(2);
const RECORDS = 10000;

vm.runInThisContext(fs.readFileSync(index, "utf8"));
vm.runInThisContext(fs.readFileSync(search, "utf8"));
const [head, ...lines] = globalThis.benchleafIndex.split("\n").filter((line) => line !== "");

/** A line whose record and keys end in letters of their own: `393` becomes `393qb`. */
function renamed(line, copy) {
  const mark = "q" + copy.toString(36);
  const parts = line.split("\t");
  const keys = parts.pop().replace(/[^|;:]+(?=[|;]|$)/g, (key) => key + mark);
  return [parts[0] + "-" + mark, ...parts.slice(1), keys].join("\t");
}

const all = [head, ...lines];
for (let copy = 1; all.length <= RECORDS; ++copy) all.push(...lines.map((line) => renamed(line, copy)));
const before = performance.now();
const list = globalThis.benchleafSearch.open(all.slice(0, RECORDS + 1).join("\n") + "\n");
const opened = performance.now() - before;
const asked = fs.readFileSync(queries, "utf8").split("\n").filter((line) => line !== "" && !line.startsWith("#")).map((line) => line.split("|")[0].trim());
for (const query of asked) list.find(query);
const times = asked.map((query) => {
  const start = performance.now();
  list.find(query);
  return performance.now() - start;
}).sort((one, other) => one - other);
const at = (share) => times[Math.floor(share * (times.length - 1))].toFixed(2);
console.log(`search over ${RECORDS} records: opened in ${opened.toFixed(0)} ms; ${asked.length} queries, middle ${at(0.5)} ms, 95 of 100 under ${at(0.95)} ms, longest ${at(1)} ms`);
