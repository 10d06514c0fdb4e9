/** What the nitrogen of a tree is cut by: compost, clover, fire blight. */
import type { Cite } from '../reason/figure.ts';

/** Compost as it lies: its weight, its nitrogen, and how much of that a year sets free. The upper ends count, so that nothing is given twice. */
export const COMPOST = {
  weight: { value: 950, unit: 'lb/yd3', cite: { source: 'norganics-compost', at: 'example of a cubic yard', mark: 'read' } satisfies Cite },
  nitrogen: { low: 0.8, high: 1, unit: '%', cite: { source: 'ohio-anr-34', at: 'compost of plants, horse and duck manure', mark: 'read' } satisfies Cite },
  freed: { low: 5, high: 10, unit: '%', cite: { source: 'uc-almond-compost', at: 'most composts, nitrogen released as nitrate', mark: 'read' } satisfies Cite },
} as const;

/** The most compost a year below fruit trees, litres a square metre of crown: beyond it phosphate piles up. */
export const COMPOST_MOST = { litresPerM2: 1.5, cite: { source: 'bavaria-overfed-gardens', at: 'compost below fruit trees, at most', mark: 'read' } satisfies Cite } as const;

/** Above ground in clover sown below walnuts and peaches; some of those orchards needed no other nitrogen. */
export const CLOVER_BROUGHT = { low: 31, high: 250, mean: 92, unit: 'lb/acre', cite: { source: 'california-clover', at: 'clover mixes of May 2009', mark: 'read' } satisfies Cite } as const;
/** Of what is given to a kind that fire blight takes: lush growth feeds it, and Utah finds that pears often do best on little or none. */
export const BLIGHT = { share: 0.5, cite: { source: 'medlar', at: 'blight-prone', mark: 'judgement' } satisfies Cite } as const;

/** What is still given where clover grows below the tree. */
export const CLOVER = { share: 0.5, cite: { source: 'medlar', at: 'clover', mark: 'judgement' } satisfies Cite } as const;
