// In: the page's script, a file of table and figure lines, a file of requests (`NAME; key=value; key=value`, one a line).
// Out: the answers as the page gets them, text and JSON in turn, each followed by a line of its own that parts them.
const fs = require("fs");
const [script, linesFile, requestsFile] = process.argv.slice(2);

require(script)().then((module) => {
  const pass = (text) => {
    const size = module.lengthBytesUTF8(text) + 1;
    const at = module._malloc(size);
    module.stringToUTF8(text, at, size);
    return at;
  };
  const lines = pass(fs.readFileSync(linesFile, "utf8"));
  const library = module._benchleaf_open(lines);
  module._free(lines);
  for (const request of fs.readFileSync(requestsFile, "utf8").split("\n").slice(0, -1)) {
    const asked = pass(request.split("; ").join("\n"));
    for (const json of [0, 1]) {
      const answer = module._benchleaf_reckon(library, asked, json);
      process.stdout.write(module.UTF8ToString(answer) + "====\n");
      module._free(answer);
    }
    module._free(asked);
  }
  module._benchleaf_close(library);
});
