/** Limits that bind whatever the rule says, and the stops. Values in the unit printed. */
import type { Cite } from '../reason/figure.ts';
import type { Crop, Size } from './crops.ts';

/** Quick nitrogen in one dose on the ring, lb/1000 sq ft. A turf limit; on trees it is our judgement. */
export const RING_LIMIT = { value: 1, unit: 'lb/1000 sq ft', cite: { source: 'new-york-lawn', at: 'most nitrogen in one application', mark: 'read' } satisfies Cite } as const;

/** A dose of nitrogen that a grower or a lab states is refused above this: twice the turf limit, lb/1000 sq ft of crown. */
export const DOSE_REFUSED = { value: 2, unit: 'lb/1000 sq ft', cite: { source: 'medlar', at: 'dose-refused', mark: 'judgement' } satisfies Cite } as const;

/** Phosphate or potash that a lab states is refused above the most that is dug in before planting, g/m² (Poland, 300 kg/ha). */
export const MOST_DUG_IN = { gPerM2: 30, cite: { source: 'poland-skierniewice', at: 'before planting, low class', mark: 'read' } satisfies Cite } as const;

const washington: Cite = { source: 'washington-em119e', at: 'electrical conductivity', mark: 'read' };
/** Conductivity above which nothing is fed, dS/m, by how the lab wetted the soil. */
export const SALT_STOP = { dilute: 1, paste: 4, cite: washington } as const;
/** Crops that salt hurts at half of that; which they are is our judgement. */
export const SALT_STOP_TENDER: { readonly crops: readonly Crop[]; readonly paste: number; readonly cite: Cite } = {
  crops: ['avocado', 'strawberry', 'raspberry', 'blackberry', 'blueberry'], paste: 2, cite: { source: 'salinity-classes', at: 'table 5, 2 to 4: yields of very sensitive crops', mark: 'read' },
};
export const SODIUM_STOP = { percent: 15, sar: 13, cite: { source: 'medlar', at: 'sodium', mark: 'memory' } satisfies Cite } as const;
export const LEAD_STOP = { ppm: 400, cite: { source: 'medlar', at: 'lead', mark: 'memory' } satisfies Cite } as const;

/** Organic matter, %: above the first half the nitrogen, above the second no field soil. */
export const ORGANIC_MATTER = { half: 5, notSoil: 15, cite: { source: 'medlar', at: 'organic-matter', mark: 'judgement' } satisfies Cite } as const;

/** A tub: g of N a litre of mix a season, and N : P2O5 : K2O. */
export const TUB = {
  gPerL: 0.5, ratio: { N: 3, P2O5: 1, K2O: 2 },
  cite: { source: 'medlar', at: 'tub', mark: 'memory' } satisfies Cite,
} as const;

/** Crops that were measured in pots: g of N a pot and season, the least that served, and the size of the pot. */
export const TUB_MEASURED: readonly { readonly crops: readonly Crop[]; readonly gN: number; readonly pot: number; readonly unit: 'gal' | 'L'; readonly cite: Cite }[] = [
  { crops: ['blueberry'], gN: 4.4, pot: 5, unit: 'gal', cite: { source: 'potted-blueberry-clark-zheng', at: 'controlled release in a 5-gallon pot, healthy growth from 4.4 to 7.3 g of nitrogen', mark: 'derived' } },
  { crops: ['olive'], gN: 2.8, pot: 15, unit: 'L', cite: { source: 'olive-pot-arbequina', at: 'young trees in 15 litres, 2.8 g of nitrogen enough', mark: 'derived' } },
];

/** Ring on the ground, feet: from the trunk by its thickness, to a share of the crown's radius. */
export const RING = {
  inner: [{ under: 1, ft: 0.5 }, { under: 3.0000001, ft: 1 }, { under: Infinity, ft: 2 }],
  outerShare: 1.25, widest: 2, leastFt: 1.5,
  cite: { source: 'medlar', at: 'ring', mark: 'judgement' } satisfies Cite,
} as const;

/** Crown where nobody measured it: feet a year and at most, by kind. */
export const CROWN_GUESS: { readonly perYear: number; readonly sizes: Readonly<Record<Size, number>>; readonly crops: Readonly<Partial<Record<Crop, number>>>; readonly cite: Cite } = {
  perYear: 1, sizes: { dwarf: 8, 'semi-dwarf': 12, standard: 18 },
  crops: {
    blueberry: 4, currant: 4, gooseberry: 4, elderberry: 6, raspberry: 2, blackberry: 5, grape: 6, strawberry: 1, kiwifruit: 12,
    walnut: 30, pecan: 30, chestnut: 25, hazelnut: 12,
  },
  cite: { source: 'medlar', at: 'crown-guess', mark: 'judgement' },
};

/** A rule above these is a slip of unit or of point: g N a plant and year (an old pecan is given a kilogram), and on its ground (2 lb a square foot is ten thousand). */
export const RULE_LIMITS = { gPerPlant: 3000, gPerM2: 40, cite: { source: 'medlar', at: 'rule-limits', mark: 'judgement' } satisfies Cite } as const;

/** How far plants stand apart in their row where nobody told it, feet. */
export const IN_ROW: { readonly crops: Readonly<Partial<Record<Crop, number>>>; readonly cite: Cite } = {
  crops: { strawberry: 1, raspberry: 3, blackberry: 5 }, cite: { source: 'virginia-slides', at: 'spacing of small fruit', mark: 'read' },
};

/** Where phosphate or potash is wanted, so much of the want under or over counts as met before another bag is bought: of one plant's want, of that of all, or in grams for all. */
export const CLOSELY_MET = { under: { plant: 1 / 2, orchard: 0.1, grams: 10 }, over: 0.25, cite: { source: 'medlar', at: 'closely-met', mark: 'judgement' } satisfies Cite } as const;

/** An adult's walking step, for whoever has no tape. */
export const STEP = { m: 0.762, cite: { source: 'medlar', at: 'step', mark: 'practice' } satisfies Cite } as const;
