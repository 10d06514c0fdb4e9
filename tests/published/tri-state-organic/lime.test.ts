// Michigan, Indiana and Ohio, E-2567 of 1995: lime on organic soil (over 20 % organic matter) by the soil's pH to the 5.3 wanted there,
// ton/acre of limestone of neutralizing value 90, 8 in. Limit and wanted pH read; the table memory, typed a second time from notes.
import { expect, test } from 'vitest';
import { published } from '../helpers.ts';
import { G_PER_M2, figuresOf, near, ph } from '../ph.ts';

const source = { id: 'tri-state-1995', title: 'E-2567, Tri-State Fertilizer Recommendations', publisher: 'Michigan State University Extension', url: 'http://web1.msue.msu.edu/msue/imp/modf1/06039707.html', mark: 'memory' } as const;

const flags = (now: number, where = 'Ohio, US') => ({ where, now, goal: 6.5, 'organic-matter': 40, material: 'Garden lime, CCE 100' });

// pH and ton/acre, printed to tenths.
const table = [[5.1, 0.7], [5.0, 1.3], [4.9, 2.0], [4.8, 2.6], [4.7, 3.2], [4.6, 3.9], [4.5, 4.5], [4.4, 5.1]] as const;

published(source, () => {
  for (const [now, tons] of table) {
    test(`pH ${String(now)}: ${String(tons)} ton/acre`, async () => {
      const asked = await ph(flags(now));
      expect(figuresOf(asked, source.id, 'ton/acre').some((f) => Math.abs(f.value - tons) <= 0.0501)).toBe(true);
      expect(asked.row.goal).toBe(5.3);
    });
  }
  test('by hand: 32.9 − 6.31 × 4.6, of a lime of 90, in each of the three states', async () => {
    for (const where of ['Ohio, US', 'Michigan, US', 'Indiana, US']) near((await ph(flags(4.6, where))).row.dugIn?.gPerM2, 3.874 * 0.9 * G_PER_M2['ton/acre']);
  });
  test('from 5.3 up none', async () => {
    expect((await ph(flags(5.3))).row).toMatchObject({ verdict: 'leave', gPerM2: 0 });
    expect((await ph(flags(5.6))).row).toMatchObject({ verdict: 'leave', gPerM2: 0 });
  });
});
