/**
 * How a year's nitrogen goes on the ring without burning roots: a dose of quick nitrogen over the limit becomes two doses,
 * then a wider ring (1.5, then 2 times the crown's radius), then three doses; what is still over is cut, and said so.
 */
import type { Ring } from '../orchard/geometry.ts';
import { RING_LIMIT } from '../tables/limits.ts';
import { RING } from '../tables/limits.ts';
import { convert } from '../units/units.ts';

export type Spread = { readonly doses: number; readonly ring: Ring; readonly n: number; readonly cut: boolean; readonly mostPerDose: number };

const RING_LIMIT_G = convert(RING_LIMIT.value, RING_LIMIT.unit, 'g/m2');

/** `n` grams of N a year; `ringAt` gives the ring for a stretch of the crown; at most `windows` doses fit the season. */
export function spread(n: number, wanted: number, windows: number, ringAt: (outerShare: number) => Ring): Spread {
  const most = Math.max(1, windows);
  const tries: readonly (readonly [doses: number, share: number])[] = [
    [wanted, RING.outerShare], [Math.max(2, wanted), RING.outerShare], [Math.max(2, wanted), 1.5], [Math.max(2, wanted), RING.widest], [Math.max(3, wanted), RING.widest],
  ];
  let last: Spread | null = null;
  for (const [asked, share] of tries) {
    const doses = Math.min(asked, most);
    const ring = ringAt(share);
    const limit = RING_LIMIT_G * ring.area.value;
    if (n / doses <= limit * (1 + 1e-9)) return { doses, ring, n, cut: false, mostPerDose: limit };
    last = { doses, ring, n: limit * doses, cut: true, mostPerDose: limit };
  }
  return last!;
}
