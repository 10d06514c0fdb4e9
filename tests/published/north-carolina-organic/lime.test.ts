// North Carolina, Agronomic Services, lime and fertilizer requirements: acidity × (target − pH) ÷ (6.6 − pH), ton/acre, for every class
// of soil, each with its own target. Formula read; the target of organic soils, 5.0, memory.
import { expect, test } from 'vitest';
import { published } from '../helpers.ts';
import { expectPrinted, ph } from '../ph.ts';

const source = { id: 'north-carolina-lime-needs', title: 'Soil testing: lime and fertilizer requirements', publisher: 'North Carolina Department of Agriculture', url: 'https://ncagr.gov/agronomic-services-soil-testing-lime-and-fertilizer-requirements', mark: 'read' } as const;

const flags = (now: number, acidity: number) => ({ where: 'North Carolina, US', now, acidity, goal: 6.5, 'organic-matter': 35 });

published(source, () => {
  // By hand: 4.5 × 0.8 ÷ 2.4 and 6 × 0.4 ÷ 2.
  expectPrinted(source.id, 'ton/acre', [[flags(4.2, 4.5), 1.5], [flags(4.6, 6), 1.2]]);
  test('at 5.0 and over none', async () => {
    for (const now of [5, 5.4]) expect((await ph(flags(now, 5))).row).toMatchObject({ verdict: 'leave', gPerM2: 0 });
  });
});
