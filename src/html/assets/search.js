/* In: what is typed, and the index that the book was bound with. Out: the records that answer it, the best first, by the rules
   that the terminal goes by (src/compose/search.cc): words as written, then by their beginning, then with one slip. */
'use strict';

globalThis.benchleafSearch = (function () {
  const EXACT = 0, BEGINNING = 1, SLIP = 2;
  const MOST_WORDS = 12, MOST_BYTES = 200, MOST_OTHERS = 8;
  const SEAT_CALCULATOR = 'calculator/gasket-fit';
  const MILLIMETRES_PER_INCH = 25.4;

  /* Words of a query */

  const folded = (text) => text.normalize('NFKD').replace(/[\p{M}\p{Default_Ignorable_Code_Point}]/gu, '').toLowerCase()
    .replaceAll('ß', 'ss').replaceAll('ς', 'σ').normalize('NFC');
  const isFigure = (word) => /^[0-9.]+$/.test(word);
  const withoutEndZeros = (figure) => figure.includes('.') ? figure.replace(/0+$/, '').replace(/\.$/, '') : figure;

  /** Figures, words and signs, one after the other; blanks and marks part them. */
  function pieces(text) {
    const found = [];
    for (const [piece] of text.matchAll(/(?:[0-9a-z]|[^\x00-\x7f\u00d7\u2009\u00a0]|(?<=[0-9])\.(?=[0-9]))+|[\u00d7*]|(?<=[0-9])"/gu)) {
      found.push(piece === '\u00d7' || piece === '*' ? 'x' : piece === '"' ? 'in' : piece.replaceAll('\u03bc', 'u'));
    }
    return found;
  }

  /** `7.9x5.4mm` to `7.9`, `x`, `5.4`, `mm`; words with letters before their figures stay whole. */
  function splitMeasures(list) {
    const parts = [];
    for (const piece of list) {
      const [, figure, unit, rest] = /^([0-9.]*)([^0-9]*)(.*)$/su.exec(piece);
      if (figure === '') parts.push(piece);
      else if (unit === '') parts.push(withoutEndZeros(piece));
      else if (!['x', 'mm', 'mmx', 'in', 'inx'].includes(unit)) parts.push(piece);
      else {
        parts.push(withoutEndZeros(figure));
        if (unit.length === 3) parts.push(unit.slice(0, 2), 'x');
        else parts.push(unit);
        if (rest !== '') parts.push(...splitMeasures([rest]));
      }
    }
    return parts;
  }

  /** The size that starts at `at`: figure, unit or not, sign, figure, unit or not; null where there is none. */
  function sizeAt(parts, at) {
    let next = at, inches = false;
    const figure = () => next < parts.length && isFigure(parts[next]) ? parts[next++] : null;
    const unit = () => {
      if (parts[next] === 'in') inches = true;
      if (parts[next] === 'mm' || parts[next] === 'in') ++next;
    };
    const across = figure();
    if (across === null) return null;
    unit();
    if (parts[next] !== 'x' && parts[next] !== 'by') return null;
    ++next;
    const high = figure();
    if (high === null) return null;
    unit();
    return { word: `${across}x${high}${inches ? 'in' : ''}`, taken: next - at };
  }

  function words(text) {
    const parts = splitMeasures(pieces(folded(text)));
    const list = [];
    for (let at = 0; at < parts.length;) {
      const size = sizeAt(parts, at);
      if (size !== null) {
        list.push(size.word);
        at += size.taken;
        continue;
      }
      const [one, next] = [parts[at], parts[at + 1]];
      const measure = isFigure(one) && ['mm', 'in', 'inch', 'inches'].includes(next);
      const code = next !== undefined && /^[a-z]{1,2}$/.test(one) && isFigure(next);
      list.push(measure ? one + next.slice(0, 2) : code ? one + next : one);
      at += measure || code ? 2 : 1;
      if (code && /^(w|sw|s|p|c)$/.test(parts[at] ?? '')) list.push(list.pop() + parts[at++]);
    }
    return list;
  }

  const saysSomething = (word) => byteLength(word) > 2 || /[0-9]/.test(word);
  const byteLength = (text) => new TextEncoder().encode(text).length;

  /** What is left when one letter is taken out, each once; nothing for words too short for a slip. */
  function oneSlipForms(word) {
    const letters = [...word];
    if (isFigure(word) || letters.length < 4 || word.includes('.')) return [];
    return [...new Set(letters.map((_, at) => letters.slice(0, at).concat(letters.slice(at + 1)).join('')))];
  }

  /** Letters put in, left out, changed or changed over with the next one. */
  function editDistance(one, other) {
    const a = [...one], b = [...other];
    let before = [], last = b.map((_, j) => j).concat(b.length);
    for (let i = 1; i <= a.length; ++i) {
      const row = [i];
      for (let j = 1; j <= b.length; ++j) {
        row[j] = Math.min(last[j] + 1, row[j - 1] + 1, last[j - 1] + (a[i - 1] === b[j - 1] ? 0 : 1));
        if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) row[j] = Math.min(row[j], before[j - 2] + 1);
      }
      [before, last] = [last, row];
    }
    return last[b.length];
  }

  const compared = (one, other) => one < other ? -1 : one > other ? 1 : 0;

  /* The index */

  /** One line: record, address, group, title, summary, names, size, keys; parted by tabs. */
  function entryOf(line, position) {
    const [record, href, group, title, summary, names, size, keys] = line.split('\t');
    const [diameter, height] = size === '' ? [0, 0] : size.split('x').map(Number);
    const weighed = keys.split(';').filter((group) => group !== '').map((group) => {
      const colon = group.indexOf(':');
      return { weight: Number(group.slice(0, colon)), keys: group.slice(colon + 1).split('|') };
    });
    return { record, href, group, title, summary, names: names.split('|'), diameter, height, weighed, position };
  }

  const measureOf = (key) => /^[0-9.]+mm$/.test(key) ? [Number(key.slice(0, -2))] : [];

  /** Reads the text of an index; the answer of `find` has hits, others, why the others are named, and the nearest names. */
  function open(text) {
    const [head, ...lines] = text.trimEnd().split('\n');
    const swelling = Number(head);
    const entries = lines.map(entryOf);
    const places = new Map(), slips = new Map(), measures = new Set();
    for (const entry of entries) {
      for (const { weight, keys } of entry.weighed) {
        for (const key of keys) {
          if (!places.has(key)) places.set(key, []);
          places.get(key).push({ entry: entry.position, weight });
          measureOf(key).forEach((measure) => measures.add(measure));
        }
      }
    }
    const sorted = [...places.keys()].sort(compared);
    for (const key of sorted) {
      if (key.includes(' ')) continue;  // a slip is forgiven in a word, not in a whole name
      for (const form of oneSlipForms(key)) slips.set(form, (slips.get(form) ?? []).concat(key));
    }

    function firstAt(word) {
      let low = 0, high = sorted.length;
      while (low < high) {
        const middle = (low + high) >> 1;
        if (sorted[middle] < word) low = middle + 1; else high = middle;
      }
      return low;
    }

    function keepBetter(all, entry, fit, score) {
      const old = all.get(entry);
      if (old === undefined || fit < old.fit || (fit === old.fit && score > old.score)) all.set(entry, { fit, score });
    }

    function lookUpSlips(word, found) {
      const forms = oneSlipForms(word);
      if (forms.length === 0) return;
      const near = new Set();
      for (const form of [...forms, word]) {
        for (const key of slips.get(form) ?? []) near.add(key);
        if (form !== word && places.has(form)) near.add(form);
      }
      for (const key of near) {
        if (key === word || editDistance(key, word) > 1) continue;
        for (const place of places.get(key)) keepBetter(found, place.entry, SLIP, place.weight);
      }
    }

    /** Best fit of one word in every entry that has it. */
    function lookUp(word) {
      const found = new Map();
      const byBeginning = byteLength(word) >= 2 && !/^[0-9]*$/.test(word);
      for (let at = firstAt(word); at < sorted.length && sorted[at].startsWith(word); ++at) {
        const exact = sorted[at] === word;
        if (!exact && !byBeginning) break;
        for (const place of places.get(sorted[at])) keepBetter(found, place.entry, exact ? EXACT : BEGINNING, place.weight);
      }
      lookUpSlips(word, found);
      return found;
    }

    /** A figure in inches as the known one in millimetres that it can mean, by its last digit; else as it is, in 0.01 mm. */
    function inMillimetres(figure) {
      const point = figure.indexOf('.');
      const slack = (MILLIMETRES_PER_INCH / 2 + 1e-9) / 10 ** (point < 0 ? 0 : figure.length - point - 1);
      const meant = Number(figure) * MILLIMETRES_PER_INCH;
      let best = null;
      for (const known of measures) {
        const apart = Math.abs(known - meant);
        if (apart <= slack && (best === null || apart < Math.abs(best - meant) || (apart === Math.abs(best - meant) && known < best))) best = known;
      }
      return String(best ?? Math.round(meant * 100) / 100);
    }

    function metric(word) {
      if (!/^[0-9.]+(x[0-9.]+)?in$/.test(word)) return word;
      const figures = word.slice(0, -2).split('x').map(inMillimetres);
      return figures.length === 2 ? figures.join('x') : figures[0] + 'mm';
    }

    function hitsOf(query) {
      let asked = words(query).map(metric);
      const whole = asked.length > 1 ? places.get(asked.join(' ')) : undefined;
      const wholeWords = asked.length;
      if (asked.some(saysSomething)) asked = asked.filter(saysSomething);
      if (asked.length === 0) return [];
      let found = lookUp(asked[0]);
      for (const word of asked.slice(1)) {
        const next = lookUp(word), both = new Map();
        for (const [entry, one] of found) {
          const other = next.get(entry);
          if (other !== undefined) both.set(entry, { fit: Math.max(one.fit, other.fit), score: one.score + other.score });
        }
        found = both;
      }
      for (const place of whole ?? []) keepBetter(found, place.entry, EXACT, place.weight * (wholeWords + 1));
      const all = [...found].map(([position, one]) => ({ entry: entries[position], ...one }));
      const kept = all.every((one) => one.fit === SLIP) ? all : all.filter((one) => one.fit !== SLIP);
      return kept.sort((one, other) => one.fit - other.fit || other.score - one.score || one.entry.position - other.entry.position);
    }

    /** Cells a little smaller than the size that was measured, the largest first: the old cell may have swollen. */
    function aLittleSmaller(size) {
      const [across, high] = size.split('x').map(Number);
      const tidy = (value) => Number(value.toPrecision(12));
      const smaller = entries.filter(({ diameter, height }) => {
        const narrower = tidy(across - diameter), flatter = tidy(high - height);
        return diameter > 0 && !(narrower === 0 && flatter === 0) && narrower >= 0 && flatter >= 0 && narrower <= swelling && flatter <= swelling;
      });
      return smaller.sort((one, other) => other.diameter - one.diameter || other.height - one.height || one.position - other.position);
    }

    let orders = null;  // names as words, when they are first asked for

    function nearest(query, most) {
      const asked = words(query).join(' ');
      const length = [...asked].length;
      const allowed = length <= 4 ? length - Math.min(length, 1) : Math.floor(length / 2);
      const near = [];
      orders ??= entries.flatMap((entry) => entry.names.map((name) => ({ name, order: words(name).join(' ') })));
      for (const { name, order } of orders) {
        if (Math.abs([...order].length - length) > allowed) continue;  // as many slips at least
        const slip = editDistance(asked, order);
        if (slip <= allowed) near.push({ slip, order, name });
      }
      near.sort((one, other) => one.slip - other.slip || compared(one.order, other.order) || compared(one.name, other.name));
      return [...new Set(near.map((one) => one.name))].slice(0, most);
    }

    function find(query) {
      const answer = { hits: [], others: [], othersHead: 'also', nearest: [] };
      const asked = words(query).map(metric);
      if (byteLength(query) > MOST_BYTES || asked.length > MOST_WORDS) return answer;
      const hits = hitsOf(query);
      for (const hit of hits) {
        const best = hits[0].fit === EXACT ? hit.fit === EXACT && hit.score === hits[0].score : hit.fit === hits[0].fit;
        (best ? answer.hits : answer.others).push(hit.entry);
      }
      if (asked.length === 1 && /^[0-9.]+x[0-9.]+$/.test(asked[0])) {
        answer.othersHead = 'a little smaller, in case the old cell has swollen';
        answer.others = aLittleSmaller(asked[0]);
      }
      const isLength = asked.length === 1 && /^[0-9.]+mm$/.test(asked[0]);  // most likely of a seat, where nothing on file has it
      if (answer.hits.length === 0 && isLength) answer.hits = entries.filter((entry) => entry.record === SEAT_CALCULATOR);
      answer.others = answer.others.slice(0, MOST_OTHERS);
      if (answer.hits.length === 0) answer.nearest = nearest(query, 5);
      return answer;
    }

    return { find, entries };
  }

  return { open, words };
})();
