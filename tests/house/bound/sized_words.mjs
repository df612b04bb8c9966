// In: a PDF. Out: one JSON list, a page each: width, height, and its words with size, place, length, and width where they are
// level, in points.
import fs from "node:fs";

// It warns on stdout that it cannot draw without a canvas; only words are asked for here.
console.log = () => {};
const { getDocument } = await import("../../../.ci/node_modules/pdfjs-dist/legacy/build/pdf.mjs");

const data = new Uint8Array(fs.readFileSync(process.argv[2]));
const file = await getDocument({ data, verbosity: 0, isEvalSupported: false, useSystemFonts: false }).promise;
const pages = [];
for (let number = 1; number <= file.numPages; ++number) {
  const page = await file.getPage(number);
  const { width, height } = page.getViewport({ scale: 1 });
  const content = await page.getTextContent({ disableNormalization: true });
  // A font that is drawn (Type 3) has the trust signs, which are read as words but are no type. Fonts are known once the page
  // was looked through.
  await page.getOperatorList();
  const isDrawn = (item) => page.commonObjs.has(item.fontName) && page.commonObjs.get(item.fontName).isType3Font;
  const words = content.items
    .filter((item) => item.str.trim() !== "" && !isDrawn(item))
    .map((item) => {
      const [a, b, , , x, y] = item.transform;
      return { text: item.str, size: Math.hypot(a, b), x, y, width: b === 0 ? item.width : 0, length: item.width };
    });
  pages.push({ width, height, words });
}
process.stdout.write(JSON.stringify(pages));
