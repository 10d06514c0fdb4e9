/**
 * Phosphate and potash by distance from target, g/m² of crown a year, bearing trees; what a crop takes off.
 * kg/ha ÷ 10 = g/m².
 */
import type { Cite } from '../reason/figure.ts';
import type { Crop } from './crops.ts';

const weinsberg: Cite = { source: 'weinsberg', at: 'table 1, bearing trees', mark: 'read' };

/** kg/ha as printed: low, target, high. */
export const WEINSBERG = { P2O5: { low: 40, target: 20, high: 0 }, K2O: { low: 150, target: 80, high: 0 }, MgO: { low: 50, target: 30, high: 0 }, cite: weinsberg } as const;

/** Poland, bearing orchards, K2O kg/ha. */
export const POLAND_K2O = { low: [80, 120], target: [50, 80], cite: { source: 'poland-skierniewice', at: 'bearing orchards', mark: 'read' } satisfies Cite } as const;

/** One broadcast of 200 kg K/ha where soil and leaf are both low; the oxide is derived. */
export const BRITISH_COLUMBIA_K = { kgPerHa: 200, cite: { source: 'british-columbia-potassium', at: 'soil and leaf both low', mark: 'read' } satisfies Cite } as const;

/** At target no phosphate: Ontario gives phosphorus before planting only. */
export const ONTARIO_P: Cite = { source: 'ontario-apples', at: 'phosphorus before planting only', mark: 'read' };

/** K2O in kg a tonne of fruit, low and high; where a page prints the element it is derived by the oxide factor. */
export type Removal = { readonly crops: readonly Crop[]; readonly of: 'K' | 'K2O'; readonly unit: 'kg/t' | 'lb/ton'; readonly low: number; readonly high: number; readonly cite: Cite };
export const REMOVAL: readonly Removal[] = [
  { crops: ['apple'], of: 'K', unit: 'lb/ton', low: 2.0, high: 3.9, cite: { source: 'washington-removal', at: 'apple', mark: 'read' } },
  { crops: ['pear'], of: 'K', unit: 'lb/ton', low: 3.0, high: 3.0, cite: { source: 'washington-removal', at: 'pear', mark: 'read' } },
  { crops: ['cherry'], of: 'K', unit: 'lb/ton', low: 2.9, high: 6.3, cite: { source: 'washington-removal', at: 'cherry', mark: 'read' } },
  { crops: ['peach'], of: 'K', unit: 'lb/ton', low: 86 / 15, high: 86 / 15, cite: { source: 'california-peach-removal', at: '86 lb K in 15 tons', mark: 'derived' } },
  { crops: ['plum'], of: 'K2O', unit: 'kg/t', low: 2.3, high: 4.6, cite: { source: 'tarn-et-garonne', at: 'plum', mark: 'read' } },
  { crops: ['citrus'], of: 'K2O', unit: 'kg/t', low: 1.82, high: 1.82, cite: { source: 'bragantia-citrus', at: 'mean of nine kinds', mark: 'derived' } },
];
