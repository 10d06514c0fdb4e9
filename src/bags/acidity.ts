/** What the year's feed does to the soil's pH, as lime that it brings or uses up. */
import type { Bag } from '../orchard/bag.ts';
import { holdsGrade } from '../orchard/bag.ts';
import type { Fed } from '../orchard/history.ts';
import type { Ring } from '../orchard/geometry.ts';
import type { Figure } from '../reason/figure.ts';
import { figure } from '../reason/figure.ts';
import { ACID_PER_N, FEED_ACIDITY } from '../tables/feed-acidity.ts';

/** Made when first asked for: many commands never do. */
let patterns: readonly RegExp[] | undefined;
const namePatterns = (): readonly RegExp[] => (patterns ??= FEED_ACIDITY.map((f) => new RegExp(`\\b(?:${f.names.join('|')})\\b`, 'i')));

/** % of its weight in calcium carbonate: minus for a feed that uses lime up. Known by its name, else by its material, else by its nitrogen alone. */
export function limeInFeed({ label, material, n }: { readonly label: string; readonly material: string | null; readonly n: number }): Figure<'%', 'lime'> {
  const known = FEED_ACIDITY.find((_, i) => namePatterns()[i]!.test(label)) ?? FEED_ACIDITY.find((f) => f.material === material);
  if (!known) return figure(-ACID_PER_N.value * n * 100, '%', 'lime', 'feed-lime-by-n', ACID_PER_N.cite);
  return figure(known.percentN === null ? known.lime : (known.lime * n * 100) / known.percentN, '%', 'lime', 'feed-lime', known.cite);
}

type Fedded = { readonly feeds: readonly { readonly bag: Bag; readonly g: number }[]; readonly fed: readonly Fed[]; readonly ring: Ring | null };

/** The year's feed on one plant, a square metre of its ring; null where it stands in no open ground. `bags` tell what a name of the diary is. */
export function limeOfYear({ feeds, fed, ring }: Fedded, bags: readonly Bag[]): Figure<'g/m2', 'lime'> | null {
  if (!ring) return null;
  const planned = feeds.map(({ bag, g }) => ({ g, lime: limeInFeed({ label: bag.label, material: bag.material?.id ?? null, n: bag.grade.N }) }));
  const done = fed.flatMap(({ bag, g, brought, holds }) => {
    if (bag === null || g === null || g === 0 || brought === null) return [];
    const listed = bags.find((b) => b.label.toLowerCase() === bag.toLowerCase() || holdsGrade(bag, b.printed));
    return [{ g, lime: limeInFeed({ label: listed?.label ?? bag, material: listed?.material?.id ?? null, n: (holds ?? brought).N / g }) }];
  });
  const all = [...planned, ...done];
  const grams = all.reduce((sum, { g, lime }) => sum + (g * lime.value) / 100, 0);
  return figure(grams / ring.area.value, 'g/m2', 'lime', 'feed-lime-year', { source: 'definition', at: 'feed × its lime / ring', mark: 'derived' }, [...all.map((x) => x.lime), ring.area]);
}
