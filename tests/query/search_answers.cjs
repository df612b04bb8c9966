// search_answers.cjs SEARCH DATA QUERIES: what the pages' script finds for each line of QUERIES, as a line of records: hits, a
// bar, others, a bar, the nearest names.
const fs = require('fs');
const vm = require('vm');

const [script, data, queries] = process.argv.slice(2).map((path) => fs.readFileSync(path, 'utf8'));
vm.runInThisContext(script);
vm.runInThisContext(data);
const index = benchleafSearch.open(globalThis.benchleafIndex);
const names = (entries) => entries.map((entry) => entry.record).join(' ');
for (const query of queries.split('\n').slice(0, -1)) {
  const answer = index.find(query);
  process.stdout.write(`${names(answer.hits)} | ${names(answer.others)} | ${answer.nearest.join(' ')}\n`);
}
