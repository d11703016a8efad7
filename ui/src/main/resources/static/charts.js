'use strict';
// Draws each plot from the specification that stands on its element. Colours are the page's own
// variables, so that dark mode and print need no drawing anew.
(function () {
  const ACCENT = 'var(--accent)';
  const INK = 'var(--ink)';
  const QUIET = 'var(--quiet)';
  const RULE = 'var(--rule)';
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
    });
  }

  document.querySelectorAll('.plot').forEach(draw);
})();
