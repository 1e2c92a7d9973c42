(() => {
  const plain = words => words.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();

  /* What is looked at: 'safety', 'drills', 'card' or 'play', and of the last two which card. */
  let view = '';
  let card = null;

  const look = () => {
    const [id, play] = location.hash.slice(1).split('.');
    const found = id ? at(id) : at('safety');
    const shown = found && found.classList.contains('view') ? found : at('drills');
    const before = card;
    const first = view === '';
    view = shown.classList.contains('card') ? (play === 'play' ? 'play' : 'card') : shown.id;
    card = shown.classList.contains('card') ? shown : null;
    pause();
    root.dataset.view = view;
    document.querySelectorAll('.view').forEach(one => one.classList.toggle('shown', one === shown));
    if (view === 'card') {
      at('by-count').hash = '#' + card.id + '.play';
    }
    if (view === 'play') {
      begin();
    }
    if (!first) {
      const row = view === 'drills' && before && document.querySelector('[data-row="' + before.id + '"] a');
      scrollTo(0, 0);
      (row || shown.querySelector('h2')).focus();
    }
    awake(view === 'play');
  };

  /* Count by count. */
  let steps = [];
  let step = 0;
  let time = 1;
  let timer = 0;

  const times = () => Number(card.dataset.times);
  const tempo = () => Number(card.dataset.tempo);
  const isCount = place => steps[place].classList.contains('count');

  const begin = () => {
    steps = [...card.querySelectorAll('.step')];
    time = 1;
    at('cells').replaceChildren(...steps.map((one, place) => {
      const cell = document.createElement('button');
      cell.type = 'button';
      cell.textContent = one.dataset.name;
      cell.addEventListener('click', () => {
        pause();
        time = place === 0 ? 1 : time;
        go(place);
      });
      return cell;
    }));
    card.querySelector('header').after(at('cells'));
    card.querySelector('.after').after(at('running'));
    at('cells').hidden = false;
    at('running').hidden = false;
    go(0, true);
  };

  const go = (place, silent) => {
    step = place;
    steps.forEach((one, other) => one.classList.toggle('now', other === place));
    [...at('cells').children].forEach((cell, other) => {
      if (other === place) {
        cell.setAttribute('aria-current', 'step');
      } else {
        cell.removeAttribute('aria-current');
      }
    });
    card.classList.toggle('at-count', isCount(place));
    at('back').textContent = place === 0 ? words.card : words.back;
    at('next-word').textContent =
        place === steps.length - 1 ? words.allDrills : fill(words.next, steps[following()].dataset.name);
    at('time').textContent = times() > 1 && isCount(place) ? fill(words.time, time, times()) : '';
    if (!silent) {
      at('said').textContent = steps[place].dataset.said || steps[place].textContent;
    }
  };

  const again = () => step === steps.length - 2 && isCount(step) && time < times();
  const following = () => again() ? 1 : step + 1;

  const next = () => {
    if (step === steps.length - 1) {
      location.hash = '#drills';
      return;
    }
    const place = following();
    time += again() ? 1 : 0;
    go(place);
  };

  const back = () => {
    pause();
    if (step === 0) {
      location.hash = '#' + card.id;
    } else if (step === 1 && time > 1) {
      time--;
      go(steps.length - 2);
    } else {
      go(step - 1);
    }
  };

  const pause = () => {
    clearInterval(timer);
    timer = 0;
    at('fill').getAnimations().forEach(motion => motion.cancel());
    if (card) {
      const seconds = (tempo() / 1000).toLocaleString(root.lang, {maximumFractionDigits: 2});
      at('run').textContent = fill(words.run, seconds);
    }
  };

  const grow = () => {
    if (!matchMedia('(prefers-reduced-motion: reduce)').matches) {
      at('fill').animate([{transform: 'scaleX(0)'}, {transform: 'scaleX(1)'}], tempo());
    }
  };

  const run = () => {
    if (timer) {
      pause();
      return;
    }
    if (!isCount(step)) {
      time = 1;
      go(1);
    }
    at('run').textContent = words.stop;
    grow();
    timer = setInterval(() => {
      next();
      if (step === steps.length - 1) {
        pause();
      } else {
        grow();
      }
    }, tempo());
  };

  /* The screen stays on while a phrase is gone through, where the browser can do that. */
  let light = null;
  const awake = async on => {
    try {
      if (on && !light && navigator.wakeLock) {
        light = await navigator.wakeLock.request('screen');
        light.addEventListener('release', () => { light = null; });
      } else if (!on && light) {
        await light.release();
      }
    } catch (refused) {
      light = null;
    }
  };

  /* The list: what the field asks for, and what was ticked. */
  const sieve = () => {
    const asked = at('search').value.trim();
    const level = at('level') ? at('level').value : '';
    const parts = plain(asked).split(/\s+/).filter(Boolean);
    const rows = [...document.querySelectorAll('[data-row]')];
    let found = 0;
    for (const row of rows) {
      const drill = at(row.dataset.row);
      drill.plain ??= plain(drill.textContent);
      const fits = parts.every(part => drill.plain.includes(part)) && (!level || drill.dataset.level === level);
      row.hidden = !fits;
      found += fits ? 1 : 0;
    }
    at('found').textContent = asked ? fill(words.found, found, rows.length, asked)
        : level ? fill(words.foundLevel, found, rows.length) : all;
  };
  let all = '';

  /* A browser may refuse to keep anything, above all for a page that is a file. */
  const kept = () => {
    try {
      const text = localStorage.getItem(words.kept);
      const list = text === null ? [] : JSON.parse(text);
      return Array.isArray(list) ? list : [];
    } catch (refused) {
      return [];
    }
  };

  const keep = list => {
    try {
      if (list.length) {
        localStorage.setItem(words.kept, JSON.stringify(list));
      } else {
        localStorage.removeItem(words.kept);
      }
    } catch (refused) {
      at('stays').textContent = words.forgets;
    }
  };

  const boxes = () => [...document.querySelectorAll('[data-drill]')];

  const ticked = () => {
    const done = boxes().filter(box => box.checked);
    at('done').hidden = done.length === 0;
    at('record').value = ['drillwright record', words.class, ...done.map(box => '--only ' + box.dataset.word)].join(' ');
    at('copied').textContent = '';
    return done;
  };

  const key = event => {
    if (view !== 'play' || event.altKey || event.ctrlKey || event.metaKey) {
      return;
    }
    if (event.key === way.on || (event.key === ' ' && !event.target.closest('button, a, input, summary'))) {
      pause();
      next();
    } else if (event.key === way.back) {
      back();
    } else if (event.key === 'Escape') {
      location.hash = '#' + card.id;
    } else {
      return;
    }
    event.preventDefault();
  };

  const start = () => {
    all = at('found').textContent;
    const before = kept();
    boxes().forEach(box => {
      box.checked = before.includes(box.dataset.drill);
      box.addEventListener('change', () => keep(ticked().map(one => one.dataset.drill)));
    });
    ticked();
    at('clear').addEventListener('click', () => {
      boxes().forEach(box => { box.checked = false; });
      keep(ticked());
      at('title-drills').focus();
    });
    at('search').addEventListener('input', sieve);
    if (at('level')) {
      at('level').addEventListener('change', sieve);
    }
    at('next').addEventListener('click', () => {
      pause();
      next();
    });
    at('back').addEventListener('click', back);
    at('run').addEventListener('click', run);
    document.addEventListener('keydown', key);
    addEventListener('hashchange', look);
    document.addEventListener('visibilitychange', () => awake(view === 'play' && !document.hidden));
    look();
  };

  begins(start);
})();
