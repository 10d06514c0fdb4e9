/**
 * What holds of every lime and sulphur answer, whatever is asked. Limits: one ton of lime to the acre in a year
 * (North Carolina) and 0.7 lb of sulphur to 100 sq ft (eXtension).
 */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { medlar } from '../medlar.ts';
import { type Flags, type Row, ph } from '../published/ph.ts';

const RUNS = { numRuns: 40 };
/** A short ton an acre, and 0.7 lb a 100 sq ft, by definition; a last digit is left to the machine. */
const LIME_LIMIT = ((2000 * 453.59237) / 4046.8564224) * (1 + 1e-12);
const SULPHUR_LIMIT = ((0.7 * 453.59237) / (100 * 0.3048 ** 2)) * (1 + 1e-12);

const tenths = (low: number, high: number): fc.Arbitrary<number> => fc.integer({ min: Math.round(low * 10), max: Math.round(high * 10) }).map((n) => n / 10);
const texture = fc.constantFrom('sand', 'loamy sand', 'sandy loam', 'loam', 'silt loam', 'clay loam', 'clay');
const crop = fc.constantFrom('blueberry', 'apple', 'pear', 'peach', 'plum', 'cherry');
const area = fc.integer({ min: 5, max: 2000 }).map((feet) => `${String(feet)} sq ft`);
/** Pure dolomite, 108.6, is the strongest carbonate; what is far above that is hydrated or burnt and refused. */
const cce = fc.integer({ min: 30, max: 110 });
const purity = fc.integer({ min: 30, max: 100 });

/** Ways of knowing the lime requirement, inside the spans of the published tables. */
const requirement: fc.Arbitrary<Flags> = fc.oneof(
  tenths(4.8, 6.9).map((buffer) => ({ buffer, method: 'sikora' })),
  tenths(5.0, 6.8).map((buffer) => ({ buffer, method: 'smp' })),
  tenths(2, 25.7).map((acidity) => ({ acidity })),
  fc.record({ pounds: fc.integer({ min: 1, max: 500 }), inches: fc.integer({ min: 3, max: 12 }) })
    .map(({ pounds, inches }) => ({ lime: `${String(pounds)} lb/1000 sq ft`, depth: `${String(inches)} in` })),
  texture.map((word) => ({ texture: word })),
);

const limed = fc.record({ now: tenths(4.2, 5.9), goal: tenths(6, 6.5), known: requirement, area, cce })
  // Half a unit under the soil no buffer is believed.
  .map(({ now, goal, known, area: ground, cce: strength }) => ({ strength, flags: { now: Math.min(now, typeof known['buffer'] === 'number' ? known['buffer'] + 0.4 : now), goal, ...known, area: ground, material: `Garden lime, CCE ${String(strength)}` } }));

const acidified = fc.record({ now: tenths(5.1, 7), fall: tenths(0.1, 2), word: texture, area, purity })
  .map(({ now, fall, word, area: ground, purity: strength }) => ({
    strength,
    flags: { crop: 'blueberry', now, goal: Math.max(4.5, Math.round((now - fall) * 10) / 10), texture: word, area: ground, material: `Sulphur, ${String(strength)} %` },
  }));

/** Every number in a value, however deep, by its path. */
function numbers(value: unknown, path = 'ph'): [string, number][] {
  if (typeof value === 'number') return [[path, value]];
  if (value === null || typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([key, inner]) => numbers(inner, `${path}.${key}`));
}

const total = (row: Row): number => row.doses.reduce((sum, dose) => sum + dose.g, 0);

test('doses of lime add up to the whole, and none is over its limit', async () => {
  await fc.assert(fc.asyncProperty(limed, async ({ strength, flags }) => {
    const { row } = await ph(flags);
    const limit = LIME_LIMIT * Math.min(1, 100 / strength);
    expect(['lime', 'leave']).toContain(row.verdict);
    expect(total(row)).toBeCloseTo(row.g ?? NaN, 3);
    expect(row.gPerM2).toBeLessThanOrEqual(limit);
    for (const dose of row.doses) expect(dose.gPerM2).toBeLessThanOrEqual(limit);
  }), RUNS);
});

test('doses of sulphur add up to the whole, and none is over its limit', async () => {
  await fc.assert(fc.asyncProperty(acidified, async ({ strength, flags }) => {
    const { row } = await ph(flags);
    const limit = (SULPHUR_LIMIT * 100) / strength;
    expect(row.verdict).toBe('sulphur');
    expect(row.gPerM2).toBeGreaterThan(0);
    expect(total(row)).toBeCloseTo(row.g ?? NaN, 3);
    expect(row.gPerM2).toBeLessThanOrEqual(limit);
    for (const dose of row.doses) expect(dose.gPerM2).toBeLessThanOrEqual(limit);
  }), RUNS);
});

test('this year never brings more sulphur than the whole way takes', async () => {
  await fc.assert(fc.asyncProperty(acidified, async ({ strength, flags }) => {
    const { row } = await ph(flags);
    const [low = NaN, high = NaN] = row.range ?? [];
    expect(low).toBeLessThanOrEqual(high);
    expect(low).toBeGreaterThan(0);
    expect((row.gPerM2 * strength) / 100).toBeLessThanOrEqual(high + 1e-6);
  }), RUNS);
});

test('this year never brings more lime than is to be dug in', async () => {
  await fc.assert(fc.asyncProperty(limed, async ({ strength, flags }) => {
    const { row } = await ph(flags);
    expect((row.gPerM2 * strength) / 100).toBeLessThanOrEqual((row.dugIn?.gPerM2 ?? 0) + 1e-6);
  }), RUNS);
});

test('a goal equal to the present pH asks for nothing', async () => {
  await fc.assert(fc.asyncProperty(fc.record({ now: tenths(4, 8.5), word: texture, crop, known: requirement }), async ({ now, word, crop: plant, known }) => {
    const { row } = await ph({ texture: word, ...known, crop: plant, now, goal: now });
    expect(row.verdict).toBe('leave');
    expect(row.gPerM2).toBe(0);
    expect(row.g ?? 0).toBe(0);
    expect(total(row)).toBe(0);
  }), RUNS);
});

const buffers = fc.constantFrom({ method: 'sikora', low: 4.8, high: 6.9 }, { method: 'smp', low: 5.0, high: 6.8 });
const at = (low: number, high: number, share: number): number => Math.round((low + (high - low) * share) * 100) / 100;
const share = fc.integer({ min: 0, max: 1000 }).map((n) => n / 1000);

test('lime never rises as buffer pH rises', async () => {
  await fc.assert(fc.asyncProperty(fc.record({ buffer: buffers, one: share, two: share, goal: tenths(6, 7) }), async ({ buffer: { method, low, high }, one, two, goal }) => {
    const asked = (part: number) => ph({ now: 5, goal, method, buffer: at(low, high, part), material: 'Garden lime, CCE 100' });
    const below = (await asked(Math.min(one, two))).row;
    const above = (await asked(Math.max(one, two))).row;
    expect(above.gPerM2).toBeLessThanOrEqual(below.gPerM2 + 1e-9);
    expect(above.dugIn?.gPerM2 ?? 0).toBeLessThanOrEqual((below.dugIn?.gPerM2 ?? 0) + 1e-9);
  }), RUNS);
});

test('lime never falls as the goal rises', async () => {
  const known = fc.oneof(
    tenths(4.8, 6.9).map((buffer): Flags => ({ buffer, method: 'sikora' })),
    tenths(5.0, 6.8).map((buffer): Flags => ({ buffer, method: 'smp' })),
    tenths(2, 25.7).map((acidity): Flags => ({ acidity })),
  );
  await fc.assert(fc.asyncProperty(fc.record({ known, one: share, two: share }), async ({ known: flags, one, two }) => {
    const asked = (part: number) => ph({ now: 5, goal: at(6, 7, part), ...flags, material: 'Garden lime, CCE 100' });
    const lower = (await asked(Math.min(one, two))).row;
    const higher = (await asked(Math.max(one, two))).row;
    expect(higher.gPerM2).toBeGreaterThanOrEqual(lower.gPerM2 - 1e-9);
    expect(higher.dugIn?.gPerM2 ?? 0).toBeGreaterThanOrEqual((lower.dugIn?.gPerM2 ?? 0) - 1e-9);
  }), RUNS);
});

test('the product never rises as its calcium carbonate equivalent rises', async () => {
  await fc.assert(fc.asyncProperty(fc.record({ known: requirement, one: cce, two: cce }), async ({ known, one, two }) => {
    const asked = (strength: number) => ph({ now: 5, goal: 6.5, ...known, material: `Garden lime, CCE ${String(strength)}` });
    const weak = (await asked(Math.min(one, two))).row;
    const strong = (await asked(Math.max(one, two))).row;
    expect(strong.gPerM2).toBeLessThanOrEqual(weak.gPerM2 + 1e-9);
    // What is to be dug in is told at 100, whatever the product.
    expect(strong.dugIn).toEqual(weak.dugIn);
  }), RUNS);
});

test('under its limit the product is in inverse proportion to its calcium carbonate equivalent', async () => {
  await fc.assert(fc.asyncProperty(fc.record({ pounds: fc.integer({ min: 1, max: 40 }), one: cce, two: cce }), async ({ pounds, one, two }) => {
    const asked = (strength: number) => ph({ now: 5, goal: 6.5, lime: `${String(pounds)} lb/1000 sq ft`, depth: '8 in', material: `Garden lime, CCE ${String(strength)}` });
    const first = (await asked(one)).row;
    const second = (await asked(two)).row;
    expect(first.gPerM2 * one).toBeGreaterThan(0);
    expect((first.gPerM2 * one) / (second.gPerM2 * two)).toBeCloseTo(1, 2);
  }), RUNS);
});

test('no answer holds a number that is none, or less than nothing', async () => {
  const asked = fc.record({
    now: tenths(3.5, 9), goal: tenths(4, 7.5), crop, known: requirement, word: texture,
    cec: fc.option(fc.integer({ min: 1, max: 40 }), { nil: undefined }),
    carbonate: fc.option(tenths(0, 30), { nil: undefined }),
    organic: fc.option(tenths(0, 40), { nil: undefined }),
    area,
  }).map(({ known, word, organic, ...rest }): Flags => {
    const flags = { texture: word, ...known, ...rest, 'organic-matter': organic };
    return Object.fromEntries(Object.entries(flags).filter(([, value]) => value !== undefined)) as Flags;
  });
  await fc.assert(fc.asyncProperty(asked, async (flags) => {
    const answer = await ph(flags);
    for (const [path, value] of numbers(answer.row)) {
      expect(value, path).not.toBeNaN();
      expect(value, path).toBeGreaterThanOrEqual(0);
    }
    // JSON writes NaN as null: the numbers that every row has must be numbers.
    for (const value of [answer.row.now, answer.row.goal, answer.row.gPerM2, ...answer.row.doses.flatMap((dose) => [dose.g, dose.gPerM2])]) expect(value).toBeTypeOf('number');
    for (const [id, figure] of Object.entries(answer.figures)) expect(figure.value, id).toBeTypeOf('number');
    expect(JSON.stringify(answer)).not.toMatch(/NaN|Infinity|undefined/);
  }), RUNS);
});

test('hydrated lime by any name is refused', async () => {
  // Calcium hydroxide: 100.09 / 74.09 = 135 % of calcium carbonate (atomic weights). Oregon State tells home gardeners not to use it.
  for (const material of ['Garden lime, CCE 135', 'Hydrated lime', 'Quicklime']) {
    const run = await medlar(['ph', '--now', '5', '--goal', '6.5', '--texture', 'loam', '--material', material]);
    expect([run.code, run.stderr.includes('burns')]).toEqual([2, true]);
  }
});
