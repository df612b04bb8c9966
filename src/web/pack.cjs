// pack.cjs FOLDER OUT: In: loader.js and loader.wasm of FOLDER. Out: one plain script with both, the program packed.
const fs = require("fs");
const path = require("path");
const zlib = require("zlib");
const [folder, out] = process.argv.slice(2);

/// 85 signs that stand in a literal and in a page as they are; five of them hold four bytes, first the gravest.
const SIGNS = [...Array(94).keys()].map((at) => String.fromCharCode(33 + at)).filter((sign) => !'"\\<>&\'$`~'.includes(sign)).join("");

function written(bytes) {
  const whole = Buffer.concat([bytes, Buffer.alloc((4 - bytes.length % 4) % 4)]);
  const text = [];
  for (let at = 0; at < whole.length; at += 4) {
    let rest = whole.readUInt32BE(at), five = "";
    for (let i = 0; i < 5; ++i, rest = Math.floor(rest / 85)) five = SIGNS[rest % 85] + five;
    text.push(five);
  }
  return text.join("");
}

const packed = zlib.gzipSync(fs.readFileSync(path.join(folder, "loader.wasm")), { level: 9 });
packed[9] = 255;  // the same bytes on any system (RFC 1952, 2.3.1: unknown)
const loader = fs.readFileSync(path.join(folder, "loader.js"), "utf8");
fs.writeFileSync(out, `var benchleafSigns = "${SIGNS}", benchleafLength = ${packed.length}, benchleafPacked = "${written(packed)}";\n${loader}`);
