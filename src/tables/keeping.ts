/** How long what is left in a bag keeps. Minerals do not spoil, yet some draw water out of the air and cake. */
import type { Cite } from '../reason/figure.ts';

export const KEEPS = ['keeps', 'keeps-sealed', 'keeps-two-years', 'keeps-season'] as const;
export type Keeps = (typeof KEEPS)[number];

const handout: Cite = { source: 'bulk-density-handout', at: 'critical relative humidity', mark: 'read' };
/** Relative humidity of the air, at about 30 °C, from which a salt draws water, %. */
export const DRAWS_WATER_FROM: readonly { readonly material: string; readonly percent: number; readonly cite: Cite }[] = [
  { material: 'ammonium-nitrate', percent: 59, cite: handout }, { material: 'urea', percent: 72, cite: handout }, { material: 'ammonium-sulphate', percent: 79, cite: handout },
  { material: 'dap', percent: 82, cite: handout }, { material: 'potassium-chloride', percent: 84, cite: handout }, { material: 'map', percent: 92, cite: handout }, { material: 'triple-superphosphate', percent: 94, cite: handout },
  { material: 'calcium-nitrate', percent: 47, cite: { source: 'medlar', at: 'material-grades', mark: 'memory' } },
];
/** Air in a shed is often as damp as this, %. */
export const DAMP_AIR = { percent: 75, cite: { source: 'medlar', at: 'keeping', mark: 'judgement' } as const };
