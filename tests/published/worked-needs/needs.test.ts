// Worked examples of extension services, from plant to product, each by a plan whose store holds the product named.
// Typed from research notes (targets, section 14; the number stands before each). Examples that other files hold:
// W2, W18, W19 iowa-fruit-trees, tennessee-cherries, michigan-garden-fruit; W9 fl-nassau-pecan; the sums alone of W3 and W5 to W10 also worked-doses.
import { describe, expect, test } from 'vitest';
import { LB, OZ, answer, crown, onePlant, only, planFolder } from '../helpers.ts';

const low = 'pH 6.4\nPhosphorus (P) 10 ppm  Mehlich 1  low\nPotassium (K) 30 ppm  Mehlich 1  low\n';

interface Example {
  readonly by: string;
  readonly facts: string;
  readonly where: string;
  readonly bag: string;
  readonly soil?: string;
  /** Grams of N a year. */
  readonly need: number;
  /** Grams of product a year, as printed, and half of the print's last step; the plain division where the print says about. */
  readonly product: number;
  readonly within: number;
}

const ten = '10-10-10, 40 lb, $20';
const examples: readonly Example[] = [
  { by: 'W1, Iowa State: 5 years, 0.5 lb N, 5 lb of 10-10-10', facts: 'apple, standard, planted 2021, 40 ft across, shoots 4 in', where: 'Iowa, US', bag: ten, need: 0.5 * LB, product: 5 * LB, within: 0.1 },
  { by: 'W2, Iowa State: 10 years and older, 1 lb N', facts: 'pear, standard, planted 2006, 40 ft across, shoots 4 in', where: 'Iowa, US', bag: ten, need: LB, product: 10 * LB, within: 0.1 },
  { by: 'W3, Utah State: 1 oz N from 20 %, 5 oz', facts: 'apple, standard, planted 2025, 20 ft across, shoots 4 in', where: 'Utah, US', bag: 'Feed, 20-0-0, 40 lb, $20', need: OZ, product: 5 * OZ, within: 0.1 },
  { by: 'W4, Virginia Tech: 4 years, 2 lb of 10-10-10 in March and 2 lb in April', facts: 'apple, standard, planted 2022, 40 ft across, shoots 4 in', where: 'Virginia, US', bag: ten, soil: low, need: 0.4 * LB, product: 4 * LB, within: 0.1 },
  { by: 'Practice W1, Virginia Tech: never above 10 lb of it a year', facts: 'apple, standard, planted 2008, 40 ft across, shoots 4 in', where: 'Virginia, US', bag: ten, soil: low, need: LB, product: 10 * LB, within: 0.1 },
  { by: 'W5, Maine: 0.5 oz N, 5 oz of 10-10-10', facts: 'apple, semi-dwarf, planted 2024, 20 ft across, shoots 4 in', where: 'Maine, US', bag: ten, need: 0.5 * OZ, product: 5 * OZ, within: 0.1 },
  { by: 'W7, Master Gardeners San Diego: 1 lb N from 20 %, 5 lb', facts: 'lemon, planted 2020, 30 ft across', where: 'California, US', bag: 'Feed, 20-0-0, 40 lb, $20', need: LB, product: 5 * LB, within: 0.1 },
  { by: 'W8, UC IPM: 1 lb N, about 5 lb of ammonium sulphate', facts: 'lemon, planted 2020, 30 ft across', where: 'California, US', bag: 'Sulphate of ammonia, 21-0-0 +24S, 10 lb, $20', need: LB, product: 5 * LB, within: 0.5 * LB },
  { by: 'W8, UC IPM: 1 lb N, 100 lb of composted cow manure', facts: 'lemon, planted 2020, 30 ft across', where: 'California, US', bag: 'Composted cow manure, 1-1-1, 40 lb, $6', need: LB, product: 100 * LB, within: 0.1 },
  { by: 'W13, Penn State: blueberry in year 4, 6 oz of ammonium sulphate', facts: 'blueberry, planted 2023, 4 ft across, shoots 3 in', where: 'Pennsylvania, US', bag: 'Sulphate of ammonia, 21-0-0 +24S, 10 lb, $20', need: 6 * 0.21 * OZ, product: 6 * OZ, within: 0.1 },
  { by: 'W20, Colorado State: apple with 5 in of trunk, 0.5 lb N', facts: 'apple, standard, planted 2010, trunk 5 in across, 40 ft across, shoots 4 in', where: 'Colorado, US', bag: ten, need: 0.5 * LB, product: 5 * LB, within: 0.1 },
  { by: 'W20, Colorado State: peach with 5 in of trunk, 0.625 lb N', facts: 'peach, standard, planted 2010, trunk 5 in across, 40 ft across, shoots 4 in', where: 'Colorado, US', bag: ten, need: 0.625 * LB, product: 6.25 * LB, within: 0.1 },
  { by: 'W21, Penn State: stone fruit in its 3rd year after planting, 1.5 lb of 10-10-10', facts: 'peach, standard, planted 2023, 40 ft across, shoots 4 in', where: 'Pennsylvania, US', bag: ten, need: 0.15 * LB, product: 1.5 * LB, within: 0.1 },
  { by: 'W21, Penn State: in its 12th, 5 lb', facts: 'peach, standard, planted 2014, 40 ft across, shoots 4 in', where: 'Pennsylvania, US', bag: ten, need: 0.5 * LB, product: 5 * LB, within: 0.1 },
  // RHS prints 100 g/m² as 3 oz and 140 g/m² as 4 oz to the square yard: a crown of one square yard, 1.03180 m across, by 7-7-7.
  { by: 'W17, RHS: bare soil, 3 oz to a square yard (2.95)', facts: 'apple, semi-dwarf, planted 2014, 1.0318 m across, bare, shoots 10 cm', where: 'England, UK', bag: 'Growmore, 7-7-7, 10 kg, £20', need: 7 * 0.83613, product: 3 * OZ, within: 0.5 * OZ },
  { by: 'W17, RHS: in grass, 4 oz to a square yard (4.13)', facts: 'apple, semi-dwarf, planted 2014, 1.0318 m across, grass, shoots 10 cm', where: 'England, UK', bag: 'Growmore, 7-7-7, 10 kg, £20', need: 9.8 * 0.83613, product: 4 * OZ, within: 0.5 * OZ },
];

describe('worked examples from plant to product', () => {
  for (const { by, facts, where, bag, soil, need, product, within } of examples) {
    test(by, async () => {
      const tree = only(await onePlant(facts, { where, bags: [bag], ...(soil === undefined ? {} : { soil }) }));
      const given = tree.feeds.reduce((sum, feed) => sum + feed.gExact, 0);
      expect(Math.abs(tree.need.N - need)).toBeLessThan(0.05);
      expect(Math.abs(given - product)).toBeLessThanOrEqual(within);
      const share = Number(/([\d.]+)-[\d.]+-[\d.]+/.exec(bag)?.[1]) / 100;
      expect(Math.abs(given - need / share)).toBeLessThan(0.5);
    });
  }

  // Virginia Soil Test Note 21 gives W4 twice, in March and in April; a cup of 10-10-10 is half a pound.
  test('W4, Virginia Tech: two doses of 2 lb, 4 cups each', async () => {
    const { feeds } = only(await onePlant('apple, standard, planted 2022, 40 ft across, shoots 4 in', { where: 'Virginia, US', bags: [ten], soil: low }));
    for (const { gExact, mL } of feeds) expect(Math.abs(gExact / (mL ?? NaN) - (0.5 * LB) / 236.588)).toBeLessThan(0.001);
    expect(feeds.map(({ gExact }) => Number((gExact / LB).toFixed(2)))).toEqual([2, 2]);
  });

  // UF/IFAS, Citrus Culture in the Home Landscape, in a frost-free year: doses, and pounds of 6-6-6 and 10-10-10 a dose at the low rate.
  const citrus = [
    [2026, 6, 0.4, 0.3],
    [2025, 5, 1.0, 0.6],
    [2024, 4, 1.9, 1.1],
    [2023, 3, 4.4, 2.7],
    [2022, 3, 6.1, 3.7],
  ] as const;
  for (const [planted, doses, six, tens] of citrus) {
    for (const [bag, printed] of [['6-6-6', six], ['10-10-10', tens]] as const) {
      test(`W12, Florida: lemon planted ${String(planted)}, ${String(doses)} doses of ${String(printed)} lb of ${bag}`, async () => {
        const plan = await planFolder({ 'orchard.yaml': `orchard: One plant\nwhere: Florida, US\nbud-break: 1 February\nfirst-frost: 31 December\ntrees:\n  Number one: lemon, planted ${String(planted)}, 30 ft across\nstore:\n  - Feed, ${bag}, 40 lb, $20\n` }, '2026-01-14');
        const { feeds } = only(plan);
        expect(feeds).toHaveLength(doses);
        // One decimal, half up, as the table rounds.
        for (const { gExact } of feeds) expect(Math.floor((gExact / LB) * 10 + 0.5 + 1e-6) / 10).toBe(printed);
      });
    }
  }

  // University of Arizona, Yavapai County, "Fertilizing Fruit Trees".
  test('W11, Arizona: 10 lb of 10-10-10 hold a pound of each', async () => {
    const { result } = await answer(['weigh', '1 lb N', '10-10-10', '--json']);
    expect(result.bags[0].g / LB).toBeCloseTo(10, 5);
    for (const name of ['N', 'P2O5', 'K2O']) expect(result.supplied[name] / LB).toBeCloseTo(1, 5);
  });

  // Rates that no rule inside may lead with, as the grower's own rule.
  const rule = (crop: string, lines: string): string => `- id: sheet\n  crops: [${crop}]\n${lines}  from: the sheet\n`;
  const orchard = (where: string, facts: string, bag: string): string =>
    `orchard: One plant\nwhere: ${where}\nbud-break: 12 April\nfirst-frost: 12 October\ntrees:\n  Number one: ${facts}\nstore:\n  - ${bag}\n`;

  test('W6, Ventura County: 1 lb N from 16-16-16 in two, about 3 lb each', async () => {
    const { feeds } = only(await planFolder({
      'orchard.yaml': orchard('California, US', 'apple, standard, planted 2006, 45 ft across, shoots 4 in', 'Feed, 16-16-16, 40 lb, $20'),
      'rules.yaml': rule('apple', '  by: plant\n  gives: { of: N, unit: lb }\n  low: 1\n  doses: 2\n'),
    }));
    expect(feeds.map(({ gExact }) => Math.round(gExact / LB))).toEqual([3, 3]);
    expect(feeds.reduce((sum, { gExact }) => sum + gExact, 0) / LB).toBeCloseTo(6.25, 2);
  });

  test('W10, UC almond adviser: first leaf, 1 oz N from 12-12-12, about 8 oz', async () => {
    const { feeds } = only(await planFolder({
      'orchard.yaml': orchard('California, US', 'almond, planted 2026, 10 ft across', 'Feed, 12-12-12, 40 lb, $20'),
      'rules.yaml': rule('almond', '  by: plant\n  gives: { of: N, unit: oz }\n  low: 1\n  years: [0, 1]\n'),
    }));
    const ounces = feeds.reduce((sum, { gExact }) => sum + gExact, 0) / OZ;
    expect(Math.round(ounces)).toBe(8);
    expect(ounces).toBeCloseTo(8.33, 2);
  });

  test('W16, Virginia Tech: strawberry bed of 100 sq ft, 1.5 lb of 10-10-10, 3 cups', async () => {
    const { feeds } = only(await planFolder({
      'orchard.yaml': orchard('Virginia, US', 'strawberry, planted 2026, spacing 10 x 10 ft', ten),
      'rules.yaml': rule('strawberry', '  by: area\n  gives: { of: product, unit: lb/100 sq ft, percentN: 10 }\n  low: 1.5\n  years: [0, 1]\n'),
    }));
    const grams = feeds.reduce((sum, { gExact }) => sum + gExact, 0);
    expect(grams / LB).toBeCloseTo(1.5, 3);
    for (const { g, mL } of feeds) expect(((mL ?? NaN) / 236.588) * (grams / g)).toBeCloseTo(3, 2);
  });

  // The crown of W17 is a square yard.
  test('1.0318 m across is a square yard', () => {
    expect(crown(1.0318 / 0.3048)).toBeCloseTo(0.83613, 3);
  });
});
