/** What a soil weighs and how labs count, where a report leaves it out. */
import type { Cite } from '../reason/figure.ts';

/** The weight of a soil that no density is printed for, g/cm³: about a silt loam. */
export const SLICE = { density: 1.33, cite: { source: 'penn-state-sheet', at: '1.33 g/cm³, about a silt loam', mark: 'read' } satisfies Cite } as const;

/** lb/acre for one ppm, as American labs count. */
export const LAB_DOUBLING = { times: 2, cite: { source: 'ohio-soil-values', at: 'ppm × 2 = lb/acre', mark: 'read' } satisfies Cite } as const;

/** Acidity in meq/100 g = factor × (start − buffer pH): South Carolina's lab; and a Midwestern one with an SMP buffer, none above a soil pH of 6.4. */
export const CLEMSON_ACIDITY = { start: 8, factor: 8, cite: { source: 'clemson-cec', at: '8 × (8.00 − buffer pH)', mark: 'read' } satisfies Cite } as const;
export const MIDWEST_ACIDITY = { start: 7, factor: 12, mostPh: 6.4, cite: { source: 'midwest-cec', at: '12 × (7 − buffer pH)', mark: 'read' } satisfies Cite } as const;
