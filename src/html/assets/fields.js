/* In: what may be answered. Out: fields of a form; each reads an answer out of its control and writes one into it, `''` for none. */
'use strict';

globalThis.benchleafFields = (function () {
  const FEW = 8;  // choices that are shown at once; of more, a field that narrows

  function make(kind, attributes, ...content) {
    const element = document.createElement(kind);
    for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
    element.append(...content);
    return element;
  }

  const described = (id) => ({ 'aria-describedby': `${id}-what ${id}-error` });

  /** A plain number is of the unit that stands beside the field. */
  function withUnit(text, unit) {
    const number = /^([+\-\u2212]?[0-9]+)(?:[.,]([0-9]+))?$/.exec(text);
    return number === null || unit === '' ? text : `${number[1]}${number[2] === undefined ? '' : '.' + number[2]} ${unit}`;
  }

  function withoutUnit(text, unit) {
    const number = text.endsWith(unit) ? text.slice(0, text.length - unit.length).trim() : '';
    return unit !== '' && /^[0-9.]+$/.test(number) ? number : text;
  }

  /** Words, or a number with its unit beside it; of many choices the field shows those that hold what is typed. */
  function typed(id, { unit = '', choices = [], rows = 0, mode = 'text' } = {}) {
    const shared = { id, autocomplete: 'off', autocapitalize: 'off', spellcheck: 'false', ...described(id) };
    const input = rows > 0 ? make('textarea', { ...shared, rows }) : make('input', { ...shared, inputmode: unit !== '' && choices.length === 0 ? 'decimal' : mode });
    const control = make('div', { class: 'entry' }, input);
    if (choices.length > 0) {
      const list = make('datalist', { id: `${id}-choices` }, ...choices.map(({ label }) => make('option', { value: label })));
      input.setAttribute('list', list.id);
      control.append(list);
    }
    if (unit !== '') {
      control.append(make('span', { class: 'unit', id: `${id}-unit` }, unit));
      input.setAttribute('aria-describedby', `${id}-unit ${id}-what ${id}-error`);
    }
    const read = () => {
      const words = input.value.trim();
      return choices.find(({ label }) => label === words)?.value ?? withUnit(words, unit);
    };
    const write = (value) => { input.value = choices.find((one) => one.value === value)?.label ?? withoutUnit(value, unit); };
    return { control, focus: input, read, write };
  }

  function selected(id, choices, none) {
    const select = make('select', { id, ...described(id) }, make('option', { value: '' }, none), ...choices.map(({ value, label }) => make('option', { value }, label)));
    const write = (value) => {
      if (value !== '' && !choices.some((one) => one.value === value)) select.append(make('option', { value }, value));
      select.value = value;
    };
    return { control: make('div', { class: 'entry' }, select), focus: select, read: () => select.value, write };
  }

  /** Choices side by side, the last of them none. */
  function switched(id, label, choices, none) {
    const group = make('div', { class: 'switch', role: 'radiogroup', 'aria-label': label, ...described(id) });
    const add = ({ value, label: words }) => {
      const input = make('input', { type: 'radio', name: id, id: `${id}-${group.childElementCount}`, value });
      input.checked = value === '';
      group.append(make('span', {}, input, make('label', { for: input.id }, words)));
    };
    [...choices, { value: '', label: none }].forEach(add);
    const inputs = () => [...group.querySelectorAll('input')];
    const write = (value) => {
      if (inputs().every((input) => input.value !== value)) add({ value, label: value });
      for (const input of inputs()) input.checked = input.value === value;
    };
    return { control: group, focus: group.querySelector('input'), group: true, read: () => inputs().find((input) => input.checked)?.value ?? '', write };
  }

  /** One of some: buttons for a few short ones, a list for a few long ones, else a field that narrows. */
  function oneOf(id, label, choices, none) {
    if (choices.length > FEW) return typed(id, { choices });
    const letters = choices.reduce((sum, one) => sum + one.label.length, 0);
    return letters > 60 ? selected(id, choices, none) : switched(id, label, choices, none);
  }

  function controlOf(input, id) {
    if (input.answer === 'yes-no') return switched(id, input.label, [{ value: 'no', label: 'no' }, { value: 'yes', label: 'yes' }], 'not known');
    if (input.answer === 'one-of') return oneOf(id, input.label, input.choices, 'not given');
    return typed(id, input);
  }

  /** A field with its label, what it takes, and room for its fault; `open` is said of one that may stay empty. */
  function fieldOf(input, id, open, picture = null) {
    const field = { ...input, ...controlOf(input, id) };
    if (!field.group) field.focus.name = input.name;
    if (input.required && !field.group) field.focus.setAttribute('aria-required', 'true');
    field.error = make('p', { id: `${id}-error`, class: 'field-error' });
    const label = [input.label, open === '' ? '' : make('i', {}, open)];
    const words = input.choices.length > 0 || input.answer === 'yes-no' ? input.what : `${input.what}; for example ${input.example}`;
    field.row = make('div', { class: 'field' }, picture ?? '',
      field.group ? make('p', { class: 'label' }, ...label) : make('label', { for: id }, ...label),
      make('p', { id: `${id}-what`, class: 'what' }, words), field.control, field.error);
    return field;
  }

  function clearFaults(list, fields) {
    for (const field of fields) {
      field.error.textContent = '';
      field.focus.removeAttribute('aria-invalid');
    }
    list.replaceChildren();
  }

  /** Each fault beside its field and in the list under the button, where the thumb is. */
  function tellFaults(list, faults, after, focuses) {
    const lines = faults.map(({ field, words }) => {
      if (field === undefined) return make('li', {}, words);
      field.error.textContent = words;
      field.focus.setAttribute('aria-invalid', 'true');
      const link = make('a', { href: `#${field.focus.id}` }, `${field.label}: ${words}`);
      link.addEventListener('click', (event) => { event.preventDefault(); field.focus.focus(); });
      return make('li', {}, link);
    });
    const head = faults.length === 1 ? 'One entry cannot be used.' : `${faults.length} entries cannot be used.`;
    list.replaceChildren(make('p', {}, make('b', {}, head), ` ${after}`), make('ul', {}, ...lines));
    if (focuses) faults.find(({ field }) => field !== undefined)?.field.focus.focus();
  }

  /* What is kept on this device, where the browser allows it. */

  function kept(name) {
    try { return JSON.parse(localStorage.getItem(`benchleaf-${name}`)); } catch { return null; }
  }

  /** Whether it could be kept. */
  function keep(name, value) {
    try {
      if (value === null) localStorage.removeItem(`benchleaf-${name}`);
      else localStorage.setItem(`benchleaf-${name}`, JSON.stringify(value));
      return true;
    } catch {
      return false;
    }
  }

  /* A form is what the program says that it asks. It is made when its place comes into sight, since one file holds them all. */
  function makeInSight(selector, thing, request, start) {
    async function open(place) {
      const status = make('p', { class: 'search-status', role: 'status' }, `${thing} is being loaded\u2026`);
      place.before(status);
      try {
        start(place, JSON.parse(await benchleafAsk(request(place))));
        status.remove();
      } catch (error) {
        status.textContent = `${thing} could not be loaded: ${error.message}.`;
      }
    }
    const seen = new IntersectionObserver((entries) => {
      for (const entry of entries) {
        if (!entry.isIntersecting) continue;
        seen.unobserve(entry.target);
        open(entry.target);
      }
    });
    document.querySelectorAll(selector).forEach((place) => seen.observe(place));
  }

  return { FEW, make, makeInSight, typed, selected, oneOf, fieldOf, clearFaults, tellFaults, kept, keep };
})();
