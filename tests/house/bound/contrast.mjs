// In: pairs of colours on stdin, one JSON list of ["#rrggbb", "#rrggbb"]. Out: their contrast as wcag-contrast reckons it.
import fs from "node:fs";
import { createRequire } from "node:module";

const { hex } = createRequire(import.meta.url)("../../../.ci/node_modules/wcag-contrast");
const pairs = JSON.parse(fs.readFileSync(0, "utf8"));
process.stdout.write(JSON.stringify(pairs.map(([one, other]) => hex(one, other))));
