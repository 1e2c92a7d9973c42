// The pictures of a drill and those between them, fetched once for each save.

import { $, drawing } from '/elements.js';
import { move, turn, arrive, isStill } from '/motion.js';

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

/** A stroke before the last of a count stands still for so many pictures. */
const HELD = 4;

/** The first picture of a step, and the last. */
const first = (step) => drill.shots.slice(0, step).reduce((before, shots) => before + shots, 0);
const last = (step) => first(step) + drill.shots[step] - 1;

/** All from one picture to a later one, with those between them. */
function through(from, to, held = 1) {
  const way = Array(held).fill(picture(from));
  for (let at = from; at < to; at++) {
    for (let between = 1; between <= drill.between[at]; between++) {
      way.push(picture(at, between));
    }
    way.push(...Array(at + 1 < to ? HELD : 1).fill(picture(at + 1)));
  }
  return way;
}

/** The pictures from a step to its neighbour. */
const from = (one, other) => one < other ? through(last(one), last(other)) : through(last(other), last(one)).reverse();

/** Another drill, or the same after a save: nothing that was drawn of it holds any more. */
export function drawingsOf(next) {
  drill = next;
  fetched.clear();
  shown = -1;
}

/** Shows a step, its strokes one after the other; from its neighbour the two go there in so many milliseconds. */
export async function showPicture(at, milliseconds) {
  const mine = ++asked;
  arrive();
  const still = isStill();
  const goes = shown >= 0 && Math.abs(at - shown) === 1;
  const shots = () => Array.from({ length: drill.shots[at] }, (_, shot) => picture(first(at) + shot));
  const wanted = still ? shots() : goes ? from(shown, at) : through(first(at), last(at), drill.shots[at] > 1 ? HELD : 1);
  const way = (await Promise.all(wanted)).filter(Boolean);
  if (mine !== asked || way.length === 0) {
    return;
  }
  shown = at;
  if (still) {
    turn($('picture'), way, milliseconds);
    return;
  }
  move($('picture'), way, milliseconds);
  if (at + 1 < drill.steps.length) {
    from(at, at + 1);
  }
}
