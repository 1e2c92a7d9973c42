// Moves drawings into each other. Two drawings by the same hand have the same marks in the same parts: each is moved by
// its numbers. A mark that only one of the two has is seen when that one stands still.

const NUMBERS = /-?\d+(?:\.\d+)?/g;
const PLACES = ['d', 'x1', 'y1', 'x2', 'y2', 'x', 'y', 'stroke-width'];
const SEEN = ['fill', 'stroke'];

/** The marks of a drawing, each by the parts that it is in and its turn in them. */
function marks(drawing) {
  const found = new Map();
  const collect = (node, path) => {
    const turns = {};
    for (const child of node.children) {
      const name = child.dataset.mark ?? child.localName;
      turns[name] = (turns[name] ?? 0) + 1;
      const key = `${path}/${name} ${turns[name]}`;
      if (child.children.length) {
        collect(child, key);
      } else {
        found.set(key, child);
      }
    }
  };
  collect(drawing, '');
  return found;
}

const value = (mark, name) => mark?.getAttribute(name) ?? '';

const form = (text) => text.replace(NUMBERS, '#');

function alike(one, other) {
  return one !== undefined && one.localName === other.localName && one.childNodes.length === other.childNodes.length
    && SEEN.every((name) => value(one, name) === value(other, name))
    && PLACES.every((name) => form(value(one, name)) === form(value(other, name)));
}

/** How a place of a mark goes from one text to another; nothing if it stays. */
function change(mark, name, from, to) {
  if (from === to) {
    return null;
  }
  const first = from.match(NUMBERS).map(Number);
  const last = to.match(NUMBERS).map(Number);
  const between = to.split(NUMBERS);
  return (share) => {
    let text = between[0];
    for (let at = 0; at < last.length; at++) {
      text += (first[at] + (last[at] - first[at]) * share).toFixed(2) + between[at + 1];
    }
    mark.setAttribute(name, text);
  };
}

/** What is drawn on the way from one drawing to the next. */
function way(from, to) {
  const drawing = to.cloneNode(true);
  const before = marks(from);
  const changes = [];
  for (const [key, mark] of marks(drawing)) {
    const old = before.get(key);
    if (alike(old, mark)) {
      changes.push(...PLACES.map((name) => change(mark, name, value(old, name), value(mark, name))).filter(Boolean));
    } else {
      mark.setAttribute('visibility', 'hidden');
    }
  }
  return { drawing, draw: (share) => changes.forEach((one) => one(share)) };
}

/** Slow at both ends. */
const eased = (share) => share * share * (3 - 2 * share);

export const isStill = () => document.hidden || matchMedia('(prefers-reduced-motion: reduce)').matches;

let moving = null;

/** What is moving is at its end. */
export function arrive() {
  moving?.arrive();
}

/** Shows drawings under the name of the last, until it has arrived. */
function begin(place, drawings, cancel) {
  const last = drawings[drawings.length - 1];
  const named = value(last.querySelector('[role=img]'), 'aria-label');
  const end = () => {
    cancel();
    moving = null;
    place.removeAttribute('data-moving');
    place.replaceChildren(last.cloneNode(true));
  };
  const put = (drawing) => {
    drawing.querySelector('[role=img]')?.setAttribute('aria-label', named);
    place.replaceChildren(drawing);
  };
  moving = { arrive: end };
  if (drawings.length > 1) {
    place.setAttribute('data-moving', '');
  }
  return { put, end };
}

/** Shows drawings one after the other, each as long, and stops at the last. Nothing moves. */
export function turn(place, drawings, milliseconds) {
  arrive();
  let timer = 0;
  const { put, end } = begin(place, drawings, () => clearTimeout(timer));
  const next = (at) => {
    if (at === drawings.length - 1) {
      end();
      return;
    }
    put(drawings[at].cloneNode(true));
    timer = setTimeout(next, milliseconds / drawings.length, at + 1);
  };
  next(0);
}

/** Shows drawings one after the other, with all that lies between, and stops at the last. */
export function move(place, drawings, milliseconds) {
  arrive();
  const parts = drawings.length - 1;
  const begun = performance.now();
  let part = -1;
  let here = null;
  let frame = 0;
  const { put, end } = begin(place, drawings, () => cancelAnimationFrame(frame));
  const draw = (now) => {
    const gone = eased(Math.max(0, Math.min(1, (now - begun) / milliseconds))) * parts;
    if (gone >= parts) {
      end();
      return;
    }
    if (Math.floor(gone) !== part) {
      part = Math.floor(gone);
      here = way(drawings[part], drawings[part + 1]);
      put(here.drawing);
    }
    here.draw(gone - part);
    frame = requestAnimationFrame(draw);
  };
  draw(begun);
}
