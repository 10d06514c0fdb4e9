/** pH in water from pH in a salt solution. Calcium chloride takes `SALT_PH` of the lime tables; these lines stand beside it. */
import type { Cite } from '../reason/figure.ts';

/** pH in 0.01 M CaCl2 = slope × pH in water + intercept. */
export const CACL2_LINE = {
  slope: 1.05, intercept: -0.9,
  cite: { source: 'new-south-wales-1988', at: 'solution to soil 2.5 : 1; not for saline soil', mark: 'read' } satisfies Cite,
} as const;

/** pH in water (1:5) = intercept + slope × log10 of the pH in 1 M KCl (1:2.5). */
export const KCL_LINE = {
  intercept: -1.95, slope: 11.58,
  cite: { source: 'poland-ph', at: '200 soils, by the logarithm', mark: 'read' } satisfies Cite,
} as const;

/** How far a converted pH may be off: the published differences for calcium chloride lie 0.3 to 1.2 apart. */
export const SALT_PH_ERROR = { value: 0.3, cite: { source: 'medlar', at: 'salt-ph-error', mark: 'judgement' } satisfies Cite } as const;
/** In KCl the published differences are wider: means of 0.99 and 0.89 in two provinces, 0.03 to 1.99 for single soils. */
export const KCL_PH_ERROR = { value: 0.5, cite: { source: 'medlar', at: 'kcl-ph-error', mark: 'judgement' } satisfies Cite } as const;
