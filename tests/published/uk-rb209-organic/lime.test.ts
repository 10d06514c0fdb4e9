// United Kingdom: lime on organic soil (10 to 20 % organic matter) and on peaty soil (over 20 %), t/ha, 20 cm. Targets of continuous
// arable cropping read on AHDB's page, 6.2 and 6.0; the amounts of RB209 memory, typed a second time from notes.
import { expect, test } from 'vitest';
import { medlar } from '../../medlar.ts';
import { published } from '../helpers.ts';
import { type Case, expectPrinted, ph } from '../ph.ts';

const source = { id: 'uk-rb209-lime', title: 'Nutrient Management Guide RB209, lime recommendations', publisher: 'AHDB', url: null, mark: 'memory' } as const;

const flags = (now: number, matter: number) => ({ where: 'England, UK', now, goal: 6.7, 'organic-matter': matter });

// pH, then organic and peaty; neither is printed for under 5.0.
const table = [[6.0, 4, 0], [5.5, 9, 8], [5.0, 14, 16]] as const;

published(source, () => {
  expectPrinted(source.id, 't/ha', table.flatMap(([now, organic, peaty]): Case[] => [[flags(now, 15), organic], [flags(now, 20), organic], ...(peaty > 0 ? [[flags(now, 45), peaty] as const] : [])]));

  test('peaty soil at its target is left', async () => {
    expect((await ph(flags(6, 45))).row).toMatchObject({ verdict: 'leave', gPerM2: 0 });
  });
  test('organic soil goes to 6.2 and peaty to 6.0, whatever is wanted', async () => {
    expect([(await ph(flags(5.5, 15))).row.goal, (await ph(flags(5.5, 45))).row.goal]).toEqual([6.2, 6]);
  });
  test('at 10 % it is mineral still; under pH 5.0 nothing was printed', async () => {
    expect((await ph(flags(5.5, 10))).row.dugIn?.gPerM2).toBeCloseTo(720, 6);
    expect((await ph(flags(4.8, 45))).row).toMatchObject({ verdict: 'cannot', reason: 'no-rate' });
  });
  test('a report that calls it peat is peaty', async () => {
    const { json } = await medlar(['plan', '--json'], { 'orchard.yaml': 'where: England, UK\nsoil:\n  bed: a.txt\ntrees:\n  A: apple, planted 2019, bed\n', 'a.txt': 'pH 5.5\nTexture: peat\n' });
    expect(json.result.ph[0].dugIn.gPerM2).toBeCloseTo(800, 6);
  });
});
