/** Soil tests of one zone beside each other: values of one method, with how far a lab strays, and whether they rise or fall beyond it. */
import type { Item, Method } from '../tables/items.ts';
import type { Precision } from '../tables/ratings.ts';
import { JUMP, PRECISION } from '../tables/ratings.ts';
import type { Cite } from '../reason/figure.ts';
import type { Rated } from './rate.ts';

/** `low` to `high` is where the same lab might have put the same soil. */
export type Point = { readonly taken: string; readonly value: number; readonly low: number; readonly high: number };
export type Trend = 'up' | 'down' | 'same';
/** `unit` is mg/kg where a value can be had in it, else as the report prints it. `elsewhere`: tests of another method, or without a value, that cannot stand beside these. */
export type Series = { readonly item: Item; readonly method: Method | null; readonly unit: string; readonly points: readonly Point[]; readonly trend: Trend | null; readonly jump: boolean; readonly elsewhere: readonly string[]; readonly cite: Cite };

/** In the order in which they are told; of each it is known how far a lab strays. */
const FOLLOWED: readonly Item[] = ['ph', 'ph-salt', 'phosphorus', 'potassium', 'magnesium', 'calcium', 'organic-matter'];
const scatterOf = (item: Item): Precision['within'] => PRECISION.find((p) => p.items.includes(item))!.within;

/** `tests` from the oldest to the newest; the newest decides the method. */
export function trendsOf(tests: readonly { readonly taken: string; readonly rated: readonly Rated[] }[]): Series[] {
  return FOLLOWED.flatMap((item) => {
    const all = tests.flatMap(({ taken, rated }) => {
      const r = rated.find((x) => x.reading.item === item && x.reading.value !== null);
      return r ? [{ taken, r }] : [];
    });
    const newest = all.at(-1);
    if (!newest) return [];
    const kind = ({ reading, mgPerKg }: Rated): string => `${reading.method ?? ''} ${reading.tag ?? ''} ${mgPerKg ? 'mg/kg' : `${reading.unit ?? ''} ${reading.form ?? ''}`}`;
    const same = all.filter((x) => kind(x.r) === kind(newest.r) && !x.r.reading.below && !x.r.reading.above);
    const points = same.map(({ taken, r }) => pointOf(taken, r));
    // "Magnesium > 200 ppm" alone is nothing to go by.
    if (points.length === 0) return [];
    return [{
      item, method: newest.r.reading.method, unit: newest.r.mgPerKg ? 'mg/kg' : newest.r.reading.unit ?? '', points, trend: trendOf(points), jump: points.some((p, i) => i > 0 && jumps(item, points[i - 1]!.value, p.value)),
      elsewhere: all.filter((x) => !same.includes(x)).map((x) => x.taken), cite: scatterOf(item).cite,
    }];
  });
}

function pointOf(taken: string, { reading, mgPerKg }: Rated): Point {
  const value = mgPerKg?.value ?? reading.value!;
  const scatter = scatterOf(reading.item);
  const reach = Math.max(scatter.share * value, scatter.least);
  return { taken, value, low: value - reach, high: value + reach };
}

/** From the first to the last: a change counts where what the lab might have said of the one soil cannot be said of the other. */
function trendOf(points: readonly Point[]): Trend | null {
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last || first === last) return null;
  return last.low > first.high ? 'up' : last.high < first.low ? 'down' : 'same';
}

const jumps = (item: Item, a: number, b: number): boolean => (item === 'ph' || item === 'ph-salt' ? Math.abs(a - b) > JUMP.ph : Math.max(a, b) > JUMP.times * Math.min(a, b));
