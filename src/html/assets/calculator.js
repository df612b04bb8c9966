/* In: the page of a calculator, the calculators built for the browser and what they look up. Out: a form whose answers are those
   of the terminal. What was typed stands in the address, so that a kept link opens the same answer. */
'use strict';

(function () {
  const place = document.getElementById('calculator_place');
  const root = document.documentElement.dataset.root;
  const name = place.dataset.record;
  const TRUST = { standard: 'standard, with clause', handbook: 'handbook', dataset: 'open data set', trade: 'trade practice',
    memory: 'recalled', invented: 'invented', given: 'as typed' };
  const PAUSE = 250;  // ms: an answer while somebody still types disturbs more than it tells

  function make(kind, attributes, ...content) {
    const element = document.createElement(kind);
    for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
    element.append(...content);
    return element;
  }

  const asked = (inputs, form) => benchleafAsk({ ask: 'reckon', name, inputs: Object.fromEntries(inputs), form });

  /* The form */

  function fieldOf(row) {
    const [head, what, example, needed] = row.children;
    const id = `input-${row.dataset.record}`;
    const input = make('input', { id, name: row.dataset.record, autocomplete: 'off', autocapitalize: 'off', spellcheck: 'false',
      'aria-describedby': `${id}-what ${id}-error` });
    if (needed.textContent !== '') input.setAttribute('aria-required', 'true');
    const picture = head.querySelector('svg') ?? '';
    return make('div', { class: 'field' }, picture,
      make('label', { for: id }, head.textContent.replaceAll('-', ' '), needed.textContent === '' ? '' : make('i', {}, ' needed')),
      input,
      make('p', { id: `${id}-what`, class: 'what' }, `${what.textContent}; for example `, make('code', {}, example.textContent)),
      make('p', { id: `${id}-error`, class: 'field-error' }));
  }

  function typed(form) {
    return [...form.querySelectorAll('input')].map((input) => [input.name, input.value.trim()]).filter(([, value]) => value !== '');
  }

  function fill(form) {
    const kept = new URLSearchParams(location.hash.slice(1));
    for (const input of form.querySelectorAll('input')) input.value = kept.get(input.name) ?? '';
  }

  function keep(inputs) {
    const text = '#' + new URLSearchParams(inputs).toString();
    try { history.replaceState(null, '', text); } catch { location.replace(text); }
  }

  /* The answer */

  /** The terminal types a hyphen for a minus; a page has the sign. */
  const printed = (text) => text.replace(/(^|[\s(])-(?=[0-9])/g, '$1\u2212');

  const trustWords = (trust) => make('span', { class: 'trust' }, TRUST[trust] ?? trust);

  function addressOf(fact) {
    const record = fact.split('#')[0];
    return record.startsWith('table/') ? null : `${root}${record}.html`;
  }

  function linked(fact) {
    const address = addressOf(fact);
    return address === null ? make('span', {}, fact) : make('a', { href: address }, fact);
  }

  function section(title, items, kind = 'ul') {
    if (items.length === 0) return '';
    return make('section', {}, make('h2', {}, title), make(kind, {}, ...items.map((item) => make('li', {}, ...[item].flat()))));
  }

  function warning(caution) {
    const record = caution.record === '' ? '' : make('a', { href: `${root}${caution.record}.html` }, 'read more');
    return [caution.text, ' ', record];
  }

  function outputs(list) {
    const rows = list.map((one) => make('tr', {}, make('th', { scope: 'row' }, one.label), make('td', {}, printed(one.printed)),
      make('td', { class: 'trust-cell' }, trustWords(one.trust))));
    return make('div', { class: 'table-frame' }, make('table', { class: 'outputs' }, make('tbody', {}, ...rows)));
  }

  function parts(answer) {
    const first = answer.cautions.filter((one) => one.first), after = answer.cautions.filter((one) => !one.first);
    const [best, ...rest] = answer.outputs;
    return [
      section('First', first.map(warning)),
      make('section', {}, make('h2', {}, 'Answer'), make('p', { class: 'answer' }, make('span', { class: 'answer-label' }, best.label), ' ', printed(best.printed),
        ' ', trustWords(best.trust)), rest.length > 0 ? outputs(rest) : ''),
      section('Mind', after.map(warning)),
      section('Holds', answer.holds),
      section('Working', answer.working.map((line) => make('code', {}, line))),
      section('Formula', answer.formulas.map((one) => [make('code', {}, one.text), ` by ${one.source} `, trustWords(one.trust)])),
      section('Rests on', answer.grounds.map((one) => [linked(one.fact), `: ${printed(one.printed)} `, trustWords(one.trust)])),
    ];
  }

  function refuse(form, result, refusal) {
    const words = `${refusal.reason}${refusal.hint === '' ? '' : '; ' + refusal.hint}`;
    const input = form.elements.namedItem(refusal.input);
    if (input === null) return result.replaceChildren(make('p', { class: 'refusal' }, words));
    input.setAttribute('aria-invalid', 'true');
    document.getElementById(`${input.id}-error`).textContent = words;
    return result.replaceChildren();
  }

  function start() {
    const form = make('form', { class: 'calculator', novalidate: '' }, ...[...place.querySelectorAll('tr[data-record]')].map(fieldOf));
    const result = make('div', { class: 'result', role: 'region', 'aria-label': 'Answer', 'aria-live': 'polite' });

    async function answer() {
      const inputs = typed(form);
      keep(inputs);
      for (const input of form.querySelectorAll('[aria-invalid]')) input.removeAttribute('aria-invalid');
      for (const error of form.querySelectorAll('.field-error')) error.textContent = '';
      if (inputs.length === 0) return result.replaceChildren();
      const found = JSON.parse(await asked(inputs, 'json'));
      if (found.refusal !== null) return refuse(form, result, found.refusal);
      const plain = make('details', {}, make('summary', {}, 'As the terminal prints it'), make('pre', {}, await asked(inputs, 'text')));
      return result.replaceChildren(...parts(found), plain);
    }

    let pause = 0;
    form.addEventListener('input', () => {
      clearTimeout(pause);
      pause = setTimeout(answer, PAUSE);
    });
    form.addEventListener('submit', (event) => {
      event.preventDefault();
      clearTimeout(pause);
      answer();
      result.scrollIntoView({ block: 'nearest' });
    });
    addEventListener('hashchange', () => { fill(form); answer(); });
    form.append(make('button', { type: 'submit' }, 'Reckon'));
    place.replaceChildren(make('div', { class: 'reckoning' }, form, result));
    fill(form);
    answer();
  }

  start();
})();
