// The page: which drill is shown, and what a save changes in it.

import { $, element, say, fetched } from '/elements.js';
import { said, counted, joined, language } from '/said.js';
import { showList, tally, markCurrent, entryRenamed, named, first, address } from '/list.js';
import { showLines, heard, note } from '/lines.js';
import { showCards } from '/cards.js';
import { showPhrase, phraseRenamed, hush } from '/phrase.js';
import { refreshKey } from '/key.js';
import { refreshWords } from '/words.js';

let school = null;
let current = null;
let asked = 0;
let troubles = '';

function status(text) {
  say($('status'), text);
}

const clock = () => new Date().toLocaleTimeString(language);

function showSchool() {
  say($('school'), school.name || 'Drillwright');
  say($('folder'), school.folder);
  showList(school);
  const notices = [];
  if (school.trouble) {
    notices.push(element('div', { class: 'notice' }, element('p', {}, school.trouble)));
  }
  for (const finding of school.findings) {
    notices.push(element('div', { class: 'notice' },
      element('p', {}, element('strong', {}, finding.file)),
      element('p', { class: 'snippet' }, finding.text), note(finding)));
  }
  const now = JSON.stringify([school.trouble, school.findings]);
  if (now !== troubles) {
    troubles = now;
    $('trouble').replaceChildren(...notices);
  }
}

function verdict(drill) {
  if (drill.unsettled) {
    return said('verdict', drill.name, said('unsettled'));
  }
  const found = tally(drill) || said('nothing.found');
  return drill.steps && !drill.stale
    ? said('verdict.judged', drill.name, found, counted('judged', drill.counts, drill.counts - drill.notJudged))
    : said('verdict', drill.name, found);
}

function showNone(name) {
  current = null;
  hush();
  $('drill').hidden = true;
  $('text').hidden = true;
  $('kept').hidden = true;
  $('worst').hidden = true;
  document.title = 'Drillwright';
  const empty = school.drills.length === 0;
  say($('title'), said(empty ? 'no.drill' : 'not.there'));
  say($('verdict'), empty ? said('empty') : said('moved', name));
  $('example').open = $('example').open || empty;
}

function kept(drill) {
  const why = said(drill.unsettled ? 'settings.unusable' : 'save.unread');
  const what = said(drill.unsettled ? 'earlier.save' : 'last.save');
  const parts = [drill.unsettled || drill.stale ? why : '', drill.stale ? what : ''].filter(Boolean);
  $('kept').hidden = parts.length === 0;
  say($('kept'), parts.join(' '));
}

async function showDrill({ aloud = false } = {}) {
  const mine = ++asked;
  const name = named() || first();
  markCurrent(name);
  const answer = name ? await fetched('/drill?name=' + encodeURIComponent(name)) : null;
  const drill = answer ? await answer.json() : null;
  if (mine !== asked) {
    return;
  }
  if (!drill) {
    showNone(name);
    return;
  }
  current = drill;
  const shown = drill.title || drill.name;
  say($('title'), shown);
  say($('verdict'), verdict(drill));
  document.title = drill.errors ? counted('window.errors', drill.errors, shown) : said('window', shown);
  kept(drill);
  showLines(drill);
  say($('found'), aloud ? heard(drill) : '');
  $('drill').hidden = !drill.steps;
  if (drill.steps) {
    await Promise.all([showPhrase(drill), showCards(drill)]);
  } else {
    hush();
  }
}

async function readSchool() {
  school = await (await fetched('/school')).json();
  for (const [from, to] of Object.entries(school.renamed)) {
    entryRenamed(from, to);
    phraseRenamed(from, to);
    if (named() === from) {
      history.replaceState(null, '', address(to));
    }
    if (current?.name === from) {
      current.name = to;
    }
  }
  showSchool();
}

async function everything() {
  await readSchool();
  await showDrill();
  status(said('updated', clock()));
}

async function saved(change) {
  await readSchool();
  await Promise.all([refreshWords(), refreshKey()]);
  const name = current?.name || named() || first();
  if (!current || change.changed.includes(name) || change.gone.includes(name)) {
    await showDrill({ aloud: true });
  }
  status(said('saved', clock(), told(change)));
}

const FEW = 3;

/** Drills that change because others do, or the settings, are not told. */
function told(change) {
  const renamed = Object.entries(change.renamed);
  const saved = change.saved.filter((name) => !renamed.some(([, to]) => to === name));
  const changed = saved.length > FEW ? [counted('changed.many', saved.length)] : saved.map((name) => said('changed', name));
  const all = [...renamed.map(([from, to]) => said('renamed', from, to)),
    ...change.gone.map((name) => said('gone', name)), ...changed];
  return joined('clauses', all) || said('settings.changed');
}

function listen() {
  const news = new EventSource('/news');
  let lost = true;
  news.onopen = () => {
    if (lost) {
      lost = false;
      everything().catch(broken);
    }
  };
  news.onmessage = (message) => saved(JSON.parse(message.data)).catch(broken);
  news.onerror = () => {
    lost = true;
    status(said('ended'));
  };
  return news;
}

function broken() {
  status(said('broken'));
}

// A page that nobody sees lets its line go: a browser has few to one address.
let line = listen();
document.addEventListener('visibilitychange', () => {
  if (document.hidden) {
    line.close();
  } else if (line.readyState === EventSource.CLOSED) {
    line = listen();
  }
});

window.addEventListener('hashchange', async () => {
  await showDrill().catch(broken);
  $('main').focus({ preventScroll: true });
  $('title').scrollIntoView({ block: 'nearest' });
});

$('skip').addEventListener('click', () => $('main').focus());

