/* In: procedures as they were bound, one on a page or all in one file. Out: steps to tick, remembered on this device; messages shrink
   to a line that opens, those of a hazard that a step makes itself once they were read; the screen stays on while the page is open,
   where the browser allows it. Without a script all of it stands in full. */
'use strict';

(function () {
  const { make, kept, keep } = benchleafFields;
  const READ = 'read-messages';

  /* Messages */

  const read = new Set(kept(READ) ?? []);

  /** To a line that opens on a tap. Until its step is done, a hazard that the step itself makes stands in full. */
  function fold(message) {
    const brief = message.querySelector('.in-brief');
    const row = make('button', { type: 'button', class: 'unfold', 'aria-expanded': 'false' });
    if (brief === null) row.append(message.querySelector('.text > p').textContent); else row.append(...brief.childNodes);
    row.addEventListener('click', () => row.setAttribute('aria-expanded', String(!message.classList.toggle('strip'))));
    message.classList.add('strip');
    message.querySelector('.word').after(row);
    brief?.remove();
  }

  /* Steps */

  function follow(procedure) {
    const { record } = procedure.dataset;
    const list = procedure.querySelector(':scope > .steps');
    if (list === null) return;
    const TICKED = `steps-${record}`;
    for (const message of procedure.querySelectorAll('.message[data-record]')) {
      if (message.matches('.embedded') || read.has(message.dataset.record)) fold(message);
    }
    const steps = [...list.children];
    const ticked = new Set((kept(TICKED) ?? []).filter((number) => number < steps.length));
    const place = make('span', {});
    const over = make('button', { type: 'button' }, 'Start over');
    const here = make('div', { class: 'here' }, make('p', { role: 'status' }, make('b', {}, 'You are here'), ' ', place), over);

    function tell() {
      const next = steps.findIndex((_, number) => !ticked.has(number));
      steps.forEach((step, number) => {
        step.classList.toggle('done', ticked.has(number));
        step.classList.toggle('present', number === next);
        step.querySelector('input').checked = ticked.has(number);
      });
      place.textContent = next < 0 ? 'all steps done' : `step ${next + 1} of ${steps.length}`;
      over.hidden = ticked.size === 0;
    }

    function tick(number, done) {
      if (done) ticked.add(number); else ticked.delete(number);
      for (const message of steps[number].querySelectorAll('.message[data-record]')) read.add(message.dataset.record);
      keep(READ, [...read]);
      keep(TICKED, ticked.size === 0 ? null : [...ticked]);
      tell();
    }

    steps.forEach((step, number) => {
      const box = make('input', { type: 'checkbox', class: 'step-tick', 'aria-label': `Step ${step.value || number + 1} done` });
      box.addEventListener('change', () => tick(number, box.checked));
      step.querySelector(':scope > p').prepend(box);
    });
    over.addEventListener('click', () => {
      ticked.clear();
      keep(TICKED, null);
      tell();
      steps[0].scrollIntoView({ block: 'center' });
    });
    list.classList.add('ticking');
    list.before(here);
    tell();
    holdScreen(here, record);
  }

  /* The screen */

  function holdScreen(here, record) {
    if (!('wakeLock' in navigator)) return;
    const id = `screen_on_${record.replace('/', '_')}`;
    let lock = null;
    const box = make('input', { type: 'checkbox', id });
    const said = make('span', { role: 'status' });

    async function hold() {
      try {
        lock = await navigator.wakeLock.request('screen');
        said.textContent = '';
      } catch {
        box.checked = false;
        said.textContent = ' This browser does not allow it here.';
      }
    }

    box.addEventListener('change', () => {
      if (box.checked) return hold();
      lock?.release();
      lock = null;
      return undefined;
    });
    document.addEventListener('visibilitychange', () => { if (box.checked && document.visibilityState === 'visible') hold(); });
    here.before(make('p', { class: 'screen-on' }, box, make('label', { for: id }, 'Keep the screen on while this page is open'), said));
  }

  document.querySelectorAll('main[data-record^="procedure/"], .sheet[data-record^="procedure/"]').forEach(follow);
})();
