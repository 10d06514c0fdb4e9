// A British farmers' buying group, lime time: 0.6 t/ha of ground limestone for each 0.1 that the pH is below target,
// 20 cm deep on arable land. Typed from research notes of the page (rule and rows read; fruit's target of 6.5 memory).
import { expect, test } from 'vitest';
import { medlar } from '../../medlar.ts';
import { published } from '../helpers.ts';
import { type Case, expectPrinted, ph } from '../ph.ts';

const source = {
  id: 'uk-lime-rule',
  title: 'Lime time',
  publisher: 'DBL Buying Group',
  url: 'https://www.dblbuyinggroup.co.uk/news/lime-time/',
  mark: 'read',
} as const;

const flags = (now: number, goal: number) => ({ where: 'UK', now, goal });

// pH now, then t/ha to 6.7 (the page's arable target) and to 6.5 (its grass target, and that of fruit).
// At 6.4 the page prints 0.5 to 6.5 where its own rule gives 0.6.
const table = [
  [6.4, 1.8, 0.6],
  [6.3, 2.4, 1.2],
  [6.2, 3.0, 1.8],
  [6.1, 3.6, 2.4],
  [6.0, 4.2, 3.0],
  [5.7, 6.0, 4.8],
  [5.6, 6.6, 5.4],
  [5.4, 7.8, 6.6],
] as const;

published(source, () => {
  expectPrinted(source.id, 't/ha', table.flatMap(([now, arable, grass]): Case[] => [[flags(now, 6.7), arable], [flags(now, 6.5), grass]]));

  // By the rule: 15, 10 and 5 tenths.
  expectPrinted(source.id, 't/ha', [
    [flags(5.0, 6.5), 9.0],
    [flags(5.5, 6.5), 6.0],
    [flags(5.5, 6.0), 3.0],
  ]);

  test('pH 6.0, goal 6.5: reckoned for 20 cm', async () => {
    const { row } = await ph({ ...flags(6.0, 6.5), material: 'Garden lime, CCE 100' });
    expect(row.verdict).toBe('lime');
    expect(row.dugIn?.depthM).toBeCloseTo(0.2, 3);
  });
});

// 4 tenths of 0.6 are 2.4 t/ha for the page's 20 cm; of the 15 cm that the report tells, 15/20 × 240 = 180 g/m².
test('the reason names both depths', async () => {
  const { stdout } = await medlar(['why', 'Currants', 'lime'], { 'orchard.yaml': 'where: Kent, England\nsoil:\n  top: soil.txt\ntrees:\n  Currants: 5 blackcurrant, planted 2020, top\n', 'soil.txt': 'pH 6.1\nSample depth 15 cm\n' });
  expect(stdout).toContain('2.4 t/ha for 20 cm is 180 g/m² of pure lime for a layer 15 cm deep.');
});
