// The words the program understands, and a drill to copy: both fetched when they are first opened.

import { $, element, say, fetched } from '/elements.js';
import { said, counted } from '/said.js';

let languages = {};
let terms = [];

function table(kind, rows) {
  const head = element('tr', {}, ...Object.values(languages).map((name) => element('th', { scope: 'col' }, name)));
  return element('table', {}, element('caption', {}, kind), element('thead', {}, head),
    element('tbody', {}, ...rows.map((term) => element('tr', {},
      ...Object.keys(languages).map((tag) => element('td', { lang: tag }, term[tag].join(', ')))))));
}

function glossary() {
  const wanted = $('word').value.trim().toLowerCase();
  const found = terms.filter((term) => JSON.stringify(term).toLowerCase().includes(wanted));
  const kinds = [...new Set(found.map((term) => term.kind))];
  $('glossary').replaceChildren(
    ...kinds.map((kind) => table(kind, found.filter((term) => term.kind === kind))));
  say($('matches'), wanted ? counted('matches', terms.length, found.length) : '');
}

export async function refreshWords() {
  if ($('words').open) {
    ({ languages, terms } = await (await fetched('/words')).json());
    glossary();
  }
}

async function example() {
  if ($('example').open) {
    say($('sample'), await (await fetched('/example')).text());
  }
}

async function copy() {
  try {
    await navigator.clipboard.writeText($('sample').textContent);
    say($('copied'), said('copied'));
  } catch {
    getSelection().selectAllChildren($('sample'));
    say($('copied'), said('selected'));
  }
}

$('words').addEventListener('toggle', refreshWords);
$('word').addEventListener('input', glossary);
$('example').addEventListener('toggle', example);
$('copy').addEventListener('click', copy);
