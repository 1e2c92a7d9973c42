// What is shown count by count grows and never shrinks, so that buttons stay under the pointer.

import { $ } from '/elements.js';

let width = 0;

/** Keeps the phrase as high as it has been; of another drill, or in another window, from the beginning. */
export function keepHeight({ anew = false } = {}) {
  const phrase = $('phrase');
  if (anew) {
    phrase.style.minHeight = '';
  }
  phrase.style.minHeight = `${phrase.offsetHeight}px`;
}

new ResizeObserver(() => {
  if ($('phrase').offsetWidth !== width) {
    width = $('phrase').offsetWidth;
    keepHeight({ anew: true });
  }
}).observe($('phrase'));

$('reading').addEventListener('toggle', () => keepHeight({ anew: true }));
$('key').addEventListener('toggle', () => keepHeight({ anew: true }));
