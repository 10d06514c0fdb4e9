// What the bags of a whole orchard must keep to: the shed holds no more than it holds, ash comes behind other lime, a phosphate
// or potash dose is its own rounding, no phosphate is added for more nitrogen. Expected values by hand from the labels.
import { describe, expect, test } from 'vitest';
import { medlar } from '../medlar.ts';

const LB = 453.59237;
const HALF_OUNCE = LB / 32;
const TREES = [
  'Old: apple, standard, planted 1998, 26 ft across, shoots 4 in 2025, fruit 120 lb 2025, hill', 'Young: apple, dwarf, planted 2021, 8 ft across, shoots 11 in 2025, hill', 'Peach: peach, planted 2022, 9 ft across, shoots 14 in 2025, fruit 30 lb 2025, hill',
  'Cherry: tart cherry, planted 2019, 12 ft across, shoots 9 in 2025, hill', 'Canes: 20 raspberry, planted 2023, spacing 8 x 2 ft, hill',
];
const SOIL = 'Soil pH 5.5\nBuffer pH (SMP) 6.6\nPhosphorus 18 ppm LOW\nPotassium 95 ppm LOW\nTexture sandy loam\n';
const STORE = ['Urea, 46-0-0, 5 lb, $12', 'Triple superphosphate, 0-46-0, 10 lb, $17', 'Sulfate of potash, 0-0-50, 5 lb, $14'];
const planned = async (shed: readonly string[], store: readonly string[], trees = TREES) => {
  const list = (name: string, bags: readonly string[]): string => (bags.length === 0 ? '' : `${name}:\n${bags.map((b) => `  - ${b}\n`).join('')}`);
  const yaml = `where: Pennsylvania, US\nlast-frost: 10 May\nfirst-frost: 8 October\nsoil:\n  hill: a.txt\ntrees:\n${trees.map((t) => `  ${t}\n`).join('')}${list('shed', shed)}${list('store', store)}`;
  const run = await medlar(['plan', '--json'], { 'orchard.yaml': yaml, 'a.txt': SOIL });
  expect(run.code, run.stdout).toBe(0);
  return run.json;
};
type Buy = { bag: string; needG: number; bags: number | null; leftG: number | null };

describe('lime out of the shed', () => {
  const used = async (shed: readonly string[], store: readonly string[]) => {
    const { buy, ph } = (await planned(shed, [...STORE, ...store])).result;
    return { buy: buy as Buy[], materials: new Set<string>(ph.filter((p: { verdict: string; g: number | null }) => p.verdict === 'lime' && (p.g ?? 0) > 0).map((p: { material: string }) => p.material)) };
  };
  test('no more than stands there; the rest is bought', async () => {
    const { buy, materials } = await used(['Old lime, CCE 92, 5 lb'], ['Pelletized lime, CCE 92, 40 lb, $6']);
    const old = buy.find((b) => b.bag === 'Old lime');
    expect(old?.needG ?? 0).toBeLessThanOrEqual(5 * LB + 0.001);
    expect(buy.find((b) => b.bag === 'Pelletized lime')!.bags).toBeGreaterThan(0);
    expect([...materials]).toContain('Pelletized lime');
  });
  test('ash only where no other lime is listed', async () => {
    expect([...(await used(['Wood ash, 80 lb'], ['Pelletized lime, CCE 92, 40 lb, $6'])).materials]).toEqual(['Pelletized lime']);
    expect([...(await used(['Wood ash, 80 lb'], [])).materials]).toEqual(['Wood ash']);
  });
});

test('each dose of phosphate and potash is rounded by itself, to the nearest half ounce', async () => {
  const { trees } = (await planned([], STORE)).result;
  const doses = trees.flatMap((t: { feeds: { bag: string; g: number; gExact: number }[] }) => t.feeds).filter((f: { bag: string }) => f.bag !== 'Urea');
  expect(doses.length).toBeGreaterThan(8);
  for (const d of doses as { g: number; gExact: number }[]) if (d.gExact > HALF_OUNCE) expect(Math.abs(d.g - d.gExact)).toBeLessThanOrEqual(HALF_OUNCE / 2 + 0.01);
});

test('more nitrogen on a small ring is no reason for phosphate that nobody wants', async () => {
  // Coated 14-14-14 would bring as much P2O5 as N; ammonium sulfate brings none and is cut to what the ring takes.
  const json = await planned([], ['Coated, 14-14-14 slow release, 8 lb, $1', 'Sulfate of ammonia, 21-0-0, 50 lb, $28', ...STORE.slice(1)], ['Bush: 6 blueberry, planted 2019, 3 ft across, hill']);
  const [bush] = json.result.trees;
  expect(bush.over.P2O5).toBeLessThan(0.25 * bush.need.P2O5 + 2);
  expect(bush.feeds.map((f: { bag: string }) => f.bag)).toContain('Sulfate of ammonia');
});

// Blueberries are fed ammonium sulphate because it keeps the soil acid (New York's and Michigan's blueberry guides); urea does so far less.
describe('acid feed', () => {
  test('goes to the blueberries, though an apple stands first', async () => {
    const { trees } = (await planned(['Sulfate of ammonia, 21-0-0, 2 lb'], ['Urea, 46-0-0, 5 lb, $12'], ['Gate: apple, semi-dwarf, planted 2016, 14 ft across, shoots 6 in 2025, hill', 'Blues: 3 blueberry, planted 2020, hill'])).result;
    const bagsOf = (name: string): string[] => [...new Set<string>(trees.find((t: { name: string }) => t.name === name).feeds.map((d: { bag: string }) => d.bag))];
    expect(bagsOf('Blues')).toContain('Sulfate of ammonia');
    expect(bagsOf('Blues')).not.toContain('Urea');
  });
});
