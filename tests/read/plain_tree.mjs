// What the npm package `yaml` reads, in a form that keeps key order and keys as written: a mapping is {map: [[key, value]]}.
import { createRequire } from 'node:module';
import path from 'node:path';

/** Finds the pinned packages of .ci, whatever folder the test runs in. */
export const packages = createRequire(path.resolve(import.meta.dirname, '../../.ci/package.json'));
const YAML = packages('yaml');

function plain(node) {
  if (node === null) return null;
  if (YAML.isMap(node)) return { map: node.items.map((pair) => [keyText(pair.key), plain(pair.value)]) };
  if (YAML.isSeq(node)) return node.items.map(plain);
  if (YAML.isAlias(node)) throw new Error('alias');
  return node.value;
}

function keyText(key) {
  if (key === null) return '';
  if (!YAML.isScalar(key)) throw new Error('key that is no word');
  return key.source ?? String(key.value);
}

/** `{refused}` where npm yaml finds an error, `{odd}` where its result has no place in our subset, else `{tree}`. */
export function readPlain(text) {
  const documents = YAML.parseAllDocuments(text, { logLevel: 'silent' });
  if (!Array.isArray(documents) || documents.length === 0) return { odd: 'no document' };
  if (documents.some((one) => one.errors.length > 0)) return { refused: documents.flatMap((one) => one.errors)[0].message };
  if (documents.length > 1) return { odd: `${documents.length} documents` };
  try {
    return { tree: plain(documents[0].contents) };
  } catch (fault) {
    return { odd: fault.message };
  }
}
