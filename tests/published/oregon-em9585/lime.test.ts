// Oregon State University Extension, EM 9585, lime requirement by the Sikora buffer, October 2025:
// ton/acre of 100-score lime for a 6 in sample. Typed from research notes of the page.
import { expect, test } from 'vitest';
import { medlar } from '../../medlar.ts';
import { published } from '../helpers.ts';
import { G_PER_M2, INCH, expectPrinted, expectTable, figuresOf, near, ph } from '../ph.ts';

const source = {
  id: 'oregon-em9585',
  title: 'Updated lime requirement recommendations for Oregon',
  publisher: 'Oregon State University Extension',
  url: 'https://extension.oregonstate.edu/catalog/em-9585-updated-lime-requirement-recommendations-oregon',
  mark: 'read',
} as const;

// Lowest goal in the table is 5.6, so pH 5.0 needs lime in every column.
const flags = (buffer: number) => ({ now: 5, method: 'sikora', buffer });

// Buffer pH, then ton/acre to pH 5.6, 6.0, 6.4, 6.8 and 7.2.
const table = [
  [6.9, 0.0, 0.0, 0.5, 0.8, 1.0],
  [6.8, 0.0, 0.4, 0.8, 1.2, 1.6],
  [6.7, 0.2, 0.7, 1.1, 1.6, 2.2],
  [6.6, 0.4, 0.9, 1.5, 2.1, 2.7],
  [6.5, 0.7, 1.2, 1.8, 2.5, 3.3],
  [6.4, 0.9, 1.5, 2.1, 2.9, 3.8],
  [6.3, 1.1, 1.7, 2.5, 3.3, 4.4],
  [6.2, 1.3, 2.0, 2.8, 3.7, 4.9],
  [6.1, 1.5, 2.3, 3.1, 4.2, 5.5],
  [6.0, 1.7, 2.5, 3.5, 4.6, 6.0],
  [5.9, 1.9, 2.8, 3.8, 5.0, 6.6],
  [5.8, 2.2, 3.1, 4.1, 5.4, 7.1],
  [5.7, 2.7, 4.0, 5.5, 7.2, 9.9],
  [5.6, 3.1, 4.5, 6.2, 8.3, 11.4],
  [5.5, 3.5, 5.1, 7.0, 9.3, 12.9],
  [5.4, 3.8, 5.6, 7.7, 10.3, 14.3],
  [5.3, 4.2, 6.2, 8.5, 11.3, 15.8],
  [5.2, 4.6, 6.7, 9.2, 12.3, 17.3],
  [5.1, 5.0, 7.3, 10.0, 13, 18.7],
  [5.0, 5.3, 7.8, 10.7, 14, 20.2],
  [4.9, 5.7, 8.4, 11.5, 15, 21.7],
  [4.8, 6.1, 8.9, 12.2, 16.3, 23.2],
] as const;

published(source, () => {
  expectTable(source.id, 'ton/acre', [5.6, 6.0, 6.4, 6.8, 7.2], table, flags);

  // Halfway between two printed cells; the last across the break between 5.8 and 5.7.
  expectPrinted(source.id, 'ton/acre', [
    [{ ...flags(6.05), goal: 5.6 }, 1.6],
    [{ ...flags(6.0), goal: 5.8 }, 2.1],
    [{ ...flags(6.2), goal: 6.2 }, 2.4],
    [{ ...flags(6.25), goal: 6.6 }, 3.075],
    [{ ...flags(5.75), goal: 6.0 }, 3.55],
  ]);

  // The text's own example: buffer pH 6.0, goal 5.6, 1.7 ton/acre; on the surface two inches' share of six.
  test('buffer pH 6.0, goal 5.6: 1.7 ton/acre dug 6 in deep, a third of it on the surface', async () => {
    const { row } = await ph({ ...flags(6.0), goal: 5.6, material: 'Garden lime, CCE 100' });
    expect(row.verdict).toBe('lime');
    near(row.dugIn?.gPerM2, 1.7 * G_PER_M2['ton/acre']);
    expect(row.dugIn?.depthM).toBeCloseTo(6 * INCH, 4);
    near(row.gPerM2, (1.7 * G_PER_M2['ton/acre']) / 3);
    expect(row.range).toBeNull();
  });

  test('a printed nought is no lime', async () => {
    const { row } = await ph({ ...flags(6.9), goal: 5.6, material: 'Garden lime, CCE 100' });
    expect(row.gPerM2).toBe(0);
    expect(row.dugIn?.gPerM2 ?? 0).toBe(0);
  });

  test('no lime where the water pH is already at the goal', async () => {
    const { row } = await ph({ ...flags(5.8), now: 6.4, goal: 6.4 });
    expect(row.verdict).toBe('leave');
    expect(row.gPerM2).toBe(0);
  });

  // The table's own goals: 5.6 to 7.2.
  const outside = [
    ['goal 7.3', ['--now', '5', '--goal', '7.3', '--buffer', '6.0', '--method', 'sikora'], 6.0, 7.2],
  ] as const;
  // What is more acid than the last row takes that row, as the least.
  expectPrinted(source.id, 'ton/acre', [[{ ...flags(4.7), goal: 6 }, 8.9]]);
  for (const [name, args, edge, goal] of outside) {
    test(`${name} is not reckoned beyond the table`, async () => {
      expect(figuresOf(await ph({ ...flags(edge), goal }), source.id, 'ton/acre')).not.toEqual([]);
      const beyond = await medlar(['ph', ...args, '--json']);
      const values = Object.values(beyond.json?.figures ?? {}).filter((figure) => figure.cite.source === source.id && figure.unit === 'ton/acre');
      expect(values).toEqual([]);
    });
  }
});
