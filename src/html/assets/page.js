/* In: a page as it was bound. Out: the same with a field to search in and a switch for light and dark. */
'use strict';

(function () {
  const html = document.documentElement;
  const root = html.dataset.root;
  const single = document.documentElement.dataset.single !== undefined;  // all pages in one file
  const home = document.getElementById('search_place');
  let index = null, waiting = [];

  function make(name, attributes, ...content) {
    const element = document.createElement(name);
    for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
    element.append(...content);
    return element;
  }

  const address = (href) => single ? '#' + href.replace('.html', '').replace('/', '_').replace('#', '__') : root + href;

  /** Loads the index when it is first asked for: most pages are read without it. */
  function withIndex(use) {
    if (index === null && globalThis.benchleafIndex !== undefined) index = benchleafSearch.open(globalThis.benchleafIndex);
    if (index !== null) return use(index);
    waiting.push(use);
    if (waiting.length > 1) return undefined;
    const loader = make('script', { src: root + 'assets/search-data.js' });
    loader.addEventListener('load', () => {
      index = benchleafSearch.open(globalThis.benchleafIndex);
      waiting.forEach((each) => each(index));
      waiting = [];
    });
    return document.head.append(loader);
  }

  /* Search */

  const field = make('input', { type: 'search', id: 'search_field', autocomplete: 'off', autocapitalize: 'off', spellcheck: 'false',
    placeholder: 'number, size, liquid, symptom' });
  const status = make('p', { class: 'search-status', role: 'status' });
  const results = make('div', { class: 'results' });
  const panel = make('div', { class: 'search-panel', hidden: '' }, status, results);
  const label = make('label', { for: 'search_field', class: 'unseen' }, 'What have I got in front of me?');
  const search = make('search', { class: home === null ? 'search' : 'search large' }, label, field, panel);

  function row(entry, query) {
    const seat = entry.record === 'calculator/gasket-fit' && /^[0-9]/.test(query) ? '#seat=' + encodeURIComponent(query) : '';
    const link = make('a', { href: address(entry.href) + (single ? '' : seat) }, make('b', {}, entry.title));
    return make('li', {}, link, make('span', {}, entry.summary));
  }

  function group(title, entries, query) {
    return make('section', {}, make('h2', {}, title), make('ul', {}, ...entries.map((entry) => row(entry, query))));
  }

  /** Groups stand in the order of their best answer. */
  function grouped(entries, query) {
    const groups = new Map();
    for (const entry of entries) groups.set(entry.group, (groups.get(entry.group) ?? []).concat(entry));
    return [...groups].map(([title, members]) => group(title, members, query));
  }

  function show(query) {
    results.replaceChildren();
    panel.hidden = query === '';
    if (query === '') return withIndex(() => {});
    return withIndex((list) => {
      if (field.value.trim() !== query) return;
      const answer = list.find(query);
      const count = answer.hits.length;
      status.textContent = count === 0 ? 'Nothing goes by that name.' : count === 1 ? '1 answer' : `${count} answers`;
      results.replaceChildren(...grouped(answer.hits, query));
      if (answer.others.length > 0) results.append(group(answer.othersHead, answer.others, ''));
      if (answer.nearest.length > 0) results.append(nearest(answer.nearest));
    });
  }

  function nearest(names) {
    const buttons = names.map((name) => {
      const button = make('button', { type: 'button' }, name);
      button.addEventListener('click', () => {
        field.value = name;
        field.focus();
        show(name);
      });
      return make('li', {}, button);
    });
    return make('section', {}, make('h2', {}, 'nearest names'), make('ul', { class: 'nearest' }, ...buttons));
  }

  function move(event) {
    const stops = [field, ...results.querySelectorAll('a, button')];
    const here = stops.indexOf(document.activeElement);
    if (event.key === 'Escape') {
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
    field.addEventListener('focus', () => withIndex(() => {}));
    field.addEventListener('input', () => show(field.value.trim()));
    search.addEventListener('keydown', move);
    document.addEventListener('keydown', shortcut);
    document.addEventListener('click', (event) => {
      if (home === null && !search.contains(event.target)) panel.hidden = true;
    });
    if (single) results.addEventListener('click', (event) => { panel.hidden = panel.hidden || event.target.closest('a') !== null; });
    if (home !== null && !single) home.replaceChildren(search);
    else document.querySelector('.brand').after(search);
    if (field.value !== '') show(field.value.trim());
  }

  /* Light and dark */

  const STORED = 'benchleaf-theme';
  const system = matchMedia('(prefers-color-scheme: dark)');

  function stored() {
    try { return localStorage.getItem(STORED); } catch { return null; }
  }

  function store(theme) {
    try { localStorage.setItem(STORED, theme); } catch { /* a page from a disk may have no store: the choice then lasts for the page */ }
  }

  function addSwitch() {
    const button = make('button', { type: 'button', class: 'theme' });
    const dark = () => (document.documentElement.dataset.theme ?? (system.matches ? 'dark' : 'light')) === 'dark';
    const name = () => { button.textContent = dark() ? 'Light' : 'Dark'; };
    const chosen = stored();
    if (chosen === 'dark' || chosen === 'light') document.documentElement.dataset.theme = chosen;
    button.addEventListener('click', () => {
      document.documentElement.dataset.theme = dark() ? 'light' : 'dark';
      store(document.documentElement.dataset.theme);
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
