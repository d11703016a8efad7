'use strict';
// The builder of comparison tables asks anew at each change; without scripts its button does. What
// was worked on and how far the page was scrolled are kept over the change.
(function () {
  const form = document.querySelector('form.build');
  const KEPT = 'griplore.table';

  function keep(id) {
    sessionStorage.setItem(KEPT, JSON.stringify({ id, top: window.scrollY }));
  }

  function ask(control) {
    keep(control.id || '');
    form.requestSubmit();
  }

  form.addEventListener('submit', () => {
    // Fields left empty do not go into the address.
    form.querySelectorAll('input, select').forEach((control) => {
      if (control.value === '') control.disabled = true;
    });
  });
  window.addEventListener('pageshow', () => {
    form.querySelectorAll(':disabled').forEach((control) => { control.disabled = false; });
  });
  form.addEventListener('change', (event) => ask(event.target));
  form.querySelectorAll('.chips a').forEach((link) => {
    link.addEventListener('click', () => keep('add-tyre'));
  });

  const kept = JSON.parse(sessionStorage.getItem(KEPT) || 'null');
  if (kept) {
    sessionStorage.removeItem(KEPT);
    const control = kept.id && document.getElementById(kept.id);
    if (control) control.focus({ preventScroll: true });
    window.scrollTo(0, kept.top);
  }
})();
