// The author's lines, and beside them what was found.

import { $, element } from '/elements.js';
import { said, counted } from '/said.js';

let key = '';

function marked(text, findings) {
  const points = Array.from(text);
  const code = element('code');
  let at = 0;
  for (const finding of findings) {
    const from = Math.min(points.length, Math.max(at, finding.column - 1));
    const end = finding.endLine > finding.line ? points.length : finding.endColumn - 1;
    const to = Math.min(points.length, Math.max(from, end));
    if (finding.column - 1 >= at) {
      code.append(points.slice(at, from).join(''));
      code.append(element('mark', { class: finding.severity }, points.slice(from, to).join('')));
      at = to;
    }
  }
  code.append(points.slice(at).join(''));
  return code;
}

const place = (finding) => said('found.at', said('severity.' + finding.severity), finding.line);

export function note(finding) {
  return element('div', { class: `finding ${finding.severity}`, tabindex: '-1', 'data-key': keyOf(finding) },
    element('p', {}, element('strong', {}, place(finding)), ' ',
      element('span', { class: 'rule' }, `(${finding.rule})`)),
    element('p', {}, finding.what),
    ...(finding.wayOut ? [element('p', {}, finding.wayOut)] : []));
}

function line(text, number, findings) {
  const here = findings.filter((finding) => finding.line === number)
    .sort((one, other) => one.column - other.column);
  return element('li', { class: here.length ? 'line marked' : 'line' },
    element('span', { class: 'number', 'aria-hidden': 'true' }, String(number)),
    marked(text, here),
    ...here.map(note));
}

/** How many findings are shown above; all of them stand beside their lines. */
const FEW = 3;

function worst(drill) {
  const sorted = [...drill.findings].sort((one, other) => weight(one) - weight(other));
  const shown = sorted.slice(0, FEW).map((finding) => {
    const jump = element('button', { type: 'button' }, place(finding));
    jump.addEventListener('click', () => beside(finding)?.focus());
    return element('li', { class: finding.severity },
      element('p', {}, jump, finding.what),
      ...(finding.wayOut ? [element('p', { class: 'way-out' }, finding.wayOut)] : []));
  });
  if (sorted.length > FEW) {
    shown.push(element('li', { class: 'note' }, counted('more', sorted.length - FEW)));
  }
  $('worst').replaceChildren(...shown);
  $('worst').hidden = shown.length === 0;
}

const keyOf = (finding) => finding.rule + finding.line + finding.what;

const beside = (finding) =>
  [...$('lines').querySelectorAll('.finding')].find((one) => one.dataset.key === keyOf(finding));

export function showLines(drill) {
  const now = JSON.stringify([drill.name, drill.lines, drill.findings]);
  if (now === key) {
    return;
  }
  key = now;
  const focused = document.activeElement?.dataset?.key;
  worst(drill);
  const lines = drill.lines.map((text, at) => line(text, at + 1, drill.findings));
  $('lines').replaceChildren(...lines);
  $('text').hidden = drill.lines.join('') === '' && drill.findings.length === 0;
  $('next').hidden = drill.findings.length === 0;
  if (focused) {
    const again = [...$('lines').querySelectorAll('.finding')].find((one) => one.dataset.key === focused);
    (again || $('next')).focus({ preventScroll: true });
  }
}

/** What is read aloud after a save: how much was found, and the first of it. */
export function heard(drill) {
  if (drill.unsettled) {
    return '';
  }
  if (drill.findings.length === 0) {
    return said('verdict', drill.title, said('nothing.found'));
  }
  const [first] = [...drill.findings].sort((one, other) => weight(one) - weight(other));
  const count = counted('finding', drill.findings.length);
  return said('heard', drill.title || drill.name, count, place(first), first.what, first.wayOut);
}

const weight = (finding) => ['error', 'warning', 'note'].indexOf(finding.severity);

$('next').addEventListener('click', () => {
  const all = [...$('lines').querySelectorAll('.finding')];
  const at = Number($('next').dataset.at || -1) + 1;
  const next = all[at < all.length ? at : 0];
  $('next').dataset.at = String(all.indexOf(next));
  next?.focus();
});
