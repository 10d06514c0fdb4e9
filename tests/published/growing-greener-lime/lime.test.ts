// A laboratory's own pair of rates for a home orchard in Washington, as its owner told them: at pH 5.31,
// lime 44 lb/1000 sq ft if mixed in 8 in deep, only 11 to 14 lb if left on the surface.
// Typed from research notes of the page.
import { expect, test } from 'vitest';
import { LB, published } from '../helpers.ts';
import { G_PER_M2, INCH, askPh, near, ph } from '../ph.ts';

const source = {
  id: 'growing-greener-lime',
  title: 'Home orchard soil report (Washington)',
  publisher: 'A laboratory, by way of a grower',
  url: null,
  mark: 'read',
} as const;

const flags = { now: 5.31, goal: 6.5, lime: '44 lb/1000 sq ft', depth: '8 in', material: 'Garden lime, CCE 100' } as const;

function orchard(report: string): Record<string, string> {
  return {
    'orchard.yaml': [
      'orchard: One plant', 'bud-break: 12 April', 'first-frost: 12 October', 'soil:', '  north bed: soil/report.txt', 'trees:',
      '  Number one: apple, semi-dwarf, planted 2014, 12 ft across, shoots 10 in, north bed',
      '  Number two: apple, semi-dwarf, planted 2014, 12 ft across, shoots 10 in, north bed',
      'store:', '  - Sulphate of ammonia, 21-0-0 +24S, 10 lb, $20', '',
    ].join('\n'),
    'soil/report.txt': report,
  };
}

published(source, () => {
  test('44 lb/1000 sq ft dug 8 in deep is 11 lb/1000 sq ft on the surface', async () => {
    const { row } = await ph(flags);
    expect(row.verdict).toBe('lime');
    near(row.dugIn?.gPerM2, 44 * G_PER_M2['lb/1000 sq ft']);
    expect(row.dugIn?.depthM).toBeCloseTo(8 * INCH, 4);
    near(row.gPerM2, 11 * G_PER_M2['lb/1000 sq ft']);
    expect(row.range).toBeNull();
  });

  test('eleven pounds on a thousand square feet', async () => {
    const { row } = await ph({ ...flags, area: '1000 sq ft' });
    expect(Math.abs((row.g ?? NaN) / (11 * LB) - 1), String(row.g)).toBeLessThan(0.02);
  });

  // Two inches' share of the depth: 44 at 4 in is 22.
  test('a shallower depth leaves a larger share on the surface', async () => {
    const { row } = await ph({ ...flags, depth: '4 in' });
    near(row.gPerM2, 22 * G_PER_M2['lb/1000 sq ft']);
  });

  test("the laboratory's own rate goes before buffer pH", async () => {
    const { row } = await ph({ ...flags, buffer: 5.8, method: 'sikora' });
    near(row.dugIn?.gPerM2, 44 * G_PER_M2['lb/1000 sq ft']);
    near(row.gPerM2, 11 * G_PER_M2['lb/1000 sq ft']);
  });

  for (const [name, buffer] of [['alone', ''], ['before buffer pH', 'Buffer pH 5.8 Sikora\n']] as const) {
    test(`from a report, ${name}`, async () => {
      const report = `pH 5.31\n${buffer}lime requirement: 44 lb/1000 sq ft\ndepth: 8 in\n`;
      const { rows } = await askPh(['north bed'], orchard(report));
      expect(rows.map((row) => row.tree).sort()).toEqual(['Number one', 'Number two']);
      for (const row of rows) {
        expect(row.zone).toBe('north bed');
        expect(row.now).toBe(5.31);
        near(row.dugIn?.gPerM2, 44 * G_PER_M2['lb/1000 sq ft']);
        expect(row.dugIn?.depthM).toBeCloseTo(8 * INCH, 4);
      }
    });
  }
});
