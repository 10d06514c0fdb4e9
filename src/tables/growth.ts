/** Wanted growth of last season's shoots, inches, and leaf ranges: the referees of the nitrogen decision. */
import type { Cite } from '../reason/figure.ts';
import type { Crop } from './crops.ts';

export type GrowthRange = { readonly crops: readonly Crop[]; readonly bearing: boolean; readonly low: number; readonly high: number; readonly cite: Cite };

const iowa: Cite = { source: 'iowa-fruit-trees', at: 'wanted growth', mark: 'read' };

/** First match wins. Inches a year. */
export const GROWTH_RANGES: readonly GrowthRange[] = [
  { crops: ['peach'], bearing: true, low: 12, high: 18, cite: { source: 'utah-backyard', at: 'peach growth', mark: 'read' } },
  { crops: ['blueberry'], bearing: true, low: 6, high: 12, cite: { source: 'north-carolina-column', at: 'blueberry growth', mark: 'read' } },
  { crops: ['fig'], bearing: true, low: 12, high: 18, cite: { source: 'louisiana-fig', at: 'enough growth', mark: 'read' } },
  { crops: ['fig'], bearing: false, low: 12, high: 18, cite: { source: 'louisiana-fig', at: 'enough growth', mark: 'read' } },
  { crops: ['apple', 'pear', 'plum', 'cherry'], bearing: true, low: 8, high: 15, cite: iowa },
  { crops: ['apple', 'pear', 'peach', 'plum', 'cherry'], bearing: false, low: 15, high: 30, cite: iowa },
];

export type LeafRange = { readonly crop: Crop; readonly nutrient: 'N' | 'K' | 'P' | 'Mg'; readonly low: number; readonly high: number; readonly cite: Cite };
const leaf = (crop: Crop, nutrient: 'N' | 'K' | 'P' | 'Mg', low: number, high: number): LeafRange =>
  ({ crop, nutrient, low, high, cite: { source: 'washington-em119e', at: 'leaf ranges', mark: 'read' } });

const michigan = (crop: Crop): LeafRange => ({ crop, nutrient: 'N', low: 1.9, high: 2.7, cite: { source: 'michigan-leaf', at: 'nitrogen, most kinds', mark: 'read' } });

/** Percent of dry leaf. */
export const LEAF_RANGES: readonly LeafRange[] = [
  michigan('apple'), michigan('pear'), leaf('cherry', 'N', 2.0, 3.03), leaf('peach', 'N', 2.7, 3.5),
  leaf('apple', 'K', 1.2, 1.9), leaf('pear', 'K', 1.0, 2.0), leaf('cherry', 'K', 1.2, 3.3), leaf('peach', 'K', 1.2, 3.0),
  leaf('apple', 'P', 0.15, 0.3), leaf('pear', 'P', 0.12, 0.25), leaf('cherry', 'P', 0.1, 0.27), leaf('peach', 'P', 0.1, 0.3),
  { crop: 'plum', nutrient: 'N', low: 2.4, high: 3.4, cite: { source: 'washington-old-leaf', at: 'plums and prunes', mark: 'read' } },
  { crop: 'citrus', nutrient: 'N', low: 2.5, high: 2.7, cite: { source: 'florida-citrus', at: 'citrus leaf nitrogen', mark: 'memory' } },
  { crop: 'blueberry', nutrient: 'N', low: 1.76, high: 2.0, cite: { source: 'medlar', at: 'blueberry-leaf', mark: 'memory' } },
];

/** Nitrogen rises by 10 % for each 0.1 % that leaf N falls short (Michigan, apples and pears). */
export const LEAF_STEP = { share: 10, per: 0.1, cite: { source: 'michigan-leaf', at: 'nitrogen by leaf', mark: 'read' } satisfies Cite };
