// Bulk densities as printed (densities.ts; typed apart from the tables) against what a volume on a label is taken to weigh, and how much of a dose fills a cup.
import { describe, expect, test } from 'vitest';
import { parseBag } from '../../../src/orchard/bag.ts';
import { materialNamed } from '../../../src/orchard/label-material.ts';
import { LB, OZ, answer, published } from '../helpers.ts';
import { PRINTED_DENSITIES, PRINTED_LIQUIDS } from './densities.ts';
import { GROWER_CUPS } from './growers.ts';

type Row = { readonly material: string; readonly unit: string; readonly low: number; readonly high: number; readonly weight: string; readonly at: string; readonly mark: string };
const DENSITIES: readonly Row[] = PRINTED_DENSITIES;

/** Ounces in a US cup of one of each unit: 1 cubic foot is 119.69 cups (notes 3.1), a bushel 1.24446 cubic feet, a pint two cups. */
const CUP: Readonly<Record<string, number>> = { 'lb/ft3': 16 / 119.69, 'g/mL': 236.588 / OZ, 't/m3': 236.588 / OZ, 'oz/pint': 0.5, 'lb/bu': 16 / 119.69 / 1.24446, 'lb/yd3': 16 / 119.69 / 27 };
/** What stands for a row's own name. */
const AS: Readonly<Record<string, string>> = { 'other manures': 'cow manure', 'poultry by-product meal': 'feather meal', '10-10-10': '10-10-10' };
const NOWHERE = { file: '', line: 1, column: 1, length: 1, source: '' };
const MEALS = ['meal', 'manure', 'compost', 'ash'];

function heldOf(name: string): { span: readonly [number, number]; meal: boolean } {
  const material = materialNamed(AS[name] ?? name)?.material ?? parseBag(AS[name]!, 'US', false, NOWHERE).bag!.material!;
  const { bulk, ozPerCup } = material;
  return { span: bulk ? [bulk.low * CUP[bulk.unit]!, bulk.high * CUP[bulk.unit]!] : ozPerCup!, meal: MEALS.includes(material.kind) };
}

published({ id: 'printed-densities', title: 'Bulk densities of fertiliser materials', publisher: 'Extension services and others, each named at its row', url: null, mark: 'read' }, () => {
  describe('a university or a trade handout is inside the span', () => {
    // A bushel is heaped: [NOFA] prints 50 lb a bushel beside 1,000 lb a cubic yard, which is 46.
    const rows = DENSITIES.filter((r) => r.weight !== 'C' && r.unit !== 'lb/bu');
    test.each(rows.map((r) => [`${r.material}, ${r.low} to ${r.high} ${r.unit} (${r.at})`, r] as const))('%s', (_, { material, unit, low, high }) => {
      const { span } = heldOf(material);
      // The table keeps a tenth of an ounce.
      expect(low * CUP[unit]!).toBeGreaterThanOrEqual(span[0] - 0.06);
      expect(high * CUP[unit]!).toBeLessThanOrEqual(span[1] + 0.06);
    });
  });

  describe('a weak page, a bushel and what is recalled lie as near as the notes say cups do: 15 % for minerals, 25 % for meals', () => {
    const rows = DENSITIES.filter((r) => r.weight === 'C' || r.unit === 'lb/bu');
    test.each(rows.map((r) => [`${r.mark === 'memory' ? 'memory: ' : ''}${r.material}, ${r.low} to ${r.high} ${r.unit} (${r.at})`, r] as const))('%s', (_, { material, unit, low, high }) => {
      const { span, meal } = heldOf(material);
      const middle = ((low + high) / 2) * CUP[unit]!;
      const slack = meal ? 0.25 : 0.15;
      expect(middle).toBeGreaterThanOrEqual(span[0] * (1 - slack));
      expect(middle).toBeLessThanOrEqual(span[1] * (1 + slack));
    });
  });

  describe('a bag by the cubic foot weighs what is printed', () => {
    const rows = DENSITIES.filter((r) => r.unit === 'lb/ft3' && r.weight !== 'C' && !/^(?:low-density|granular)/.test(r.material));
    test.each(rows.map((r) => [r.material, r] as const))('%s', (_, { material, low, high }) => {
      const lb = parseBag(`${material} 1-1-1, 1 cu ft`, 'US', false, NOWHERE).bag?.g ?? parseBag(`${material}, 1 cu ft`, 'US', false, NOWHERE).bag!.g!;
      // The middle of all sources (of crystals and granules, of prills and low density): within 15 % of each.
      expect(lb / LB).toBeGreaterThan(low * 0.85);
      expect(lb / LB).toBeLessThan(high * 1.15);
    });
  });

  describe('a gallon of liquid weighs what is printed', () => {
    test.each(PRINTED_LIQUIDS.map((r) => [`${r.grade}: ${r.low} to ${r.high} lb (${r.at})`, r] as const))('%s', (_, { grade, low, high }) => {
      const lb = parseBag(`Liquid feed ${grade}, 1 gal`, 'US', false, NOWHERE).bag!.g! / LB;
      expect(lb).toBeGreaterThanOrEqual(low - 0.001);
      expect(lb).toBeLessThanOrEqual(high + 0.001);
    });
  });

  describe('cups', () => {
    // 10-10-10 at half a pound a cup: so many cups hold a weight of it. The pounds of nitrogen ask for that weight.
    const rows = GROWER_CUPS.filter((r) => r.material === '10-10-10');
    test.each(rows.map((r) => [`${r.lb} lb of ${r.material} is ${r.cups} cups (${r.source})`, r] as const))('%s', async (_, { lb, cups, id }) => {
      const { result } = await answer(['weigh', `${lb / 10} lb N`, '10-10-10', '--json']);
      // "Slightly less than a cup and a half" is 1.4.
      expect(Math.abs(result.bags[0].mL / 236.588 - (id === 'bed' ? 1.4 : cups))).toBeLessThan(0.02);
    });
    test('a pound of sulphur is 2 1/2 cups (blueberries.extension.org)', () => {
      const [low, high] = materialNamed('elemental sulphur')!.material.ozPerCup!;
      const cup = 16 / GROWER_CUPS.find((r) => r.material === 'elemental sulphur')!.cups;
      expect(cup).toBeGreaterThanOrEqual(low);
      expect(cup).toBeLessThanOrEqual(high);
    });
  });
});
