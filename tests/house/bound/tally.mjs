// What every check of the pages counts: what was looked at, and what was wrong, named on the error stream.
import { pathToFileURL } from 'node:url';
import path from 'node:path';

let faults = 0, looked = 0;

export function hold(what, right) {
  ++looked;
  if (right) return;
  ++faults;
  console.error(`wrong: ${what}`);
}

/** Things that were looked at and are told together. */
export function count(more) { looked += more; }

/** The end of a check that has looked at enough: its count, and the exit code. */
export function finish(least) {
  console.log(`${looked} looked at, ${faults} faults`);
  process.exitCode = faults > 0 || looked < least ? 1 : 0;
}

export const fileAddress = (...parts) => pathToFileURL(path.resolve(...parts)).href;
