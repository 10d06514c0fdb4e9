// Worked examples of practice: splits, rings, rates of ground, limits. Typed from research notes (practice, section 10;
// the number stands before each, with its publisher). Held elsewhere: W3 and W4 worked-doses, W5 worked-weights and
// worked-needs, W9 michigan-garden-fruit, W12 colorado-1216.
import { describe, expect, test } from 'vitest';
import { LB, OZ, answer, crown, expectFigures, nitrogenBy, onePlant, only, planFolder } from '../helpers.ts';

const ten = '10-10-10, 40 lb, $20';
const sulphate = 'Sulphate of ammonia, 21-0-0 +24S, 10 lb, $20';
const squareFoot = 0.3048 ** 2;

/** A rate that no rule inside may lead with, as the grower's own rule; the season is long enough for four doses. */
async function byRule(facts: string, bag: string, rule: string): ReturnType<typeof planFolder> {
  return planFolder({
    'orchard.yaml': `orchard: One plant\nwhere: Texas, US\nbud-break: 1 March\nfirst-frost: 15 December\ntrees:\n  Number one: ${facts}\nstore:\n  - ${bag}\n`,
    'rules.yaml': `- id: sheet\n  crops: [persimmon]\n${rule}  from: the sheet\n`,
  }, '2026-01-14');
}

describe('worked examples of practice', () => {
  // 0.1 lb N a year of age; a canopy of 5 ft radius cleared to 2 ft, out to 10 ft: 301.6 sq ft, 1.66 lb N to 1000 sq ft.
  test('W2, Iowa State: 5 years, 5 lb of 10-10-10 on a ring of 301.6 sq ft', async () => {
    const tree = only(await byRule('persimmon, planted 2021, trunk 4 in across, 10 ft across, shoots 4 in', ten, '  by: years\n  gives: { of: N, unit: lb }\n  low: 0.1\n  cap: 1\n'));
    expect(tree.need.N / LB).toBeCloseTo(0.5, 5);
    expect(tree.feeds.reduce((sum, { gExact }) => sum + gExact, 0) / LB).toBeCloseTo(5, 3);
    for (const { ring } of tree.feeds) {
      expect((ring?.m2 ?? NaN) / squareFoot).toBeCloseTo(301.6, 1);
      expect((tree.need.N / LB / ((ring?.m2 ?? NaN) / squareFoot)) * 1000).toBeCloseTo(1.66, 2);
    }
  });

  const citrus = [[2025, 0.25, 2], [2024, 0.5, 2], [2023, 0.75, 3], [2022, 1, 3]] as const;
  for (const [planted, pounds, most] of citrus) {
    test(`W6, UC IPM: citrus planted ${String(planted)}, ${String(pounds)} lb N in 2-3 doses`, async () => {
      const { feeds } = only(await onePlant(`lemon, planted ${String(planted)}, 30 ft across`, { where: 'California, US', bags: [sulphate] }));
      expect(feeds).toHaveLength(most);
      // The fifth year in three: 0.333 lb N each.
      for (const { gExact } of feeds) expect((gExact * 0.21) / LB).toBeCloseTo(pounds / most, 3);
    });
  }

  for (const [wanted, printed, exact] of [[2, 6, 6.06], [3, 9, 9.09]] as const) {
    test(`W7, Kentucky: ${String(wanted)} lb N from ammonium nitrate of 33 %, ${String(printed)} lb`, async () => {
      const { result } = await answer(['weigh', `${String(wanted)} lb N`, '33-0-0', '--json']);
      expect(Math.round(result.bags[0].g / LB)).toBe(printed);
      expect(result.bags[0].g / LB).toBeCloseTo(exact, 2);
    });
  }

  // A canopy of 10 ft radius has roots out to 20 ft, 1256.6 sq ft: 2 to 3 lb to 1000 sq ft are 2.5 to 3.8 lb.
  test('W8, Kentucky: 1256.6 sq ft at 2-3 lb N to 1000, 2.5-3.8 lb', async () => {
    expect(crown(40) / squareFoot).toBeCloseTo(1256.6, 1);
    const plan = await byRule('persimmon, planted 2000, 40 ft across, shoots 4 in', sulphate, '  by: area\n  gives: { of: N, unit: lb/1000 sq ft }\n  low: 2\n  high: 3\n');
    const grams = nitrogenBy(plan, 'own-rules');
    expect((Math.min(...grams) / LB).toFixed(1)).toBe('2.5');
    expect((Math.max(...grams) / LB).toFixed(1)).toBe('3.8');
  });

  // Michigan: half in mid or late April, half in late May. A 4 in trunk: 4 lb of 10-10-10, 0.4 lb N.
  test('W10, Michigan State: stone fruit of 4 lb of 10-10-10, 2 lb and 2 lb', async () => {
    const { need, feeds } = only(await onePlant('peach, standard, planted 2018, trunk 4 in across, 40 ft across, shoots 4 in', { where: 'Michigan, US', bags: [ten] }));
    expect(need.N / LB).toBeCloseTo(0.4, 5);
    expect(feeds.map(({ gExact }) => Number((gExact / LB).toFixed(2)))).toEqual([2, 2]);
  });

  // Georgia: a cup of 10-10-10 a year, half before the buds open and half after fruiting.
  test('W11, Georgia: pear of 6 years, 3 cups and 3 cups', async () => {
    const { feeds } = only(await onePlant('pear, standard, planted 2020, 40 ft across, shoots 4 in', { where: 'Georgia, US', bags: [ten] }));
    expect(feeds.reduce((sum, { gExact }) => sum + gExact, 0)).toBeCloseTo(6 * 8 * OZ, 1);
    expect(feeds.map(({ mL }) => Math.round((mL ?? NaN) / 236.588))).toEqual([3, 3]);
  });

  // Cooking apple half as much again: 150 g/m² on bare soil, 210 in grass, of 7-7-7: 10.5 and 14.7 g N.
  describe('W13, RHS: cooking apple', () => {
    expectFigures('rhs-feeding', [
      ['cooking apple, semi-dwarf, planted 2014, 12 ft across, bare, shoots 4 in', [1.5 * 7 * crown(12)], { where: 'England, UK' }],
      ['cooking apple, semi-dwarf, planted 2014, 12 ft across, grass, shoots 4 in', [1.5 * 9.8 * crown(12)], { where: 'England, UK' }],
    ]);
  });

  // Cups of 21-0-0 a dose, half a pound a cup; a weak copy of a Texas pattern, for its sums alone.
  for (const [planted, cups, doses, pounds] of [[2025, 1, 4, 0.42], [2024, 2, 4, 0.84], [2023, 3, 4, 1.26]] as const) {
    test(`W14, Texas pattern: ${String(cups)} cup x ${String(doses)}, ${String(pounds)} lb N`, async () => {
      const tree = only(await byRule(`persimmon, planted ${String(planted)}, 30 ft across, shoots 4 in`, sulphate, `  by: plant\n  gives: { of: product, unit: cup, percentN: 21, ozPerCup: 8 }\n  low: ${String(cups * doses)}\n  doses: ${String(doses)}\n`));
      expect(tree.need.N / LB).toBeCloseTo(pounds, 5);
      expect(tree.feeds).toHaveLength(doses);
      for (const { gExact } of tree.feeds) expect(gExact / (8 * OZ)).toBeCloseTo(cups, 3);
    });
  }

  // A peach of 5 years, by a weak copy of a Georgia-like schedule: 5 cups of 10-10-10 in March, 4 cups of calcium nitrate in August.
  test('W15: 5 years, 5 cups of 10-10-10 or 4 of calcium nitrate', async () => {
    const rules = (id: string, percent: number, cap: number): string => `- id: ${id}\n  crops: [peach]\n  by: years\n  gives: { of: product, unit: cup, percentN: ${String(percent)}, ozPerCup: 8 }\n  low: 1\n  cap: ${String(cap)}\n  from: the sheet\n`;
    const plan = await planFolder({
      'orchard.yaml': `orchard: One plant\nwhere: Georgia, US\nbud-break: 12 March\nfirst-frost: 12 November\ntrees:\n  Number one: peach, standard, planted 2021, 30 ft across, shoots 4 in\nstore:\n  - ${ten}\n`,
      'rules.yaml': rules('spring', 10, 10) + rules('august', 15.5, 4),
    });
    const grams = nitrogenBy(plan, 'own-rules');
    for (const wanted of [5 * 8 * 0.1 * OZ, 4 * 8 * 0.155 * OZ]) expect(grams.some((g) => Math.abs(g - wanted) < 0.05)).toBe(true);
  });

  // Washington Post, 1978: 0.4 lb N to 100 sq ft, 4 lb to 1000: twice what is followed even where the report bids it.
  test('W16, Washington Post: 4 lb of 10-6-4 to 100 sq ft is refused', async () => {
    const run = await answer(['plan', '--json', '--today', '2026-03-14'], {
      'orchard.yaml': `orchard: One plant\nwhere: Maryland, US\nbud-break: 12 April\nfirst-frost: 12 October\nsoil:\n  north bed: soil.txt, by the lab\ntrees:\n  Number one: apple, standard, planted 2010, 12 ft across, shoots 4 in, north bed\nstore:\n  - ${ten}\n`,
      'soil.txt': 'pH 6.5\nApply 4 lb of 10-6-4 per 100 sq ft\n',
    });
    const refused = run.notices.filter(({ code }) => code === 'advice-refused');
    expect(refused).toHaveLength(1);
    // 113.1 sq ft at 0.4 lb to 100: 0.452 lb, 7.2 oz.
    expect(refused[0]?.text).toContain('7.2 oz');
    expect(run.result.trees[0].need.N).toBeLessThan(0.4 * 1.131 * LB);
  });

  // A small orchard's page: 0.1 lb N an inch of trunk (Colorado's rule), manure 1-1-1 in bags of 40 lb; a bag and a half and two and a half are two and three bags.
  for (const [inches, pounds, bags] of [[6, 60, 2], [10, 100, 3]] as const) {
    test(`W17: ${String(inches)} in of trunk, ${String(pounds)} lb of manure`, async () => {
      const plan = await onePlant(`apple, standard, planted 2010, trunk ${String(inches)} in across, 45 ft across, shoots 4 in`, { where: 'Colorado, US', bags: ['Manure, 1-1-1, 40 lb, $6'] });
      expect(only(plan).feeds.reduce((sum, { gExact }) => sum + gExact, 0) / LB).toBeCloseTo(pounds, 3);
      expect(plan.result.buy.map((one) => one.bags)).toEqual([bags]);
      expect((plan.result.buy[0]?.leftG ?? NaN) / LB).toBeCloseTo(20, 1);
    });
  }

  // Half an ounce of N on a ring from 0.5 to 2 ft: 11.78 sq ft, 2.65 lb N to 1000, so that it needs parting in three.
  test('W22, Maine: 0.5 oz N on 11.78 sq ft', async () => {
    const { need, feeds } = only(await byRule('persimmon, planted 2024, 2 ft across, shoots 4 in', ten, '  by: plant\n  gives: { of: N, unit: oz }\n  low: 0.5\n'));
    expect(need.N / OZ).toBeCloseTo(0.5, 5);
    expect(feeds).toHaveLength(3);
    for (const { ring } of feeds) {
      expect((ring?.m2 ?? NaN) / squareFoot).toBeCloseTo(11.78, 2);
      expect((need.N / LB / ((ring?.m2 ?? NaN) / squareFoot)) * 1000).toBeCloseTo(2.65, 2);
    }
  });

  // mg/L is grams a litre x per cent x 10; a US gallon is 3.785 L.
  for (const [by, milligrams, litres, grams, digits] of [['200 mg/L in a litre', 200, 1, 1, 4], ['100 mg/L in a litre', 100, 1, 0.5, 4], ['100 mg/L in a gallon', 100, 3.785, 1.9, 1]] as const) {
    test(`W23, derived: ${by} from 20 % N, ${String(grams)} g`, async () => {
      const { result } = await answer(['weigh', `${String((milligrams * litres) / 1000)} g N`, '20-20-20', '--json']);
      expect(result.bags[0].g).toBeCloseTo(grams, digits);
    });
  }
});
