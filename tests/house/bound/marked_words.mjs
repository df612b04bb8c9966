// In: a PDF. Out: one JSON object, the words of each marked content that has a number: {"PAGE-OBJECT NUMBER": "words"}.
import fs from "node:fs";

// It warns on stdout that it cannot draw without a canvas; only words are asked for here.
console.log = () => {};
const { getDocument } = await import("../../../.ci/node_modules/pdfjs-dist/legacy/build/pdf.mjs");

const data = new Uint8Array(fs.readFileSync(process.argv[2]));
const file = await getDocument({ data, verbosity: 0, isEvalSupported: false, useSystemFonts: false }).promise;
const words = {};
for (let number = 1; number <= file.numPages; ++number) {
  const page = await file.getPage(number);
  const content = await page.getTextContent({ includeMarkedContent: true, disableNormalization: true });
  const open = [];
  for (const item of content.items) {
    if (item.type === "endMarkedContent") {
      open.pop();
    } else if (item.type) {
      const place = /^p(\d+)R_mc(\d+)$/.exec(item.id ?? "");
      open.push(place ? `${place[1]} ${place[2]}` : open.at(-1));
    } else if (open.at(-1)) {
      words[open.at(-1)] = (words[open.at(-1)] ?? "") + item.str + (item.hasEOL ? " " : "");
    }
  }
  page.cleanup();
}
process.stdout.write(JSON.stringify(words));
