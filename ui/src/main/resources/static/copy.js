'use strict';
// A button that copies the text of the element it names.
(function () {
  const SAID = 1600;

  document.querySelectorAll('button[data-copies]').forEach((button) => {
    const label = button.textContent;
    button.hidden = false;
    button.addEventListener('click', () => {
      const text = document.getElementById(button.dataset.copies).textContent.trim();
      navigator.clipboard.writeText(text).then(
        () => {
          button.textContent = 'Copied';
          setTimeout(() => { button.textContent = label; }, SAID);
        },
        () => { button.textContent = 'Not copied'; });
    });
  });
})();
