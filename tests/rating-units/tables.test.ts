// The tables behind the conversions: every figure cites a known publication, and what rests on us says why.
import { expect, test } from 'vitest';
import type { Cite } from '../../src/reason/figure.ts';
import * as carbon from '../../src/tables/carbon.ts';
import * as extractants from '../../src/tables/extractants.ts';
import * as indexes from '../../src/tables/indexes.ts';
import * as phScales from '../../src/tables/ph-scales.ts';
import * as salts from '../../src/tables/salts.ts';
import { sourceOf } from '../../src/tables/sources.ts';
import { keysOf } from '../../src/words/words.ts';

const citesIn = (x: unknown): Cite[] => (x === null || typeof x !== 'object' ? [] : 'source' in x && 'mark' in x ? [x as Cite] : Object.values(x).flatMap(citesIn));
const cites = citesIn([carbon, extractants, indexes, phScales, salts]);

test('every cite names a known publication', () => {
  expect(cites.length).toBeGreaterThan(40);
  expect(cites.filter((c) => sourceOf(c.source) === undefined || c.at.trim() === '')).toEqual([]);
});

test('our own judgement says why', () => {
  const own = cites.filter((c) => c.source === 'medlar');
  expect(own.length).toBeGreaterThan(3);
  expect(own.filter((c) => c.mark !== 'judgement' || !keysOf('judgement').includes(c.at))).toEqual([]);
});

// A steeper dilution needs a larger factor: more water, thinner salt.
test('more water, a larger factor', () => {
  for (const soil of ['light', 'medium', 'heavy'] as const) {
    const at = (dilution: salts.Dilution, ds: number): number => { const l = salts.PASTE_LINES.find((x) => x.dilution === dilution && x.soil === soil)!; return l.slope * ds + l.intercept; };
    expect(at('1:5', 1)).toBeGreaterThan(at('1:1', 1));
    expect(at('1:5', 1)).toBeGreaterThan(at('1:2', 1));
    expect(at('1:1', 1)).toBeGreaterThan(1);
  }
});
