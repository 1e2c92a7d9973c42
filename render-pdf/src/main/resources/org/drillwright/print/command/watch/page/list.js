// The list of drills. Entries stay the same elements from one save to the next, so that the focus stays where it is.

import { $, element, say, many } from '/elements.js';

const entries = new Map();

export const address = (name) => '#' + encodeURIComponent(name);

export function named() {
  try {
    return decodeURIComponent(location.hash.slice(1));
  } catch {
    return '';
  }
}

function mark(drill) {
  const parts = [];
  if (drill.errors) {
    parts.push(many(drill.errors, 'error'));
  }
  if (drill.warnings) {
    parts.push(many(drill.warnings, 'warning'));
  }
  return drill.readable || drill.errors ? parts.join(', ') : 'not read';
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
  return item;
}

export function showList(school) {
  const there = new Set(school.drills.map((drill) => drill.name));
  for (const [name, item] of entries) {
    if (!there.has(name)) {
      entries.delete(name);
      item.remove();
    }
  }
  school.drills.forEach((drill, at) => {
    const item = entry(drill);
    const list = $('drills');
    if (list.children[at] !== item) {
      list.insertBefore(item, list.children[at] || null);
    }
  });
  say($('tally'), school.tally + '.');
  filter();
}

function filter() {
  const wanted = $('filter').value.trim().toLowerCase();
  let shown = 0;
  for (const [name, item] of entries) {
    item.hidden = !(name + ' ' + item.textContent).toLowerCase().includes(wanted);
    shown += item.hidden ? 0 : 1;
  }
  say($('shown'), wanted ? `${shown} of ${entries.size}` : '');
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
  for (const [other, item] of entries) {
    if (other === name) {
      item.firstChild.setAttribute('aria-current', 'page');
    } else {
      item.firstChild.removeAttribute('aria-current');
    }
  }
}

export const first = () => entries.keys().next().value || '';

$('filter').addEventListener('input', filter);
