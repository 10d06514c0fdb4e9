/**
 * What of a meal, manure or compost feeds in the year it is spread, and in the two after it; the rest of its life is not counted.
 * Materials.md 2, and what was read since. A span goes from the least to the most that a source prints.
 */
import type { Cite } from '../reason/figure.ts';
import type { Span } from './materials.ts';

/** Percent set free. Of organic N alone where `of` says so: the ammonia of fresh manure is gone, or was there at once. */
export type Release = {
  readonly materials: readonly string[];
  readonly of: 'N' | 'organic N';
  readonly unit: '%';
  readonly year1: Span;
  readonly year2: Span;
  readonly year3: Span;
  readonly cite: Cite;
  /** Of all nitrogen, ammonia and all, in the first year: left on top, to dug in at once. Only where `of` is organic N. */
  readonly ofAll?: { readonly year1: Span; readonly cite: Cite };
  /** Where the later years come from, if not from there too. */
  readonly later?: { readonly cite: Cite };
};

const hartz: Cite = { source: 'hartz-johnstone-2006', at: 'after eight weeks; most of 49 products after 100 days (SARE LS16-269)', mark: 'read' };
const recalled: Cite = { source: 'medlar', at: 'release-recalled', mark: 'memory' };
const cornell: Cite = { source: 'cornell-css412', at: 'release of organic N', mark: 'read' };
const later = { cite: recalled };
const midwest = (at: string): Cite => ({ source: 'upper-midwest-manures', at, mark: 'read' });

export const RELEASE: readonly Release[] = [
  { materials: ['blood-meal'], of: 'N', unit: '%', year1: [66, 87], year2: [5, 5], year3: [0, 0], cite: hartz, later },
  { materials: ['feather-meal'], of: 'N', unit: '%', year1: [60, 87], year2: [10, 10], year3: [0, 0], cite: hartz, later },
  { materials: ['fish-meal', 'fish-emulsion', 'fish-hydrolysate', 'crab-meal', 'shrimp-meal'], of: 'N', unit: '%', year1: [62, 87], year2: [5, 5], year3: [0, 0], cite: hartz, later },
  { materials: ['seabird-guano', 'bat-guano'], of: 'N', unit: '%', year1: [61, 87], year2: [5, 5], year3: [0, 0], cite: hartz, later },
  { materials: ['hoof-and-horn', 'wool'], of: 'N', unit: '%', year1: [50, 75], year2: [10, 10], year3: [0, 0], cite: recalled },
  { materials: ['meat-and-bone-meal', 'blood-fish-and-bone', 'blood-and-bone', 'tankage'], of: 'N', unit: '%', year1: [50, 70], year2: [5, 10], year3: [0, 0], cite: recalled },
  { materials: ['cottonseed-meal', 'soybean-meal', 'canola-meal', 'corn-gluten-meal', 'castor-meal', 'neem-cake', 'mustard-cake', 'malt-sprouts'], of: 'N', unit: '%', year1: [50, 70], year2: [10, 10], year3: [0, 5], cite: recalled },
  { materials: ['bone-meal'], of: 'N', unit: '%', year1: [40, 60], year2: [10, 10], year3: [0, 5], cite: recalled },
  { materials: ['alfalfa-meal', 'cocoa-shell', 'coffee-grounds'], of: 'N', unit: '%', year1: [25, 45], year2: [10, 10], year3: [0, 5], cite: recalled },
  { materials: ['kelp-meal', 'seaweed-extract'], of: 'N', unit: '%', year1: [20, 40], year2: [10, 10], year3: [0, 5], cite: recalled },
  { materials: ['cow-manure'], of: 'N', unit: '%', year1: [5, 50], year2: [12, 12], year3: [5, 5], cite: { source: 'iowa-pmr1003', at: 'beef and dairy, 30 to 50; farmyard manure in England 5 to 15 (AHDB)', mark: 'read' }, later: { cite: cornell } },
  { materials: ['pig-manure'], of: 'organic N', unit: '%', year1: [25, 35], year2: [12, 12], year3: [5, 5], ofAll: { year1: [35, 80], cite: midwest('swine') }, cite: cornell },
  { materials: ['sheep-manure', 'goat-manure', 'rabbit-manure', 'alpaca-manure'], of: 'organic N', unit: '%', year1: [25, 35], year2: [12, 12], year3: [5, 5], cite: cornell },
  { materials: ['horse-manure'], of: 'organic N', unit: '%', year1: [25, 30], year2: [12, 12], year3: [5, 5], cite: cornell },
  { materials: ['hen-manure', 'broiler-litter', 'turkey-manure'], of: 'organic N', unit: '%', year1: [50, 55], year2: [12, 15], year3: [5, 6], ofAll: { year1: [45, 70], cite: midwest('poultry') }, cite: { source: 'cornell-css412', at: 'poultry; half in general (Oklahoma)', mark: 'read' } },
  { materials: ['hen-manure-dried'], of: 'N', unit: '%', year1: [37, 55], year2: [10, 12], year3: [0, 5], cite: { source: 'sare-ls16-269', at: 'most of poultry litters in 100 days; a year by Cornell', mark: 'read' }, later },
  { materials: ['cow-manure-dried', 'sheep-manure-dried', 'rabbit-manure-dried'], of: 'organic N', unit: '%', year1: [25, 35], year2: [12, 12], year3: [5, 5], cite: cornell },
  { materials: ['compost', 'mushroom-compost', 'worm-castings', 'leaf-mould'], of: 'N', unit: '%', year1: [5, 10], year2: [2, 5], year3: [2, 5], cite: { source: 'uc-almond-compost', at: 'most composts, nitrogen released as nitrate', mark: 'read' }, later: { cite: { source: 'new-zealand-compost-2016', at: '13 to 23 % in three to four years', mark: 'derived' } } },
  // Nebraska's total, parted as Cornell parts manures.
  { materials: ['manure-composted', 'hen-manure-composted'], of: 'organic N', unit: '%', year1: [5, 22], year2: [2, 11], year3: [2, 4], cite: { source: 'nebraska-manure-nitrogen', at: 'compost, 37 % in three years; 5 to 10 in one in California', mark: 'derived' } },
  { materials: ['biosolids'], of: 'N', unit: '%', year1: [30, 40], year2: [10, 15], year3: [5, 5], cite: recalled },
];

/** Where only the kind is known. */
export const KIND_RELEASE: readonly (Omit<Release, 'materials'> & { readonly kind: 'meal' | 'manure' | 'compost' })[] = [
  { kind: 'meal', of: 'N', unit: '%', year1: [21, 87], year2: [5, 10], year3: [0, 0], cite: { source: 'sare-ls16-269', at: 'commercial organic fertilizers, 100 days', mark: 'read' }, later },
  { kind: 'manure', of: 'organic N', unit: '%', year1: [25, 55], year2: [12, 15], year3: [5, 6], cite: { source: 'cornell-css412', at: 'all animals; half in general (Oklahoma)', mark: 'read' } },
  { kind: 'compost', of: 'N', unit: '%', year1: [5, 10], year2: [2, 5], year3: [2, 5], cite: { source: 'uc-almond-compost', at: 'most composts, nitrogen released as nitrate', mark: 'read' }, later: { cite: { source: 'new-zealand-compost-2016', at: '13 to 23 % in three to four years', mark: 'derived' } } },
];

/** Of the phosphate and potash of manures, in the first year. */
export const MANURE_MINERALS = {
  P2O5: { low: 80, high: 100, unit: '%', cite: { source: 'iowa-pmr1003', at: 'beef and dairy, phosphorus', mark: 'read' } satisfies Cite },
  K2O: { low: 90, high: 100, unit: '%', cite: { source: 'oklahoma-manure', at: 'potassium', mark: 'read' } satisfies Cite },
} as const;

/** Rock phosphate: what of its weight is available P2O5, and the pH above which it is left alone. Its whole P2O5 of 31 % never counts. */
export const ROCK_PHOSPHATE = {
  available: { low: 1, high: 3, unit: '%', cite: { source: 'organic-orchard-fruits', at: 'hard rock 1 to 2 %, colloidal 2 to 3 %', mark: 'read' } satisfies Cite },
  upTo: { value: 6.5, unit: 'pH', cite: { source: 'medlar', at: 'release-recalled', mark: 'memory' } satisfies Cite },
} as const;

/** Days from raw manure, dug in, to the harvest: of what touches the soil, and of what hangs above it. */
export const MANURE_TO_HARVEST = { touching: 120, above: 90, unit: 'day', cite: { source: 'usda-nop-205-203', at: '(c)(1)', mark: 'read' } satisfies Cite } as const;
