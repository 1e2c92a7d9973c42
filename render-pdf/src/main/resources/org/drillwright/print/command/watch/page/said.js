// What the page says, in the words that the program has for it.

export const language = document.documentElement.lang;

/** Whether the language is written from right to left. */
export const turned = document.documentElement.dir === 'rtl';

const words = await (await fetch('/said', { cache: 'no-store' })).json();
const numbers = new Intl.PluralRules(language);

/** The words of a key, their gaps filled. */
export const said = (key, ...values) => words[key].replace(/\{(\d)\}/g, (gap, at) => values[at]);

/** Words that depend on a number, which fills the first gap. */
export function counted(key, count, ...more) {
  const form = `${key}.${numbers.select(count)}`;
  return said(form in words ? form : `${key}.other`, count, ...more);
}

/** Parts, each joined to those before it by the words of a key. */
export const joined = (key, parts) => parts.length ? parts.reduce((all, part) => said(key, all, part)) : '';
