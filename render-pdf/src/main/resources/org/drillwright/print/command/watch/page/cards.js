// The cards as they will print, drawn by the program.

import { $, say, drawing } from '/elements.js';

export async function showCards(drill) {
  const name = encodeURIComponent(drill.name);
  const cards = await Promise.all(
    Array.from({ length: drill.cards }, (_, at) => drawing(`/card?name=${name}&at=${at}`)));
  $('cards').replaceChildren(...cards.filter(Boolean));
  const size = drill.cards ? `${drill.size.toUpperCase()}, ${drill.cards === 1 ? 'one card' : drill.cards + ' cards'}. ` : '';
  const none = drill.cards ? '' : 'It cannot be printed as it is. ';
  say($('remarks'), (size + none + drill.remarks.join(' ')).trim());
}
