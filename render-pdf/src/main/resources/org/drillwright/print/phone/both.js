'use strict';
const root = document.documentElement;
const at = id => document.getElementById(id);
const fill = (form, ...values) => form.replace(/\{(\d)\}/g, (gap, number) => values[number]);
let words;

/* As the page is read: the keys that lead on and back, and the arrow that points on. */
const way = root.dir === 'rtl'
  ? {on: 'ArrowLeft', back: 'ArrowRight', arrow: '← '} : {on: 'ArrowRight', back: 'ArrowLeft', arrow: '→ '};

const copy = async () => {
  at('record').select();
  try {
    await navigator.clipboard.writeText(at('record').value);
    at('copied').textContent = words.copied;
  } catch (refused) {
    at('copied').textContent = words.copyYourself;
  }
};

/* Before the page is seen, so that it does not jump; taken back if this browser can't do what follows. */
const begins = start => {
  root.classList.add('scripted');
  document.addEventListener('DOMContentLoaded', () => {
    try {
      words = document.body.dataset;
      at('copy').addEventListener('click', copy);
      start();
    } catch (broken) {
      root.classList.remove('scripted');
      delete root.dataset.view;
      throw broken;
    }
  });
};
