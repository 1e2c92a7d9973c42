// The phrase, played count by count.

import { $, element, say, withUnknowns } from '/elements.js';
import { said, joined, language, turned } from '/said.js';
import { drawingsOf, showPicture } from '/pictures.js';
import { keepHeight } from '/steady.js';

/** How long the two take from one count to the next, in milliseconds. */
const SLOWLY = 1500;

/** How much of a count they take at most when it is played; for the rest they stand. */
const SHARE_OF_COUNT = 0.6;

let drill = null;
let at = 0;
let timer = 0;

function nameOf(step) {
  return step.kind === 'count' ? said('count', step.number) : said(step.kind);
}

function pairs(target, rows) {
  target.replaceChildren(...rows.filter(([, text]) => text).flatMap(([name, text, kind]) => [
    element('dt', {}, name),
    element('dd', kind ? { class: kind } : {}, ...(Array.isArray(text) ? text : [text])),
  ]));
}

function turns(step) {
  if (step.kind !== 'count') {
    return [[said('opening'), step.opening], [said('start'), step.start], [said('closing'), step.closing]];
  }
  return [
    [said('call'), step.call],
    [said(drill.partner ? 'leader' : 'caller'), step.leader || said('nothing')],
    [said(drill.partner ? 'follower' : 'class'), step.follower || said('nothing')],
    [said('distance'), step.distance, 'small'],
    [said('safety'), step.safety, 'small'],
    [said('note'), step.note, 'small'],
  ];
}

function title(side) {
  return said(drill.partner ? side : 'class');
}

function reading(step) {
  const rows = [];
  for (const side of ['leader', 'follower']) {
    const read = step.read.filter((move) => move.by === side)
      .map((move) => move.fate ? said('move.end', move.words, move.fate) : move.words);
    rows.push([said('as.read', title(side)), joined('clauses', read)]);
  }
  for (const [side, text] of Object.entries(step.standing)) {
    rows.push([side === 'between' ? said('between') : said('afterwards', title(side)), withUnknowns(text, step.doubts)]);
  }
  if (step.unknown) {
    rows.push([said('not.judged'), [element('span', { class: 'unknown' }, said('unknown', step.unknown))]]);
  }
  return rows;
}

function spoken(step) {
  if (step.kind !== 'count') {
    return said('spoken', nameOf(step), step.start || step.closing || '');
  }
  const told = turns(step).slice(0, 4).filter(([, text]) => text).map(([name, text]) => said('spoken', name, text));
  return said('sentence', nameOf(step), told.join(' '));
}

function milliseconds() {
  const slowly = SLOWLY * drill.shots[at];
  return timer ? Math.min(slowly, drill.tempo * SHARE_OF_COUNT) : slowly;
}

function show({ aloud = false, anew = false } = {}) {
  const step = drill.steps[at];
  say($('count'), nameOf(step));
  pairs($('turns'), turns(step));
  pairs($('read'), reading(step));
  if (aloud) {
    say($('called'), timer ? nameOf(step) : spoken(step));
  }
  const last = at === drill.steps.length - 1;
  able($('back'), at > 0);
  able($('step'), !last);
  [...$('counts').children].forEach((item, number) => {
    const button = item.firstChild;
    if (number === at) {
      button.setAttribute('aria-current', 'step');
    } else {
      button.removeAttribute('aria-current');
    }
  });
  keepHeight({ anew });
  return showPicture(at, milliseconds());
}

/** A button that has the focus keeps it at the end of the phrase. */
function able(button, yes) {
  button.setAttribute('aria-disabled', String(!yes));
}

function counts() {
  const list = $('counts');
  while (list.children.length > drill.steps.length) {
    list.lastChild.remove();
  }
  drill.steps.forEach((step, number) => {
    if (!list.children[number]) {
      const made = element('button', { type: 'button' });
      made.addEventListener('click', () => go(number));
      list.append(element('li', {}, made));
    }
    const button = list.children[number].firstChild;
    say(button, step.kind === 'count' ? String(step.number) : nameOf(step));
    button.setAttribute('aria-label', step.unknown ? said('count.not.judged', nameOf(step)) : nameOf(step));
    button.className = step.unknown ? 'doubt' : '';
  });
}

function go(number) {
  stop();
  move(number);
}

function move(number) {
  const next = Math.max(0, Math.min(drill.steps.length - 1, number));
  if (next !== at) {
    at = next;
    show({ aloud: true });
  }
}

function stop() {
  clearInterval(timer);
  timer = 0;
  say($('play'), said('play'));
  $('play').setAttribute('aria-pressed', 'false');
}

function tick() {
  if (at >= drill.steps.length - 1) {
    stop();
  } else {
    move(at + 1);
  }
}

function play() {
  if (timer) {
    stop();
    return;
  }
  if (at >= drill.steps.length - 1) {
    at = 0;
  }
  timer = setInterval(tick, drill.tempo);
  say($('play'), said('pause'));
  $('play').setAttribute('aria-pressed', 'true');
  show({ aloud: true });
}

const words = (step) => JSON.stringify({ ...step, standing: 0, doubts: 0, read: 0, unknown: 0 });

/** The count that a save changed, so that its author sees it; where it is unclear, the one that was shown. */
function edited(before, after) {
  const changed = after.findIndex((step, number) => before[number] && words(before[number]) !== words(step));
  return changed >= 0 ? changed : Math.min(at, after.length - 1);
}

export function showPhrase(next) {
  const same = drill && drill.name === next.name;
  const before = same ? drill.steps : [];
  if (!same) {
    stop();
  } else if (timer && next.tempo !== drill.tempo) {
    clearInterval(timer);
    timer = setInterval(tick, next.tempo);
  }
  drill = next;
  drawingsOf(drill);
  at = same ? (timer ? Math.min(at, next.steps.length - 1) : edited(before, next.steps)) : Math.min(1, next.steps.length - 1);
  const seconds = new Intl.NumberFormat(language, { maximumFractionDigits: 2 }).format(next.tempo / 1000);
  say($('tempo'), said(next.ownTempo ? 'tempo.drill' : 'tempo.school', seconds));
  counts();
  return show({ anew: !same });
}

/** The drill has another name now, and is the same. */
export function phraseRenamed(from, to) {
  if (drill?.name === from) {
    drill.name = to;
  }
}

export const hush = stop;

$('back').addEventListener('click', () => go(at - 1));
$('step').addEventListener('click', () => go(at + 1));
$('play').addEventListener('click', play);

/** Forward is where the language is written to. */
const [BACK, FORWARD] = turned ? ['ArrowRight', 'ArrowLeft'] : ['ArrowLeft', 'ArrowRight'];
const STEPS = { [BACK]: -1, [FORWARD]: 1 };
$('back').setAttribute('aria-keyshortcuts', BACK);
$('step').setAttribute('aria-keyshortcuts', FORWARD);

document.addEventListener('keydown', (event) => {
  const step = STEPS[event.key];
  const typing = event.target.closest('input, textarea, select, pre');
  const other = event.altKey || event.ctrlKey || event.metaKey || event.shiftKey;
  if (step && drill && !$('drill').hidden && !typing && !other) {
    event.preventDefault();
    go(at + step);
  }
});
