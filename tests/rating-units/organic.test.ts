// Organic carbon to organic matter: the conventional 1.724, theory's 2 and the range 1.4 to 2.5 (Pribyl, Geoderma 156, 2010, abstract read).
import { expect, test } from 'vitest';
import { reasonOf } from '../../src/json/reason.ts';
import { organicMatterOf } from '../../src/rating/organic.ts';
import { isWeak } from '../../src/reason/figure.ts';
import { CARBON } from '../../src/tables/carbon.ts';
import { onePlant, only } from '../published/helpers.ts';
import { expectSourced, made } from './made.ts';

test('1.5 % of carbon: 2.59 of matter, 3.00 by theory', () => {
  const f = organicMatterOf({ readings: [made('organic-carbon', 1.5, '%')] })!;
  expect(f.value).toBeCloseTo(2.586, 3);
  expect(1.5 * CARBON.theory).toBeCloseTo(3, 9);
  expect(f.from.map((x) => x.value)).toEqual([1.5, 1.5 * 1.4, 1.5 * 2.5]);
  expect(reasonOf(f, 'en-US', 'us')).toContain('2.1 % to 3.75 %');
});

test('15 g/kg of carbon are 1.5 %', () => {
  expect(organicMatterOf({ readings: [made('organic-carbon', 15, 'g/kg')] })?.value).toBeCloseTo(2.586, 3);
});

test('what Walkley-Black leaves unfound is said, not added: 1.25 to 1.385 times', () => {
  const f = organicMatterOf({ readings: [made('organic-carbon', 2, '%', { method: 'walkley-black' })] })!;
  expect(f.value).toBeCloseTo(3.448, 9);
  expect(f.from.slice(3).map((x) => x.value)).toEqual([2.5, 2.77]);
  expect(reasonOf(f, 'en-US', 'us')).toContain('2.5 % to 2.77 %');
});

test('the matter itself leads, in percent or g/kg; without a unit neither is known', () => {
  expect(organicMatterOf({ readings: [made('organic-carbon', 1.5, '%'), made('organic-matter', 31, 'g/kg')] })?.value).toBeCloseTo(3.1, 9);
  expect(organicMatterOf({ readings: [made('organic-matter', 3, null), made('organic-carbon', null, '%')] })).toBeNull();
  expect(organicMatterOf({ readings: [] })).toBeNull();
});

// By volume: 25 g in a litre of soil that weighs 1.25 kg are 2 %; a litre taken as a kilogram makes 2.5 %.
test('by volume: the density where it is printed, else one, as a step of our own', () => {
  expect(organicMatterOf({ readings: [made('organic-matter', 25, 'g/dm3'), made('density', 1.25, 'g/cm3')] })?.value).toBeCloseTo(2, 9);
  const taken = organicMatterOf({ readings: [made('organic-matter', 25, 'g/dm3')] })!;
  expect([taken.value, isWeak(taken)]).toEqual([2.5, true]);
});

test('each step says whose it is, and holds what was printed', () => {
  const of = (...readings: Parameters<typeof organicMatterOf>[0]['readings']) => organicMatterOf({ readings })!;
  const density = made('density', 1.25, 'g/cm3');
  const volume = made('organic-matter', 25, 'g/dm3');
  for (const f of [of(made('organic-matter', 3, '%')), of(made('organic-matter', 31, 'g/kg')), of(volume), of(volume, density), of(made('organic-carbon', 1.5, '%')), of(made('organic-carbon', 2, '%', { method: 'walkley-black' })), of(made('organic-carbon', 20, 'g/dm3'), density)]) {
    expectSourced(f);
    expect([f.unit, f.of]).toEqual(['%', 'organic matter']);
  }
  for (const f of [of(volume), of(volume, density)]) expect(f.from).toMatchObject([{ value: 25, unit: 'g/dm3', of: 'organic matter', step: 'printed-by-lab' }]);
  // 20 g in a litre of 1.25 kg are 1.6 %, times 1.724.
  expect(of(made('organic-carbon', 20, 'g/dm3'), density).value).toBeCloseTo(1.6 * 1.724, 9);
});
test('a unit of another kind, or a number no soil has, is no matter; the next line of it counts', () => {
  const of = (...readings: Parameters<typeof organicMatterOf>[0]['readings']) => organicMatterOf({ readings })?.value ?? null;
  expect([of(made('organic-matter', 3, 'ppm')), of(made('organic-matter', 3, null)), of(made('organic-matter', 1e13, '%')), of(made('organic-matter', null, '%')), of(made('organic-matter', 25, 'g/dm3'), made('density', 1e-13, 'g/cm3'))]).toEqual([null, null, null, null, null]);
  expect(of(made('organic-matter', null, '%'), made('organic-matter', 4, '%'))).toBe(4);
});

// Above 5 % of organic matter half the nitrogen is given: 3 % of carbon is 5.17 %, 2.8 % is 4.83 %.
test('carbon halves the nitrogen as matter does', async () => {
  const facts = 'apple, semi-dwarf, planted 2014, 12 ft across, shoots 4 in';
  const need = async (line: string): Promise<number> => only(await onePlant(facts, { soil: `pH 6.4\n${line}\n` })).need.N;
  const poor = await need('Organic carbon 2.8 %');
  expect(poor).toBeGreaterThan(0);
  expect(await need('Organic carbon 3.0 %')).toBeCloseTo(poor / 2, 6);
});
