'use strict';
// Draws each plot from the specification that stands on its element, in the page's own colours.
(function () {
  const dark = window.matchMedia('(prefers-color-scheme: dark)');

  function colours() {
    const style = getComputedStyle(document.documentElement);
    const value = (name) => style.getPropertyValue(name).trim();
    const ink = value('--ink');
    const quiet = value('--quiet');
    const rule = value('--rule');
    const font = getComputedStyle(document.body).fontFamily;
    return {
      background: 'transparent',
      font,
      view: { stroke: null },
      axis: {
        labelColor: quiet, titleColor: quiet, gridColor: rule, domainColor: quiet, tickColor: quiet,
        labelFontSize: 12, titleFontSize: 12, titleFontWeight: 'normal',
      },
      legend: { labelColor: quiet, titleColor: quiet, labelFontSize: 12, titleFontSize: 12, titleFontWeight: 'normal' },
      title: { color: ink },
      text: { color: ink },
      mark: { color: value('--accent') },
      rule: { color: quiet },
    };
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
      config: colours(),
    });
  }

  function drawAll() {
    document.querySelectorAll('.plot').forEach(draw);
  }

  drawAll();
  dark.addEventListener('change', drawAll);
})();
