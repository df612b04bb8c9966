/* In: the page of the ticket, the planner built for the browser and what it looks into. Out: a form that plans, and that saves and
   opens the watch file which the command reads. */
'use strict';

(function () {
  const place = document.getElementById('ticket_place');
  const HEAD = '# yaml-language-server: $schema=../../schema/shapes/watch.schema.json\n';

  function make(kind, attributes, ...content) {
    const element = document.createElement(kind);
    for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
    element.append(...content);
    return element;
  }

  /* A watch is an object as its file has it; a field is a path in it. */

  const at = (object, path) => path.split('.').reduce((inner, key) => inner?.[key], object);

  function put(object, path, value) {
    const keys = path.split('.');
    const last = keys.pop();
    const owner = keys.reduce((inner, key) => inner[key] ??= {}, object);
    if (value === undefined) delete owner[last];
    else owner[last] = value;
  }

  /** Objects that lost all their fields say nothing. */
  function pruned(object) {
    for (const [key, value] of Object.entries(object)) {
      if (value !== null && typeof value === 'object' && !Array.isArray(value) && Object.keys(value).length === 0) delete object[key];
    }
    return object;
  }

  const shortName = (reference) => String(reference).replace(/^[a-z]+\//, '');

  /* Questions: each gives its control, reads an answer out of it and writes one into it. */

  const choicesOf = (part) => [...part.querySelectorAll(':scope > ul li, :scope > details li')]
    .map((item) => ({ value: item.dataset.record, label: item.textContent }));

  function typed(id, inputMode = 'text', rows = 0) {
    const shared = { id, autocomplete: 'off', spellcheck: 'false', 'aria-describedby': `${id}-how ${id}-error` };
    const input = rows > 0 ? make('textarea', { ...shared, rows }) : make('input', { ...shared, inputmode: inputMode });
    return { control: input, read: () => input.value.trim() || undefined, write: (value) => { input.value = value ?? ''; } };
  }

  function counted(id) {
    const words = typed(id, 'numeric');
    const read = () => {
      const text = words.read();
      return text !== undefined && /^[0-9]+$/.test(text) ? Number(text) : text;
    };
    return { ...words, read };
  }

  function listed(id) {
    const words = typed(id);
    const read = () => words.read()?.split(/[\s,;]+/).filter((one) => one !== '');
    return { control: words.control, read, write: (value) => words.write((value ?? []).join(', ')) };
  }

  function chosen(id, choices) {
    const select = make('select', { id, 'aria-describedby': `${id}-how ${id}-error` }, make('option', { value: '' }, 'not known'),
      ...choices.map(({ value, label }) => make('option', { value }, label)));
    const write = (value) => {
      const known = [...select.options].find((option) => option.value === value || option.value === shortName(value ?? ''));
      if (value !== undefined && known === undefined) select.append(make('option', { value }, value));
      select.value = known?.value ?? value ?? '';
    };
    return { control: select, read: () => select.value || undefined, write };
  }

  function box(id, value, label) {
    const input = make('input', { type: 'checkbox', id, value });
    return { input, row: make('li', {}, input, make('label', { for: id }, label)) };
  }

  /** Boxes to tick behind a line that says what is ticked. */
  function several(id, choices, ordered = false) {
    let order = [];
    const list = make('ul', { class: 'boxes' });
    const line = make('summary', {});
    const boxes = new Map();
    const said = () => order.map((value) => boxes.get(value).label).join(ordered ? ', then ' : '; ');
    const tell = () => { line.textContent = order.length === 0 ? `none of ${boxes.size}` : said(); };
    const add = ({ value, label }) => {
      const one = box(`${id}-${boxes.size}`, value, label);
      one.input.addEventListener('change', () => {
        order = order.filter((other) => other !== value).concat(one.input.checked ? [value] : []);
        tell();
      });
      boxes.set(value, { label, input: one.input });
      list.append(one.row);
    };
    choices.forEach(add);
    tell();
    const write = (values) => {
      order = (values ?? []).map((value) => {
        const known = boxes.has(value) ? value : shortName(value);
        if (!boxes.has(known)) add({ value: known, label: known });
        return known;
      });
      for (const [value, { input }] of boxes) input.checked = order.includes(value);
      tell();
    };
    return { control: make('details', { class: 'several' }, line, list), read: () => order.length > 0 ? [...order] : undefined, write,
      group: true };
  }

  /** Pairs of a series and a size, one more line as soon as the last is used. */
  function gaskets(id, choices) {
    const rows = make('div', { class: 'rows' });
    let count = 0;
    const add = (series, inside) => {
      const number = ++count;
      const select = chosen(`${id}-series-${number}`, choices);
      const input = make('input', { id: `${id}-inside-${number}`, autocomplete: 'off', 'aria-label': `inside of gasket ${number}` });
      select.control.setAttribute('aria-label', `series of gasket ${number}`);
      select.control.removeAttribute('aria-describedby');
      select.write(series);
      input.value = inside ?? '';
      const row = make('div', { class: 'row' }, select.control, input);
      row.addEventListener('input', () => { if (row === rows.lastElementChild) add(); });
      row.read = () => ({ series: select.read(), inside: input.value.trim() || undefined });
      rows.append(row);
    };
    const read = () => {
      const filled = [...rows.children].map((row) => row.read()).filter((one) => one.series !== undefined || one.inside !== undefined);
      return filled.length > 0 ? filled.map((one) => Object.fromEntries(Object.entries(one).filter(([, value]) => value !== undefined))) : undefined;
    };
    const write = (values) => {
      rows.replaceChildren();
      for (const one of values ?? []) add(one.series, one.inside);
      add();
    };
    write();
    return { control: rows, read, write, group: true };
  }

  /** Procedures in the order in which they were ticked, and what fills the slots of those that have some. */
  function jobs(id, part, choices) {
    const list = several(id, choices, true);
    const slots = [...part.querySelectorAll('.slot')].map((slot, number) => {
      const select = chosen(`${id}-slot-${number}`, choicesOf(slot));
      const label = make('label', { for: `${id}-slot-${number}` }, slot.querySelector('p').textContent);
      select.control.removeAttribute('aria-describedby');
      return { procedure: slot.dataset.record, name: slot.dataset.label, select, row: make('div', { class: 'slot' }, label, select.control) };
    });
    const fill = (procedure) => slots.filter((slot) => slot.procedure === procedure && slot.select.read() !== undefined)
      .map((slot) => ({ slot: slot.name, record: slot.select.read() }));
    const read = () => list.read()?.map((procedure) => {
      const filled = fill(procedure);
      return filled.length > 0 ? { procedure, fill: filled } : { procedure };
    });
    const write = (values) => {
      list.write(values?.map((job) => job.procedure));
      for (const slot of slots) {
        const job = values?.find((one) => shortName(one.procedure) === slot.procedure);
        const record = job?.fill?.find((one) => one.slot === slot.name)?.record;
        const full = slot.select.control.querySelector(`option[value$="/${CSS.escape(shortName(record ?? ''))}"]`)?.value;
        slot.select.write(full ?? record);
      }
    };
    return { control: make('div', {}, list.control, ...slots.map((slot) => slot.row)), read, write, group: true };
  }

  function controlOf(part, id) {
    const choices = choicesOf(part);
    switch (part.dataset.answer) {
      case 'one-of': return chosen(id, choices);
      case 'some-of': return several(id, choices);
      case 'number': return counted(id);
      case 'grades': return listed(id);
      case 'gaskets': return gaskets(id, choices);
      case 'jobs': return jobs(id, part, choices);
      case 'words': return typed(id, 'text', ['found', 'wants'].includes(part.dataset.record) ? 2 : 0);
      default: return typed(id);
    }
  }

  function questionOf(part) {
    const field = part.dataset.record;
    const id = `answer-${field.replaceAll('.', '-')}`;
    const question = { field, ...controlOf(part, id) };
    const title = part.querySelector('h3').textContent;
    const head = question.group ? make('p', { class: 'label', id: `${id}-label` }, title) : make('label', { for: id }, title);
    question.error = make('p', { id: `${id}-error`, class: 'field-error' });
    const how = make('p', { id: `${id}-how`, class: 'what' }, part.querySelector('.how').textContent);
    const example = part.querySelector('.example code');
    if (example !== null && question.control.matches('input, textarea')) question.control.setAttribute('placeholder', example.textContent);
    const row = make('div', question.group ? { class: 'field', role: 'group', 'aria-labelledby': `${id}-label` } : { class: 'field' },
      part.querySelector('svg') ?? '', head, how, question.control, question.error);
    return { question, row };
  }

  /* The form */

  const questions = [];
  let opened = {};  // what a watch file said, the fields that no question asks for among it

  function sectionOf(part) {
    const rows = [...part.querySelectorAll('.question')].map((one) => {
      const { question, row } = questionOf(one);
      questions.push(question);
      return row;
    });
    return make('fieldset', {}, make('legend', {}, part.querySelector('h2').textContent), ...rows);
  }

  function idOf(number) {
    const slug = (number ?? '').toLowerCase().replace(/[^a-z0-9]+/g, '-').replace(/^-+|-+$/g, '').slice(0, 40);
    return slug === '' ? 'watch' : /^[a-z]/.test(slug) ? slug : `watch-${slug}`;
  }

  function watch() {
    const answers = structuredClone(opened);
    for (const question of questions) put(answers, question.field, question.read());
    const number = answers.number;
    const named = opened.id !== undefined && opened.number === number;
    const head = { id: named ? opened.id : idOf(number), title: named ? opened.title : number === undefined ? 'A watch' : `Watch ${number}` };
    return pruned({ ...head, ...Object.fromEntries(Object.entries(answers).filter(([key]) => key !== 'id' && key !== 'title')) });
  }

  function show(answers) {
    opened = structuredClone(answers);
    for (const question of questions) question.write(at(answers, question.field));
  }

  /* The answer */

  const status = make('p', { class: 'search-status', role: 'status' });
  const findings = make('ul', { class: 'findings' });
  const ticket = make('div', { class: 'ticket' });
  const result = make('section', { class: 'plan', 'aria-label': 'The ticket', hidden: '' }, findings, ticket);

  function save(name, text, type) {
    const link = make('a', { href: URL.createObjectURL(new Blob([text], { type })), download: name });
    document.body.append(link);
    link.click();
    link.remove();
    setTimeout(() => URL.revokeObjectURL(link.href), 1000);
  }

  const questionAt = (path) => questions.find(({ field }) => field === path || path.startsWith(`${field}.`) || (path !== '' && field.startsWith(`${path}.`)));

  function tellFindings(list) {
    for (const question of questions) {
      question.error.textContent = '';
      question.control.removeAttribute('aria-invalid');
    }
    findings.replaceChildren(...list.map(({ severity, path, message, hint }) => {
      const question = questionAt(path);
      const words = `${message}${hint === '' ? '' : '; ' + hint}`;
      if (question !== undefined && severity === 'error') {
        question.error.textContent = words;
        if (question.control.matches('input, select, textarea')) question.control.setAttribute('aria-invalid', 'true');
      }
      return make('li', {}, make('b', {}, `${severity}: `), `${path === '' ? '' : path + ': '}${words}`);
    }));
  }

  /** The page of the ticket without its head; signs that this page has already keep their one place. */
  function setTicket(html) {
    const page = new DOMParser().parseFromString(html.replace(/<style>[^<]*<\/style>/, ''), 'text/html');  // this page has the style
    for (const symbol of page.querySelectorAll('symbol[id]')) {
      if (document.getElementById(symbol.id) !== null && ticket.querySelector(`[id="${symbol.id}"]`) === null) symbol.remove();
    }
    const title = page.querySelector('h1');
    title.replaceWith(make('h2', {}, title.textContent));
    for (const head of page.querySelectorAll('main h2:not(:first-of-type)')) head.replaceWith(make('h3', {}, ...head.childNodes));
    const tools = make('p', { class: 'ticket-tools' }, button('Print', () => window.print()),
      button('Save the ticket', () => save(`ticket-${watch().id}.html`, html, 'text/html')));
    ticket.replaceChildren(tools, page.querySelector('.sprite') ?? '', ...page.querySelector('main').childNodes);
  }

  async function plan() {
    status.textContent = 'Planning\u2026';
    result.hidden = true;
    await new Promise((painted) => setTimeout(painted, 30));
    const answer = JSON.parse(await benchleafAsk({ ask: 'ticket', watch: watch() }));
    globalThis.benchleafTicketText = answer.text;  // what the terminal prints
    tellFindings(answer.findings);
    ticket.replaceChildren();
    if (answer.html !== '') setTicket(answer.html);
    const errors = answer.findings.filter((one) => one.severity === 'error').length;
    status.textContent = errors > 0 ? `${errors === 1 ? 'One answer' : errors + ' answers'} cannot be used.` : 'The ticket is below.';
    result.hidden = false;
    (errors > 0 ? questionAt(answer.findings[0].path)?.control ?? findings : result).scrollIntoView({ block: 'start' });
  }

  /* Files */

  function saveWatch() {
    const answers = watch();
    save(`${answers.id}.yaml`, HEAD + jsyaml.dump(answers, { schema: jsyaml.CORE_SCHEMA, lineWidth: -1, noRefs: true, quotingType: '"' }), 'text/yaml');
  }

  async function openWatch(file) {
    try {
      const answers = jsyaml.load(await file.text(), { schema: jsyaml.CORE_SCHEMA });
      if (answers === null || typeof answers !== 'object' || Array.isArray(answers)) throw new Error('it is no watch file');
      show(answers);
      status.textContent = `${file.name} is open.`;
    } catch (error) {
      status.textContent = `${file.name} cannot be read: ${error.message.split('\n')[0]}`;
    }
  }

  function button(words, act, kind = 'button') {
    const made = make('button', { type: kind }, words);
    if (act !== null) made.addEventListener('click', act);
    return made;
  }

  function opener() {
    const input = make('input', { type: 'file', id: 'watch_file', accept: '.yaml,.yml' });
    input.addEventListener('change', () => { if (input.files.length > 0) openWatch(input.files[0]); });
    return make('span', { class: 'opener' }, make('label', { for: 'watch_file' }, 'Open a watch file'), input);
  }

  const form = make('form', { class: 'calculator ticket-form', novalidate: '' }, ...[...place.querySelectorAll(':scope > section')].map(sectionOf),
    make('div', { class: 'ticket-tools' }, button('Plan', null, 'submit'), button('Save the watch file', saveWatch), opener(),
      button('Start afresh', () => { show({}); tellFindings([]); result.hidden = true; status.textContent = ''; })), status);
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    plan();
  });
  place.replaceChildren(form, result);
})();
