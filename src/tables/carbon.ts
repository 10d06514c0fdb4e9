/** Organic matter from organic carbon, the way labs do it and what a review says of it. */
import type { Cite } from '../reason/figure.ts';

/** Organic matter = carbon × `convention`; the review finds 1.9 in measurements, 2.0 by theory, and 1.4 to 2.5 possible. */
export const CARBON = {
  convention: 1.724, measured: 1.9, theory: 2, low: 1.4, high: 2.5,
  cite: { source: 'carbon-review', at: 'the conventional factor, and the range predicted', mark: 'read' } satisfies Cite,
} as const;

/** Walkley-Black finds part of the carbon: all of it is this many times more, by three studies. Said, never applied. */
export const WALKLEY_BLACK = [
  { times: 1.25, cite: { source: 'walkley-black-new-zealand', at: '1.25 on 40 samples; 1.32 by the first authors', mark: 'read' } satisfies Cite },
  { times: 1.385, cite: { source: 'walkley-black-rubber', at: '71 % found', mark: 'read' } satisfies Cite },
] as const;
