/** The data itself: every figure cites a known publication, ids are unique, bands rise and end open, our own reasons are said. */
import { describe, expect, test } from 'vitest';
import type { Cite } from '../../src/reason/figure.ts';
import { MARKS } from '../../src/reason/figure.ts';
import * as crops from '../../src/tables/crops.ts';
import * as growth from '../../src/tables/growth.ts';
import * as limits from '../../src/tables/limits.ts';
import * as materials from '../../src/tables/materials.ts';
import * as nitrogen from '../../src/tables/nitrogen.ts';
import * as phRanges from '../../src/tables/ph-ranges.ts';
import * as potash from '../../src/tables/potash.ts';
import { UNIT_PATTERNS } from '../../src/tables/report-patterns.ts';
import { SCALES } from '../../src/tables/ratings.ts';
import { sourceOf } from '../../src/tables/sources.ts';
import * as timing from '../../src/tables/timing.ts';
import { keysOf } from '../../src/words/words.ts';

const isCite = (x: object): x is Cite => 'source' in x && 'at' in x && 'mark' in x;

function citesIn(x: unknown, found: Cite[] = []): Cite[] {
  if (x !== null && typeof x === 'object') {
    if (isCite(x)) found.push(x);
    else for (const value of Object.values(x)) citesIn(value, found);
  }
  return found;
}

const cites = citesIn([growth, limits, materials, nitrogen, phRanges, potash, SCALES, timing]);

describe('the tables', () => {
  test('there are cites to look at', () => {
    expect(cites.length).toBeGreaterThan(100);
  });

  test('every cite names a known publication, a place and a mark', () => {
    expect(cites.filter((c) => sourceOf(c.source) === undefined || c.at.trim() === '' || !MARKS.includes(c.mark))).toEqual([]);
  });

  test('what rests on us says why, in words', () => {
    const own = cites.filter((c) => c.source === 'medlar');
    expect(own.length).toBeGreaterThan(5);
    expect(own.filter((c) => !keysOf('judgement').includes(c.at) || c.mark === 'read' || c.mark === 'derived')).toEqual([]);
  });

  test('ids are unique', () => {
    for (const ids of [nitrogen.NITROGEN_RULES.map((r) => r.id), SCALES.map((s) => s.id), materials.MATERIALS.map((m) => m.id)]) {
      expect(new Set(ids).size).toBe(ids.length);
    }
  });

  test('bands rise, and only the last is open', () => {
    for (const { id, bands } of SCALES) {
      const edges = bands.map((b) => b.upTo);
      expect(edges.at(-1), id).toBeNull();
      const closed = edges.slice(0, -1);
      expect(closed, id).not.toContain(null);
      expect([...closed].sort((a, b) => a! - b!), id).toEqual(closed);
      expect(new Set(closed).size, id).toBe(closed.length);
    }
  });

  test('a rule gives no less than nothing, its high is above its low, and its own cap is above its rate', () => {
    for (const r of nitrogen.NITROGEN_RULES) {
      expect(r.low, r.id).toBeGreaterThanOrEqual(0);
      if (r.high !== undefined) expect(r.high, r.id).toBeGreaterThan(r.low);
      if (r.cap !== undefined) expect(r.cap, r.id).toBeGreaterThanOrEqual(r.high ?? r.low);
      if (r.years) expect(r.years[1], r.id).toBeGreaterThanOrEqual(r.years[0]);
      expect(r.gives.of === 'product', r.id).toBe(r.gives.percentN !== undefined);
      expect(r.cite.source, r.id).toBe(r.source);
    }
  });

  test('a unit or method is looked for at the letters it starts with', () => {
    const spellings: readonly (readonly [string, string])[] = [
      ['lb/acre', 'lbs/acre'], ['lb/acre', 'pounds per acre'], ['ppm', 'parts per million'], ['mg/100g', 'mg/100 g'], ['meq/100g', 'meq/100g'], ['meq/100g', 'me%'], ['uS/cm', 'us/cm'], ['%', 'percent'],
      ['mmho/cm', 'mmhos/cm'], ['kg/ha', 'kg/ha'], ['dS/m', 'ds/m'], ['t/ha', 't/ha'], ['ton/acre', 'tons/acre'], ['g/cm3', 'g/cc'], ['cmol/kg', 'cmol/kg'],
    ];
    for (const [unit, text] of spellings) {
      const pattern = UNIT_PATTERNS.find(([u]) => u === unit)!;
      expect(pattern[1], text).toContain(text[0]);
      expect(new RegExp(`^${pattern[2]}$`).test(text), text).toBe(true);
    }
  });

  test('a crop without figures is not also one with them', () => {
    expect(crops.CROPS_WITHOUT_FIGURES.filter((c) => Object.hasOwn(crops.CROP_WORDS, c))).toEqual([]);
  });
});
