/** Soil pH that suits each crop: FAO EcoCrop, optimal minimum and maximum; not tied to one way of measuring. */
import type { Cite } from '../reason/figure.ts';
import type { Crop } from './crops.ts';

export const ECOCROP: Cite = { source: 'fao-ecocrop', at: 'PHOPMN and PHOPMX', mark: 'read' };

export const PH_RANGES: Readonly<Record<Exclude<Crop, 'other'>, readonly [low: number, high: number]>> = {
  apple: [6, 7], pear: [5.5, 6.5], peach: [5.5, 6.3], plum: [5.5, 6.1], cherry: [5.5, 6.5], fig: [6, 7], blueberry: [4, 5], citrus: [5, 6.5],
};

/** Washington's range for tree fruit in general serves where it is wider than EcoCrop's. */
export const TREE_FRUIT_PH = { low: 6.0, high: 7.5, cite: { source: 'washington-em119e', at: 'soil pH', mark: 'read' } satisfies Cite } as const;
