// The list of drills. Entries stay the same elements from one save to the next, so that the focus stays where it is.

import { $, element, say } from '/elements.js';
import { said, counted, joined } from '/said.js';

const entries = new Map();
const levels = new Map();
let order = [];

export const address = (name) => '#' + encodeURIComponent(name);

export function named() {
  try {
    return decodeURIComponent(location.hash.slice(1));
  } catch {
    return '';
  }
}

/** How many errors, warnings and notes; nothing if there are none. */
export function tally(drill) {
  const parts = [[drill.errors, 'error'], [drill.warnings, 'warning'], [drill.notes, 'note']];
  return joined('listed', parts.filter(([count]) => count).map(([count, kind]) => counted(kind, count)));
}

function mark(drill) {
  if (drill.unsettled) {
    return '';
  }
  return drill.readable || drill.errors ? tally(drill) : said('not.read');
}

function entry(drill) {
  let item = entries.get(drill.name);
  if (!item) {
    const link = element('a', { href: address(drill.name) },
      element('span', { class: 'name' }), element('span', { class: 'mark' }));
    item = element('li', {}, link);
    entries.set(drill.name, item);
  }
  const [name, note] = item.firstChild.children;
  say(name, drill.title || drill.name);
  say(note, mark(drill));
  note.className = drill.errors ? 'mark error' : 'mark';
  item.firstChild.title = drill.name;
  item.dataset.found = note.textContent ? 'yes' : 'no';
  return item;
}

function level(name) {
  if (!levels.has(name)) {
    const id = `level-${levels.size}`;
    const head = element('h2', { id }, name || said('level.unread'));
    levels.set(name, element('div', { class: 'level' }, head, element('ul', { 'aria-labelledby': id })));
  }
  return levels.get(name);
}

/** Puts elements there in this order, and moves none that is in its place: what moves loses the focus. */
function put(place, wanted) {
  for (const one of [...place.children].filter((child) => !wanted.includes(child))) {
    one.remove();
  }
  wanted.forEach((one, at) => {
    if (place.children[at] !== one) {
      place.insertBefore(one, place.children[at] || null);
    }
  });
}

export function showList(school) {
  const there = new Set(school.drills.map((drill) => drill.name));
  for (const name of [...entries.keys()].filter((one) => !there.has(one))) {
    entries.delete(name);
  }
  const byLevel = new Map(school.levels.map((name) => [name, []]));
  for (const drill of [...school.drills].sort((one, other) => (one.level === '') - (other.level === ''))) {
    byLevel.set(drill.level, [...(byLevel.get(drill.level) || []), entry(drill)]);
  }
  const filled = [...byLevel].filter(([, items]) => items.length);
  put($('drills'), filled.map(([name]) => level(name)));
  filled.forEach(([name, items]) => put(level(name).lastChild, items));
  order = filled.flatMap(([, items]) => items);
  say($('tally'), school.tally + '.');
  filter();
}

/** A file that has another name is the same entry. */
export function entryRenamed(from, to) {
  const item = entries.get(from);
  if (item && !entries.has(to)) {
    entries.delete(from);
    entries.set(to, item);
    item.firstChild.setAttribute('href', address(to));
    current = current === from ? to : current;
  }
}

/** The drill that is shown stays in the list while its findings go. */
function filter() {
  const wanted = $('filter').value.trim().toLowerCase();
  const foundOnly = $('found-only').checked;
  let shown = 0;
  for (const [name, item] of entries) {
    const named = (name + ' ' + item.textContent).toLowerCase().includes(wanted);
    item.hidden = !named || (foundOnly && item.dataset.found === 'no' && name !== current);
    shown += item.hidden ? 0 : 1;
  }
  for (const one of levels.values()) {
    one.hidden = [...one.lastChild.children].every((item) => item.hidden);
  }
  say($('shown'), wanted || foundOnly ? said('shown', shown, entries.size) : '');
}

let current = '';

/** Within the list only: the page stays where it is. */
function bringIntoView(item) {
  const list = $('drills');
  const top = item.offsetTop - list.offsetTop;
  if (top < list.scrollTop || top + item.offsetHeight > list.scrollTop + list.clientHeight) {
    list.scrollTop = top - list.clientHeight / 2;
  }
}

export function markCurrent(name) {
  if (name !== current && entries.has(name)) {
    bringIntoView(entries.get(name));
  }
  current = name;
  filter();
  for (const [other, item] of entries) {
    if (other === name) {
      item.firstChild.setAttribute('aria-current', 'page');
    } else {
      item.firstChild.removeAttribute('aria-current');
    }
  }
}

export function first() {
  const [item] = order;
  return [...entries].find(([, one]) => one === item)?.[0] || '';
}

$('filter').addEventListener('input', filter);
$('found-only').addEventListener('change', filter);
