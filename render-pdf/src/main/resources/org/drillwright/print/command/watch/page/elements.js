// Elements made and found. Text is only ever set as text.

export const $ = (id) => document.getElementById(id);

/** A new element with attributes and children; a child that is no element becomes text. */
export function element(name, attributes = {}, ...children) {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) {
    if (value !== false && value !== undefined) {
      made.setAttribute(key, value === true ? '' : value);
    }
  }
  made.append(...children);
  return made;
}

/** Sets a text if it is another one, so that what is read aloud is not read again. */
export function say(target, text) {
  if (target.textContent !== text) {
    target.textContent = text;
  }
}

/** Text in which what is unknown stands in a dashed frame. */
export function withUnknowns(text, unknowns) {
  const next = unknowns.map((words) => [text.indexOf(words), words]).filter(([at]) => at >= 0)
    .sort(([one], [other]) => one - other)[0];
  if (!next) {
    return [text];
  }
  const [at, words] = next;
  return [text.slice(0, at), element('span', { class: 'unknown' }, words), ...withUnknowns(text.slice(at + words.length), unknowns)];
}

export async function fetched(path) {
  const answer = await fetch(path, { cache: 'no-store' });
  if (answer.status === 404) {
    return null;
  }
  if (!answer.ok) {
    throw new Error(`${path}: ${answer.status}`);
  }
  return answer;
}

/** A drawing. The browser reads it as a document of its own, and scripts in it would be inert; there are none. */
export function drawing(path) {
  return new Promise((done, failed) => {
    const request = new XMLHttpRequest();
    request.open('GET', path);
    request.responseType = 'document';
    request.onload = () => {
      const root = request.status === 200 && request.responseXML ? request.responseXML.documentElement : null;
      done(root ? document.adoptNode(root) : null);
    };
    request.onerror = () => failed(new Error(path));
    request.send();
  });
}
