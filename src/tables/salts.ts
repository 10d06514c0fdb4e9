/**
 * Soluble salts: conductivity in dS/m depends on how much water the lab adds to the soil, so a value means
 * something beside its dilution only. These lines lead from a dilution to the saturated paste.
 */
import type { Cite } from '../reason/figure.ts';

/** Parts of soil to parts of water; '1:2' stands also for 1:2.5. */
export type Dilution = 'paste' | '1:1' | '1:2' | '1:5';
export const DILUTIONS: readonly Dilution[] = ['paste', '1:1', '1:2', '1:5'];

/** Paste = slope × value + intercept, by the soil's heaviness; null: whatever the soil. `r2` is null where none is printed. */
export type PasteLine = {
  readonly dilution: Exclude<Dilution, 'paste'>;
  readonly soil: 'light' | 'medium' | 'heavy' | null;
  readonly slope: number;
  readonly intercept: number;
  readonly r2: number | null;
  readonly cite: Cite;
};

const plos = (at: string): Cite => ({ source: 'plos-salinity', at, mark: 'read' });
export const PASTE_LINES: readonly PasteLine[] = [
  { dilution: '1:1', soil: 'light', slope: 3.01, intercept: -0.06, r2: 0.98, cite: plos('table 2, 1:1, coarse') },
  { dilution: '1:1', soil: 'medium', slope: 3.01, intercept: -0.77, r2: 0.98, cite: plos('table 2, 1:1, medium') },
  { dilution: '1:1', soil: 'heavy', slope: 2.66, intercept: -0.97, r2: 0.98, cite: plos('table 2, 1:1, fine') },
  { dilution: '1:1', soil: null, slope: 1.85, intercept: 0, r2: 0.85, cite: plos('table 2, 1:1, no texture') },
  { dilution: '1:2', soil: 'light', slope: 2.79, intercept: 0.71, r2: 0.91, cite: plos('table 2, 1:2, coarse') },
  { dilution: '1:2', soil: 'medium', slope: 2.35, intercept: -0.36, r2: 0.95, cite: plos('table 2, 1:2, medium') },
  { dilution: '1:2', soil: 'heavy', slope: 2.16, intercept: 0.03, r2: 0.97, cite: plos('table 2, 1:2, fine') },
  // At 1:5 the factor rises with the share of sand: 4.6 to 9.9 over 628 samples. Which soil takes which is ours.
  { dilution: '1:5', soil: 'light', slope: 9.9, intercept: 0, r2: null, cite: { source: 'korea-tideland-salts', at: 'the highest factor, of the sandiest soils', mark: 'derived' } },
  { dilution: '1:5', soil: 'medium', slope: 7.5, intercept: 0, r2: null, cite: { source: 'korea-tideland-salts', at: 'the average factor', mark: 'read' } },
  { dilution: '1:5', soil: 'heavy', slope: 6.4, intercept: 0, r2: null, cite: { source: 'australia-14b1', at: 'table 14.2, Talsma', mark: 'read' } },
  { dilution: '1:5', soil: null, slope: 7.5, intercept: 0, r2: null, cite: { source: 'korea-tideland-salts', at: 'the average factor', mark: 'read' } },
];

/** Under this value, dS/m, the lines of 1:1 and 1:2 lead to nothing or less: they were made on saltier soils. */
export const FAINT = { value: 0.4, dilutions: ['1:1', '1:2'] as readonly Dilution[] } as const;

/** What salt costs: the paste's value at which the crop starts to fall, and the percent lost for each dS/m above. */
export const SALT_LOSS = [
  { crop: 'strawberry', threshold: 1, slope: 33, cite: { source: 'ussl-salt-tolerance', at: 'vegetables and fruit crops, Maas 1990', mark: 'read' } satisfies Cite },
  { crop: 'plum', threshold: 2.6, slope: 31, cite: { source: 'plum-salinity', at: 'mature trees, chloride the main ion', mark: 'read' } satisfies Cite },
] as const;
