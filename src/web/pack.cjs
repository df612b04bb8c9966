// pack.cjs FOLDER OUT: In: loader.js and loader.wasm of FOLDER. Out: one plain script with both, the program packed.
const fs = require("fs");
const path = require("path");
const zlib = require("zlib");
const [folder, out] = process.argv.slice(2);

const packed = zlib.gzipSync(fs.readFileSync(path.join(folder, "loader.wasm")), { level: 9 });
packed[9] = 255;  // the same bytes on any system (RFC 1952, 2.3.1: unknown)
const loader = fs.readFileSync(path.join(folder, "loader.js"), "utf8");
fs.writeFileSync(out, `var benchleafPacked = "${packed.toString("base64")}";\n${loader}`);
