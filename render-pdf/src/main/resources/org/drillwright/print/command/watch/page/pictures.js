// The pictures of a drill and those between them, fetched once for each save.

import { $, drawing } from '/elements.js';
import { move, arrive, isStill } from '/motion.js';

const fetched = new Map();
let drill = null;
let shown = -1;
let asked = 0;

function picture(at, between = 0) {
  const path = `/picture?name=${encodeURIComponent(drill.name)}&at=${at}` + (between ? `&between=${between}` : '');
  if (!fetched.has(path)) {
    fetched.set(path, drawing(path));
  }
  return fetched.get(path);
}

/** The pictures from one to its neighbour, each once. */
function from(one, other) {
  const first = Math.min(one, other);
  const way = [picture(first)];
  for (let between = 1; between <= drill.between[first]; between++) {
    way.push(picture(first, between));
  }
  way.push(picture(first + 1));
  return Promise.all(one < other ? way : way.reverse());
}

/** Another drill, or the same after a save: nothing that was drawn of it holds any more. */
export function drawingsOf(next) {
  drill = next;
  fetched.clear();
  shown = -1;
}

/** Shows a picture; from its neighbour the two go there in so many milliseconds. */
export async function showPicture(at, milliseconds) {
  const mine = ++asked;
  arrive();
  const goes = shown >= 0 && Math.abs(at - shown) === 1 && !isStill();
  const way = (await (goes ? from(shown, at) : Promise.all([picture(at)]))).filter(Boolean);
  if (mine !== asked || way.length === 0) {
    return;
  }
  shown = at;
  move($('picture'), way, milliseconds);
  if (!isStill() && at + 1 < drill.steps.length) {
    from(at, at + 1);
  }
}
