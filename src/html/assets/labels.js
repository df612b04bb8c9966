/* In: the page for labels and the program. Out: a form whose labels are those of the terminal, on a sheet that prints true. The program
   says where each label lies and what stands on it; how large its words are, the type of this browser decides. */
'use strict';

(function () {
  const { make, makeInSight, fieldOf, clearFaults, tellFaults } = benchleafFields;
  const single = document.documentElement.dataset.single !== undefined;
  const GAP = 0.5;  // mm between the words and the foot
  const DOTS = 96 / 25.4;  // in a millimetre, for the style sheet
  const OWN = 'own';

  const nodesOf = (html) => [...new DOMParser().parseFromString(html, 'text/html').body.childNodes];

  function button(words, act, kind = 'button') {
    const made = make('button', { type: kind }, words);
    if (act !== null) made.addEventListener('click', act);
    return made;
  }

  /** The largest type at which a label has room, the full words before those in brief; 0 where neither have. */
  function fitted(box, label, answer) {
    const high = (answer.high - 2 * answer.end) * DOTS, wide = (answer.wide - 2 * answer.side) * DOTS;
    for (const html of [label.full, label.brief].filter((one) => one !== '')) {
      box.replaceChildren(...nodesOf(html));
      const [words, foot] = box.children;
      const tall = () => words.getBoundingClientRect().height + GAP * DOTS + foot.getBoundingClientRect().height;
      for (let size = answer.most; size >= answer.least; size -= answer.step) {
        box.style.fontSize = `${size}pt`;
        if (tall() <= high && Math.max(words.scrollWidth, foot.scrollWidth) <= Math.ceil(wide)) return size;
      }
    }
    return 0;
  }

  function boxOf(label, answer) {
    const box = make('div', { class: 'on-sheet' });
    const lengths = { left: label.left, top: label.top, width: answer.wide, height: answer.high };
    for (const [name, mm] of Object.entries(lengths)) box.style[name] = `${mm}mm`;
    box.style.padding = `${answer.end}mm ${answer.side}mm`;
    box.style.setProperty('--head', label.scale);
    return box;
  }

  /** Puts the labels on their sheets; the title of the first one that has no room, or nothing. */
  function lay(answer, sheets) {
    sheets.replaceChildren();
    let before = null;
    for (const label of answer.labels) {
      while (sheets.childElementCount <= label.sheet)
        sheets.append(make('div', { class: `label-sheet ${answer.paper}`, role: 'group', 'aria-label': `Sheet ${sheets.childElementCount + 1}` }));
      const box = boxOf(label, answer);
      sheets.children[label.sheet].append(box);
      if (before?.label.order === label.order && before.label.full === label.full) {
        box.style.fontSize = before.box.style.fontSize;
        box.replaceChildren(...[...before.box.children].map((part) => part.cloneNode(true)));
      } else if (fitted(box, label, answer) === 0) {
        return label.title;
      }
      before = { label, box };
    }
    return '';
  }

  function start(place, asks) {
    const fields = asks.fields.map((one) => fieldOf({ ...one, answer: one.choices.length > 0 ? 'one-of' : 'words' }, `label-${one.name}`, ''));
    const named = (name) => fields.find((field) => field.name === name);
    const way = make('select', { id: 'label-way' }, ...asks.ways.map(({ value, label }) => make('option', { value }, label)));
    const errors = make('div', { class: 'errors', role: 'alert' });
    const status = make('p', { class: 'search-status', role: 'status' });
    const sheets = make('div', { class: 'label-sheets' });
    const list = make('ul', { class: 'label-list' });
    const result = make('section', { class: 'plan labels', 'aria-label': 'The sheet', hidden: '' },
      make('h2', { tabindex: '-1', id: 'labels_head' }, 'The sheet'), list,
      make('div', { class: 'ticket-tools' }, button('Print', print), button('Start a new sheet', clear)),
      make('p', { class: 'what' }, 'Print at 100 %, without margins or headings of the browser, on plain paper first: hold it with the sheet against a window.'),
      make('div', { class: 'label-frame', tabindex: '0', role: 'region', 'aria-label': 'Labels as they will be printed' }, sheets));
    let orders = [];  // what lies on the sheet, each with its title once it was made
    let asked = 0;

    const isOfSheet = (field) => field.ways === '' && field.part !== 'copies' || field.ways === OWN;
    const isAsked = (field) => field.ways === '' || (field.ways === OWN ? named('grid').read() === OWN : field.ways.split(' ').includes(way.value));
    const show = () => { for (const field of fields) field.row.hidden = !isAsked(field); };
    const entries = (which) => fields.filter((field) => isAsked(field) && which(field)).map((field) => [field.part, field.read()]).filter(([, value]) => value !== '');

    function sheetAsked() {
      const words = Object.fromEntries(entries(isOfSheet));
      if (words.grid === OWN) delete words.grid;
      return words;
    }

    function refuse(faults, focuses) {
      status.textContent = '';
      tellFaults(errors, faults, 'No label was made.', focuses);
    }

    /** Takes what is on the sheet from the program anew; whether it could be laid. */
    async function remake(wanted, focuses) {
      const number = ++asked;
      clearFaults(errors, fields);
      let answer;
      try {
        answer = JSON.parse(await benchleafAsk({ ask: 'labels', ...sheetAsked(), orders: wanted.map((one) => one.words) }));
      } catch (error) {
        refuse([{ words: `Labels cannot be made: ${error.message}.` }], false);
        return;
      }
      if (number !== asked) return;
      if (answer.refusal !== null) {
        const { field, reason, hint } = answer.refusal;
        refuse([{ field: fields.find((one) => one.part === field && isAsked(one)), words: `${reason}${hint === '' ? '' : '; ' + hint}` }], focuses);
        return;
      }
      const trial = make('div', { class: 'label-sheets trial', 'aria-hidden': 'true' });
      place.append(trial);
      const misfit = lay(answer, trial);
      trial.remove();
      if (misfit !== '') {
        const larger = answer.larger === '' ? '' : `, such as ${answer.larger}`;
        refuse([{ field: named('grid'), words: `the label of ${misfit} has no room on this one; take larger labels${larger}` }], focuses);
        return;
      }
      orders = wanted.map((one, at) => ({ ...one, title: answer.labels.find((label) => label.order === at).title }));
      set(answer, trial, focuses);
    }

    function set(answer, made, focuses) {
      sheets.replaceChildren(...made.childNodes);
      list.replaceChildren(...orders.map((one, at) => make('li', {}, make('span', {}, one.words.copies === undefined ? one.title : `${one.title}, ${one.words.copies} times`),
        button(`Take off ${one.title}`, () => takeOff(at)))));
      result.hidden = false;
      if (!single) document.documentElement.dataset.labels = answer.paper;
      const after = (answer.first + answer.labels.length) % answer.count;
      const next = after === 0 ? 'the sheet is full' : `the next free label is ${after + 1}`;
      status.textContent = `${answer.labels.length === 1 ? 'One label' : answer.labels.length + ' labels'} on ${sheets.childElementCount === 1 ? 'one sheet' : sheets.childElementCount + ' sheets'}; ${next}.`;
      if (focuses) document.getElementById('labels_head').focus();
    }

    function clear() {
      orders = [];
      sheets.replaceChildren();
      result.hidden = true;
      delete document.documentElement.dataset.labels;
      status.textContent = 'The sheet is empty.';
      way.focus();
    }

    function takeOff(at) {
      const left = orders.filter((one, other) => other !== at);
      if (left.length === 0) clear();
      else remake(left, true);
    }

    /** In the single file the rest of the book would be printed as well. */
    function print() {
      document.documentElement.dataset.labels = sheets.firstElementChild.classList.contains('letter') ? 'letter' : 'a4';
      if (single) addEventListener('afterprint', () => { delete document.documentElement.dataset.labels; }, { once: true });
      globalThis.print();
    }

    const form = make('form', { class: 'calculator label-form', novalidate: '' },
      make('div', { class: 'field' }, make('label', { for: way.id }, 'What gets a label?'), make('div', { class: 'entry' }, way)),
      ...fields.map((field) => field.row), button('Put it on the sheet', null, 'submit'), status, errors);
    form.addEventListener('submit', (event) => {
      event.preventDefault();
      const open = fields.filter((field) => field.required && isAsked(field) && field.read() === '');
      clearFaults(errors, fields);
      if (open.length > 0) return refuse(open.map((field) => ({ field, words: 'fill this in' })), true);
      return remake([...orders, { words: Object.fromEntries(entries((field) => !isOfSheet(field))) }], true);
    });
    form.addEventListener('change', (event) => {
      show();
      const changed = fields.find((field) => field.row.contains(event.target));
      if (orders.length > 0 && changed !== undefined && isOfSheet(changed)) remake(orders, false);
    });
    named('grid').write(named('grid').choices[0].value);
    named('paper').write(named('paper').choices[0].value);
    show();
    place.replaceChildren(form, result);
  }

  makeInSight('.labels-place', 'The form', () => ({ ask: 'label-form' }), start);
})();
