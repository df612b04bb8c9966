// In: the page's script, the files of its tables and records, a folder of watches as lines (NAME.watch, and NAME.stock where there
// is a drawer). Out: the answers as the page gets them, in the order of the names, each followed by a line that parts them; on
// stderr the milliseconds of opening and of each answer.
const fs = require("fs");
const path = require("path");
const [script, tables, records, folder] = process.argv.slice(2);

require(script)().then((module) => {
  const pass = (text) => {
    const size = module.lengthBytesUTF8(text) + 1;
    const at = module._malloc(size);
    module.stringToUTF8(text, at, size);
    return at;
  };
  let before = performance.now();
  const told = (what) => {
    process.stderr.write(`${what} ${Math.round(performance.now() - before)} ms\n`);
    before = performance.now();
  };
  const library = module._benchleaf_open_tickets(pass(fs.readFileSync(tables, "utf8")), pass(fs.readFileSync(records, "utf8")));
  told("open");
  for (const name of fs.readdirSync(folder).filter((one) => one.endsWith(".watch")).sort()) {
    const drawer = path.join(folder, name.replace(/watch$/, "stock"));
    const answer = module._benchleaf_ticket(library, pass(fs.readFileSync(path.join(folder, name), "utf8")),
      pass(fs.existsSync(drawer) ? fs.readFileSync(drawer, "utf8") : ""));
    process.stdout.write(module.UTF8ToString(answer) + "====\n");
    module._free(answer);
    told(name);
  }
  module._benchleaf_close_tickets(library);
});
