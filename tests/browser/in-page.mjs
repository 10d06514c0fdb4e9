/** Runs in the page, as an expression: what only a browser can measure. */
(() => {
  const named = (element) => `${element.tagName.toLowerCase()} "${(element.textContent ?? '').trim().slice(0, 40)}"`;

  const texts = () => {
    const walker = document.createTreeWalker(document.body, window.NodeFilter.SHOW_TEXT);
    const found = new Set();
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const element = node.parentElement;
      if (node.data.trim() && !['STYLE', 'SCRIPT'].includes(element.tagName) && element.checkVisibility()) found.add(element);
    }
    return [...found];
  };

  /** In CSS pixels as shown: letters of a drawing scale with it. */
  const sizeOf = (element) => {
    const size = parseFloat(window.getComputedStyle(element).fontSize);
    const matrix = element.getScreenCTM?.();
    return matrix ? size * Math.sqrt(Math.abs(matrix.a * matrix.d - matrix.b * matrix.c)) : size;
  };

  const black = /^(?:rgb\(0, 0, 0\)|rgb\(255, 255, 255\)|rgba\(0, 0, 0, 0\)|none|url\(.*\))$/;
  const COLOURS = ['color', 'backgroundColor', 'borderTopColor', 'borderBottomColor', 'borderLeftColor', 'borderRightColor', 'fill', 'stroke', 'outlineColor', 'textDecorationColor'];

  return {
    /** Twelve points are sixteen pixels; a little less for rounding. */
    small: () => texts().map((e) => [sizeOf(e), named(e)]).filter(([size]) => size < 15.95).map(([size, name]) => `${size.toFixed(2)} px: ${name}`),
    coloured: () => [...document.querySelectorAll('html, body, body *')].flatMap((e) => {
      const style = window.getComputedStyle(e);
      const drawn = (name) => !/^(?:border|outline)/.test(name) || parseFloat(style[name.replace('Color', 'Width')]) > 0 && style[name.replace('Color', 'Style')] !== 'none';
      return COLOURS.filter((name) => drawn(name) && !black.test(style[name])).map((name) => `${name} ${style[name]}: ${named(e)}`);
    }),
    faded: () => [...document.querySelectorAll('body, body *')].filter((e) => window.getComputedStyle(e).opacity !== '1').map(named),
    rowsThatMaySplit: () => [...document.querySelectorAll('tr')].filter((e) => window.getComputedStyle(e).breakInside !== 'avoid').map(named),
    rows: () => document.querySelectorAll('tr').length,
    /** Cells wider than their room, and letters that leave their drawing. */
    overflowing: () => [
      ...[...document.querySelectorAll('body *:not(svg *)')].filter((e) => e.scrollWidth > e.clientWidth + 1 && e.clientWidth > 0).map(named),
      ...[...document.querySelectorAll('svg text')].filter((e) => e.checkVisibility()).filter((e) => {
        const box = e.ownerSVGElement.viewBox.baseVal;
        const size = parseFloat(window.getComputedStyle(e).fontSize);
        const [first, last] = [e.getStartPositionOfChar(0), e.getEndPositionOfChar(e.getNumberOfChars() - 1)];
        return first.x < box.x - 0.1 || last.x > box.x + box.width + 0.1 || first.y - size * 0.74 < box.y - 0.1 || first.y + size * 0.24 > box.y + box.height + 0.1;
      }).map((e) => `drawing ${named(e)}`),
    ],
    /** Letters of one drawing that lie over each other. */
    overlapping: () => [...document.querySelectorAll('svg')].flatMap((svg) => {
      const boxes = [...svg.querySelectorAll('text')].map((e) => [e.getBoundingClientRect(), named(e)]);
      return boxes.flatMap(([a, x], i) => boxes.slice(i + 1).filter(([b]) => a.left < b.right && b.left < a.right && a.top + 3 < b.bottom && b.top + 3 < a.bottom).map(([, y]) => `${x} on ${y}`));
    }),
    /** Words of table cells that are broken within. */
    broken: () => [...document.querySelectorAll('td, th')].flatMap((cell) => {
      const walker = document.createTreeWalker(cell, window.NodeFilter.SHOW_TEXT);
      const words = [];
      for (let node = walker.nextNode(); node; node = walker.nextNode()) {
        if (node.parentElement.closest('svg')) continue;
        for (const match of node.data.matchAll(/[\p{L}\p{N}]+/gu)) {
          const range = document.createRange();
          range.setStart(node, match.index);
          range.setEnd(node, match.index + match[0].length);
          if (new Set([...range.getClientRects()].map((r) => Math.round(r.top))).size > 1) words.push(match[0]);
        }
      }
      return words;
    }),
    wide: () => [document.documentElement.scrollWidth, document.documentElement.clientWidth],
    outside: () => [...document.querySelectorAll('[src], [href], script, link, iframe')].map(named),
  };
})();
