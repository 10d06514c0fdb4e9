/** Bounds outside which a reading is asked about, never refused. Most are our own judgement. */
import type { Cite } from '../reason/figure.ts';
import type { Unit } from '../units/units.ts';
import type { Words } from '../words/en-US.ts';
import type { Item, Method } from './items.ts';

/** Likely causes, as keys of words. */
type Cause = keyof Words['cause'];

const ours: Cite = { source: 'medlar', at: 'quiet-range', mark: 'judgement' };

/**
 * What soils mostly hold: mg/kg of the element, else in the unit told. Bounds are quiet.
 * `nearZero`: under it another unit is likely. Without `methods` a row is for any other method.
 */
export type Quiet = { readonly item: Item; readonly unit?: Unit; readonly methods?: readonly Method[]; readonly low: number; readonly high: number | null; readonly nearZero?: { readonly under: number; readonly why: Cause }; readonly why: Cause };
export const QUIET: { readonly rows: readonly Quiet[]; readonly cite: Cite } = {
  cite: ours,
  rows: [
    { item: 'phosphorus', methods: ['mehlich-3', 'bray-1', 'bray-2'], low: 1, high: 300, why: 'perhaps-p2o5' },
    { item: 'phosphorus', methods: ['olsen'], low: 1, high: 150, why: 'perhaps-p2o5' },
    { item: 'phosphorus', methods: ['morgan', 'modified-morgan'], low: 0.3, high: 50, why: 'perhaps-method' },
    { item: 'phosphorus', methods: ['mehlich-1'], low: 0.5, high: 200, why: 'perhaps-p2o5' },
    { item: 'phosphorus', low: 0.3, high: 300, why: 'perhaps-p2o5' },
    { item: 'potassium', low: 15, high: 800, nearZero: { under: 2, why: 'perhaps-meq' }, why: 'perhaps-k2o' },
    { item: 'calcium', low: 100, high: 6000, nearZero: { under: 40, why: 'perhaps-meq' }, why: 'perhaps-limy' },
    { item: 'magnesium', low: 10, high: 1000, nearZero: { under: 10, why: 'perhaps-meq' }, why: 'perhaps-unit' },
    { item: 'sodium', low: 0, high: 300, why: 'perhaps-unit' },
    { item: 'boron', low: 0.05, high: 5, why: 'perhaps-unit' },
    { item: 'zinc', low: 0.1, high: 50, why: 'perhaps-sprays' },
    { item: 'copper', low: 0.1, high: 50, why: 'perhaps-sprays' },
    { item: 'manganese', low: 0.5, high: 200, why: 'perhaps-unit' },
    { item: 'nitrate-n', low: 0, high: 100, why: 'perhaps-no3' },
    { item: 'organic-matter', unit: '%', low: 0.3, high: null, why: 'perhaps-unit' },
    { item: 'cec', unit: 'meq/100g', low: 1, high: 50, why: 'perhaps-mmolc' },
    { item: 'salts', unit: 'dS/m', low: 0.02, high: 20, why: 'perhaps-us-cm' },
  ],
};
/** pH over which much calcium is no wonder. */
export const LIMY_PH = { over: 7.3, cite: ours } as const;

/** Soil pH outside of this is odd, in water and in a salt solution. */
export const QUIET_PH = { water: [3.5, 9], salt: [3.5, 8], cite: ours } as const;
/** A salt solution reads lower than water, by at most this (calcium chloride; potassium chloride reads lower still). */
export const SALT_GAP = { most: 1.2, cite: { source: 'wa-soil-ph', at: 'pHCa 0.6 to 1.2 under pHw', mark: 'read' } satisfies Cite } as const;

const recalled = (at: string): Cite => ({ source: 'medlar', at, mark: 'memory' });
/** pH of the fresh buffer, which no soil raises. */
export const BUFFER_START: { readonly starts: readonly { readonly method: Method; readonly ph: number; readonly cite: Cite }[] } = {
  starts: [
    { method: 'smp', ph: 7.5, cite: { source: 'purdue-smp', at: 'the solution starts at pH 7.5', mark: 'read' } },
    { method: 'adams-evans', ph: 8, cite: { source: 'clemson-cec', at: '8 × (8.00 − buffer pH)', mark: 'read' } },
    { method: 'sikora', ph: 7.5, cite: recalled('buffer-start') },
    { method: 'mehlich-buffer', ph: 6.6, cite: recalled('buffer-start') },
    { method: 'woodruff', ph: 7, cite: recalled('buffer-start') },
  ],
};

/** Above this pH in water there is no exchangeable aluminium; and what is taken for none, meq/100 g. */
export const ALUMINIUM = { ph: 5.6, none: 0.1, cite: { source: 'brazil-interpretation', at: 'no exchangeable Al over pH 5.6', mark: 'read' } satisfies Cite } as const;
/** Free lime over the percentage is not expected under the pH. */
export const CARBONATE = { phUnder: 6.5, percent: 0.5, cite: recalled('carbonate-acid') } as const;
/** Organic matter, %: over the first a potting mix or compost; over the second the unit may be g/kg. */
export const ORGANIC_ODD = { potting: 15, perKg: 20, cite: ours } as const;

/** Sum of cations against the printed CEC: share off that is told, and from which a unit is likely to be wrong. pH from which no acidity is missing. */
export const CEC_SUM = { off: 0.1, far: 0.4, neutral: 7, cite: ours } as const;
/** Base saturations may miss 100 by this, %. */
export const BASE_SUM = { within: 2, cite: ours } as const;
/** A printed saturation that gives back the content within this share confirms its unit. */
export const CONFIRMED = { within: 0.1, cite: ours } as const;

/** Depth that the sample reaches to, inches: turf samples are shallow; orchard topsoil ends at a foot. */
export const DEPTH = { shallow: 3, deep: 12, cite: { source: 'colorado-lab', at: 'turf 2-3 in, gardens 6-8 in', mark: 'read' } satisfies Cite } as const;
/** Years after which a test is old, and too old to lean on. */
export const AGE = { old: 3, tooOld: 5, cite: { source: 'medlar', at: 'test-age', mark: 'judgement' } satisfies Cite } as const;
