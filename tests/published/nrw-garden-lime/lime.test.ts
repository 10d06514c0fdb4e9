// Chamber of Agriculture of North Rhine-Westphalia, garden tip 40: carbonate of lime (about 50 % CaO), g/m² for two to three
// years, by soil and pH in calcium chloride. Typed a second time from notes of the page (proves typing, not the reading).
import { expect, test } from 'vitest';
import { medlar } from '../../medlar.ts';
import { published } from '../helpers.ts';
import { type Case, expectPrinted, near, ph } from '../ph.ts';

const source = { id: 'nrw-garden-40', title: 'Gartentipp 40', publisher: 'Landwirtschaftskammer Nordrhein-Westfalen', url: 'http://www.landwirtschaftskammer.de/verbraucher/garten/gartentipp040.htm', mark: 'read' } as const;

/** Asked in water, which reads 0.6 higher. */
const water = (salt: number): number => Number((salt + 0.6).toFixed(2));
const flags = (texture: string, salt: number) => ({ where: 'Germany', texture, now: water(salt), goal: 8 });

// Soil, a pH of the class, least and most; of the most acid heavy soil "at most" alone is printed.
const table = [
  ['sand', 4.5, 150, 200], ['sandy loam', 5.29, 150, 200], ['sand', 5.3, 120, 180], ['sandy loam', 5.7, 120, 180],
  ['loam', 5.0, 300, 400], ['loam', 5.69, 300, 400], ['loam', 5.7, 180, 250], ['loam', 6.5, 180, 250],
  ['clay', 5.5, 400, 400], ['clay', 6.29, 400, 400], ['clay', 6.3, 250, 350], ['clay', 6.9, 250, 350],
] as const;

published(source, () => {
  expectPrinted(source.id, 'g/m2', table.flatMap(([texture, salt, least, most]): Case[] => [[flags(texture, salt), least], [flags(texture, salt), most]]));

  for (const [texture, salt] of [['sand', 5.71], ['loam', 6.51], ['clay', 6.91]] as const) {
    test(`${texture}, pH ${String(salt)}: above the last class none`, async () => {
      const { row } = await ph(flags(texture, salt));
      expect([row.verdict, row.gPerM2]).toEqual(['leave', 0]);
    });
  }

  test('loam at 5.8: the least leads, the most widens it, as they are spread, whatever the depth of the sample', async () => {
    for (const depth of ['10 cm', '30 cm']) {
      const { row } = await ph({ ...flags('loam', 5.8), depth, material: 'Garden lime, CCE 100' });
      // 89 of a hundred is pure lime.
      near(row.gPerM2, 180 * 0.89);
      near(row.range?.[1], 250 * 0.89);
    }
  });
  test('one that prints pH in calcium chloride is read by it as printed', async () => {
    const { json } = await medlar(['plan', '--json'], { 'orchard.yaml': 'where: Germany\nsoil:\n  bed: a.txt\ntrees:\n  A: apple, planted 2019, bed\n', 'a.txt': 'pH (CaCl2) 5.2\nBodenart: sL\n' });
    expect(json.result.ph[0]).toMatchObject({ verdict: 'lime', reason: 'place' });
    near(json.result.ph[0].dugIn.gPerM2, 300 * 0.89);
  });
  test('without a texture the table does not apply', async () => {
    expect((await ph({ where: 'Germany', now: 5, goal: 6.5 })).row).toMatchObject({ reason: 'texture' });
  });
});
