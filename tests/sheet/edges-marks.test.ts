// The sheet in the marks of another language. What is loaded stays loaded, so that this stands by itself.
import { expect, test } from 'vitest';
import { curvesOf } from '../../src/sheet/curves.ts';
import { loadLanguage } from '../../src/words/load.ts';
import { fig, limed, named, tree } from './parts.ts';

const way = [{ ph: 5.4, low: 0, high: 0 }, { ph: 6, low: 100, high: 150 }, { ph: 6.5, low: 200, high: 280 }];

// By CLDR German has a decimal comma (numbers, de.xml).
test('in the marks of its language, two decimals at most, in the drawing, too', async () => {
  await loadLanguage('de');
  const [c] = curvesOf([tree('A', {}, { ph: limed({ curve: way, plan: { now: fig(5.954), suits: { low: 6.5, high: 7 } } }) })], 'de', 'metric');
  expect([c!.text.includes('5,95'), ...named(c!.drawing, 'text').slice(0, 3).map((t) => t.text)]).toEqual([true, '5,95', '6,5', '7']);
});
