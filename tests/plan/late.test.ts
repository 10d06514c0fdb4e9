// A rule of several doses, opened when the season has room for fewer. Florida's citrus: 1.1 lb N in the fifth year, in three doses (IFAS Pinellas).
import { expect, test } from 'vitest';
import { medlar } from '../medlar.ts';
import { LB } from '../published/helpers.ts';

const orchard = 'where: Florida, US\nbud-break: 1 February\nfirst-frost: 1 December\ntrees:\n  A: lemon, planted 2020, 20 ft across\nstore:\n  - Sulphate of ammonia, 21-0-0, 20 lb, $20\n';
const given = async (today: string) => {
  const { json } = await medlar(['plan', '--json', '--today', today], { 'orchard.yaml': orchard });
  const [tree] = json.result.trees;
  return { n: tree.feeds.reduce((sum: number, f: { g: number }) => sum + f.g * 0.21, 0), doses: tree.feeds.length, notices: json.notices };
};

test('from the start all three doses; later no more than the doses that are left, and it is said', async () => {
  const whole = await given('2026-01-20');
  expect(whole.doses).toBe(3);
  expect(whole.n).toBeGreaterThan(1.1 * LB * 0.97);
  // The last day for nitrogen of an evergreen is nine weeks before the frost, 29 September: a month before it one window is left.
  const late = await given('2026-08-30');
  expect(late.doses).toBe(1);
  expect(late.n).toBeLessThan((1.1 * LB) / 3 + 10);
  expect(late.n).toBeGreaterThan((1.1 * LB) / 3 - 10);
  expect(late.notices.find((n) => n.code === 'short-late')?.text).toContain('not made up');
  expect(late.notices.map((n) => n.code)).not.toContain('short');
});
