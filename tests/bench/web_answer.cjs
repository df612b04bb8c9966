// In: the page's script, a file of table lines, then a calculator and its inputs. Out: the answer, as the page gets it.
const fs = require("fs");
const [script, tablesFile, ...request] = process.argv.slice(2);

require(script)().then((module) => {
  const pass = (text) => {
    const size = module.lengthBytesUTF8(text) + 1;
    const at = module._malloc(size);
    module.stringToUTF8(text, at, size);
    return at;
  };
  const tables = pass(fs.readFileSync(tablesFile, "utf8"));
  const asked = pass(request.join("\n"));
  const answer = module._benchleaf_reckon(tables, asked);
  process.stdout.write(module.UTF8ToString(answer));
  [answer, asked, tables].forEach((at) => module._free(at));
});
