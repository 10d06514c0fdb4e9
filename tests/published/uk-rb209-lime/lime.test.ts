// United Kingdom, RB209: t/ha of ground limestone or chalk on arable land by soil and pH, to the target of 6.7, 20 cm deep.
// Memory; typed a second time from notes. It stands beside the rule that leads, never before it.
import { expect, test } from 'vitest';
import { published } from '../helpers.ts';
import { type Case, expectPrinted, figuresOf, ph } from '../ph.ts';

const source = { id: 'uk-rb209-lime', title: 'Nutrient Management Guide RB209, lime recommendations', publisher: 'AHDB', url: null, mark: 'memory' } as const;

const flags = (now: number, texture: string, goal = 6.7) => ({ where: 'England, UK', now, goal, texture });

// pH, then sands, sandy and silt loams, clay loams and clays.
const table = [
  [6.2, 3, 4, 4],
  [6.0, 4, 5, 6],
  [5.5, 7, 8, 10],
  [5.0, 10, 12, 14],
] as const;

published(source, () => {
  expectPrinted(source.id, 't/ha', table.flatMap(([now, sands, loams, clays]): Case[] => [
    [flags(now, 'sand'), sands], [flags(now, 'sandy loam'), loams], [flags(now, 'silt loam'), loams], [flags(now, 'clay loam'), clays], [flags(now, 'clay'), clays],
  ]));

  // To a lower goal what is left from there to 6.7 is not asked for: 7 − 4 on sand.
  expectPrinted(source.id, 't/ha', [[flags(5.5, 'sand', 6), 3]]);

  test('the rule of 0.6 t/ha to a tenth leads, the table beside it', async () => {
    const asked = await ph({ ...flags(5.5, 'clay'), material: 'Garden lime, CCE 100' });
    // 12 tenths of 0.6.
    expect(asked.row.dugIn?.gPerM2).toBeCloseTo(720, 6);
    expect(asked.row.range?.[1]).toBeCloseTo((1000 * 5.08) / 20, 6);
  });
  test('under its lowest pH it says nothing', async () => {
    expect(figuresOf(await ph(flags(4.9, 'sand')), source.id, 't/ha')).toEqual([]);
  });
});
