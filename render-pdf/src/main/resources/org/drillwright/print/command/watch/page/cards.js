// The cards as they will print, drawn by the program.

import { $, say, drawing } from '/elements.js';
import { said, counted } from '/said.js';

export async function showCards(drill) {
  const name = encodeURIComponent(drill.name);
  const cards = await Promise.all(
    Array.from({ length: drill.cards }, (_, at) => drawing(`/card?name=${name}&at=${at}`)));
  $('cards').replaceChildren(...cards.filter(Boolean));
  const what = drill.cards ? counted('cards', drill.cards, drill.size.toUpperCase()) : said('unprintable');
  say($('remarks'), [what, ...drill.remarks].join(' '));
}
