// Poland, IUNG-PIB, assessment of liming demands: t of CaO to the hectare on arable land by soil and pH (in KCl).
// Typed from research notes of the page (table read; the scale of pH memory).
import { expect, test } from 'vitest';
import { published } from '../helpers.ts';
import { type Case, expectPrinted, G_PER_M2, figuresOf, near, ph } from '../ph.ts';

const source = {
  id: 'iung-lime',
  title: 'Assessment of liming demands',
  publisher: 'Institute of Soil Science and Plant Cultivation, Puławy',
  url: 'https://dpr.iung.pl/en/assessment-of-liming-demands',
  mark: 'read',
} as const;

/** pH in water of a pH in KCl, by the Polish regression over 200 soils: −1.95 + 11.58 × log10 (Pol. J. Environ. Stud. 25(2):647). */
const water = (kcl: number): number => Number((-1.95 + 11.58 * Math.log10(kcl)).toFixed(4));
const flags = (texture: string, kcl: number) => ({ where: 'Poland', now: water(kcl), goal: Number((water(kcl) + 0.4).toFixed(2)), texture });

// Very light, light, medium and heavy soil; the lowest and the highest pH of each class, then t CaO/ha.
// The lowest class has no lower end, so a value within it stands in the first place.
const table: readonly (readonly [string, readonly (readonly [number, number, number])[]])[] = [
  ['sand', [[3.8, 4.0, 3.0], [4.1, 4.5, 2.0], [4.6, 5.0, 1.0]]],
  ['sandy loam', [[4.3, 4.5, 3.5], [4.6, 5.0, 2.5], [5.1, 5.5, 2.0]]],
  ['loam', [[4.8, 5.0, 4.5], [5.1, 5.5, 3.0], [5.6, 6.0, 2.5], [6.1, 6.5, 1.0]]],
  ['clay', [[5.3, 5.5, 6.0], [5.6, 6.0, 4.0], [6.1, 6.5, 3.0], [6.6, 7.0, 1.5]]],
];

published(source, () => {
  expectPrinted(source.id, 't/ha', table.flatMap(([texture, classes]) => classes.flatMap(([lowest, highest, tonnes]): Case[] => [
    [flags(texture, lowest), tonnes], [flags(texture, highest), tonnes],
  ])));

  // Limited need on the two lighter soils has a dash for an amount.
  for (const [texture, needed, limited] of [['sand', 4.8, 5.3], ['sandy loam', 5.3, 5.8]] as const) {
    // Nothing, then.
    test(`${texture}, pH ${String(limited)}: no amount printed`, async () => {
      expect(figuresOf(await ph(flags(texture, needed)), source.id, 't/ha').map((f) => f.value)).not.toEqual([]);
      expect(figuresOf(await ph(flags(texture, limited)), source.id, 't/ha').map((f) => f.value).filter((t) => t > 0)).toEqual([]);
    });
  }

  // 1.785 of calcium carbonate for one of CaO.
  test('medium soil, pH 5.3: 3.0 t CaO/ha is 5.35 t/ha of pure lime', async () => {
    const asked = await ph({ ...flags('loam', 5.3), material: 'Garden lime, CCE 100' });
    expect(figuresOf(asked, source.id, 't/ha').map((f) => f.value)).toContain(3);
    expect(asked.row.verdict).toBe('lime');
    near(asked.row.dugIn?.gPerM2, 3 * 1.785 * G_PER_M2['t/ha']);
  });
});
