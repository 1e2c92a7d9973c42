// The key to the pictures, fetched when it is first opened and after the settings changed.

import { $, element, fetched, drawing } from '/elements.js';

export async function refreshKey() {
  if (!$('key').open) {
    return;
  }
  const { signs } = await (await fetched('/key')).json();
  const drawn = await Promise.all(signs.map((words, at) => drawing(`/sign?at=${at}`)));
  $('signs').replaceChildren(...signs.map((words, at) =>
    element('li', {}, element('span', { 'aria-hidden': 'true' }, ...(drawn[at] ? [drawn[at]] : [])), words)));
}

$('key').addEventListener('toggle', refreshKey);
