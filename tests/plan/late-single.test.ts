// A year's one dose, planned when spring has passed; and the last day that a place's own publisher prints (Michigan, OC414: none after mid-June).
import { expect, test } from 'vitest';
import { medlar } from '../medlar.ts';

const folder = (where: string, tree: string): string => `where: ${where}\nbud-break: 12 April\nfirst-frost: 12 October\nsoil:\n  bank: soil/a.txt\ntrees:\n  A: ${tree}, bank\nstore:\n  - Sulphate of ammonia, 21-0-0, 20 lb, $20\n  - Sulphate of potash, 0-0-50, 10 lb, $20\n`;
const SOIL = 'pH 6.4\nPhosphorus 164 ppm = very high\nPotassium 60 ppm = low\nMagnesium 200 ppm = high\n';
const APPLE = 'apple, semi-dwarf, planted 2015, 12 ft across, shoots 3 in 2025';
const plan = async (today: string, where = 'Ohio, US', tree = APPLE) => {
  const { json } = await medlar(['plan', '--json', '--today', today], { 'orchard.yaml': folder(where, tree), 'soil/a.txt': SOIL });
  const [t] = json.result.trees;
  const of = (share: string): number => t.feeds.filter((f: { bag: string }) => f.bag.includes(share)).reduce((sum: number, f: { g: number }) => sum + f.g, 0);
  return { tree: t, n: of('ammonia') * 0.21, potash: of('potash') * 0.5, notices: json.notices };
};

test('whole until the second dose\'s window closes on 1 June, half of it after', async () => {
  const spring = await plan('2026-06-01');
  expect(spring.n).toBeGreaterThan(70);
  expect(spring.notices.map((n) => n.code)).not.toContain('short-half');
  for (const today of ['2026-06-02', '2026-07-19']) {
    const late = await plan(today);
    expect(late.n).toBeGreaterThan(30);
    expect(late.n).toBeLessThan(40);
    // Potash does no harm to ripening wood.
    expect(late.potash).toBeCloseTo(spring.potash, -1);
    expect(late.notices.find((n) => n.code === 'short-half')?.text).toContain('belongs in spring');
  }
});

test('Michigan: no nitrogen after 15 June, potash all the same; who says so is named', async () => {
  const before = await plan('2026-05-01', 'Michigan, US', 'peach, planted 2015, 12 ft across, shoots 3 in 2025');
  expect(before.tree.last).toBe('2026-06-15');
  for (const f of before.tree.feeds.filter((x: { bag: string }) => x.bag.includes('ammonia'))) expect(f.until <= '2026-06-15').toBe(true);
  expect((await medlar(['sheet', '--as', 'text', '--today', '2026-05-01'], { 'orchard.yaml': folder('Michigan, US', APPLE), 'soil/a.txt': SOIL })).code).toBeLessThan(3);
  const after = await plan('2026-06-20', 'Michigan, US');
  expect(after.n).toBe(0);
  expect(after.potash).toBeGreaterThan(0);
  expect(after.notices.find((n) => n.code === 'short-date')?.text).toMatch(/Michigan State University.* none after 15 June/);
});
