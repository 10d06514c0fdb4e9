// What a grower never uses, a level cup of his own, a clerk's list, a batch of a stated grade. Batches:
// NC State SSC 012 (a ton of 0-8-8: 800, 267, filler 933 lb) and materials.md D4 (a ton of 12-12-12), typed by hand.
import { describe, expect, test } from 'vitest';
import { medlar } from '../medlar.ts';

const LB = 453.59237;
const orchard = (store: readonly string[], more = '', tree = 'apple, semi-dwarf, planted 2019, 12 ft across, shoots 6 in 2025, bank'): string => `where: Ohio, US\nbud-break: 12 April\nfirst-frost: 12 October\n${more}soil:\n  bank: a.txt\ntrees:\n  A: ${tree}\nstore:\n${store.map((b) => `  - ${b}\n`).join('')}`;
const SOIL = 'pH 6.4\nPhosphorus 164 ppm = very high\nPotassium 180 ppm (120-200)\n';
const planned = async (store: readonly string[], more = '', tree?: string) => (await medlar(['plan', '--json'], { 'orchard.yaml': orchard(store, more, tree), 'a.txt': SOIL })).json;
const bags = (json: Awaited<ReturnType<typeof planned>>): string[] => [...new Set<string>(json.result.trees.flatMap((t: { feeds: { bag: string }[] }) => t.feeds.map((f) => f.bag)))];

describe('never', () => {
  const store = ['Ammonium nitrate, 34-0-0, 4 lb, $2', 'Urea, 46-0-0, 4 lb, $3', 'Feather meal, 12-0-0, 5 lb, $19'];
  test.each([['', 'Ammonium nitrate'], ['never: ammonium nitrate\n', 'Urea'], ['never: nitrate, urea\n', 'Feather meal'], ['never: mineral\n', 'Feather meal'], ['never: organic only\n', 'Feather meal']])('%j', async (more, bag) => {
    expect(bags(await planned(store, more))).toEqual([bag]);
  });
  test('what is kept away is named where nothing else serves', async () => {
    const json = await planned(['Urea, 46-0-0, 4 lb, $3'], 'never: urea\n');
    expect(json.notices.find((n) => n.code === 'short-kept')?.text).toContain('Urea');
  });
  test('another word is a mistake, at its line', async () => {
    const run = await medlar(['plan', '--json'], { 'orchard.yaml': orchard(store, 'never: potatoes\n'), 'a.txt': SOIL });
    expect([run.code, run.json.notices[0]!.code, run.json.notices[0]!.line]).toEqual([3, 'never-wrong', 4]);
  });
});

describe('a level cup', () => {
  test('weighed once, it measures the dose; an oz is 28.35 g, a cup 236.6 mL', async () => {
    const json = await planned(['Sulphate of ammonia, 21-0-0, 4 lb, $9, cup 7 oz']);
    const [feed] = json.result.trees[0].feeds;
    expect(feed.mL).toBeCloseTo((feed.g / (7 * 28.349523)) * 236.588, 1);
  });
});

describe('a batch of a stated grade', () => {
  const made = async (...args: string[]) => (await medlar(['blend', ...args, '--json'])).json;
  test('a ton of 0-8-8 from 0-20-0 and 0-0-60: 800, 267 and 933 lb of filler', async () => {
    const { result } = await made('0-20-0', '0-0-60', '--to', '0-8-8', '--batch', '2000 lb');
    expect([...result.parts.map((p: { g: number }) => p.g), result.fillerG].map((g: number) => Math.round(g / LB))).toEqual([800, 267, 933]);
  });
  test('a ton of 12-12-12: DAP 521.74, urea 317.58, KCl 400, filler 760.68 lb', async () => {
    const { result } = await made('18-46-0', '46-0-0', '0-0-60', '--to', '12-12-12', '--batch', '1 ton');
    [521.74, 317.58, 400].forEach((lb, i) => expect(result.parts[i].g / LB).toBeCloseTo(lb, 1));
    expect(result.fillerG / LB).toBeCloseTo(760.68, 1);
  });
  test('what cannot be made is refused with its reason', async () => {
    const full = await medlar(['blend', '10-10-10', '--to', '12-12-12', '--json']);
    expect([full.code, full.json.notices[0]!.code]).toEqual([4, 'batch-full']);
    const out = await medlar(['blend', '10-10-10', '46-0-0', '--to', '8-4-8', '--json']);
    expect([out.code, out.json.notices[0]!.code]).toEqual([4, 'batch-out']);
    expect((await medlar(['blend', '10-10-10', '--to', 'strong', '--json'])).json.notices[0]!.code).toBe('blend-to');
    expect((await medlar(['blend', '10-10-10', '--to', '5-5-5', '--batch', 'much', '--json'])).json.notices[0]!.code).toBe('blend-batch');
  });
});

describe('what must not be mixed', () => {
  // IPNI, fertilizer mixing: urea not with superphosphate.
  test.each([['blend', ['urea', 'triple superphosphate']], ['weigh', ['0.5 lb N, 0.2 lb P2O5', 'urea', 'triple superphosphate']]] as const)('%s says so', async (command, args) => {
    expect((await medlar([command, ...args, '--json'])).json.notices.map((n) => n.code)).toContain('mix-slush');
  });
  test('and so does the sheet', async () => {
    const poor = 'pH 6.4\nPhosphorus 5 ppm = very low\nPotassium 180 ppm (120-200)\n';
    const run = await medlar(['sheet', '--as', 'text'], { 'orchard.yaml': orchard(['Urea, 46-0-0, 4 lb, $3', 'Triple superphosphate, 0-46-0, 5 lb, $9']), 'a.txt': poor });
    expect(run.stdout.replace(/\s+/g, ' ')).toContain('Never mix Urea 46-0-0 with Triple superphosphate 0-46-0');
  });
});

describe('a dose too small for one plant', () => {
  test('is told over all of them, and others of the same row for each', async () => {
    const poor = 'pH 6.4\nPhosphorus 5 ppm = very low\nPotassium 20 ppm = very low\n';
    const tree = '20 raspberry, planted 2023, spacing 8 x 2 ft, bank';
    const run = await medlar(['sheet', '--as', 'text'], { 'orchard.yaml': orchard(['Urea, 46-0-0, 5 lb, $3', 'Sulfate of potash, 0-0-50, 5 lb, $9'], '', tree), 'a.txt': poor });
    const said = run.stdout.replace(/\s+/g, ' ');
    expect(said).toMatch(/over all 20 (?:ring [^U]*)?Urea/);
    expect(said).toMatch(/each of 20 Sulfate of potash/);
    expect(said).not.toContain('over all 20 each');
  });
});

describe('for the clerk', () => {
  test('plain grades for what is wanted, and the numbers to leave', async () => {
    // 1 lb N is 4.76 lb of 21-0-0 (Master Gardeners San Diego prints 5) and 2.17 lb of 46-0-0.
    const { list } = (await medlar(['shop', '--need', '1 lb N, 0 P2O5', '24-8-16, 5 lb, $14', '--json'])).json.result;
    expect(list.wishes.map((w: { nutrient: string; feeds: { grade: string; g: number }[] }) => [w.nutrient, ...w.feeds.map((f) => `${f.grade} ${(f.g / LB).toFixed(2)}`)])).toEqual([['N', '21-0-0 4.76', '46-0-0 2.17']]);
    expect(list.leave).toEqual(['P2O5']);
  });
  test('no muriate where a plant takes chloride badly', async () => {
    const peach = 'peach, planted 2017, 11 ft across, shoots 12 in 2025, fruit 60 lb 2025, bank';
    const run = await medlar(['shop', '--json'], { 'orchard.yaml': orchard(['Urea, 46-0-0, 4 lb, $3'], '', peach), 'a.txt': 'pH 6.4\nPhosphorus 164 ppm = very high\nPotassium 20 ppm = very low\n' });
    const potash = run.json.result.list.wishes.find((w: { nutrient: string }) => w.nutrient === 'K2O');
    expect(potash.feeds.map((f: { grade: string }) => f.grade)).toEqual(['0-0-50']);
  });
});
