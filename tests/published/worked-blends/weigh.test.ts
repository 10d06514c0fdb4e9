// Published sums of several bags for several nutrients, and sums derived from the same formulas,
// typed from research notes. Held to the print within its rounding and to the plain sum.
import { expect, test } from 'vitest';
import type { Answer } from '../../medlar.ts';
import { LB, answer, published } from '../helpers.ts';

const source = {
  id: 'worked-blends',
  title: 'Worked examples of several bags, by weigh',
  publisher: 'Extension services and others, each named at its row',
  url: null,
  mark: 'read',
} as const;

const names = ['N', 'P2O5', 'K2O'] as const;

interface Sum {
  readonly by: string;
  /** Wanted, in pounds, or in kilograms where the print has them. */
  readonly need: Readonly<Partial<Record<(typeof names)[number], number>>>;
  readonly kg?: true;
  readonly bags: readonly string[];
  readonly printed: readonly number[];
  readonly within: number;
  readonly exact: readonly number[];
}

const urea1915 = (19 - (18 * 19) / 46) / 0.46;
const sums: readonly Sum[] = [
  // 8 % of a ton, 160 lb of each; filler 933.
  {
    by: 'NC State SSC 012: a ton of 0-8-8',
    need: { P2O5: 160, K2O: 160 },
    bags: ['0-20-0', '0-0-60'],
    printed: [800, 267],
    within: 0.5,
    exact: [160 / 0.2, 160 / 0.6],
  },
  // The print's urea is a hair high (25.14, and so a sum of 98.2 for 98.1): one step of its last decimal.
  {
    by: 'Agronomy answer: 100 lb of 19-19-19',
    need: { N: 19, P2O5: 19, K2O: 19 },
    bags: ['18-46-0', '46-0-0', '0-0-60'],
    printed: [41.3, 25.2, 31.7],
    within: 0.1,
    exact: [19 / 0.46, urea1915, 19 / 0.6],
  },
  {
    by: 'Hobby grower: phosphate from MAP, the other nitrogen from ammonium sulphate',
    need: { N: 3, P2O5: 1 },
    bags: ['11-55-0', '21-0-0'],
    printed: [1.8, 13.3],
    within: 0.05,
    exact: [1 / 0.55, 2.8 / 0.21],
  },
  // The print rounds 26.66 to 26.64 on the way, so the last bag stands 0.07 off.
  {
    by: 'Growfood page: three bags to a hectare',
    need: { N: 125, P2O5: 68.125, K2O: 125 },
    kg: true,
    bags: ['18-46-0', '21-0-53', '34-0-0'],
    printed: [148.09, 235.84, 143.64],
    within: 0.1,
    exact: [68.125 / 0.46, 125 / 0.53, (125 - (0.18 * 68.125) / 0.46 - (0.21 * 125) / 0.53) / 0.34],
  },
  {
    by: 'Derived: one tree from DAP, urea and muriate',
    need: { N: 0.5, P2O5: 0.2, K2O: 0.4 },
    bags: ['18-46-0', '46-0-0', '0-0-60'],
    printed: [0.4348, 0.9168, 0.6667],
    within: 0.00005,
    exact: [0.2 / 0.46, (0.5 - (0.18 * 0.2) / 0.46) / 0.46, 0.4 / 0.6],
  },
  // 100 lb at 15 %: the phosphate is what 86.11 lb of 10-10-10 bring.
  {
    by: 'Derived: Pearson square, 15 % from 46 and 10',
    need: { N: 15, P2O5: 8.611 },
    bags: ['46-0-0', '10-10-10'],
    printed: [13.89, 86.11],
    within: 0.005,
    exact: [(15 - 8.611) / 0.46, 86.11],
  },
  // 12 % of a ton; filler 760.68.
  {
    by: 'Derived: a ton of 12-12-12',
    need: { N: 240, P2O5: 240, K2O: 240 },
    bags: ['18-46-0', '46-0-0', '0-0-60'],
    printed: [521.74, 317.58, 400],
    within: 0.005,
    exact: [240 / 0.46, (240 - (0.18 * 240) / 0.46) / 0.46, 400],
  },
];

interface Line {
  readonly label: string;
  readonly g: number;
}

async function weigh(need: string, bags: readonly string[]): Promise<Answer['result']> {
  return (await answer(['weigh', need, ...bags, '--json'])).result;
}

published(source, () => {
  for (const { by, need, kg, bags, printed, within, exact } of sums) {
    const [unit, word] = kg ? [1000, 'kg'] : [LB, 'lb'];
    const asked = Object.entries(need).map(([name, amount]) => `${String(amount)} ${word} ${name}`).join(', ');
    test(`${by}: ${asked} from ${bags.join(', ')}`, async () => {
      const result = await weigh(asked, bags);
      const lines: readonly Line[] = result.bags;
      expect(lines).toHaveLength(bags.length);
      lines.forEach(({ label, g }, at) => {
        expect(label).toContain(bags[at]);
        expect(Math.abs(g / unit - (printed[at] ?? NaN))).toBeLessThanOrEqual(within);
        expect(Math.abs(g / unit / (exact[at] ?? NaN) - 1)).toBeLessThan(1e-5);
      });
      for (const [name, amount] of Object.entries(need)) {
        expect(Math.abs(result.supplied[name] / unit / amount - 1)).toBeLessThan(1e-5);
        expect(result.over[name]).toBeCloseTo(0, 2);
        expect(result.short[name]).toBeCloseTo(0, 2);
      }
    });

    test(`${by}: the bags the other way round give the same weights`, async () => {
      const lines: readonly Line[] = (await weigh(asked, bags.toReversed())).bags;
      lines.toReversed().forEach(({ g }, at) => {
        expect(Math.abs(g / unit / (exact[at] ?? NaN) - 1)).toBeLessThan(1e-5);
      });
    });
  }

  // Printed by the hobby grower: 1.8 lb of MAP bring 0.2 lb of nitrogen.
  test('Hobby grower: 1 lb P2O5 from 11-55-0 brings 0.2 lb N', async () => {
    const result = await weigh('1 lb P2O5', ['11-55-0']);
    expect(result.bags[0].g / LB).toBeCloseTo(1 / 0.55, 5);
    expect(result.supplied.N / LB).toBeCloseTo(0.2, 5);
    expect(result.over.N).toBeCloseTo(0, 2);
  });

  // Derived: phosphate fills first, nitrogen last; the nearest by least squares is
  // sum(share x need) / sum(share^2) = 0.085 / 0.0225.
  test('Derived: 0.5, 0.2 and 0.4 lb from 5-10-10 alone', async () => {
    const result = await weigh('0.5 lb N, 0.2 lb P2O5, 0.4 lb K2O', ['5-10-10']);
    expect(result.limiting.nutrient).toBe('P2O5');
    expect(result.limiting.g / LB).toBeCloseTo(2, 5);
    expect(result.covering.nutrient).toBe('N');
    expect(result.covering.g / LB).toBeCloseTo(10, 5);
    const near = 0.085 / 0.0225;
    expect(result.bags[0].g / LB).toBeCloseTo(near, 5);
    expect(result.short.N / LB).toBeCloseTo(0.5 - 0.05 * near, 5);
    expect(result.over.P2O5 / LB).toBeCloseTo(0.1 * near - 0.2, 5);
    expect(result.short.K2O / LB).toBeCloseTo(0.4 - 0.1 * near, 5);
    expect([result.over.N, result.short.P2O5, result.over.K2O]).toEqual([0, 0, 0]);
  });

  // Derived: 10-10-10 cannot give 0.2 lb of phosphate under 0.1 lb of potash; 2 lb bring 0.2 lb.
  // The nearest is 0.03 / 0.02 = 1.5 lb; nitrogen is not named, so it is free.
  test('Derived: 0.2 lb P2O5 and 0.1 lb K2O from 10-10-10', async () => {
    const result = await weigh('0.2 lb P2O5, 0.1 lb K2O', ['10-10-10']);
    expect(result.limiting.nutrient).toBe('K2O');
    expect(result.limiting.g / LB).toBeCloseTo(1, 5);
    expect(result.covering.nutrient).toBe('P2O5');
    expect(result.covering.g / LB).toBeCloseTo(2, 5);
    expect(result.bags[0].g / LB).toBeCloseTo(1.5, 5);
    expect(result.short.P2O5 / LB).toBeCloseTo(0.05, 5);
    expect(result.over.K2O / LB).toBeCloseTo(0.05, 5);
    expect([result.over.N, result.short.N]).toEqual([0, 0]);
  });
  test('Derived: 0.2 lb P2O5 alone from 10-10-10 brings 0.2 lb K2O', async () => {
    const result = await weigh('0.2 lb P2O5', ['10-10-10']);
    expect(result.bags[0].g / LB).toBeCloseTo(2, 5);
    expect(result.supplied.K2O / LB).toBeCloseTo(0.2, 5);
  });

  // Elemental labels: in Australia P and K on the bag are elements; 2.29132 and 1.20460 from atomic weights.
  const orchard = 'orchard: Labels\nwhere: Australia\nbud-break: 12 September\nfirst-frost: 12 May\ntrees:\n  One: apple, planted 2016\nstore:\n  - Feed, 10-5-5, 10 kg, $20\n';
  const labels = [
    ['Derived', '12-5-14', [12, 11.46, 16.86], 0.005, [12, 5 * 2.29132, 14 * 1.2046]],
    // Penn State 2022: 20 % P2O5 is 8.8 % P, 10 % K2O is 8.3 % K; whole per cents printed.
    ['Penn State', '10-8.8-8.3', [10, 20, 10], 0.5, [10, 8.8 * 2.29132, 8.3 * 1.2046]],
  ] as const;
  for (const [by, bag, printed, within, exact] of labels) {
    test(`${by}: an Australian ${bag} as oxides, ${printed.join('-')}`, async () => {
      const there = await answer(['weigh', '1 lb N', bag, '--json'], { 'orchard.yaml': orchard });
      const here = await answer(['weigh', '1 lb N', bag, '--json']);
      names.forEach((name, at) => {
        const value = there.result.bags[0].grade[name];
        expect(Math.abs(value - (printed[at] ?? NaN))).toBeLessThanOrEqual(within);
        expect(value).toBeCloseTo(exact[at] ?? NaN, 3);
        expect(here.result.bags[0].grade[name]).toBeCloseTo(Number(bag.split('-')[at]), 6);
      });
    });
  }
  test('Derived: an Australian 12-5-14 brings its potash as oxide', async () => {
    const { result } = await answer(['weigh', '14 kg K2O', '12-5-14', '--json'], { 'orchard.yaml': orchard });
    expect(result.bags[0].g / 1000).toBeCloseTo(100 / 1.2046, 2);
    expect(result.supplied.N / 1000).toBeCloseTo(12 / 1.2046, 3);
  });
});
