// A report in the layout of a state laboratory, and what a grower in Missouri would see of it. Sums by hand from the figures named.
import { describe, expect, test } from 'vitest';
import { medlar } from '../medlar.ts';
import { LB, OZ } from '../published/helpers.ts';

const REPORT = `SOIL TEST REPORT     for Home Garden and Fruit
Field ID: Backyard      Date sampled: 21 Oct 2025    Depth 6 in
Phosphorus (P) Bray-1   38 lbs/a     Low
Potassium (K)           210 lbs/a    Medium
Magnesium (Mg)          185 lbs/a    Low
Fertilizer recommendations (lbs per 1000 sq ft)
N 1.5 lb per 1000 sq ft, P2O5 3 lb per 1000 sq ft, K2O 2 lb per 1000 sq ft
Apply 10 lb of 10-10-10 per 1000 sq ft in early spring
`;
const orchard = (trees: string, more = ''): string => `where: Missouri, US\nbud-break: 8 April\nfirst-frost: 18 October\nsoil:\n  yard: soil.txt${more}\ntrees:\n${trees}store:\n  - Sulfate of ammonia, 21-0-0, 20 lb, $16\n`;
const plan = async (line: string, more = '') => (await medlar(['plan', '--json', '--today', '2026-03-10'], { 'orchard.yaml': orchard(`  A: ${line}, yard\n`, more), 'soil.txt': REPORT })).json;

describe('a Missouri report', () => {
  test('name, day and depth of a sample on one line are all kept', async () => {
    const { json } = await medlar(['read', '-', '--json'], {}, REPORT);
    expect(json.result.samples[0]).toMatchObject({ name: 'Backyard', taken: '2025-10-21', depth: '6 in' });
  });

  test('a product beside the nutrients themselves is the way to bring them, and not more', async () => {
    // 1.5 lb N on 1000 sq ft, on a crown of 14 ft: pi/4 x 14 x 14 = 153.94 sq ft.
    const followed = await plan('apple, semi-dwarf, planted 2017, 14 ft across, shoots 7 in 2025', ', by the lab');
    expect(followed.result.trees[0].need.N).toBeCloseTo((1.5 * LB * Math.PI * 14 ** 2) / 4000, 3);
    // Where only products are named, they are the advice.
    const alone = await medlar(['plan', '--json', '--today', '2026-03-10'], { 'orchard.yaml': orchard('  A: apple, semi-dwarf, planted 2017, 14 ft across, yard\n', ', by the lab'), 'soil.txt': REPORT.replace(/^N 1\.5.*\n/m, '') });
    expect(alone.json.result.trees[0].need.N).toBeCloseTo((1 * LB * Math.PI * 14 ** 2) / 4000, 3);
  });

  test('June-bearing strawberries are fed after the last harvest, never in spring (Iowa State University)', async () => {
    const { result } = await plan('50 strawberry, planted 2024, spacing 1 x 3 ft');
    const [tree] = result.trees;
    // 5 lb of 10-10-10 a 100 ft of row.
    expect(tree.need.N).toBeCloseTo((5 * 0.1 * LB) / 100, 3);
    // Growth starts in early April in Missouri; nothing goes on before the middle of June (practice).
    expect(tree.feeds.every((f: { from: string }) => f.from > '2026-06-14')).toBe(true);
    expect(tree.feeds.length).toBeGreaterThan(0);
  });

  test('"M7 rootstock" is as good as "rootstock M7": a semi-dwarf, capped at 8 oz (Maryland, printed for pear)', async () => {
    for (const said of ['M7 rootstock', 'rootstock M7']) {
      expect((await plan(`pear, ${said}, planted 2005, 40 ft across, shoots 2 in 2025`)).result.trees[0].need.N).toBeCloseTo(8 * OZ, 1);
    }
  });

  test('potash held back for magnesium says so', async () => {
    const json = await plan('apple, semi-dwarf, planted 2015, 14 ft across, shoots 7 in 2025');
    expect(json.result.trees[0].need.K2O).toBe(0);
    expect(json.figures[json.result.trees[0].needWhy.K2O]!.cite).toMatchObject({ source: 'medlar', at: 'potash-vetoed' });
  });

  test('a tree to come has no shoots to measure and no crown to guess', async () => {
    const files = { 'orchard.yaml': orchard('  Old one: apple, planted 2015, 14 ft across, yard\n  New plum: plum, planting March 2027, bed 8 x 6 ft, yard\n').replace('store:\n', 'store:\n  - Triple super, 0-46-0, 5 lb, $11\n'), 'soil.txt': REPORT };
    const { stdout } = await medlar(['sheet', '--as', 'text', '--today', '2026-03-10'], files);
    expect(stdout).toContain('dug into all 48 sq ft of the bed');
    expect(stdout).toMatch(/Old one _+/);
    expect(stdout).not.toMatch(/New plum _+|New plum: crown/);
  });

  test('a mistake is spoken of in the measures of the place that the file tells', async () => {
    const { stderr } = await medlar(['check'], { 'orchard.yaml': orchard('  A: apple, trunk big, yard\n'), 'soil.txt': REPORT });
    expect(stderr).toContain('trunk 11 in round');
  });
});
