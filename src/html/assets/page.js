/* In: a page as it was bound. Out: the same with a field to search in, a switch for light and dark, and what a header that stays needs. */
'use strict';

(function () {
  const { make, kept, keep } = benchleafFields;
  const html = document.documentElement;
  const root = html.dataset.root;
  const single = html.dataset.single !== undefined;  // all pages in one file
  const home = document.getElementById('search_place');
  const FIND = '#find=';
  const PAUSE = 120;  // ms: an answer to half a word disturbs more than it tells

  /** Where a record stands; nothing for one that has no page. */
  function addressOf(record) {
    const href = globalThis.benchleafPlaces[record];
    if (href === undefined) return null;
    return single ? '#' + href.replace('.html', '').replace('/', '_').replace('#', '__') : root + href;
  }

  function linkTo(record, ...words) {
    const address = addressOf(record);
    return address === null ? make('b', {}, ...words) : make('a', { href: address }, ...words);
  }

  /* Search */

  const field = make('input', { type: 'search', id: 'search_field', autocomplete: 'off', autocapitalize: 'off', spellcheck: 'false',
    placeholder: 'number, size, liquid, fault', 'aria-describedby': 'search_status' });
  const status = make('p', { class: 'search-status', id: 'search_status', role: 'status' });
  const results = make('div', { class: 'results' });
  const panel = make('div', { class: 'search-panel', hidden: '' }, status, results);
  const label = make('label', { for: 'search_field', class: 'unseen' }, 'What have I got in front of me?');
  const search = make('search', { class: home === null ? 'search' : 'search large' }, label, field, panel);

  /* Answers: what to do first, then verdicts, then pages. */

  const KINDS = { never: 'never', 'with-care': 'care', ok: 'use', 'not-known': 'open' };
  const verdict = (one) => make('span', { class: `verdict ${KINDS[one.code] ?? 'open'}` }, one.verdict);

  function verdictRow(one) {
    return make('li', {}, make('p', { class: 'row' }, linkTo(one.record, one.title), ' ', verdict(one)),
      one.why === '' ? '' : make('p', { class: 'why' }, one.why), one.trust === '' ? '' : make('p', { class: 'trust' }, one.trust));
  }

  /** A pair that was asked about: the verdict is the answer. */
  function pairCard(hit) {
    const [first, ...rest] = hit.verdicts;
    const card = make('section', { class: `card ${KINDS[first?.code] ?? 'open'}-card` });
    if (first !== undefined) {
      card.append(make('p', { class: 'card-word' }, first.verdict), make('h2', {}, hit.record === '' ? hit.title : linkTo(hit.record, hit.title)));
      card.append(make('p', {}, rest.length > 0 || hit.verdicts.length > 1 ? make('b', {}, `${first.title}: `) : '', first.why === '' ? '' : first.why, first.trust === '' ? '' : make('span', { class: 'trust' }, ` ${first.trust}`)));
    } else {
      card.append(make('p', { class: 'card-word' }, 'not known'), make('h2', {}, hit.title), make('p', {}, hit.summary));
    }
    if (rest.length > 0) card.append(make('ul', {}, ...rest.map(verdictRow)));
    return card;
  }

  function dangerCard(hit) {
    return make('section', { class: 'card danger-card' }, make('h2', {}, linkTo(hit.record, hit.title)), make('p', {}, hit.first_aid ?? hit.summary));
  }

  /** The terminal types an x for the sign of a size. */
  const timesSign = (size) => size.replace(' x ', ' \u00d7 ');

  function cellCard(hit) {
    const facts = [timesSign(hit.size), hit.voltage, hit.system, hit.drain === '' ? '' : `${hit.drain} drain`, hit.capacity].filter((one) => one !== '');
    const row = (peer) => verdictRow({ ...peer, why: [peer.same_system ? '' : `OTHER system, ${peer.system}`, peer.why].filter((one) => one !== '').join('; ') });
    const peers = hit.same_size.map(row);
    return make('section', { class: 'card' }, make('h2', {}, linkTo(hit.record, hit.title)), make('p', {}, facts.join(', ')),
      peers.length === 0 ? '' : make('h3', {}, 'In its place'), peers.length === 0 ? '' : make('ul', {}, ...peers));
  }

  function faultCard(hit) {
    const cause = (one) => make('li', {}, make('p', {}, make('b', {}, one.cause)), make('p', { class: 'why' }, one.test), make('p', { class: 'why' }, one.cure),
      one.stop === '' || one.stop === undefined ? '' : make('p', { class: 'why' }, make('b', {}, 'Stop: '), one.stop), one.procedure === '' ? '' : make('p', {}, linkTo(one.procedure, 'How it is done')));
    return make('section', { class: 'card' }, make('h2', {}, linkTo(hit.record, hit.title)), make('p', { class: 'why' }, 'Cheap tests first.'), make('ol', {}, ...hit.causes.map(cause)));
  }

  function plainCard(hit) {
    const bans = hit.verdicts ?? [];
    return make('section', { class: 'card' }, make('h2', {}, linkTo(hit.record, hit.title), ' ', make('span', { class: 'kind' }, hit.kind)),
      make('p', {}, hit.shown ?? hit.summary), bans.length === 0 ? '' : make('ul', {}, ...bans.slice(0, 6).map(verdictRow)));
  }

  function cardOf(hit, answer) {
    if (hit.pair) return pairCard(hit);
    if ((hit.first_aid ?? '') !== '' || (answer.danger && (hit.kind === 'caution' || hit.kind === 'page'))) return dangerCard(hit);
    if (hit.kind === 'cell') return cellCard(hit);
    return hit.causes === undefined ? plainCard(hit) : faultCard(hit);
  }

  function row(hit) {
    const said = hit.kind === 'cell' ? [timesSign(hit.size), hit.voltage, hit.system].filter((one) => one !== '').join(', ') : hit.shown ?? hit.summary;
    return make('li', {}, linkTo(hit.record, hit.title), make('span', {}, said));
  }

  function comparison(answer) {
    if (answer.compared.length === 0) return '';
    const [one, other] = answer.hits;
    const rows = answer.compared.map((line) => make('tr', line.same ? { class: 'same' } : {}, make('th', { scope: 'row' }, line.what), make('td', {}, line.one), make('td', {}, line.other)));
    return make('div', { class: 'table-frame' }, make('table', { class: 'compared' }, make('thead', {}, make('tr', {}, make('td', {}),
      make('th', { scope: 'col' }, linkTo(one.record, one.title)), make('th', { scope: 'col' }, linkTo(other.record, other.title)))), make('tbody', {}, ...rows)));
  }

  const listOf = (title, hits) => hits.length === 0 ? '' : make('section', {}, make('h2', {}, title), make('ul', { class: 'pages' }, ...hits.map(row)));

  function nearest(names) {
    if (names.length === 0) return '';
    const buttons = names.map((name) => {
      const button = make('button', { type: 'button' }, name);
      button.addEventListener('click', () => {
        field.value = name;
        field.focus();
        show(name);
      });
      return make('li', {}, button);
    });
    return make('section', {}, make('h2', {}, 'Nearest names'), make('ul', { class: 'nearest' }, ...buttons));
  }

  const FULL = 3;  // answers that stand as cards; more of them as lines

  function said(answer) {
    const count = answer.hits.length;
    const words = count === 0 ? `No match for \u201c${answer.query}\u201d. Try a cell number, a size or one word.` : count === 1 ? '1 answer' : `${count} answers`;
    const first = answer.before.length === 0 || count === 0 ? '' : ', below what to read first';
    const left = answer.left_out.length === 0 ? '' : ` Left out, since nothing on file has it: ${answer.left_out.join(', ')}.`;
    return words + first + (count === 0 || left === '' ? '' : '.') + left;
  }

  function set(answer) {
    globalThis.benchleafAnswered = answer.query;
    status.textContent = said(answer);
    const cards = answer.hits.length <= FULL || answer.danger || answer.hits[0].pair;
    results.replaceChildren(...answer.before.map(dangerCard), comparison(answer),
      ...(answer.compared.length > 0 ? [] : cards ? answer.hits.map((hit) => cardOf(hit, answer)) : [make('ul', { class: 'pages' }, ...answer.hits.map(row))]),
      listOf(answer.others_head === '' ? 'Pages' : answer.others_head, answer.others), nearest(answer.nearest));
  }

  async function show(query) {
    panel.hidden = query === '';
    if (query === '') return results.replaceChildren();
    if (!ready) status.textContent = 'The search is being loaded\u2026';
    try {
      const answer = JSON.parse(await benchleafAsk({ ask: 'find', query }));
      ready = true;
      if (field.value.trim() === query) set(answer);
    } catch (error) {
      status.textContent = `The search could not be loaded: ${error.message}. Use the index or the contents.`;
    }
    return undefined;
  }

  let ready = false, pause = 0;

  /** What was asked stands in the address of the page that is left, so that Back brings it again. */
  function remember() {
    const query = field.value.trim();
    if (query === '') return;
    try { history.replaceState(null, '', FIND + encodeURIComponent(query)); } catch { /* a page from a disk may not */ }
  }

  function again() {
    if (single || !location.hash.startsWith(FIND)) return;
    field.value = decodeURIComponent(location.hash.slice(FIND.length));
    show(field.value);
  }

  function move(event) {
    const stops = [field, ...results.querySelectorAll('a, button')];
    const here = stops.indexOf(document.activeElement);
    if (event.key === 'Escape') {
      field.value = '';
      panel.hidden = true;
      field.focus();
    } else if (event.key === 'ArrowDown' || event.key === 'ArrowUp') {
      stops[Math.min(stops.length - 1, Math.max(0, here + (event.key === 'ArrowDown' ? 1 : -1)))].focus();
      event.preventDefault();
    } else if (event.key === 'Enter' && document.activeElement === field) {
      results.querySelector('a')?.click();
    }
  }

  /** `/` and Ctrl-K reach the field from anywhere but another field. */
  function shortcut(event) {
    const typing = document.activeElement?.matches('input, textarea, select') ?? false;
    if ((event.key === '/' && !typing && !event.ctrlKey && !event.metaKey) || (event.key === 'k' && (event.ctrlKey || event.metaKey))) {
      field.focus();
      field.select();
      event.preventDefault();
    }
  }

  function addSearch() {
    field.addEventListener('focus', () => { benchleafAsk({ ask: 'find', query: '' }).then(() => { ready = true; }, () => {}); }, { once: true });
    field.addEventListener('input', () => {
      clearTimeout(pause);
      pause = setTimeout(() => show(field.value.trim()), PAUSE);
    });
    search.addEventListener('keydown', move);
    document.addEventListener('keydown', shortcut);
    document.addEventListener('click', (event) => {
      if (home === null && !search.contains(event.target)) panel.hidden = true;
    });
    results.addEventListener('click', (event) => {
      if (event.target.closest('a') === null) return;
      if (single) panel.hidden = true; else remember();
    });
    if (home !== null && !single) home.replaceChildren(search);
    else document.querySelector('.brand').after(search);
    again();
    if (field.value !== '' && results.childElementCount === 0) show(field.value.trim());
  }

  /* Light and dark */

  const system = matchMedia('(prefers-color-scheme: dark)');

  function addSwitch() {
    const button = make('button', { type: 'button', class: 'theme' });
    const dark = () => (html.dataset.theme ?? (system.matches ? 'dark' : 'light')) === 'dark';
    const name = () => { button.textContent = dark() ? 'Light' : 'Dark'; };
    const chosen = kept('theme');
    if (chosen === 'dark' || chosen === 'light') html.dataset.theme = chosen;
    button.addEventListener('click', () => {
      html.dataset.theme = dark() ? 'light' : 'dark';
      keep('theme', html.dataset.theme);
      name();
    });
    system.addEventListener('change', name);
    name();
    document.querySelector('.top').append(button);
  }

  /* A header that stays covers what a link leads to, by its own height. */

  function measureHeader() {
    const header = document.querySelector('.top');
    const measure = () => html.style.setProperty('--head', `${Math.ceil(header.getBoundingClientRect().height)}px`);
    new ResizeObserver(measure).observe(header);
    measure();
  }

  /* A link to each heading, to send or to keep */

  function addPermalinks() {
    if (single) return;
    for (const head of document.querySelectorAll('main :is(h2, h3)[id]')) {
      head.setAttribute('aria-label', head.textContent);  // the name of the heading has nothing of its link
      head.append(make('a', { class: 'permalink', href: `#${head.id}`, 'aria-label': `Link to ${head.textContent}` }, '#'));
    }
  }

  /* What an edition's age is, today */

  function addAge() {
    const date = document.querySelector('.foot time[datetime]');
    if (date === null) return;
    const [year, month] = date.dateTime.split('-').map(Number);
    const now = new Date();
    const months = (now.getFullYear() - year) * 12 + now.getMonth() + 1 - month;
    if (months > 0) date.after(`, ${months === 1 ? '1 month' : months + ' months'} old`);
  }

  addSearch();
  addSwitch();
  addAge();
  addPermalinks();
  if (single) measureHeader();
})();
