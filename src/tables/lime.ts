/** Lime by texture alone; how much goes on at once, under standing trees and dug in. What each test asks for stands in `lime-tests.ts` and `lime-equations.ts`, what a lime is worth in `lime-materials.ts`. */
import type { Cite } from '../reason/figure.ts';

/** Where only the texture is known: lb of ground limestone a 100 sq ft to raise the pH of the row to 6.5. Weak pages, marked so. */
export const LIME_BY_TEXTURE = {
  unit: 'lb/100 sq ft', goal: 6.5, depthIn: 6,
  rows: [[4, 11.5, 16, 23], [4.5, 9.5, 13.5, 19.5], [5, 8, 10.5, 15], [5.5, 6, 8, 10.5], [6, 3, 4, 5.5], [6.5, 0, 0, 0]],
  cite: { source: 'lime-texture-page', at: 'ground limestone by texture; the depth of 6 in is ours', mark: 'read' } satisfies Cite,
} as const;
/** Another page's figure for the same, a full pH unit at a time, taken as spread on the surface. */
export const LIME_PER_UNIT = {
  unit: 'lb/1000 sq ft', light: 35, medium: 50, heavy: 70,
  cite: { source: 'lime-per-unit-page', at: 'a full pH unit, by texture', mark: 'read' } satisfies Cite,
} as const;

/** A rate meant to be dug in, cut to the depth that surface lime reaches: 2 in over the lab's depth. */
export const SURFACE_DEPTH = { value: 2, unit: 'in', cite: { source: 'whatcom-report', at: 'its rates of 44 dug in 8 in deep and 11 to 14 on the surface', mark: 'derived' } satisfies Cite } as const;

/** A wanted pH so little above the present one is no reason to lime. */
export const LIME_LEAST_WAY = { value: 0.2, unit: 'pH', cite: { source: 'tri-state-1995', at: 'lime when the pH is 0.2 to 0.3 below what is wanted', mark: 'read' } satisfies Cite } as const;
/** A buffer pH so far under the soil's own is none: the mixture lies between the two, but for the salts of the buffer. */
export const BUFFER_UNDER = { value: 0.5, unit: 'pH', cite: { source: 'medlar', at: 'buffer-under', mark: 'judgement' } satisfies Cite } as const;

/** How deep the ground of a tree to come is dug, at the least, however shallow the sample. */
export const PLANTING_DEPTH = { value: 6, unit: 'in', cite: { source: 'penn-home-garden', at: 'lime dug in 6 to 8 in before planting', mark: 'read' } satisfies Cite } as const;
/** So far under what suits, a test that asks for no lime is doubted. */
export const TEST_DISAGREES = { value: 0.3, unit: 'pH', cite: { source: 'medlar', at: 'test-disagrees', mark: 'judgement' } satisfies Cite } as const;

/** Months until lime has acted, at the latest. */
export const LIME_TIME = { months: 12, cite: { source: 'north-carolina-lime-tips', at: 'several months to 12', mark: 'read' } satisfies Cite } as const;

/** The most lime on the surface under standing trees: a year, by the strictest orchard rule; others allow more. */
export const LIME_LIMIT = { value: 1, unit: 'ton/acre', cite: { source: 'north-carolina-note16', at: 'surface lime on apples, a year', mark: 'read' } satisfies Cite } as const;
export const LIME_LIMITS_ELSEWHERE = [
  { value: 50, unit: 'lb/1000 sq ft', cite: { source: 'north-carolina-lime', at: 'gardens and lawns, at once', mark: 'read' } satisfies Cite },
  { value: 2, unit: 'ton/acre', cite: { source: 'georgia-nectarine', at: 'bearing trees, a year', mark: 'read' } satisfies Cite },
  { value: 10, unit: 'lb/100 sq ft', cite: { source: 'penn-home-garden', at: 'a dose, six months apart', mark: 'derived' } satisfies Cite },
] as const;
/** Dug in before planting: about half of what British arable land gets at once is ploughed down and half worked in above 10 t/ha, which is this. */
export const LIME_LIMIT_DUG = { value: 200, unit: 'lb/1000 sq ft', cite: { source: 'medlar', at: 'lime-dug-most', mark: 'judgement' } satisfies Cite } as const;
/** Light garden soil takes less: carbonate of lime, g/m², by pH in CaCl2. */
export const LIME_LIMIT_LIGHT = {
  unit: 'g/m2', bands: [{ under: 5.3, most: 200 }, { under: Infinity, most: 180 }],
  cite: { source: 'nrw-garden-40', at: 'light soil', mark: 'read' } satisfies Cite,
} as const;

/** pH in CaCl2 or KCl reads lower than in water. */
export const SALT_PH = { value: 0.6, unit: 'pH', cite: { source: 'nsw-ac19', at: '0.5 to 0.8 lower; 0.6 is taken', mark: 'derived' } satisfies Cite } as const;
