(() => {
  const all = part => [...document.querySelectorAll(part)];

  /* What was ticked and said: rounds by number; people by the number the page gives them, others by their names. */
  const KINDS = {gone: 'gone', back: 'returned', instead: 'stoodIn', too: 'thereToo'};
  let state = {me: null, worked: [], changes: []};
  let boxes;
  let options;

  const isPerson = who => typeof who === 'string' || (Number.isInteger(who) && options.has(who));
  const isChange = one => one && Number.isInteger(one.round) && Object.hasOwn(KINDS, one.kind) && isPerson(one.who)
      && (one.kind !== 'instead' || isPerson(one.other));

  /* A browser may refuse to keep anything, above all for a page that is a file. */
  const kept = () => {
    const begun = {me: null, worked: boxes.map(Number).slice(0, Number(words.takenOver)), changes: []};
    try {
      const found = JSON.parse(localStorage.getItem(words.kept)) || {};
      return {
        me: options.has(found.me) ? found.me : null,
        worked: Array.isArray(found.worked) ? found.worked.filter(one => boxes.includes(one)) : begun.worked,
        changes: Array.isArray(found.changes) ? found.changes.filter(isChange) : [],
      };
    } catch (refused) {
      return begun;
    }
  };

  const keep = () => {
    try {
      localStorage.setItem(words.kept, JSON.stringify(state));
    } catch (refused) {
      at('stays').textContent = words.forgets;
    }
  };

  /* In sentences a name keeps its direction to itself. */
  const called = who => '\u2068' + (typeof who === 'string' ? who : options.get(who).textContent) + '\u2069';
  const told = one => fill(words[KINDS[one.kind]], one.round, called(one.who), isPerson(one.other) ? called(one.other) : '');

  /* For a shell: a typed name stands in single quotes, in which nothing is read but the end. */
  const quoted = name => "'" + name.replaceAll("'", "'\\''") + "'";
  const word = who => typeof who === 'string' ? quoted(who) : options.get(who).dataset.word;

  const line = () => {
    const last = Math.max(0, ...state.worked);
    const parts = [words.line];
    if (last < boxes.length) {
      parts.push(fill(words.sayFirst, last));
    }
    boxes.filter(round => round < last && !state.worked.includes(round))
        .forEach(round => parts.push(fill(words.saySkipped, round)));
    const named = state.changes.filter(one => word(one.who) && (one.kind !== 'instead' || word(one.other)));
    named.forEach(one => {
      const form = words['say' + one.kind[0].toUpperCase() + one.kind.slice(1)];
      parts.push(fill(form, one.round, word(one.who), one.kind === 'instead' ? word(one.other) : ''));
    });
    at('unsaid').hidden = named.length === state.changes.length;
    return parts.join(' ');
  };

  /* What holds of somebody in a round: the last that was said of them up to it. */
  const standing = (who, round) =>
    state.changes.filter(one => one.who === who && one.kind !== 'too' && one.round <= round).at(-1);
  const isGone = (who, round) => (standing(who, round) || {kind: 'back'}).kind !== 'back';

  const paint = () => {
    all('[data-worked]').forEach(box => { box.checked = state.worked.includes(Number(box.dataset.worked)); });
    all('.who').forEach(button => {
      const [who, round] = [Number(button.dataset.who), Number(button.dataset.round)];
      const said = standing(who, round);
      const elsewhere = state.changes.find(one =>
        one.kind === 'instead' && one.other === who && standing(one.who, round) === one);
      const gone = isGone(who, round);
      button.classList.toggle('gone', gone || Boolean(elsewhere));
      button.querySelector('.otherwise').textContent =
          gone ? ' ' + (said.kind === 'gone' ? words.goneHere : way.arrow + called(said.other))
          : elsewhere ? ' ' + fill(words.forHere, called(elsewhere.who)) : '';
    });
    at('changes').replaceChildren(...state.changes.map(one => {
      const item = document.createElement('li');
      const said = document.createElement('span');
      said.textContent = told(one);
      const undo = document.createElement('button');
      undo.type = 'button';
      undo.textContent = words.undo;
      undo.setAttribute('aria-label', fill(words.undoSaid, told(one)));
      undo.addEventListener('click', () => {
        state.changes = state.changes.filter(other => other !== one);
        state.changes = state.changes.filter(other => other.kind !== 'back' || isGone(other.who, other.round - 1));
        change();
        at('title-rounds').focus();
      });
      item.append(said, undo);
      return item;
    }));
    at('done').hidden = state.changes.length === 0 && state.worked.length <= Number(words.takenOver);
    at('record').value = line();
    at('copied').textContent = '';
    const next = boxes.find(round => !state.worked.includes(round)) || boxes.length;
    at('next-unworked').textContent = fill(words.round, next);
    at('next-unworked').hash = '#round-' + next;
    bar();
  };

  const change = () => {
    state.changes.sort((one, other) => one.round - other.round);
    keep();
    paint();
  };

  const tick = (round, on) => {
    state.worked = boxes.filter(one => one === round ? on : state.worked.includes(one));
    change();
  };

  /* What is looked at: 'names', 'person', 'rounds' or 'round'. */
  let shown = null;
  let looked = 0;

  const bar = () => {
    if (looked) {
      at('worked').setAttribute('aria-pressed', state.worked.includes(looked));
      [[at('before'), looked - 1], [at('after'), looked + 1]].forEach(([link, round]) => {
        link.hidden = !boxes.includes(round);
        link.hash = '#round-' + round;
        link.textContent = fill(words.round, round);
      });
    }
  };

  const look = () => {
    const found = at(location.hash.slice(1));
    const first = shown === null;
    const before = shown;
    shown = found && found.classList.contains('view') ? found
        : first && state.me !== null && !location.hash ? at('person-' + state.me) || at('names') : at('names');
    looked = shown.classList.contains('round') ? Number(shown.id.slice('round-'.length)) : 0;
    root.dataset.view = looked ? 'round' : shown.classList.contains('person') ? 'person' : shown.id;
    all('.view').forEach(one => one.classList.toggle('shown', one === shown));
    if (root.dataset.view === 'person') {
      state.me = Number(shown.id.slice('person-'.length));
      keep();
    }
    bar();
    if (!first) {
      const row = !looked && before && shown.querySelector('a[href="#' + before.id + '"]');
      scrollTo(0, 0);
      (row || shown.querySelector('h2')).focus();
    }
  };

  /* Somebody was gone, or is back: asked when a name in a round is tapped. */
  let asked = {};

  const ask = button => {
    asked = {round: Number(button.dataset.round), who: Number(button.dataset.who)};
    const gone = isGone(asked.who, asked.round);
    at('change-title').textContent = called(asked.who) + ' · ' + fill(words.round, asked.round);
    at('gone').hidden = gone;
    at('returned').hidden = !gone;
    options.forEach((option, who) => { option.hidden = option.disabled = who === asked.who; });
    at('other').value = '';
    at('named').value = '';
    other();
    at('change').showModal();
  };

  const other = () => { at('named').hidden = at('other').value !== ''; };

  const say = (kind, stands) => {
    state.changes = state.changes.filter(one => one.who !== asked.who || one.round !== asked.round || one.kind === 'too');
    if (kind !== 'back' || isGone(asked.who, asked.round)) {
      state.changes.push({round: asked.round, kind, who: asked.who, other: stands});
    }
    at('change').close();
    change();
  };

  const on = (id, event, done) => at(id).addEventListener(event, done);

  const start = () => {
    boxes = all('[data-worked]').map(box => Number(box.dataset.worked));
    options = new Map([...at('other').options].filter(one => one.value).map(one => [Number(one.value), one]));
    state = kept();
    all('[data-worked]').forEach(box =>
      box.addEventListener('change', () => tick(Number(box.dataset.worked), box.checked)));
    all('.who').forEach(button => {
      button.disabled = false;
      button.addEventListener('click', () => ask(button));
    });
    all('.forget').forEach(link => link.addEventListener('click', () => {
      state.me = null;
      keep();
    }));
    on('all', 'click', () => {
      state.worked = [...boxes];
      change();
    });
    on('worked', 'click', () => tick(looked, !state.worked.includes(looked)));
    on('gone', 'click', () => say('gone'));
    on('returned', 'click', () => say('back'));
    on('other', 'change', other);
    on('instead', 'click', () => {
      const stands = at('other').value === '' ? at('named').value.trim() : Number(at('other').value);
      if (stands === '') {
        at('named').focus();
      } else {
        say('instead', stands);
      }
    });
    on('shut', 'click', () => at('change').close());
    on('add-too', 'click', () => {
      const name = at('too').value.trim();
      if (name && !state.changes.some(one => one.kind === 'too' && one.who === name)) {
        state.changes.push({round: 1, kind: 'too', who: name});
        change();
      }
      at('too').value = '';
      at('too').focus();
    });
    on('clear', 'click', () => {
      state.worked = boxes.slice(0, Number(words.takenOver));
      state.changes = [];
      change();
      at('title-rounds').focus();
    });
    document.addEventListener('keydown', event => {
      const link = {[way.back]: at('before'), [way.on]: at('after')}[event.key];
      if (looked && link && !link.hidden && !at('change').open && !event.altKey && !event.ctrlKey && !event.metaKey) {
        location.hash = link.hash;
        event.preventDefault();
      }
    });
    addEventListener('hashchange', look);
    paint();
    look();
  };

  begins(start);
})();
