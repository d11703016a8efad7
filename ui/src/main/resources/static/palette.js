'use strict';
// The search box finds names and notes as one types (a combobox with a list, after the ARIA
// Authoring Practices). Without this script it is a form that leads to the same answer's page.
(function () {
  const PAUSE = 90;
  const OF_EACH = 4;
  const input = document.getElementById('search');
  const form = input.form;
  const list = document.getElementById('sought');
  const status = document.getElementById('sought-status');
  let chosen = -1;
  let timer = 0;
  let asking = null;

  input.setAttribute('role', 'combobox');
  input.setAttribute('aria-controls', 'sought');
  input.setAttribute('aria-autocomplete', 'list');
  input.setAttribute('aria-expanded', 'false');

  function close() {
    list.hidden = true;
    chosen = -1;
    input.setAttribute('aria-expanded', 'false');
    input.removeAttribute('aria-activedescendant');
  }

  function forget() {
    clearTimeout(timer);
    if (asking) asking.abort();
    close();
  }

  function choose(index) {
    const options = list.children;
    if (options.length === 0 || list.hidden) return;
    if (chosen >= 0) options[chosen].setAttribute('aria-selected', 'false');
    chosen = (index + options.length) % options.length;
    options[chosen].setAttribute('aria-selected', 'true');
    options[chosen].scrollIntoView({ block: 'nearest' });
    input.setAttribute('aria-activedescendant', options[chosen].id);
  }

  function address(row) {
    const asked = row.option ? '?' + new URLSearchParams([[row.option, row.value]]) : '';
    return '/' + encodeURIComponent(row.question) + asked;
  }

  function option(row, index) {
    const item = document.createElement('li');
    item.id = 'sought-' + index;
    item.setAttribute('role', 'option');
    item.setAttribute('aria-selected', 'false');
    item.dataset.address = address(row);
    [['kind', row.kind], ['title', row.name], ['about', row.about || '']].forEach(([part, text]) => {
      const span = document.createElement('span');
      span.className = part;
      span.textContent = text;
      item.append(span, ' ');
    });
    return item;
  }

  function show(rows) {
    list.replaceChildren(...rows.map(option));
    chosen = -1;
    input.removeAttribute('aria-activedescendant');
    list.hidden = rows.length === 0;
    input.setAttribute('aria-expanded', String(rows.length > 0));
    status.textContent = rows.length === 0 ? 'Nothing found' : rows.length + ' found';
  }

  function ask() {
    const text = input.value.trim();
    if (asking) asking.abort();
    if (text === '') {
      close();
      return;
    }
    asking = new AbortController();
    fetch('/search.json?' + new URLSearchParams({ text, limit: OF_EACH }), { signal: asking.signal })
      .then((answer) => (answer.ok ? answer.json() : { rows: [] }))
      .then((answer) => show(answer.rows))
      .catch((failure) => {
        if (failure.name !== 'AbortError') close();
      });
  }

  input.addEventListener('input', () => {
    clearTimeout(timer);
    timer = setTimeout(ask, PAUSE);
  });
  input.addEventListener('focus', () => {
    if (input.value.trim() !== '' && list.children.length > 0) {
      list.hidden = false;
      input.setAttribute('aria-expanded', 'true');
    }
  });
  input.addEventListener('keydown', (event) => {
    if (event.key === 'ArrowDown') choose(chosen + 1);
    else if (event.key === 'ArrowUp') choose(chosen < 0 ? -1 : chosen - 1);
    else if (event.key === 'Escape' && !list.hidden) close();
    else if (event.key === 'Enter' && chosen >= 0 && !list.hidden) {
      window.location.assign(list.children[chosen].dataset.address);
    } else return;
    event.preventDefault();
  });
  // The mouse is pressed before the box loses the focus, and so before the list is closed.
  list.addEventListener('mousedown', (event) => {
    const item = event.target.closest('li');
    event.preventDefault();
    if (item) window.location.assign(item.dataset.address);
  });
  input.addEventListener('blur', forget);
  form.addEventListener('submit', forget);

  function writing(element) {
    return element && (element.isContentEditable || /^(input|select|textarea)$/i.test(element.tagName));
  }

  document.addEventListener('keydown', (event) => {
    const control = (event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 'k';
    const slash = event.key === '/' && !event.ctrlKey && !event.metaKey && !event.altKey;
    if (control || (slash && !writing(document.activeElement))) {
      event.preventDefault();
      input.focus();
      input.select();
    }
  });
})();
