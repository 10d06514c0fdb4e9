/** Soil pH that suits each crop: FAO EcoCrop, optimal minimum and maximum; not tied to one way of measuring. */
import type { Cite } from '../reason/figure.ts';
import type { Crop } from './crops.ts';

export const ECOCROP: Cite = { source: 'fao-ecocrop', at: 'PHOPMN and PHOPMX', mark: 'read' };

/** By the species that most gardens grow; none is printed for medlar and blackberry. */
export const PH_RANGES: Readonly<Partial<Record<Crop, readonly [low: number, high: number]>>> & { readonly blueberry: readonly [number, number] } = {
  apple: [6, 7], pear: [5.5, 6.5], 'asian-pear': [5.5, 6.5], quince: [6, 6.5], loquat: [5.5, 6.5],
  peach: [5.5, 6.3], plum: [5.5, 6.1], apricot: [6.5, 7], cherry: [5.5, 6.5], almond: [6.5, 7],
  walnut: [5.5, 6.5], pecan: [5.5, 7], hazelnut: [6, 6.5], chestnut: [5, 6],
  fig: [6, 7], persimmon: [5.5, 6.5], pomegranate: [6.5, 7.5], mulberry: [5.5, 7.5], citrus: [5, 6.5], avocado: [5, 7], olive: [6, 7], mango: [5.5, 7.5], guava: [5.5, 7.5],
  kiwifruit: [6, 7], grape: [5.5, 7.5], blueberry: [4, 5], currant: [6.5, 7.5], gooseberry: [6, 7], raspberry: [5.5, 6.5], elderberry: [6, 7.5], strawberry: [6, 6.8],
};

/** Washington's range for tree fruit in general serves where it is wider than EcoCrop's. */
export const TREE_FRUIT_PH = { low: 6.0, high: 7.5, cite: { source: 'washington-em119e', at: 'soil pH', mark: 'read' } satisfies Cite } as const;

/** Blueberry: acted on only above 5.3, and then to the top of EcoCrop's best range. */
export const BLUEBERRY_PH = { low: 4.0, high: 5.3, cite: { source: 'extension-blueberry-ph', at: 'soil pH 4.0 to 5.3', mark: 'read' } satisfies Cite } as const;

/** Lime aims half a unit above the low edge, never above the middle: six and a half for an apple. */
export const LIME_GOAL = { above: 0.5, unit: 'pH', cite: { source: 'medlar', at: 'lime-goal', mark: 'judgement' } satisfies Cite } as const;
