// Southern Brazil, liming and fertilising manual of the two southern states, lime by the SMP index:
// t/ha at PRNT 100 %, 0 to 20 cm. Typed from research notes of the page (memory).
import { expect, test } from 'vitest';
import { published } from '../helpers.ts';
import { type Case, expectPrinted, G_PER_M2, near, ph } from '../ph.ts';

const source = {
  id: 'brazil-cqfs',
  title: 'Manual de calagem e adubação para os estados do Rio Grande do Sul e de Santa Catarina',
  publisher: 'Comissão de Química e Fertilidade do Solo RS/SC',
  url: null,
  mark: 'memory',
} as const;

const flags = (buffer: number) => ({ where: 'Rio Grande do Sul, Brazil', now: 4.6, method: 'smp', buffer });

// SMP index, then t/ha to pH 5.5, 6.0 and 6.5; the first row stands for 4.4 and everything under it.
const table: readonly (readonly number[])[] = [
  [4.4, 15.0, 21.0, 29.0],
  [4.6, 10.9, 15.1, 20.0],
  [4.8, 8.5, 11.9, 15.7],
  [5.0, 6.6, 9.9, 13.3],
  [5.2, 5.3, 8.3, 11.3],
  [5.4, 4.2, 6.8, 9.5],
  [5.6, 3.2, 5.4, 7.8],
  [5.8, 2.3, 4.2, 6.3],
  [6.0, 1.6, 3.2, 4.9],
  [6.2, 1.0, 2.2, 3.7],
  [6.4, 0.6, 1.4, 2.6],
  [6.6, 0.2, 0.8, 1.6],
  [6.8, 0.0, 0.3, 0.8],
  [7.0, 0.0, 0.0, 0.2],
];

published(source, () => {
  expectPrinted(source.id, 't/ha', table.flatMap(([index = NaN, ...cells]) => cells.map((tonnes, at): Case => [{ ...flags(index), goal: [5.5, 6.0, 6.5][at] ?? NaN }, tonnes])));

  // Under 4.4 as at 4.4.
  expectPrinted(source.id, 't/ha', [
    [{ ...flags(4.2), goal: 5.5 }, 15.0],
    [{ ...flags(4.2), goal: 6.0 }, 21.0],
    [{ ...flags(4.2), goal: 6.5 }, 29.0],
  ]);

  // Halfway between two goals.
  expectPrinted(source.id, 't/ha', [
    [{ ...flags(5.8), goal: 5.75 }, 3.25],
    [{ ...flags(5.4), goal: 6.25 }, 8.15],
  ]);

  test('index 5.6, goal 6.0: 5.4 t/ha of pure lime, 20 cm deep', async () => {
    const { row } = await ph({ ...flags(5.6), goal: 6.0, material: 'Garden lime, CCE 100' });
    expect(row.verdict).toBe('lime');
    near(row.dugIn?.gPerM2, 5.4 * G_PER_M2['t/ha']);
    expect(row.dugIn?.depthM).toBeCloseTo(0.2, 3);
  });
});
