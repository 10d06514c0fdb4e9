// The sheet in the marks of another language. What is loaded stays loaded, so that this stands by itself.
import { expect, test } from 'vitest';
import { backOf } from '../../src/sheet/back.ts';
import { curvesOf } from '../../src/sheet/curves.ts';
import { loadLanguage } from '../../src/words/load.ts';
import { say } from '../../src/words/words.ts';
import { fig, limed, named, plan, tree } from './parts.ts';

const way = [{ ph: 5.4, low: 0, high: 0 }, { ph: 6, low: 100, high: 150 }, { ph: 6.5, low: 200, high: 280 }];

// By CLDR German has a decimal comma (numbers, de.xml).
test('in the marks of its language, two decimals at most, in the drawing, too', async () => {
  await loadLanguage('de');
  const [c] = curvesOf([tree('A', {}, { ph: limed({ curve: way, plan: { now: fig(5.954), suits: { low: 6.5, high: 7 } } }) })], 'de', 'metric');
  expect([c!.text.includes('5,95'), ...named(c!.drawing, 'text').slice(0, 3).map((t) => t.text)]).toEqual([true, '5,95', '6,5', '7']);
});

// A comma that parts decimals parts no list.
test('several pH in a list', async () => {
  await loadLanguage('de');
  const fine = (name: string, now: number) => tree(name, {}, { ph: limed({ g: 0, plan: { verdict: 'leave', reason: 'inside', now: fig(now) } }) });
  expect(backOf(plan([fine('A', 6.4), fine('B', 6.6)], { where: { language: 'de' } }), (key, facts) => say('de', 'sheet', key, facts)).lime[0]!.text).toContain('6,4; 6,6');
});
