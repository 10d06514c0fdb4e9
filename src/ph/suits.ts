/** The pH that suits a plant, whose range leads, all that is printed beside it, and what to aim at from outside it. */
import type { Cite, Figure } from '../reason/figure.ts';
import { figure } from '../reason/figure.ts';
import type { Crop } from '../tables/crops.ts';
import { TREE_FRUIT } from '../tables/crops.ts';
import type { Statement } from '../tables/ph-ranges.ts';
import { BLUEBERRY_PH, LIME_GOAL, PH_RANGES, PH_STATEMENTS, TREE_FRUIT_PH } from '../tables/ph-ranges.ts';

type Ph = Figure<'pH', 'soil'>;
/** A printed range; of a single number both ends are it. */
export type PhRange = readonly [low: Ph, high: Ph];
/** What leads; the goal from above; outside of `absolute` it is said not to grow; above `limeBelow` its own place does not lime. */
export type Suits = { readonly low: number; readonly high: number; readonly cite: Cite; readonly lowCite?: Cite; readonly goal: Ph; readonly absolute: PhRange | null; readonly limeBelow: Ph | null; readonly ranges: readonly PhRange[] };
/** `crop` and `word` are null for fruit trees in general; `region` is that of the grower, as "US-OH"; `digIn` for ground that is still to be planted. */
export type Asked = { readonly crop: Crop | null; readonly word: string | null; readonly region: string | null; readonly digIn?: boolean };

/** `lowCite` where the low edge is another's than the high one. */
type Plain = { readonly low: number; readonly high: number; readonly cite: Cite; readonly lowCite?: Cite };

const rangeOf = ({ low, high, cite, lowCite = cite }: Plain): PhRange => [figure(low, 'pH', 'soil', 'ph-low-edge', lowCite), figure(high, 'pH', 'soil', 'ph-high-edge', cite)];
const isPreferred = (s: Statement): s is Statement & Plain => s.kind === 'preferred' && s.low !== undefined && s.high !== undefined;
const mayLead = (s: Statement): s is Statement & Plain => isPreferred(s) && s.low < s.high && s.label === undefined && s.cite.mark !== 'memory';

/** The grower's own state's or country's range for the crop, else its range for tree fruit, else the world's and Washington's. Null for a plant without figures. */
export function suitsOf({ crop, word, region, digIn = false }: Asked): Suits | null {
  const serves = (row: { readonly crops: readonly Crop[]; readonly kinds?: readonly string[] }): boolean =>
    (crop === null ? row.crops === TREE_FRUIT : row.crops.includes(crop) && (row.kinds === undefined || (word !== null && row.kinds.includes(word))));
  const species = PH_RANGES.find(serves) ?? null;
  const said = PH_STATEMENTS.filter(serves);
  const places = region === null ? [] : [region, region.slice(0, 2)];
  const here = places.flatMap((place) => said.filter((s) => s.region === place));
  const own = here.filter(mayLead);
  const general = (s: Statement): boolean => s.crops === TREE_FRUIT;
  const local = own.find((s) => !general(s)) ?? own.find(general) ?? null;
  const best = species && { low: species.optimum[0], high: species.optimum[1], cite: species.cite };
  const lead: Plain | null = local ?? worldwide(crop, best, digIn);
  if (!lead) return null;
  const limeBelow = local && here.find((s) => s.kind === 'lime-below' && s.low! < local.low);
  // What leads may be put together of two; what is shown is as printed.
  const all = [...(local ? [local] : []), ...(crop === 'blueberry' ? [BLUEBERRY_PH] : []), ...said.filter(isPreferred), ...(best ? [best] : [])].map(rangeOf);
  const seen = new Set<string>();
  const ranges = all.filter(([low, high]) => {
    const key = `${low.cite.source} ${low.value} ${high.value}`;
    return !seen.has(key) && seen.add(key);
  });
  return {
    low: lead.low, high: lead.high, cite: lead.cite, ...(lead.lowCite ? { lowCite: lead.lowCite } : {}), goal: crop === 'blueberry' && !local ? figure(BLUEBERRY_PH.goal, 'pH', 'soil', 'ph-high-edge', BLUEBERRY_PH.goalCite) : rangeOf(lead)[1],
    absolute: species && rangeOf({ low: species.absolute[0], high: species.absolute[1], cite: species.cite }),
    limeBelow: limeBelow ? figure(limeBelow.low!, 'pH', 'soil', 'ph-low-edge', limeBelow.cite) : null, ranges,
  };
}

/** EcoCrop's optimum, widened by Washington's for tree fruit, by the genus for a kind of citrus, and by the extension services' for blueberry. */
function worldwide(crop: Crop | null, best: Plain | null, digIn: boolean): Plain | null {
  if (crop === null) return TREE_FRUIT_PH;
  if (crop === 'blueberry') return BLUEBERRY_PH;
  const genus = crop === 'citrus' ? PH_RANGES.find((r) => r.kinds.includes('citrus')) : undefined;
  // Florida limes groves under 5.5 alone: the narrow optimum of lemon or grapefruit is no reason to.
  if (best && genus) return { low: Math.min(best.low, genus.optimum[0]), high: Math.max(best.high, genus.optimum[1]), cite: best.high > genus.optimum[1] ? best.cite : genus.cite, lowCite: best.low < genus.optimum[0] ? best.cite : genus.cite };
  if (!best || !TREE_FRUIT.includes(crop)) return best;
  // Planting is the one time that lime is dug in: then the orchard's edge holds, not the lowest that the species takes.
  const low = digIn ? TREE_FRUIT_PH : best.low < TREE_FRUIT_PH.low ? best : TREE_FRUIT_PH;
  return { low: low.low, high: Math.max(best.high, TREE_FRUIT_PH.high), cite: TREE_FRUIT_PH.cite, lowCite: low.cite };
}

/** From below: a little above the low edge. From above: the top of the best range. */
export function goalOf(suits: Suits, now: number): Ph {
  const [low, high] = rangeOf(suits);
  if (now < suits.low) return figure(Math.min(suits.low + LIME_GOAL.above, (suits.low + suits.high) / 2, Math.max(suits.low, LIME_GOAL.most)), 'pH', 'soil', 'ph-goal', LIME_GOAL.cite, [low, high]);
  if (now <= suits.high) return figure(now, 'pH', 'soil', 'ph-inside', suits.cite, [low, high]);
  return figure(suits.goal.value, 'pH', 'soil', 'ph-goal', suits.goal.cite, [low, high]);
}
