'use strict';
// Draws each plot from the specification that stands on its element. Colours are the page's own
// variables, so that dark mode and print need no drawing anew. A plot that is saved has the colours
// of print, so that it can stand anywhere.
(function () {
  const ACCENT = 'var(--accent)';
  const INK = 'var(--ink)';
  const QUIET = 'var(--quiet)';
  const RULE = 'var(--rule)';
  const SHARPNESS = 2;
  const SAID = 1600;
  const CONFIG = {
    aria: false,
    background: 'transparent',
    font: 'system-ui, -apple-system, "Segoe UI", Roboto, "Noto Sans", "DejaVu Sans", sans-serif',
    view: { stroke: null },
    axis: {
      labelColor: QUIET, titleColor: QUIET, gridColor: RULE, domainColor: QUIET, tickColor: QUIET,
      labelFontSize: 12, titleFontSize: 12, titleFontWeight: 'normal',
    },
    axisY: { labelColor: INK },
    legend: {
      labelColor: QUIET, titleColor: QUIET, labelFontSize: 12, titleFontSize: 12,
      titleFontWeight: 'normal', symbolFillColor: ACCENT, symbolStrokeColor: 'transparent',
    },
    title: { color: INK },
    text: { color: INK },
    mark: { color: ACCENT },
  };

  // A mark leads to its page; the table beside the plot has the same links for the keyboard.
  function follow(event, item) {
    const address = item && item.datum && item.datum.address;
    if (!address) return;
    if (event.ctrlKey || event.metaKey) window.open(address);
    else window.location.assign(address);
  }

  // The page's variables as they are in print.
  function printed(text) {
    const paper = document.getElementById('as-printed');
    const values = getComputedStyle(paper);
    return text.replace(/var\((--[a-z]+)\)/g, (all, name) => values.getPropertyValue(name).trim());
  }

  function drawing(element) {
    const svg = element.querySelector('svg').cloneNode(true);
    const box = element.querySelector('svg').getBoundingClientRect();
    const space = 'http://www.w3.org/2000/svg';
    svg.setAttribute('xmlns', space);
    svg.setAttribute('width', String(box.width));
    svg.setAttribute('height', String(box.height));
    svg.removeAttribute('aria-hidden');
    const paper = document.createElementNS(space, 'rect');
    [['width', '100%'], ['height', '100%'], ['fill', 'var(--paper)']].forEach(([name, value]) =>
      paper.setAttribute(name, value));
    const title = document.createElementNS(space, 'title');
    title.textContent = element.getAttribute('aria-label');
    const source = document.createElementNS(space, 'desc');
    const citation = document.getElementById('citation');
    source.textContent = citation ? citation.textContent.trim() : document.title;
    svg.prepend(title, source, paper);
    return { text: printed(new XMLSerializer().serializeToString(svg)), box };
  }

  function keep(blob, name) {
    const link = document.createElement('a');
    link.href = URL.createObjectURL(blob);
    link.download = name;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), SAID);
  }

  function name(element, ending) {
    const words = document.querySelector('h1').textContent + ' ' + element.id.replace(/^chart-/, '');
    const plain = words.normalize('NFKD').replace(/[^A-Za-z0-9]+/g, '-').replace(/^-|-$/g, '');
    return plain.slice(0, 80).toLowerCase() + '.' + ending;
  }

  function saveSvg(element) {
    keep(new Blob([drawing(element).text], { type: 'image/svg+xml' }), name(element, 'svg'));
  }

  function savePng(element) {
    const { text, box } = drawing(element);
    const image = new Image();
    image.onload = () => {
      const canvas = document.createElement('canvas');
      canvas.width = Math.round(box.width * SHARPNESS);
      canvas.height = Math.round(box.height * SHARPNESS);
      canvas.getContext('2d').drawImage(image, 0, 0, canvas.width, canvas.height);
      canvas.toBlob((blob) => keep(blob, name(element, 'png')), 'image/png');
    };
    image.src = 'data:image/svg+xml;charset=utf-8,' + encodeURIComponent(text);
  }

  function copySpecification(element, button) {
    const specification = JSON.parse(element.dataset.specification);
    specification.config = CONFIG;
    const label = button.textContent;
    navigator.clipboard.writeText(printed(JSON.stringify(specification, null, 2))).then(
      () => {
        button.textContent = 'Copied';
        setTimeout(() => { button.textContent = label; }, SAID);
      },
      () => { button.textContent = 'Not copied'; });
  }

  const WAYS = { svg: saveSvg, png: savePng, specification: copySpecification };

  function offer(element) {
    const ways = element.closest('figure').querySelector('.save');
    if (!ways) return;
    ways.classList.add('ready');
    ways.querySelectorAll('button').forEach((button) =>
      button.addEventListener('click', () => WAYS[button.dataset.way](element, button)));
  }

  function draw(element) {
    const specification = JSON.parse(element.dataset.specification);
    vegaEmbed(element, specification, {
      ast: true,
      expr: vega.expressionInterpreter,
      actions: false,
      renderer: 'svg',
      defaultStyle: false,
      tooltip: { disableDefaultStyle: true },
      config: CONFIG,
    }).then((drawn) => {
      drawn.view.addEventListener('click', follow);
      // The element has the text; its drawing has nothing to add for those who listen.
      element.querySelector('svg').setAttribute('aria-hidden', 'true');
      element.dataset.drawn = 'yes';
      offer(element);
      element.dispatchEvent(
        new CustomEvent('drawn', { bubbles: true, detail: { view: drawn.view, specification } }));
    });
  }

  document.querySelectorAll('.plot').forEach(draw);

  // One menu at a time, and none when one clicks elsewhere.
  document.addEventListener('click', (event) => {
    document.querySelectorAll('.save[open]').forEach((menu) => {
      if (!menu.contains(event.target)) menu.open = false;
    });
  });
  document.addEventListener('keydown', (event) => {
    if (event.key !== 'Escape') return;
    document.querySelectorAll('.save[open]').forEach((menu) => {
      menu.open = false;
      menu.querySelector('summary').focus();
    });
  });
})();
