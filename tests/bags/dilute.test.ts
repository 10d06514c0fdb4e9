// A tub fed in its water: half a gram of N a litre of mix and season, 100 to 200 mg of N a litre once a week (nursery practice, memory),
// and never more water than a fifth of the mix (practice). Weeks and sums by hand.
import { describe, expect, test } from 'vitest';
import { diluteOf } from '../../src/bags/dilute.ts';
import type { Bag } from '../../src/orchard/bag.ts';
import { parseBag } from '../../src/orchard/bag.ts';
import type { Tree } from '../../src/orchard/tree.ts';
import { placeIn } from '../../src/reason/notice.ts';
import { medlar } from '../medlar.ts';

const bagOf = (label: string, shed = false): Bag => parseBag(label, 'US', shed, placeIn('', 1, label, 0, label.length)).bag!;
const tub = (litres: number, crop = 'fig'): Tree => ({ name: 'T', crop, tub: litres, count: 1, flags: [] }) as unknown as Tree;
const SEASON = { from: '2026-04-01', until: '2026-07-14' };
const N = (n: number) => ({ N: n, P2O5: n / 3, K2O: (2 * n) / 3 });

describe('how much in how much water', () => {
  test('a season in weeks: 1 April to 14 July are 104 days, 15 feeds', () => {
    // 30 g of N for 60 L in 15 feeds: 2 g, at 20 % 10 g; at 150 mg a litre in 13.3 L, but a fifth of the mix is 12 L: 167 mg.
    expect(diluteOf(tub(60), N(30), [bagOf('20-20-20 water soluble, 1 lb')], [], SEASON)).toMatchObject({ g: { value: 10 }, waterL: 12, times: 15, from: '2026-04-01', until: '2026-07-08' });
  });
  test('never stronger than the strongest, never more water than a fifth; the season that is left decides', () => {
    for (const until of ['2026-04-05', '2026-04-20', '2026-06-01', '2026-09-01', '2027-01-01']) {
      for (const litres of [5, 20, 60, 200]) {
        const d = diluteOf(tub(litres), N(litres / 2), [bagOf('24-8-16 water soluble, 1 lb')], [], { from: '2026-04-01', until });
        // Five litres for a few days: a gram would be too strong.
        if (d === null) {
          expect(litres).toBe(5);
          continue;
        }
        const strength = (1000 * d.g.value * 0.24) / d.waterL;
        expect(strength).toBeLessThanOrEqual(200);
        // Rounded up to the half litre.
        expect(d.waterL).toBeLessThanOrEqual(0.2 * litres + 0.5);
        expect(d.times * d.g.value * 0.24).toBeLessThanOrEqual(litres / 2 + 1e-9);
      }
    }
  });
  test('nothing without a bag that dissolves, without a need, or out of season', () => {
    const bags = [bagOf('20-20-20 water soluble, 1 lb')];
    expect(diluteOf(tub(60), N(30), [bagOf('10-10-10, 40 lb'), bagOf('Sulfate of ammonia, 21-0-0, 4 lb'), bagOf('14-14-14 slow release, 4 lb'), bagOf('Blood meal, 5 lb')], [], SEASON)).toBeNull();
    expect(diluteOf(tub(60), N(0), bags, [], SEASON)).toBeNull();
    expect(diluteOf(tub(60), N(30), bags, [], { from: '2026-08-01', until: '2026-07-14' })).toBeNull();
    expect(diluteOf(tub(60), N(30), [bagOf('Weed and feed 20-0-0 water soluble, 1 lb')], [], SEASON)).toBeNull();
    expect(diluteOf(tub(60, 'blueberry'), N(30), [bagOf('Calcium nitrate water soluble, 5 lb')], [], SEASON)).toBeNull();
  });
  test('the bag that brings all three before one that brings nitrogen alone; then the shed', () => {
    const [plain, full] = [bagOf('Urea 46-0-0 water soluble, 5 lb, $5'), bagOf('24-8-16 water soluble, 1 lb, $20')];
    expect(diluteOf(tub(60), N(30), [plain, full], [], SEASON)!.bag).toBe(full);
    expect(diluteOf(tub(60), { N: 30, P2O5: 0, K2O: 0 }, [full, plain], [], SEASON)!.bag).toBe(plain);
    const mine = bagOf('20-20-20 water soluble, 1 lb', true);
    expect(diluteOf(tub(60), N(30), [full, mine], [], SEASON)!.bag).toBe(mine);
  });
});

describe('in the plan', () => {
  const files = (bags: string, today = '') => ({ 'orchard.yaml': `where: Ohio, US\nlast-frost: 5 May\nfirst-frost: 12 October\ntrees:\n  Fig: fig, planted 2020, tub 60 L\nstore:\n${bags}${today}` });
  test('what it takes in all is bought, and what coated feed is listed comes first', async () => {
    const { result } = (await medlar(['plan', '--json'], files('  - 20-20-20 water soluble, 1 lb, $8\n'))).json;
    const [fig] = result.trees;
    expect(fig.feeds).toEqual([]);
    expect(result.buy[0].needG).toBeCloseTo(fig.dilute.times * fig.dilute.g, 6);
    expect(fig.supplied.N).toBeCloseTo(fig.dilute.times * fig.dilute.g * 0.2, 6);
    const coated = (await medlar(['plan', '--json'], files('  - 20-20-20 water soluble, 1 lb, $8\n  - 14-14-14 slow release, 4 lb, $15\n'))).json.result.trees[0];
    expect([coated.dilute, coated.feeds.length]).toEqual([null, 1]);
  });
  test('what was fed already is left out', async () => {
    const all = (await medlar(['plan', '--json', '--today', '2026-05-01'], files('  - 20-20-20 water soluble, 1 lb, $8\n'))).json.result.trees[0];
    const rest = (await medlar(['plan', '--json', '--today', '2026-05-01'], { ...files('  - 20-20-20 water soluble, 1 lb, $8\n'), 'diary.csv': 'date,trees,what,bag,amount,note\n2026-04-20,Fig,fed,20-20-20 water soluble,100 g,\n' })).json.result.trees[0];
    expect(rest.dilute.g).toBeLessThan(all.dilute.g);
  });
  test('why so much in the can: the need of the tub and the water that it takes, as told', async () => {
    const gallons = { 'orchard.yaml': files('  - 20-20-20 water soluble, 1 lb, $8\n')['orchard.yaml'].replace('tub 60 L', 'in a 15 gal pot') };
    const { stdout, code } = await medlar(['why', 'Fig', 'dose'], gallons);
    expect(code).toBe(0);
    // A fifth of 15 gallons (common practice).
    for (const said of ['A tub of 15 gal gets', 'at most 3 gal of water', ' g each time']) expect(stdout).toContain(said);
    expect((await medlar(['why', 'Fig', 'date'], gallons)).stdout).toContain('in 3 gal of water, once a week');
  });
  test('a bag that the plan takes for a tub is not to be left at the store', async () => {
    const orchard = files('  - 14-14-14 slow release, 4 lb, $15\n  - Sulphate of ammonia, 21-0-0, 4 lb, $9\n')['orchard.yaml'].replace('trees:\n', 'soil: s.txt\ntrees:\n  Gate apple: apple, semi-dwarf, planted 2019, 12 ft across, shoots 6 in 2025\n');
    const both = { 'orchard.yaml': orchard, 's.txt': 'pH 6.4\nPhosphorus 164 ppm, very high\nPotassium 300 ppm, very high\n' };
    const bought = (await medlar(['plan', '--json'], both)).json.result.buy.map((b: { label: string }) => b.label);
    expect(bought).toHaveLength(2);
    const { bags } = (await medlar(['shop', '--json'], both)).json.result;
    expect(bags.map((b: { verdict: string; why: string }) => [b.verdict, b.why])).toEqual([['buy', 'best'], ['fine', 'tubs']]);
    // One that is too little alone but stands in the cheapest purchase is not to be left either.
    const three = { ...both, 'orchard.yaml': orchard.replace('  - 14-14-14 slow release, 4 lb, $15', '  - 20-20-20 water soluble, 1 lb, $8') };
    const shopped = (await medlar(['shop', '--json'], three)).json.result;
    expect(shopped.purchase.bags.map((b: { label: string }) => b.label).sort()).toHaveLength(2);
    expect(shopped.bags.filter((b: { verdict: string }) => b.verdict === 'leave')).toEqual([]);
    // A water-soluble feed for tubs alone.
    const can = (await medlar(['shop', '20-20-20 water soluble, 2 lb, $9', '10-10-10, 5 lb, $4', '--json'], files(''))).json.result.bags;
    expect(can.map((b: { verdict: string }) => b.verdict)).toEqual(['buy', 'leave']);
  });
  test('the sheet has its row, the caution about salts and the weight of each can', async () => {
    const { stdout } = await medlar(['sheet', '--as', 'text'], files('  - 20-20-20 water soluble, 1 lb, $8\n'));
    expect(stdout).toMatch(/\[ \] 1 FIG +\d+(?:\.5)? g/);
    expect(stdout.replace(/\s+/g, ' ')).toMatch(/of water, once a week, .* \(\d+ times\)/);
    expect(stdout).toContain('salt');
    const bare = await medlar(['sheet', '--as', 'text'], files('  - 10-10-10, 40 lb, $20\n'));
    expect(bare.stdout).toContain('NOTHING');
  });
});

test('a tub too small for a weighable can has its own reason', async () => {
  const files = { 'orchard.yaml': 'where: Ohio, US\ntrees:\n  Thimble: strawberry, planted 2024, tub 0.2 L\nstore:\n  - 20-20-20 water soluble, 1 lb, $8\n' };
  const { stdout } = await medlar(['plan'], files);
  expect(stdout).toContain('too little to weigh');
  expect(stdout).not.toContain('neither is listed');
});

// A feed of one dose belongs in spring: opened late, half of it goes on (tables/timing.ts, judgement), coated feed in a tub as well.
test('coated feed late in the season is halved', async () => {
  const files = { 'orchard.yaml': 'where: Ohio, US\nlast-frost: 5 May\nfirst-frost: 12 October\ntrees:\n  Fig: fig, planted 2020, tub 100 L\nstore:\n  - 14-14-14 slow release, 4 lb, $15\n' };
  const gOf = async (today: string): Promise<number> => (await medlar(['plan', '--json', '--today', today], files)).json.result.trees[0].feeds[0].g;
  const [early, late] = [await gOf('2026-03-14'), await gOf('2026-07-05')];
  // Half, to the half ounce of the scale.
  expect(Math.abs(late - early / 2)).toBeLessThanOrEqual(14.2);
});

