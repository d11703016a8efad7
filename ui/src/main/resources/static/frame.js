'use strict';
// A frame drawn over the dots of a plot keeps only their rows in the page's first table; drawing it
// anew, or the button, changes that. Without scripts the table is whole.
document.addEventListener('drawn', (drawn) => {
  const { view, specification } = drawn.detail;
  if (!specification.usermeta || !specification.usermeta.filtersTable) return;
  const table = document.querySelector('main .scroll table');
  if (!table) return;
  const rows = Array.from(table.tBodies[0].rows);
  const dots = new Map(specification.data.values.map((value) => [value.model, value]));

  const note = document.createElement('p');
  note.className = 'framed extra';
  note.setAttribute('role', 'status');
  const words = document.createElement('span');
  const all = document.createElement('button');
  all.type = 'button';
  all.textContent = 'Show all';
  all.hidden = true;
  note.append(words, all);
  table.closest('.scroll').before(note);

  function inside(dot, frame) {
    return ['x', 'y'].every((axis) => {
      const ends = frame[axis];
      return dot[axis] >= Math.min(...ends) && dot[axis] <= Math.max(...ends);
    });
  }

  function keep(frame) {
    const framed = Boolean(frame && frame.x && frame.y);
    let kept = 0;
    for (const row of rows) {
      const dot = dots.get(row.cells[0].textContent.trim());
      row.hidden = framed && !(dot && inside(dot, frame));
      kept += row.hidden ? 0 : 1;
    }
    words.textContent = framed ? `${kept} of ${rows.length} models are in the frame. ` : '';
    all.hidden = !framed;
  }

  view.addSignalListener('brush', (name, frame) => keep(frame));
  all.addEventListener('click', () => {
    view.signal('brush_x', []).signal('brush_y', []).runAsync();
    keep(null);
  });
});
