/** The data itself: every figure cites a known publication, ids are unique, bands rise and end open, our own reasons are said. */
import { describe, expect, test } from 'vitest';
import type { Cite } from '../../src/reason/figure.ts';
import { MARKS } from '../../src/reason/figure.ts';
import { ELEMENT_OF } from '../../src/tables/items.ts';
import { ELEMENT_SHARE } from '../../src/units/substance.ts';
import * as crops from '../../src/tables/crops.ts';
import * as growth from '../../src/tables/growth.ts';
import * as leads from '../../src/tables/leads.ts';
import * as leaf from '../../src/tables/leaf.ts';
import * as limits from '../../src/tables/limits.ts';
import * as materials from '../../src/tables/materials.ts';
import * as mixing from '../../src/tables/mixing.ts';
import * as nitrogen from '../../src/tables/rules.ts';
import * as phRanges from '../../src/tables/ph-ranges.ts';
import * as release from '../../src/tables/release.ts';
import * as potash from '../../src/tables/potash.ts';
import * as places from '../../src/tables/places.ts';
import * as removal from '../../src/tables/removal.ts';
import { UNIT_PATTERNS } from '../../src/tables/report-patterns.ts';
import { INDEX_SCHEMES, PRECISION, RATINGS, SCALES, WORD_SCHEMES } from '../../src/tables/ratings.ts';
import { ruleShape, withSense } from '../../src/tables/rule-shape.ts';
import * as soilRates from '../../src/tables/soil-rates.ts';
import { SOURCE_IDS, sourceOf } from '../../src/tables/sources.ts';
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

const cites = citesIn([leaf, removal, soilRates, growth, limits, materials, release, mixing, nitrogen, phRanges, potash, SCALES, INDEX_SCHEMES, WORD_SCHEMES, PRECISION, timing]);

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

  test('every rule has the shape that a grower\'s own rule is held to', () => {
    const shape = withSense(ruleShape);
    for (const r of nitrogen.RULES) expect(shape.safeParse(r).error?.issues ?? [], r.id).toEqual([]);
    expect(shape.safeParse({ ...nitrogen.RULES[0], low: -1 }).success).toBe(false);
  });

  test('the rows of one table by years leave no gap and do not overlap', () => {
    const groups = new Map<string, (typeof nitrogen.RULES)[number][]>();
    // A table is what stands under one id but for the year behind its last point.
    for (const r of nitrogen.RULES) if (r.by === 'plant' && r.years && r.id.endsWith(`.${r.years[0]}`)) groups.set(r.id.replace(/\.\d+$/, ''), [...(groups.get(r.id.replace(/\.\d+$/, '')) ?? []), r]);
    expect(groups.size).toBeGreaterThan(10);
    for (const [name, rows] of groups) {
      const ends = rows.map((r) => r.years!).sort((a, b) => a[0] - b[0]);
      ends.slice(1).forEach(([from], i) => { expect(from, `${name}: ${ends.join(' ')}`).toBeGreaterThan(ends[i]![1]); });
    }
  });

  test('a range\'s low is not above its high; nothing is below zero; a unit is given', () => {
    for (const r of [...growth.GROWTH_RANGES, ...leaf.LEAF_RANGES, ...removal.REMOVAL]) {
      expect(r.low, JSON.stringify(r)).toBeGreaterThanOrEqual(0);
      expect(r.high, JSON.stringify(r)).toBeGreaterThanOrEqual(r.low);
      expect(r.unit).toBeTruthy();
    }
    for (const r of soilRates.SOIL_RATES) {
      // The poorer the soil, the more: no class gets more than the one below it.
      const order = ['far-below', 'below', 'at', 'above'];
      const rates = [...r.rates].sort((a, b) => order.indexOf(a.target) - order.indexOf(b.target));
      rates.slice(1).forEach((c, i) => { expect(c.high, r.id).toBeLessThanOrEqual(rates[i]!.high); });
    }
  });

  test('every publication of the tables is used, and every default lead prints a rule that may lead', () => {
    const used = new Set(cites.map((c) => c.source));
    const leading = new Set(nitrogen.RULES.filter((r) => r.label === undefined).map((r) => r.source));
    expect(leads.DEFAULT_LEADS.filter((s) => !leading.has(s))).toEqual([]);
    for (const r of nitrogen.RULES) expect(SOURCE_IDS, r.id).toContain(r.source);
    expect(used.size).toBeGreaterThan(150);
  });

  test('borders are mutual within a country of states, and name places that are there', () => {
    for (const [from, list] of Object.entries(places.BORDERS)) {
      for (const to of list) {
        expect(to, from).not.toBe(from);
        if (from.includes('-')) expect(places.BORDERS[to], `${from} ${to}`).toContain(from);
      }
    }
  });

  test('thirty crops, eight regions on four continents, sixty publications (the goal of the record)', () => {
    const rules = nitrogen.RULES;
    expect(new Set(rules.flatMap((r) => r.crops)).size).toBeGreaterThanOrEqual(25);
    expect(new Set(rules.map((r) => r.source)).size).toBeGreaterThanOrEqual(60);
    const CONTINENT: Readonly<Record<string, string>> = { US: 'North America', CA: 'North America', GB: 'Europe', IE: 'Europe', DE: 'Europe', AT: 'Europe', PL: 'Europe', IT: 'Europe', ES: 'Europe', IN: 'Asia', JP: 'Asia', TW: 'Asia', BD: 'Asia', AU: 'Oceania', NZ: 'Oceania', KE: 'Africa', BR: 'South America', AR: 'South America' };
    expect(new Set(rules.flatMap((r) => CONTINENT[r.region.slice(0, 2)] ?? [])).size).toBeGreaterThanOrEqual(4);
    expect(new Set(rules.map((r) => r.region)).size).toBeGreaterThanOrEqual(8);
  });

  test('no place in a publication is told in a sentence of it: under 25 words', () => {
    expect(cites.filter((c) => c.at.split(/\s+/).length > 25)).toEqual([]);
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
