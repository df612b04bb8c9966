/* In: the page of the ticket and the program. Out: a form that plans, and that saves and opens the watch file which the command reads.
   What was entered is kept on this device until it is cleared. */
'use strict';

(function () {
  const { FEW, make, typed, selected, oneOf, kept, keep } = benchleafFields;
  const place = document.querySelector('.ticket-place');
  const HEAD = '# yaml-language-server: $schema=../../schema/shapes/watch.schema.json\n';
  const DRAFT = 'ticket-draft', TICKS = 'ticket-ticks';
  const MOST_BYTES = 100000;  // of a watch file; those of the handbook's examples have 2,000
  const MOST_VALUES = 2000;

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
  const isWords = (value) => ['string', 'number', 'boolean'].includes(typeof value);
  const isList = (value, holds) => Array.isArray(value) && value.every(holds);

  /* Questions: each gives its control, reads an answer out of it, writes one into it, and says which values it takes. */

  const choicesOf = (part) => [...part.querySelectorAll(':scope > ul li, :scope > details li')]
    .map((item) => ({ value: item.dataset.record, label: item.textContent }));

  /** Of a field that knows none as '' one that knows it as undefined; a reference is the same with its kind before it. */
  function answered(field, choices = []) {
    const known = (value) => choices.find((one) => one.value === shortName(value))?.value ?? String(value);
    return { ...field, takes: isWords, read: () => field.read() || undefined, write: (value) => field.write(value === undefined ? '' : known(value)) };
  }

  function counted(id) {
    const words = typed(id, { mode: 'numeric' });
    const read = () => {
      const text = words.read();
      return text === '' ? undefined : /^[0-9]+$/.test(text) ? Number(text) : text;
    };
    return { ...words, takes: isWords, read, write: (value) => words.write(value === undefined ? '' : String(value)) };
  }

  function listed(id) {
    const words = typed(id);
    const read = () => words.read() === '' ? undefined : words.read().split(/[\s,;]+/).filter((one) => one !== '');
    return { ...words, takes: (value) => isList(value, isWords), read, write: (value) => words.write((value ?? []).join(', ')) };
  }

  /** Boxes to tick behind a line that says what is ticked; a long list is narrowed by what is typed above it. */
  function several(id, choices, ordered = false) {
    let order = [];
    const list = make('ul', { class: 'boxes' });
    const line = make('summary', {});
    const boxes = new Map();
    const said = () => order.map((value) => boxes.get(value).label).join(ordered ? ', then ' : '; ');
    const tell = () => { line.textContent = order.length === 0 ? `none of ${boxes.size}` : said(); };
    const add = ({ value, label }) => {
      const input = make('input', { type: 'checkbox', id: `${id}-${boxes.size}`, value });
      input.addEventListener('change', () => {
        order = order.filter((other) => other !== value).concat(input.checked ? [value] : []);
        tell();
      });
      const row = make('li', {}, input, make('label', { for: input.id }, label));
      boxes.set(value, { label, input, row });
      list.append(row);
    };
    choices.forEach(add);
    tell();
    const narrow = make('input', { type: 'search', class: 'narrow', autocomplete: 'off', placeholder: 'narrow the list', 'aria-label': `narrow the list of ${choices.length}` });
    narrow.addEventListener('input', () => {
      const wanted = narrow.value.toLowerCase().split(/\s+/);
      for (const { label, input, row } of boxes.values()) row.hidden = !input.checked && !wanted.every((word) => label.toLowerCase().includes(word));
    });
    const write = (values) => {
      order = (values ?? []).map((value) => {
        const known = boxes.has(String(value)) ? String(value) : shortName(value);
        if (!boxes.has(known)) add({ value: known, label: known });
        return known;
      });
      for (const [value, { input }] of boxes) input.checked = order.includes(value);
      tell();
    };
    return { control: make('details', { class: 'several' }, line, choices.length > FEW ? narrow : '', list), focus: line, group: true,
      takes: (value) => isList(value, isWords), read: () => order.length > 0 ? [...order] : undefined, write };
  }

  /** Pairs of a series and a size, one more line as soon as the last is used. */
  function gaskets(id, choices) {
    const rows = make('div', { class: 'rows' });
    let count = 0;
    const add = (series, inside) => {
      const number = ++count;
      const one = selected(`${id}-series-${number}`, choices, 'no series');
      const size = typed(`${id}-inside-${number}`, { unit: 'mm' });
      for (const [field, words] of [[one, 'series'], [size, 'inside']]) {
        field.focus.setAttribute('aria-label', `${words} of gasket ${number}`);
        field.focus.removeAttribute('aria-describedby');
      }
      one.write(series === undefined ? '' : shortName(series));
      size.write(inside === undefined ? '' : String(inside));
      const row = make('div', { class: 'row' }, one.control, size.control);
      row.addEventListener('input', () => { if (row === rows.lastElementChild) add(); });
      row.read = () => pruned({ series: one.read() || undefined, inside: size.read() || undefined });
      rows.append(row);
    };
    const given = (one) => Object.fromEntries(Object.entries(one).filter(([, value]) => value !== undefined));
    const read = () => {
      const filled = [...rows.children].map((row) => given(row.read())).filter((one) => Object.keys(one).length > 0);
      return filled.length > 0 ? filled : undefined;
    };
    const write = (values) => {
      rows.replaceChildren();
      count = 0;
      for (const one of values ?? []) add(one.series, one.inside);
      add();
    };
    write();
    const isPair = (one) => one !== null && typeof one === 'object' && !Array.isArray(one) && Object.values(one).every(isWords);
    return { control: rows, focus: rows.querySelector('select'), group: true, takes: (value) => isList(value, isPair), read, write };
  }

  /** Procedures in the order in which they were ticked, and what fills the slots of those that have some. */
  function jobs(id, part, choices) {
    const list = several(id, choices, true);
    const slots = [...part.querySelectorAll('.slot')].map((slot, number) => {
      const options = choicesOf(slot);
      const select = selected(`${id}-slot-${number}`, options, 'not known');
      select.focus.removeAttribute('aria-describedby');
      const label = make('label', { for: `${id}-slot-${number}` }, slot.querySelector('p').textContent);
      return { procedure: slot.dataset.record, name: slot.dataset.label, options, select, row: make('div', { class: 'slot' }, label, select.control) };
    });
    const tell = () => {
      const chosen = list.read() ?? [];
      for (const slot of slots) slot.row.hidden = !chosen.includes(slot.procedure);
    };
    list.control.addEventListener('change', tell);
    const fill = (procedure) => slots.filter((slot) => slot.procedure === procedure && slot.select.read() !== '')
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
        const full = slot.options.find(({ value }) => shortName(value) === shortName(record ?? ''))?.value;
        slot.select.write(full ?? record ?? '');
      }
      tell();
    };
    tell();
    const isFill = (one) => isWords(one?.slot) && isWords(one?.record);
    const isJob = (job) => isWords(job?.procedure) && (job.fill === undefined || isList(job.fill, isFill));
    return { control: make('div', {}, list.control, ...slots.map((slot) => slot.row)), focus: list.focus, group: true,
      takes: (value) => isList(value, isJob), read, write };
  }

  function controlOf(part, id, title) {
    const choices = choicesOf(part);
    switch (part.dataset.answer) {
      case 'one-of': return answered(oneOf(id, title, choices, 'not known'), choices);
      case 'some-of': return several(id, choices);
      case 'number': return counted(id);
      case 'grades': return listed(id);
      case 'gaskets': return gaskets(id, choices);
      case 'jobs': return jobs(id, part, choices);
      case 'words': return answered(typed(id, { rows: ['found', 'wants'].includes(part.dataset.record) ? 2 : 0 }));
      case 'measure': return answered(typed(id, { unit: part.dataset.unit ?? 'mm' }));
      default: return answered(typed(id));
    }
  }

  function questionOf(part) {
    const field = part.dataset.record;
    const id = `answer-${field.replaceAll('.', '-')}`;
    const title = part.querySelector(':scope > :is(h3, h4)').textContent;
    const question = { field, title, ...controlOf(part, id, title) };
    const head = question.group ? make('p', { class: 'label', id: `${id}-label` }, title) : make('label', { for: id }, title);
    question.error = make('p', { id: `${id}-error`, class: 'field-error' });
    const how = make('p', { id: `${id}-what`, class: 'what' }, part.querySelector('.how').textContent);
    const example = part.querySelector('.example code');
    if (example !== null && question.focus.matches('input, textarea')) question.focus.setAttribute('placeholder', example.textContent);
    question.row = make('div', question.group ? { class: 'field', role: 'group', 'aria-labelledby': `${id}-label` } : { class: 'field' },
      part.querySelector('svg') ?? '', head, how, question.control, question.error);
    return question;
  }

  /* The form: sections that fold, each with what it holds */

  const questions = [];
  let opened = {};  // what a watch file said, the fields that no question asks for among it
  let planned = null;  // the answers that the ticket below was planned for

  function sectionOf(part, number) {
    const own = [...part.querySelectorAll('.question')].map(questionOf);
    questions.push(...own);
    const count = make('span', { class: 'count' });
    const gist = make('span', { class: 'gist' });
    const summary = make('summary', {}, make('span', { class: 'number' }, String(number + 1)),
      make('span', { class: 'name' }, make('b', {}, part.querySelector(':scope > :is(h2, h3)').textContent), gist), count);
    const element = make('details', { class: 'part' }, summary, make('div', { class: 'fields' }, ...own.map((question) => question.row)));
    element.open = number === 0;
    for (const question of own) question.part = element;
    const tell = () => {
      const known = own.filter((question) => question.read() !== undefined);
      count.textContent = `${known.length} of ${own.length}`;
      gist.textContent = known.length === 0 ? '' : known.map((question) => question.title).join(', ');
    };
    return { element, tell };
  }

  const parts = [...place.querySelectorAll(':scope > section')].map(sectionOf);

  function idOf(number) {
    const slug = String(number ?? '').toLowerCase().replace(/[^a-z0-9]+/g, '-').replace(/^-+|-+$/g, '').slice(0, 40);
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
    tell();
  }

  /* What stands at the foot: how far it is, and what can be done */

  const known = make('span', { class: 'known' });
  const bar = make('progress', { max: questions.length, value: 0, 'aria-label': 'questions answered' });
  const store = make('p', { class: 'what' });
  const status = make('p', { class: 'search-status', role: 'status' });

  function tell() {
    for (const part of parts) part.tell();
    const number = questions.filter((question) => question.read() !== undefined).length;
    bar.value = number;
    known.textContent = `${number} of ${questions.length} known`;
    ticket.classList.toggle('old', planned !== null && planned !== JSON.stringify(watch()));
  }

  function draft() {
    const empty = questions.every((question) => question.read() === undefined);
    const could = keep(DRAFT, empty ? null : watch());
    store.textContent = could ? 'Kept on this device until you clear it. Nothing is sent.' : 'This browser keeps nothing from a page like this: save the watch file.';
  }

  /* The answer */

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

  function clearFaults() {
    for (const question of questions) {
      question.error.textContent = '';
      question.focus.removeAttribute('aria-invalid');
    }
    findings.replaceChildren();
  }

  function tellFindings(list) {
    clearFaults();
    findings.replaceChildren(...list.map(({ severity, path, message, hint }) => {
      const question = questionAt(path);
      const words = `${message}${hint === '' ? '' : '; ' + hint}`;
      if (question !== undefined && severity === 'error') {
        question.error.textContent = words;
        question.part.open = true;
        if (question.focus.matches('input, select, textarea')) question.focus.setAttribute('aria-invalid', 'true');
      }
      const said = `${question?.title ?? path}${path === '' ? '' : ': '}${words}`;
      return make('li', {}, make('b', {}, `${severity}: `), said);
    }));
  }

  /** Boxes of the sheet tick on the screen, and stay ticked for this watch. */
  function tickable(page, id) {
    const ticked = kept(TICKS) ?? {};
    const mine = ticked.id === id ? new Set(ticked.ticks) : new Set();
    page.querySelectorAll('.tick').forEach((box, number) => {
      const line = box.closest('p, li, td');
      const input = make('input', { type: 'checkbox', class: 'tick', 'aria-label': line.textContent.trim().slice(0, 120) });
      input.checked = mine.has(number);
      input.addEventListener('change', () => {
        if (input.checked) mine.add(number); else mine.delete(number);
        keep(TICKS, { id, ticks: [...mine] });
      });
      box.replaceWith(input);
    });
  }

  function contentsOf(page) {
    const heads = [...page.querySelectorAll('h3')];
    heads.forEach((head, number) => { head.id = `ticket-part-${number}`; });
    return make('nav', { class: 'own-contents', 'aria-label': 'Contents of the ticket' },
      make('ul', {}, ...heads.map((head) => make('li', {}, make('a', { href: `#${head.id}` }, head.textContent)))));
  }

  /** The page of the ticket without its head; signs that this page has already keep their one place. */
  function setTicket(html) {
    const page = new DOMParser().parseFromString(html.replace(/<style>[^<]*<\/style>/, ''), 'text/html');  // this page has the style
    for (const symbol of page.querySelectorAll('symbol[id]')) {
      if (document.getElementById(symbol.id) !== null && ticket.querySelector(`[id="${symbol.id}"]`) === null) symbol.remove();
    }
    const title = page.querySelector('h1');
    title.replaceWith(make('h2', { tabindex: '-1', id: 'ticket_head' }, title.textContent));
    for (const head of page.querySelectorAll('main h2:not(#ticket_head)')) head.replaceWith(make('h3', {}, ...head.childNodes));
    const contents = contentsOf(page.querySelector('main'));
    tickable(page, watch().id);
    const tools = make('p', { class: 'ticket-tools' }, button('Print the sheets', () => window.print()),
      button('Save the ticket', () => save(`ticket-${watch().id}.html`, html, 'text/html')));
    ticket.replaceChildren(tools, page.querySelector('.sprite') ?? '', ...page.querySelector('main').childNodes);
    document.getElementById('ticket_head').after(make('p', { class: 'stale' }, 'The answers have changed since: plan again.'), contents);
  }

  async function plan() {
    status.textContent = 'Planning\u2026';
    result.hidden = true;
    await new Promise((painted) => setTimeout(painted, 30));
    const asked = watch();
    let answer;
    try {
      answer = JSON.parse(await benchleafAsk({ ask: 'ticket', watch: asked }));
    } catch (error) {
      status.textContent = `No plan: ${error.message}.`;
      return;
    }
    globalThis.benchleafTicketText = answer.text;  // what the terminal prints
    tellFindings(answer.findings);
    ticket.replaceChildren();
    planned = answer.html === '' ? null : JSON.stringify(asked);
    if (answer.html !== '') setTicket(answer.html);
    const errors = answer.findings.filter((one) => one.severity === 'error');
    status.textContent = errors.length > 0 ? `${errors.length === 1 ? 'One answer' : errors.length + ' answers'} cannot be used.` : 'The ticket is planned.';
    result.hidden = false;
    tell();
    if (errors.length > 0) (questionAt(errors[0].path)?.focus ?? result).focus();
    else document.getElementById('ticket_head').focus();
  }

  /* Files: read whole and looked through before the form changes, so that two watches never mix */

  function saveWatch() {
    const answers = watch();
    save(`${answers.id}.yaml`, HEAD + jsyaml.dump(answers, { schema: jsyaml.CORE_SCHEMA, lineWidth: -1, noRefs: true, quotingType: '"' }), 'text/yaml');
  }

  /** What a file says; an anchor ends it, since a value that stands in two places can be without end. */
  function read(text) {
    const refused = (type, state) => {
      if (state.anchorMap !== undefined && Object.keys(state.anchorMap).length > 0) throw new Error('a watch file has no anchors and no aliases');
    };
    return jsyaml.load(text, { schema: jsyaml.CORE_SCHEMA, listener: refused });
  }

  function count(value) {
    return value !== null && typeof value === 'object' ? Object.values(value).reduce((sum, inner) => sum + count(inner), 1) : 1;
  }

  /** Why it is no watch that the form can show, or nothing. */
  function faultOf(answers) {
    if (answers === null || typeof answers !== 'object' || Array.isArray(answers)) return 'it is no watch file';
    if (count(answers) > MOST_VALUES) return `it has more than ${MOST_VALUES} values`;
    for (const key of ['id', 'title', 'number']) {
      if (answers[key] !== undefined && !isWords(answers[key])) return `${key} is not a line of words`;
    }
    for (const question of questions) {
      const owner = at(answers, question.field.replace(/(^|\.)[^.]+$/, ''));
      if (question.field.includes('.') && owner !== undefined && (owner === null || typeof owner !== 'object' || Array.isArray(owner))) return `"${question.title}" has no place in it`;
      const value = at(answers, question.field);
      if (value !== undefined && value !== null && !question.takes(value)) return `"${question.title}" does not take ${Array.isArray(value) ? 'such a list' : typeof value === 'object' ? 'fields of its own' : 'a single value'}`;
    }
    return '';
  }

  async function openWatch(file) {
    try {
      if (file.size > MOST_BYTES) throw new Error(`it has ${file.size} bytes, and a watch file at most ${MOST_BYTES}`);
      const answers = read(await file.text());
      const fault = faultOf(answers);
      if (fault !== '') throw new Error(fault);
      const { findings: found } = JSON.parse(await benchleafAsk({ ask: 'ticket', watch: answers }));
      const lost = found.find((one) => one.severity === 'error' && one.path !== '' && questionAt(one.path) === undefined && !['id', 'title'].includes(one.path));
      if (lost !== undefined) throw new Error(`${lost.path}: ${lost.message}`);
      clearFaults();
      show(answers);
      draft();
      planned = null;
      result.hidden = true;
      status.textContent = `${file.name} is open.`;
    } catch (error) {
      status.textContent = `${file.name} cannot be read, and the form is as it was: ${error.message.split('\n')[0]}.`;
    }
  }

  function button(words, act, kind = 'button') {
    const made = make('button', { type: kind }, words);
    if (act !== null) made.addEventListener('click', act);
    return made;
  }

  function opener() {
    const input = make('input', { type: 'file', id: 'watch_file', accept: '.yaml,.yml' });
    input.addEventListener('change', async () => {
      if (input.files.length > 0) await openWatch(input.files[0]);
      input.value = '';
    });
    return make('span', { class: 'opener' }, make('label', { for: 'watch_file' }, 'Open a watch file'), input);
  }

  function clear() {
    clearFaults();
    show({});
    keep(DRAFT, null);
    planned = null;
    result.hidden = true;
    status.textContent = 'The form is empty, and nothing is kept.';
  }

  const foot = make('div', { class: 'plan-bar' }, make('p', { class: 'progress' }, known, ' ', bar),
    make('div', { class: 'ticket-tools' }, button('Plan', null, 'submit'), button('Save the watch file', saveWatch)), status);
  const form = make('form', { class: 'calculator ticket-form', novalidate: '' },
    make('div', { class: 'ticket-tools' }, opener(), button('Clear the form', clear)), store, ...parts.map((part) => part.element), foot);
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    plan();
  });
  for (const kind of ['input', 'change']) form.addEventListener(kind, () => { tell(); draft(); });
  place.replaceChildren(form, result);
  const before = kept(DRAFT);
  show(before !== null && faultOf(before) === '' ? before : {});
  draft();
  setTimeout(() => benchleafAsk({ ask: 'ticket' }).catch(() => {}), 500);  // so that Plan does not wait for it
})();
