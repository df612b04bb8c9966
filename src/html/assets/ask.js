/* In: a question, an object. Out: a promise of what the program answers. The program is that of the terminal, built for the browser; it
   is loaded when it is first asked, since most pages are read without it. */
'use strict';

globalThis.benchleafAsk = (function () {
  const escaped = (text) => text.replaceAll('\\', '\\\\').replaceAll('\t', '\\t').replaceAll('\n', '\\n');

  /** A value as the lines that the program reads: depth, type, key and words of each value within it. */
  function linesOf(value, depth = 0, key = '') {
    const line = (type, text = '') => `${depth}\t${type}\t${escaped(key)}\t${escaped(text)}\n`;
    if (value === null || value === undefined) return line('-');
    if (Array.isArray(value)) return line('[') + value.map((item) => linesOf(item, depth + 1)).join('');
    if (typeof value === 'object') return line('{') + Object.entries(value).map(([name, inner]) => linesOf(inner, depth + 1, name)).join('');
    if (typeof value === 'boolean') return line('b', String(value));
    return typeof value === 'number' ? line(Number.isInteger(value) ? 'i' : 'n', String(value)) : line('s', value);
  }

  /** A script beside the pages; nothing where the page has brought it. */
  function loaded(name, global) {
    if (globalThis[global] !== undefined) return Promise.resolve();
    return new Promise((done, failed) => {
      const script = document.createElement('script');
      script.src = `${document.documentElement.dataset.root}assets/${name}`;
      script.addEventListener('load', done);
      script.addEventListener('error', () => failed(new Error(`${name} is missing`)));
      document.head.append(script);
    });
  }

  async function open() {
    await Promise.all([loaded('program.js', 'benchleafProgram'), loaded('data.js', 'benchleafData')]);
    const program = await globalThis.benchleafProgram();
    const passed = (text, use) => {
      const size = program.lengthBytesUTF8(text) + 1;
      const at = program._malloc(size);
      program.stringToUTF8(text, at, size);
      try { return use(at); } finally { program._free(at); }
    };
    const opened = passed(globalThis.benchleafData, (at) => program._benchleaf_open(at));
    return (question) => passed(linesOf(question), (at) => program.UTF8ToString(program._benchleaf_answer(opened, at)));
  }

  let opening = null;
  return async (question) => (await (opening ??= open()))(question);
})();
