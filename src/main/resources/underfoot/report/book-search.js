'use strict';
// Finds rules, figures and differences by their words. Nothing leaves the page.
(() => {
  const MOST = 60;
  const box = document.getElementById('search');
  const asked = document.getElementById('asked');
  const said = document.getElementById('found-count');
  const list = document.getElementById('found');
  let all = null;
  const read = () =>
    [...document.querySelectorAll('section.rule[id]')].map(part => {
      const head = part.querySelector('h3');
      return {
        id: part.id,
        title: head.textContent.trim(),
        head: head.textContent.toLowerCase(),
        words: part.textContent.toLowerCase(),
      };
    });
  const find = () => {
    const words = asked.value.toLowerCase().split(/\s+/).filter(word => word.length > 1);
    list.replaceChildren();
    said.textContent = '';
    if (words.length === 0) {
      return;
    }
    all = all || read();
    const found = all.filter(one => words.every(word => one.words.includes(word)));
    const rank = one => words.filter(word => !one.head.includes(word)).length;
    found.sort((a, b) => rank(a) - rank(b));
    said.textContent =
      found.length === 0
        ? 'No entry has all these words.'
        : found.length > MOST
          ? `${found.length} entries; the first ${MOST}:`
          : found.length === 1 ? 'One entry:' : `${found.length} entries:`;
    for (const one of found.slice(0, MOST)) {
      const link = document.createElement('a');
      link.href = '#' + one.id;
      link.textContent = one.title;
      const line = document.createElement('li');
      line.append(link);
      list.append(line);
    }
  };
  let wait = 0;
  asked.addEventListener('input', () => {
    clearTimeout(wait);
    wait = setTimeout(find, 120);
  });
  box.hidden = false;
})();
