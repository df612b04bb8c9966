/* In: a page with pictures at true size. Out: the same with a bar to lay a card on, so that they are true on this screen. A browser
   takes every screen for one of 96 dots an inch; a card of the size ID-1 (ISO/IEC 7810, 85.60 mm) tells what it is. */
'use strict';

(function () {
  const CARD_MM = 85.6;
  const STORED = 'benchleaf-screen';
  const LEAST = 0.5, MOST = 2;
  const pictures = [...document.querySelectorAll('svg.drawing:not(.scales)')]
    .map((picture) => ({ picture, width: parseFloat(picture.getAttribute('width')), height: parseFloat(picture.getAttribute('height')) }));
  if (pictures.length === 0) return;

  function make(kind, attributes, ...content) {
    const element = document.createElement(kind);
    for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
    element.append(...content);
    return element;
  }

  function stored() {
    try { return Number(localStorage.getItem(STORED)) || 1; } catch { return 1; }
  }

  function store(factor) {
    try { localStorage.setItem(STORED, String(factor)); } catch { /* the match then lasts for the page */ }
  }

  const bar = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
  for (const [key, value] of [['class', 'card-bar'], ['height', '12mm'], ['aria-hidden', 'true']]) bar.setAttribute(key, value);
  const slider = make('input', { type: 'range', id: 'card_width', min: LEAST, max: MOST, step: 0.001, 'aria-describedby': 'card_words' });
  const words = make('p', { id: 'card_words' });

  function draw(factor) {
    bar.setAttribute('width', `${CARD_MM * factor}mm`);
    for (const { picture, width, height } of pictures) {
      picture.setAttribute('width', `${width * factor}mm`);
      picture.setAttribute('height', `${height * factor}mm`);
    }
    words.textContent = factor === 1 ? 'Not matched yet: pictures may be off by a quarter.' : 'Matched: lay the thing on its picture.';
  }

  const factor = Math.min(MOST, Math.max(LEAST, stored()));
  slider.value = factor;
  slider.addEventListener('input', () => {
    draw(Number(slider.value));
    store(Number(slider.value));
  });
  const match = make('details', { class: 'match' }, make('summary', {}, 'True size on this screen'),
    make('p', {}, `Lay a bank card, ${CARD_MM.toFixed(2)}\u2009mm wide, on the bar and draw the slider until both are as wide.`),
    make('label', { for: 'card_width' }, 'Width of the bar'), slider, bar, words);
  const first = pictures[0].picture.closest('.true-size, table, .table-frame, figure, li, p') ?? pictures[0].picture;
  first.before(match);
  draw(factor);
})();
