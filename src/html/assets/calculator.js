/* In: the page of a calculator and the program. Out: a form whose answers are those of the terminal. What was typed stands in the
   address, so that a kept link opens the same answer. */
'use strict';

(function () {
  const root = document.documentElement.dataset.root;
  const single = document.documentElement.dataset.single !== undefined;
  const TRUST = { standard: 'standard, with clause', handbook: 'handbook', dataset: 'open data set', trade: 'trade practice',
    memory: 'recalled', invented: 'invented', given: 'as typed' };
  const VERDICTS = { use: ['use', 'use'], 'with-care': ['care', 'with care'], 'bench-test-only': ['care', 'bench test only'],
    never: ['never', 'never'], best: ['use', 'takes it'], 'within-band': ['care', 'sits'], 'below-band': ['never', 'too loose'],
    'above-band': ['never', 'too tight'] };
  const { make, makeInSight, fieldOf, clearFaults, tellFaults } = benchleafFields;

  /** Inputs that stand for each other are asked for one at a time, by what was measured. */
  function chooserOf(id, question, ways) {
    const select = make('select', { id }, ...ways.map((field) => make('option', { value: field.name }, field.way)));
    const choose = (name) => {
      select.value = name;
      for (const field of ways) field.row.hidden = field.name !== name;
    };
    select.addEventListener('change', () => choose(select.value));
    return { row: make('div', { class: 'field' }, make('label', { for: id }, question), make('div', { class: 'entry' }, select)), choose };
  }

  /* The answer */

  /** The terminal types a hyphen for a minus; a page has the sign. */
  const printed = (text) => text.replace(/(^|[\s(])-(?=[0-9])/g, '$1\u2212');
  const trustWords = (trust) => make('span', { class: 'trust' }, TRUST[trust] ?? trust);

  function linked(record, words) {
    if (record === '' || record.startsWith('table/')) return make('span', {}, words);
    const [page] = record.split('#');
    return make('a', { href: single ? `#${page.replace('/', '_')}` : `${root}${page}.html` }, words);
  }

  function verdict(code) {
    const [kind, words] = VERDICTS[code] ?? [];
    return kind === undefined ? '' : make('span', { class: `verdict ${kind}` }, words);
  }

  function section(title, items, kind = 'ul') {
    if (items.length === 0) return '';
    return make('section', {}, make('h2', {}, title), make(kind, {}, ...items.map((item) => make('li', {}, ...[item].flat()))));
  }

  const warning = (caution) => [caution.text, ' ', caution.record === '' ? '' : linked(caution.record, 'Read more')];

  function outputs(list) {
    const rows = list.map((one) => make('tr', {}, make('th', { scope: 'row' }, one.label), make('td', {}, printed(one.printed)),
      make('td', { class: 'trust-cell' }, trustWords(one.trust))));
    return make('div', { class: 'table-frame' }, make('table', { class: 'outputs folds', 'aria-label': 'What else was worked out' }, make('tbody', {}, ...rows)));
  }

  const figure = (one) => one === null || one === undefined ? '' : printed(one.printed);

  /** Sizes that were not taken are told as a list of their own. */
  const isPassedOver = (one) => one.name === 'rejected';
  const passedOver = (answer) => answer.outputs.filter(isPassedOver);

  /** What else there is to choose, each with its verdict. */
  function besides(answer) {
    const cells = (answer.cells ?? []).map((one) => [linked(one.record, one.name), ' ', verdict(one.verdict), ' ', figure(one.lower)]);
    const sizes = passedOver(answer).map((one) => make('p', { class: 'row' }, make('span', {}, printed(one.printed)), verdict(one.code)));
    const rungs = (answer.rungs ?? []).map((one) => [make('b', {}, one.grade), ' ', figure(one.removal)]);
    return [section('Cells, the best first', cells), section('The sizes beside it', sizes), section('Papers in order', rungs, 'ol')];
  }

  function workings(answer, text) {
    const part = (title, items) => items.length === 0 ? '' : [make('h3', {}, title), make('ul', {}, ...items.map((item) => make('li', {}, ...[item].flat())))];
    return make('details', { class: 'working' }, make('summary', {}, 'Working and sources'),
      ...[part('Working', answer.working.map((line) => make('code', {}, line))),
        part('Formula', answer.formulas.map((one) => [make('code', {}, one.text), ` by ${one.source} `, trustWords(one.trust)])),
        part('Rests on', answer.grounds.map((one) => [linked(one.fact, one.fact), `: ${printed(one.printed)} `, trustWords(one.trust)]))].flat(),
      make('h3', {}, 'At the terminal'), make('pre', { tabindex: '0' }, text));
  }

  function parts(answer, text) {
    const first = answer.cautions.filter((one) => one.first), after = answer.cautions.filter((one) => !one.first);
    const [best, ...rest] = answer.outputs.filter((one) => !isPassedOver(one));
    return [section('First', first.map(warning)),
      make('section', {}, make('h2', { tabindex: '-1', class: 'answer-head' }, 'Answer'),
        make('p', { class: 'answer' }, make('span', { class: 'answer-label' }, best.label), ' ', printed(best.printed), ' ', trustWords(best.trust)),
        rest.length > 0 ? outputs(rest) : ''),
      ...besides(answer), section('Mind', after.map(warning)), section('Holds', answer.holds), workings(answer, text)];
  }

  /* The form */

  function start(place, asks) {
    const name = asks.name;
    const fields = asks.inputs.map((input) => fieldOf(input, `${name}-${input.name}`, input.required || input.way !== '' ? '' : ' if you know it',
      place.querySelector(`tr[data-record="${input.name}"] svg`)));
    const ways = fields.filter((field) => field.way !== '');
    const errors = make('div', { class: 'errors', role: 'alert' });
    const result = make('div', { class: 'result', role: 'region', 'aria-label': 'Answer', 'aria-live': 'polite', 'aria-busy': 'false' });
    const chooser = ways.length > 1 ? chooserOf(`${name}-way`, asks.ways, ways) : null;
    const rows = fields.flatMap((field) => field === ways[0] && chooser !== null ? [chooser.row, field.row] : [field.row]);
    const form = make('form', { class: 'calculator', novalidate: '' }, ...rows,
      make('p', { class: 'what' }, 'A plain number is of the unit beside the field; another unit may be written behind it. Leave empty what you do not know.'),
      make('button', { type: 'submit' }, place.parentElement.querySelector('h1, h2, h3').textContent), errors);
    let asked = 0;  // the last question; an answer to an earlier one is late

    const entries = () => fields.filter((field) => !field.row.hidden).map((field) => [field.name, field.read()]).filter(([, value]) => value !== '');

    function show(inputs) {
      for (const field of fields) field.write(inputs.get(field.name) ?? '');
      if (chooser !== null) chooser.choose((ways.find((field) => inputs.has(field.name)) ?? ways[0]).name);
    }

    function keep(inputs) {
      const text = '#' + new URLSearchParams(inputs).toString();
      try { history.replaceState(null, '', text); } catch { location.replace(text); }
    }

    function clear() {
      clearFaults(errors, fields);
      result.replaceChildren();
    }

    function refuse(faults, focuses) {
      for (const { field } of faults) {
        if (field !== undefined && field.row.hidden && chooser !== null) chooser.choose(field.name);
      }
      tellFaults(errors, faults, 'Nothing was worked out.', focuses);
    }

    /** An example as it is typed here, without the name that the terminal wants before it. */
    function inFormWords({ input, reason }) {
      const example = asks.inputs.find((one) => one.name === input)?.example ?? '';
      return reason.replace(`${input}=${example}`, example);
    }

    /** Entries that have to be there. */
    function missing(inputs) {
      const given = new Set(inputs.map(([key]) => key));
      const open = fields.filter((field) => field.required && !given.has(field.name));
      const first = fields.find((field) => !field.row.hidden);
      return (open.length === 0 && inputs.length === 0 ? [first] : open).map((field) => ({ field, words: 'fill this in' }));
    }

    async function answer(focuses) {
      const inputs = entries();
      const number = ++asked;
      clear();
      if (inputs.length === 0 && !focuses) return;
      if (focuses && !single) keep(inputs);
      const open = missing(inputs);
      if (open.length > 0) return refuse(open, focuses);
      const question = { ask: 'reckon', name, inputs: Object.fromEntries(inputs) };
      try {
        const found = JSON.parse(await benchleafAsk({ ...question, form: 'json' }));
        const text = await benchleafAsk({ ...question, form: 'text' });
        if (number !== asked) return;
        if (found.refusal !== null) {
          const { input, hint } = found.refusal;
          const reason = inFormWords(found.refusal);
          return refuse([{ field: fields.find((field) => field.name === input), words: `${reason}${hint === '' ? '' : '; ' + hint}` }], focuses);
        }
        result.replaceChildren(...parts(found, text));
        if (focuses) result.querySelector('.answer-head').focus();
      } catch (error) {
        refuse([{ words: `The calculator could not be loaded: ${error.message}.` }], false);
      }
    }

    form.addEventListener('submit', (event) => {
      event.preventDefault();
      answer(true);
    });
    const open = () => { show(new URLSearchParams(single ? '' : location.hash.slice(1))); answer(false); };
    if (!single) addEventListener('hashchange', open);
    place.replaceChildren(make('div', { class: 'reckoning' }, form, result));
    open();
  }

  makeInSight('.calculator-place', 'The calculator', (place) => ({ ask: 'form', name: place.dataset.record }), start);
})();
