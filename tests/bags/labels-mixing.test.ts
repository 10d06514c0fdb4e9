// What must not meet, what bags can do, what they set free: materials.md 2 and 7, and the pages named there.
import { describe, expect, test } from 'vitest';
import { parseBag } from '../../src/orchard/bag.ts';
import { hazardNotice, hazardsOf, mixingFaults, mixingNotice } from '../../src/orchard/mixing.ts';
import { manureMinerals, releaseOf, rockPhosphate } from '../../src/orchard/release.ts';
import { noticeText } from '../../src/json/notices.ts';
import { MATERIALS } from '../../src/tables/materials.ts';
import { HAZARDS, MATERIAL_CLASSES } from '../../src/tables/mixing.ts';
import { KIND_RELEASE, MANURE_TO_HARVEST, RELEASE } from '../../src/tables/release.ts';

const bag = (text: string) => parseBag(text, 'US', false, { file: '', line: 1, column: 1, length: 1, source: '' }).bag!;
const rules = (...texts: string[]): string[] => mixingFaults(texts.map(bag)).map((f) => f.rule);

describe('mixing', () => {
  test.each([
    // IPNI SEAP-3024, READ.
    ['Urea', 'CAN', 'never'], ['Urea', 'Superphosphate', 'never'], ['Urea', 'Triple superphosphate', 'never'], ['DAP', 'Rock phosphate 0-3-0', 'never'], ['Superphosphate', 'Garden lime, 40 lb', 'never'], ['MAP', 'CAN', 'never'],
    ['Sulphate of potash', 'CAN', 'fresh'], ['Muriate of potash', 'Urea', 'fresh'], ['Urea', 'Ammonium sulphate', 'fresh'],
    // Alabama ANR-174, READ.
    ['Calcium nitrate', 'Superphosphate', 'never'],
    // Notes on mixed fertilisers, READ; chemistry, MEMORY.
    ['Ammonium sulphate', 'Wood ash, 20 lb', 'never'], ['Ammonium sulphate', 'Garden lime, 40 lb', 'never'], ['Horse manure', 'Garden lime, 40 lb', 'never'], ['Urea', 'Ammonium nitrate', 'never'], ['Ammonium nitrate', 'Blood meal', 'never'],
    ['Calcium nitrate', 'Sulphate of potash', 'solution'], ['Calcium nitrate', 'MAP', 'solution'],
  ])('%s and %s: %s', (a, b, rule) => {
    expect(rules(a, b)).toEqual([rule]);
    expect(rules(b, a)).toEqual([rule]);
  });
  test.each([['Ammonium sulphate', 'Sulphate of potash'], ['10-10-10', 'Bone meal'], ['Muriate of potash', 'DAP'], ['Urea', 'Urea'], ['Blood meal', 'Garden compost']])('%s and %s may meet', (a, b) => { expect(rules(a, b)).toEqual([]); });
  test('each pair of many is said once, with both names', () => {
    const faults = mixingFaults(['Urea', 'Superphosphate', 'Calcium nitrate'].map(bag));
    expect(faults.map((f) => [f.a.label, f.b.label, f.rule])).toEqual([['Urea', 'Superphosphate', 'never'], ['Urea', 'Calcium nitrate', 'fresh'], ['Superphosphate', 'Calcium nitrate', 'never']]);
    for (const f of faults) {
      expect(noticeText(mixingNotice(f), 'en-US')).toContain(f.a.label);
      expect(noticeText(mixingNotice(f), 'en-GB')).toContain(f.b.label);
    }
  });
  test('the tables name materials that are there', () => {
    const ids = new Set(MATERIALS.map((m) => m.id));
    const named = [...Object.values(MATERIAL_CLASSES).flat(), ...Object.values(HAZARDS).flatMap((h) => h.materials), ...RELEASE.flatMap((r) => r.materials)];
    expect(named.filter((id) => !ids.has(id))).toEqual([]);
  });
});

describe('hazards', () => {
  test.each([
    // Vets' pages, READ: bone and blood meal, cocoa shell.
    ['Bone meal', ['dogs', 'dust']], ['Blood meal', ['dogs', 'dust']], ['Cocoa shells', ['dogs']], ['Ammonium nitrate', ['oxidiser', 'stock']], ['Potassium nitrate', ['oxidiser', 'stock']], ['Urea', ['stock']], ['Horse manure', ['fresh-manure']], ['Composted horse manure', []], ['10-10-10', []],
    ['Wood ash, 20 lb', ['dust', 'caustic']], ['Garden lime, 40 lb', ['dust']], ['Hydrated lime, 40 lb', ['dust', 'caustic']],
  ])('%s', (text, expected) => {
    const one = bag(text);
    expect(hazardsOf(one)).toEqual(expected);
    for (const h of hazardsOf(one)) expect(noticeText(hazardNotice(one, h), 'en-US')).toContain(one.label);
  });
  test('raw manure: 90 and 120 days (7 CFR 205.203, READ)', () => {
    expect([MANURE_TO_HARVEST.above, MANURE_TO_HARVEST.touching]).toEqual([90, 120]);
    expect(noticeText(hazardNotice(bag('Horse manure'), 'fresh-manure'), 'en-US')).toMatch(/\b90\b.*\b120\b/);
  });
});

describe('release', () => {
  test('eight weeks of Hartz and Johnstone 2006 are the least of a year', () => {
    expect(['Blood meal', 'Feather meal', 'Fish meal', 'Seabird guano 12-11-3'].map((t) => releaseOf(bag(t))!.year1[0])).toEqual([0.66, 0.6, 0.62, 0.61]);
  });
  test('Cornell: organic N of horse manure, 25 to 30, then 12, then 5 percent', () => {
    expect(releaseOf(bag('Horse manure'))).toMatchObject({ of: 'organic N', year1: [0.25, 0.3], year2: [0.12, 0.12], year3: [0.05, 0.05] });
  });
  test('compost frees little (California, READ: 5 to 10 percent)', () => { expect(releaseOf(bag('Garden compost'))!.year1).toEqual([0.05, 0.1]); });
  test('what is only called organic has the span of 49 products (SARE, READ: 21 to 87 percent)', () => { expect(releaseOf(bag('Organic rose feed 4-3-8'))!.year1).toEqual([0.21, 0.87]); });
  test('phosphate and potash of manure: 80 to 100 percent (Iowa, READ), 90 and more (Oklahoma, READ)', () => {
    expect(manureMinerals(bag('Horse manure'))).toMatchObject({ P2O5: { low: 0.8, high: 1 }, K2O: { low: 0.9, high: 1 } });
    expect(manureMinerals(bag('Bone meal'))).toBeNull();
  });
  test('rock phosphate: 1 to 3 percent of its weight is available (a book, READ), and none above pH 6.5 (MEMORY)', () => {
    // Of 30 % in all, 1 to 3 % are a thirtieth to a tenth.
    expect(rockPhosphate(bag('Rock phosphate 0-30-0'), 5.5)!.low).toBeCloseTo(1 / 30, 9);
    expect(rockPhosphate(bag('Rock phosphate 0-30-0'), 5.5)!.high).toBeCloseTo(0.1, 9);
    expect(rockPhosphate(bag('Rock phosphate 0-3-0'), 5.5)).toMatchObject({ low: 1, high: 1 });
    expect(rockPhosphate(bag('Rock phosphate 0-3-0'), 7.2)).toMatchObject({ low: 0, high: 0 });
    expect(rockPhosphate(bag('Triple superphosphate'), 7.2)).toBeNull();
  });
  test('salts are there at once', () => { expect(['Urea', '10-10-10', 'Wood ash 0-1-5'].map((t) => releaseOf(bag(t)))).toEqual([null, null, null]); });
  test('no three years free more than all, and every meal, manure and compost has a row', () => {
    for (const r of [...RELEASE, ...KIND_RELEASE]) {
      for (const span of [r.year1, r.year2, r.year3]) expect(span[0]).toBeLessThanOrEqual(span[1]);
      expect(r.year1[1] + r.year2[1] + r.year3[1]).toBeLessThanOrEqual(100);
    }
    const grown = MATERIALS.filter((m) => ['meal', 'manure', 'compost'].includes(m.kind)).map((m) => m.id);
    expect(grown.filter((id) => !RELEASE.some((r) => r.materials.includes(id)))).toEqual([]);
  });
});
