// Grades of mixes, published or derived from the mean of the grades, typed from research notes.
import { expect, test } from 'vitest';
import { medlar } from '../../medlar.ts';
import { answer, published } from '../helpers.ts';

const source = {
  id: 'worked-blends',
  title: 'Worked examples of mixes, by blend',
  publisher: 'Extension services and others, each named at its row',
  url: null,
  mark: 'read',
} as const;

const names = ['N', 'P2O5', 'K2O'] as const;

interface Mix {
  readonly by: string;
  readonly bags: readonly string[];
  readonly balanced?: true;
  readonly printed: readonly [number, number, number];
  readonly within: number;
  readonly exact: readonly [number, number, number];
  /** Weights in any one unit; the shares follow. */
  readonly parts: readonly number[];
}

const even = (grade: number): readonly [number, number, number] => [grade, grade, grade];
// For one unit of each nutrient: DAP, urea, muriate.
const dap = 1 / 0.46;
const urea = (1 - 0.18 * dap) / 0.46;
const muriate = 1 / 0.6;

const mixes: readonly Mix[] = [
  {
    by: 'Derived: equal parts',
    bags: ['10-10-10', '46-0-0', '0-0-60'],
    printed: [18.67, 3.33, 23.33],
    within: 0.005,
    exact: [56 / 3, 10 / 3, 70 / 3],
    parts: [1, 1, 1],
  },
  {
    by: 'Agronomy answer: 42 DAP, 25.5 urea, 32.5 muriate without filler',
    bags: ['84x18-46-0', '51x46-0-0', '65x0-0-60'],
    printed: [19.3, 19.3, 19.5],
    within: 0.05,
    exact: [0.42 * 18 + 0.255 * 46, 0.42 * 46, 0.325 * 60],
    parts: [84, 51, 65],
  },
  {
    by: 'Derived: Pearson square, 5 to 31',
    bags: ['5x46-0-0', '31x10-10-10'],
    printed: [15, 8.61, 8.61],
    within: 0.005,
    exact: [15, 310 / 36, 310 / 36],
    parts: [13.888889, 86.111111],
  },
  {
    by: 'Definition of a mean: two parts to one',
    bags: ['2x46-0-0', '0-46-0'],
    printed: [30.67, 15.33, 0],
    within: 0.005,
    exact: [92 / 3, 46 / 3, 0],
    parts: [2, 1],
  },
  // 19 of each in a sum of 98.1; 240 of each in 521.74, 317.58 and 400.
  {
    by: 'Agronomy answer: 19-19-19 without its filler',
    bags: ['18-46-0', '46-0-0', '0-0-60'],
    balanced: true,
    printed: even(1900 / 98.1),
    within: 0.01,
    exact: even(100 / (dap + urea + muriate)),
    parts: [19 * dap, 19 * urea, 19 * muriate],
  },
  {
    by: 'Derived: 12-12-12 without its filler',
    bags: ['18-46-0', '46-0-0', '0-0-60'],
    balanced: true,
    printed: even(24000 / (521.74 + 317.58 + 400)),
    within: 0.005,
    exact: even(100 / (dap + urea + muriate)),
    parts: [521.739130, 317.580340, 400],
  },
  // 1/46 : 1/46 : 1/60.
  {
    by: 'Derived: three straights, balanced',
    bags: ['46-0-0', '0-46-0', '0-0-60'],
    balanced: true,
    printed: even(16.63),
    within: 0.005,
    exact: even(1 / (1 / 46 + 1 / 46 + 1 / 60)),
    parts: [30, 30, 23],
  },
  // 10a + 46b = 20a, so a : b = 4.6 : 1.
  {
    by: 'Derived: 10-20-20 and urea, balanced',
    bags: ['10-20-20', '46-0-0'],
    balanced: true,
    printed: even(16.43),
    within: 0.005,
    exact: even((20 * 4.6) / 5.6),
    parts: [4.6, 1],
  },
];

published(source, () => {
  for (const { by, bags, balanced, printed, within, exact, parts } of mixes) {
    test(`${by}: ${bags.join(', ')}`, async () => {
      const args = ['blend', ...bags, ...(balanced ? ['--balanced'] : []), '--json'];
      const { result } = await answer(args);
      names.forEach((name, at) => {
        expect(Math.abs(result.grade[name] - (printed[at] ?? NaN))).toBeLessThanOrEqual(within);
        expect(result.grade[name]).toBeCloseTo(exact[at] ?? NaN, 4);
      });
      const whole = parts.reduce((sum, part) => sum + part, 0);
      expect(result.parts).toHaveLength(bags.length);
      parts.forEach((part, at) => {
        expect(result.parts[at].label).toContain((bags[at] ?? '').replace(/^\d+x/, ''));
        expect(result.parts[at].share).toBeCloseTo(part / whole, 5);
      });
    });
  }

  // A negative weight, or a nutrient nobody brings, is out of reach.
  const impossible = [
    ['no potash at all', ['46-0-0', '0-46-0']],
    ['DAP brings more phosphate than nitrogen', ['18-46-0', '0-0-60']],
    ['more potash than nitrogen in both', ['5-10-10', '0-0-60']],
  ] as const;
  for (const [why, bags] of impossible) {
    test(`Derived: ${why}: ${bags.join(', ')} cannot be balanced`, async () => {
      const run = await medlar(['blend', ...bags, '--balanced', '--json']);
      expect(run.code).toBe(4);
      expect(run.json.ok).toBe(false);
    });
  }
});
