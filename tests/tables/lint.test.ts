/** The data itself: every figure cites a known publication, ids are unique, bands rise and end open, our own reasons are said. */
import { describe, expect, test } from 'vitest';
import type { Cite } from '../../src/reason/figure.ts';
import { MARKS } from '../../src/reason/figure.ts';
import { ELEMENT_OF } from '../../src/tables/items.ts';
import { ELEMENT_SHARE } from '../../src/units/substance.ts';
import * as crops from '../../src/tables/crops.ts';
import * as growth from '../../src/tables/growth.ts';
import * as limits from '../../src/tables/limits.ts';
import * as materials from '../../src/tables/materials.ts';
import * as nitrogen from '../../src/tables/nitrogen.ts';
import * as phRanges from '../../src/tables/ph-ranges.ts';
import * as potash from '../../src/tables/potash.ts';
import { UNIT_PATTERNS } from '../../src/tables/report-patterns.ts';
import { INDEX_SCHEMES, PRECISION, RATINGS, SCALES, WORD_SCHEMES } from '../../src/tables/ratings.ts';
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

const cites = citesIn([growth, limits, materials, nitrogen, phRanges, potash, SCALES, INDEX_SCHEMES, WORD_SCHEMES, PRECISION, timing]);

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
    for (const ids of [nitrogen.RULES.map((r) => r.id), [...SCALES, ...INDEX_SCHEMES].map((s) => s.id), materials.MATERIALS.map((m) => m.id)]) {
      expect(new Set(ids).size).toBe(ids.length);
    }
  });

  test('bands rise, and only the last is open', () => {
    for (const { id, bands } of [...SCALES, ...INDEX_SCHEMES]) {
      const edges = bands.map((b) => b.upTo);
      expect(edges.at(-1), id).toBeNull();
      const closed = edges.slice(0, -1);
      expect(closed, id).not.toContain(null);
      expect([...closed].sort((a, b) => a! - b!), id).toEqual(closed);
      expect(new Set(closed).size, id).toBe(closed.length);
    }
  });

  test('classes go up with the value: from below over the target to above, no class twice in a row', () => {
    const order = ['far-below', 'below', 'at', 'above'];
    for (const { id, bands } of [...SCALES, ...INDEX_SCHEMES]) {
      const targets = bands.map((b) => order.indexOf(b.target));
      expect([...targets].sort((a, b) => a - b), id).toEqual(targets);
      const ratings = bands.map((b) => RATINGS.indexOf(b.rating));
      expect([...ratings].sort((a, b) => a - b), id).toEqual(ratings);
      expect(bands.length, id).toBeGreaterThan(1);
    }
  });

  test('a scale that a state, a part of one or one crop owns says which; a field table and a recalled one have a home', () => {
    for (const s of SCALES) {
      expect(s.unit, s.id).toBeTruthy();
      if (s.states || s.within !== undefined) expect(s.countries, s.id).toHaveLength(1);
      if (s.serves === 'field' || s.cite.mark === 'memory' || s.homeOnly) expect(s.countries, s.id).toBeDefined();
      if (s.form) expect(ELEMENT_SHARE[s.form].element, s.id).toBe(ELEMENT_OF[s.item]);
      if (s.method === 'any' && ELEMENT_OF[s.item]) expect(s.homeOnly, s.id).toBe(true);
    }
  });

  test('the soils of one table leave no gap: each capacity, and each soil named, has its edges', () => {
    const tri = SCALES.filter((s) => s.id.startsWith('tri-state.potassium')).map((s) => s.cec!);
    expect(tri).toEqual([[0, 5], [5, Infinity]]);
    for (const [table, item, kinds] of [['rutgers', 'organic-matter', 7], ['nrw', 'potassium', 7], ['nrw', 'magnesium', 7], ['nrw', 'ph-salt', 7], ['wisconsin', 'phosphorus', 8], ['wisconsin', 'potassium', 8]] as const) {
      const all = SCALES.filter((s) => s.id.startsWith(`${table}.`) && s.item === item).flatMap((s) => s.kinds ?? []);
      expect([table, item, new Set(all).size, all.length]).toEqual([table, item, kinds, kinds]);
    }
  });

  test('a lab repeats itself at least as well as labs agree, and no item has two precisions', () => {
    for (const { items, within, between } of PRECISION) {
      expect(within.share, items.join()).toBeLessThanOrEqual(between.share);
      expect(within.least, items.join()).toBeLessThanOrEqual(between.least);
      expect(within.share + within.least, items.join()).toBeGreaterThan(0);
    }
    const items = PRECISION.flatMap((p) => p.items);
    expect(new Set(items).size).toBe(items.length);
  });

  test('a rule gives no less than nothing, its high is above its low, and its own cap is above its rate', () => {
    for (const r of nitrogen.RULES) {
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
