// What feeds do to the pH: materials.md 1.1 and 1.2 (Alabama ANR-174 READ A, norganics READ C) and acidify.md 4.3, in lb of calcium carbonate to 100 lb of product.
import { describe, expect, test } from 'vitest';
import { limeInFeed, limeOfYear } from '../../src/bags/acidity.ts';
import { parseBag } from '../../src/orchard/bag.ts';
import type { Feed } from '../../src/bags/doses.ts';
import { figure } from '../../src/reason/figure.ts';
import { medlar } from '../medlar.ts';

const bagOf = (label: string) => parseBag(label, 'US', false, { file: '', line: 1, column: 1, length: 1, source: '' }).bag!;
const per100 = (label: string): number => {
  const bag = bagOf(label);
  return limeInFeed({ label: bag.label, material: bag.material?.id ?? null, n: bag.grade.N }).value;
};

test.each([
  // As printed, at the nitrogen printed.
  ['Ammonium sulfate 21-0-0', -110], ['Sulphate of ammonia, 21-0-0 +24S', -110], ['21-0-0, 4 lb', -110], ['Urea 45-0-0', -81], ['Ammonium nitrate 34-0-0', -61], ['Calcium ammonium nitrate 27-0-0', 0], ['Nitrate of lime 15-0-0', 20], ['Potassium nitrate 13-0-44', 26], ['Nitrate of soda 16-0-0', 29],
  ['MAP 11-52-0', -65], ['DAP 18-46-0', -70], ['Sulfur coated urea 37-0-0', -118], ['Blood meal 12-1-0.6', -22], ['Cottonseed meal 6-2.5-1.5', -9], ['Bone meal 3-15-0', 20], ['Bone meal 4-12-0', 20],
  // Another grade: 81 × 46 / 45; 20 × 15.5 / 15.
  ['Urea 46-0-0', -82.8], ['Calcium nitrate 15.5-0-0', 20.67],
  // No known material: 1.8 lb for each lb of N (READ, C). Potash and superphosphate hold no nitrogen and move nothing.
  ['Balanced 10-10-10', -18], ['Fruit food 6-3-3', -10.8], ['Sulphate of potash 0-0-50', 0], ['Muriate of potash 0-0-60', 0], ['Triple superphosphate 0-46-0', 0],
] as const)('%s: %d', (label, expected) => { expect(per100(label)).toBeCloseTo(expected, 2); });

test('against the chemistry: half of the acid of nitrification', () => {
  // Two charges a nitrogen for ammonium sulphate, one of them half counted, one for urea: 100.086 / 14.007 / 2 = 3.573 lb a charge and lb of N.
  const charge = 100.086 / 14.007 / 2;
  // Urea: half of one charge, 1.79 × 45 = 80.4; the sheet has 81. Ammonium sulphate: one and a half charges, 5.36 × 21 = 112.6; the sheet 110.
  expect(Math.abs(per100('Urea 45-0-0') + 0.5 * charge * 45)).toBeLessThan(1);
  expect(Math.abs(per100('21-0-0') + 1.5 * charge * 21)).toBeLessThan(3);
  // Sodium nitrate: half a charge the other way, 1.79 × 16 = 28.6; the sheet 29.
  expect(Math.abs(per100('Nitrate of soda 16-0-0') - 0.5 * charge * 16)).toBeLessThan(1);
});

test('the year on a square metre of ring: what is planned and what was fed', () => {
  const cite = { source: 'grower', at: '', mark: 'read' } as const;
  const area = figure(8, 'm2', 'ring', 'told', cite);
  const ring = { from: figure(0, 'm', 'ring', 'told', cite), to: figure(1.6, 'm', 'ring', 'told', cite), area };
  const feed = (label: string, g: number): Feed => ({ bag: bagOf(label), g, serves: 'N', planned: figure(g, 'g', 'product', 'told', cite), mL: null, window: { from: '2026-04-12', until: '2026-04-26' } as Feed['window'], ring });
  // 350 g × 1.10 / 8 m² = 48.1; with 200 g of nitrate of soda 385 − 58 = 327, 40.9.
  expect(limeOfYear({ feeds: [feed('21-0-0', 350)], fed: [], ring }, [])!.value).toBeCloseTo(-48.125, 6);
  const fed = [{ date: '2026-04-01', bag: 'Nitrate of soda', g: 200, brought: { N: 32, P2O5: 0, K2O: 0 } }] as const;
  expect(limeOfYear({ feeds: [feed('21-0-0', 350)], fed: fed, ring }, [])!.value).toBeCloseTo(-40.875, 6);
  expect(limeOfYear({ feeds: [], fed: [], ring: null }, [])).toBeNull();
});

describe('in a plan', () => {
  const codes = async (trees: string, ph: string, store: string, diary = ''): Promise<{ code: string; text: string }[]> => {
    const orchard = `where: Ohio, US\nbud-break: 12 April\nfirst-frost: 12 October\nsoil:\n  bank: soil.txt\ntrees:\n${trees}store:\n  - ${store}\n`;
    const run = await medlar(['plan', '--json', '--today', '2026-04-14'], { 'orchard.yaml': orchard, 'diary.csv': `date,trees,what,bag,amount,note\n${diary}`, 'soil.txt': `${ph}\nPhosphorus 164 ppm = very high\nPotassium 280 ppm = very high\ntexture: loam\n` });
    return run.json.notices.filter((n) => n.code.startsWith('feed-'));
  };
  const APPLES = '  Gate apple: apple, semi-dwarf, planted 2019, trunk 11 in round, 12 ft across, shoots 6 in 2025, bank\n  Far apple: apple, semi-dwarf, planted 2019, trunk 11 in round, 12 ft across, shoots 6 in 2025, bank\n';
  const BLUE = '  Blues: 3 blueberries, planted 2019, 5 ft across, bank\n';
  test('acid feed near the low edge: once for the zone, with its numbers', async () => {
    const told = await codes(APPLES, 'pH 6.1', 'Sulphate of ammonia, 21-0-0, 4 lb, $9');
    expect(told.map((n) => n.code)).toEqual(['feed-acid-low']);
    // At most a pound and a half to 100 sq ft: an apple gets some 12 oz of it, worth 13 oz of lime, on a ring of about 100 sq ft.
    expect(told[0]!.text).toMatch(/^Gate apple, Far apple: .* (?:[4-9]|1\d|2[0-4])(?: [1-3]\/[24])? oz of lime on each 100 sq ft .* pH 6.1 is near the 6 that suits/);
  });
  test('at the edge itself', async () => {
    // Ohio's apples suit pH 6 to 7 (the row above says so): at 6.0 the pH is the edge.
    expect((await codes(APPLES, 'pH 6.0', 'Sulphate of ammonia, 21-0-0, 4 lb, $9'))[0]!.text).toContain('pH 6 is the lowest that suits');
  });
  test('where lime goes on as well, the feed is said to use up some of it', async () => {
    const told = await codes(APPLES, 'pH 5.4', 'Sulphate of ammonia, 21-0-0, 4 lb, $9');
    expect(told.map((n) => n.code)).toEqual(['feed-acid-limed']);
    expect(told[0]!.text).toMatch(/^Gate apple, Far apple: .* oz of lime on each 100 sq ft/);
  });
  test('the answer in JSON: by the weight of the feed and its printed 110 lb of lime to 100 lb', async () => {
    const orchard = `where: Ohio, US\nbud-break: 12 April\nfirst-frost: 12 October\nsoil:\n  bank: soil.txt\ntrees:\n${APPLES}  Lemon: lemon, tub 60 L\nstore:\n  - Sulphate of ammonia, 21-0-0, 4 lb, $9\n`;
    const { json } = await medlar(['plan', '--json', '--today', '2026-04-14'], { 'orchard.yaml': orchard, 'soil.txt': 'pH 6.4\nPhosphorus 164 ppm = very high\nPotassium 280 ppm = very high\n' });
    const trees = (json.result as { trees: { feeds: { g: number; ring: { m2: number } }[]; feedLime: number | null }[] }).trees;
    const grams = trees[0]!.feeds.reduce((sum, f) => sum + f.g, 0);
    expect(trees[0]!.feedLime).toBeCloseTo(-(grams * 1.1) / trees[0]!.feeds[0]!.ring.m2, 6);
    expect(trees[2]!.feedLime).toBeNull();
  });
  test('in the middle of what suits, or with a feed that is not acid: nothing', async () => {
    expect(await codes(APPLES, 'pH 6.6', 'Sulphate of ammonia, 21-0-0, 4 lb, $9')).toEqual([]);
    expect(await codes(APPLES, 'pH 6.1', 'Calcium ammonium nitrate, 27-0-0, 10 lb, $9')).toEqual([]);
  });
  test('blueberries: acid is welcome, a basic nitrate is warned of', async () => {
    expect((await codes(BLUE, 'pH 4.8', 'Sulphate of ammonia, 21-0-0, 4 lb, $9')).map((n) => n.code)).toEqual(['feed-acid-welcome']);
    // A plan never gives them nitrate; who fed some is told what it does. 8 oz of it are worth 2.3 oz of lime.
    expect((await codes(BLUE, 'pH 4.8', 'Nitrate of soda, 16-0-0, 4 lb, $9', '2026-04-12,Blues,fed,Nitrate of soda,8 oz,\n')).map((n) => n.code)).toEqual(['feed-basic']);
    expect(await codes(BLUE, 'pH 4.8', 'Nitrate of soda, 16-0-0, 4 lb, $9')).toEqual([]);
  });
});
