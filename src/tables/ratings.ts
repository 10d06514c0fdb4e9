/** All published scales in their order, what a lab's own words and index numbers mean, and how far a value can be trusted. */
import type { Cite } from '../reason/figure.ts';
import type { Item } from './items.ts';
import type { Band, Home, Rating, Scale, Target } from './scale.ts';
import { above, at, below, index, under, WORD_TARGET } from './scale.ts';
import { EUROPEAN_SCALES } from './scales-europe.ts';
import { US_SCALES } from './scales-us.ts';
import { WORLD_SCALES } from './scales-world.ts';

export type { Band, Home, Kind, Rating, Scale, Target } from './scale.ts';
export { RATINGS } from './scale.ts';

/** Of two scales that fit alike, the first is taken. */
export const SCALES: readonly Scale[] = [...US_SCALES, ...EUROPEAN_SCALES, ...WORLD_SCALES];

/** A lab's own word by the grower's region: what it says of the target where it is not what the word says elsewhere. */
export type WordScheme = Home & { readonly targets: Readonly<Partial<Record<Rating, Target>>>; readonly cite: Cite };
export const WORD_SCHEMES: readonly WordScheme[] = [
  { countries: ['US'], states: ['new jersey', 'nj'], targets: { high: 'at' }, cite: { source: 'rutgers-levels', at: 'high is optimum', mark: 'read' } },
  // Index classes by name: enough from 51 to 100.
  { countries: ['US'], states: ['north carolina', 'nc'], targets: { high: 'at' }, cite: { source: 'north-carolina-circular-1', at: 'index classes', mark: 'memory' } },
];
/** Virginia's High and Very high (no response), Penn State's and Connecticut's Optimum and South Carolina's Sufficient mean what the words say. */
export const COMMON_WORDS = WORD_TARGET;

/** An index printed by the lab, whose scale the grower's region tells. Bands are of the index itself; under `from` there is none. */
export type IndexScheme = Home & { readonly id: string; readonly from: number; readonly bands: readonly Band[]; readonly cite: Cite };
export const INDEX_SCHEMES: readonly IndexScheme[] = [
  {
    id: 'uk.index', countries: ['GB'], from: 0, cite: { source: 'northern-ireland-2019-81', at: 'index', mark: 'read' },
    bands: [index('0', below(under(1), 'very-low')), index('1', below(under(2))), index('2', at(under(3))), index('3', above(under(4))), index('4+', above(null, 'very-high'))],
  },
  {
    id: 'ireland.index', countries: ['IE'], from: 1, cite: { source: 'ireland-index', at: 'index', mark: 'read' },
    bands: [index('1', below(under(2), 'very-low')), index('2', below(under(3))), index('3', at(under(4))), index('4', above(null))],
  },
  {
    id: 'north-carolina.index', countries: ['US'], states: ['north carolina', 'nc'], from: 0, cite: { source: 'north-carolina-circular-1', at: 'index classes', mark: 'memory' },
    bands: [below(10, 'very-low'), below(25), below(50, 'medium'), at(100, 'high'), above(null, 'very-high')],
  },
  {
    id: 'maryland.index', countries: ['US'], states: ['maryland', 'md', 'delaware', 'de'], from: 0, cite: { source: 'maryland-fertility-index', at: 'fertility index value', mark: 'memory' },
    bands: [below(25), below(50, 'medium'), at(100), above(null, 'very-high')],
  },
];

/** How far a value strays: a share of itself, but no less than `least`, in the scale's own unit. */
type Scatter = { readonly share: number; readonly least: number; readonly cite: Cite };
export type Precision = { readonly items: readonly Item[]; readonly within: Scatter; readonly between: Scatter };
const alp: Cite = { source: 'alp-2015', at: 'nine years, 102 laboratories', mark: 'read' };
const carried: Cite = { source: 'medlar', at: 'scatter-between', mark: 'judgement' };
const manuals: Cite = { source: 'ncr-221', at: 'repeatability', mark: 'memory' };
const half: Cite = { source: 'medlar', at: 'scatter-within', mark: 'judgement' };
/**
 * `within` one laboratory, `between` any two. A class is called near by the scatter within: the grower asks whether the same lab
 * would have said otherwise of the same soil; by the scatter between labs nearly every value would be near a class.
 */
export const PRECISION: readonly Precision[] = [
  { items: ['ph', 'ph-salt'], within: { share: 0, least: 0.1, cite: manuals }, between: { share: 0, least: 0.2, cite: carried } },
  { items: ['phosphorus', 'potassium'], within: { share: 0.1, least: 0, cite: manuals }, between: { share: 0.2, least: 0, cite: alp } },
  { items: ['calcium', 'magnesium'], within: { share: 0.1, least: 0, cite: half }, between: { share: 0.2, least: 0, cite: carried } },
  { items: ['organic-matter', 'organic-carbon'], within: { share: 0.1, least: 0, cite: half }, between: { share: 0.2, least: 0, cite: alp } },
  {
    items: ['sulphur'], within: { share: 0.15, least: 2, cite: { source: 'washington-em119e', at: 'sulfur: detection limit and reproducibility', mark: 'read' } },
    between: { share: 0.15, least: 2, cite: carried },
  },
  { items: ['boron', 'zinc', 'manganese', 'copper', 'iron'], within: { share: 0.2, least: 0, cite: half }, between: { share: 0.4, least: 0, cite: alp } },
];

/** Soils change slowly: more than this from one test to the next speaks of the sampling, by Oregon's guide; the amounts are ours. */
export const JUMP = { times: 2, ph: 1, cite: { source: 'oregon-ec1478', at: 'sudden changes; how large is our judgement', mark: 'judgement' } satisfies Cite } as const;
