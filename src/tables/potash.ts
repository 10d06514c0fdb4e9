/** Phosphate and potash beside the tables by class of soil: where soil and leaf are both low, before planting, and at target. */
import type { Cite } from '../reason/figure.ts';

/** One broadcast of 200 kg K/ha where soil and leaf are both low; the oxide is derived. */
export const BRITISH_COLUMBIA_K = { kgPerHa: 200, cite: { source: 'british-columbia-potassium', at: 'soil and leaf both low', mark: 'read' } satisfies Cite } as const;

/** Before planting, dug in, g/m²: within what Poland prints (10 to 30 of P2O5, 15 to 30 of K2O where it is low). */
export const BEFORE_PLANTING = { low: 10, veryLow: 20, cite: { source: 'uk-rb209', at: 'before planting, index 1 and 0', mark: 'memory' } satisfies Cite } as const;

/** At target no phosphate: Ontario gives phosphorus before planting only. */
export const ONTARIO_P: Cite = { source: 'ontario-apples', at: 'phosphorus before planting only', mark: 'read' };
