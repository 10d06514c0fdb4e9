/** What else acidifies, by its formula and the acid it sets free, held against sulphur; and the iron that trees can take up in limy soil. */
import type { Cite } from '../reason/figure.ts';
import { ATOMIC_WEIGHT } from '../units/substance.ts';

type Atom = keyof typeof ATOMIC_WEIGHT;
export type AcidifierId = 'aluminium-sulphate' | 'aluminium-sulphate-14' | 'aluminium-sulphate-dry' | 'iron-sulphate' | 'iron-sulphate-1' | 'iron-sulphate-dry' | 'iron-3-sulphate' | 'ammonium-sulphate';
/** `perSulphur`: parts as acid as one part of sulphur; `nitrogen`: % of it. `garden` is what shops sell. */
export type Acidifier = { readonly id: AcidifierId; readonly perSulphur: number; readonly nitrogen?: number; readonly garden: boolean; readonly aluminium?: true; readonly cite: Cite };

const WATER = { H: 2, O: 1 } as const;
const weightOf = (atoms: Partial<Record<Atom, number>>): number => Object.entries(atoms).reduce((sum, [a, n]) => sum + ATOMIC_WEIGHT[a as Atom] * n, 0);
/** One sulphur makes sulphuric acid, two charges. */
const perSulphur = (weight: number, charges: number): number => weight / charges / (ATOMIC_WEIGHT.S / 2);
const by = (at: string): Cite => ({ source: 'definition', at, mark: 'derived' });

const alum = weightOf({ Al: 2, S: 3, O: 12 });
const iron = weightOf({ Fe: 1, S: 1, O: 4 });
const ammonium = weightOf({ N: 2, H: 8, S: 1, O: 4 });
const wet = (weight: number, waters: number): number => weight + waters * weightOf(WATER);

/** Aluminium gives three charges, iron(II) two once it has rusted, ammonium two once soil life has made nitrate of it. */
export const ACIDIFIERS: readonly Acidifier[] = [
  { id: 'aluminium-sulphate', perSulphur: perSulphur(wet(alum, 18), 6), garden: true, aluminium: true, cite: by('Al2(SO4)3 18 H2O, six charges') },
  { id: 'aluminium-sulphate-14', perSulphur: perSulphur(wet(alum, 14), 6), garden: false, aluminium: true, cite: by('Al2(SO4)3 14 H2O, six charges') },
  { id: 'aluminium-sulphate-dry', perSulphur: perSulphur(alum, 6), garden: false, aluminium: true, cite: by('Al2(SO4)3, six charges') },
  { id: 'iron-sulphate', perSulphur: perSulphur(wet(iron, 7), 2), garden: true, cite: by('FeSO4 7 H2O, two charges') },
  { id: 'iron-sulphate-1', perSulphur: perSulphur(wet(iron, 1), 2), garden: false, cite: by('FeSO4 H2O, two charges') },
  { id: 'iron-sulphate-dry', perSulphur: perSulphur(iron, 2), garden: false, cite: by('FeSO4, two charges') },
  { id: 'iron-3-sulphate', perSulphur: perSulphur(wet(weightOf({ Fe: 2, S: 3, O: 12 }), 9), 6), garden: false, cite: by('Fe2(SO4)3 9 H2O, six charges') },
  { id: 'ammonium-sulphate', perSulphur: perSulphur(ammonium, 4), nitrogen: (200 * ATOMIC_WEIGHT.N) / ammonium, garden: true, cite: by('(NH4)2SO4, four charges once nitrified') },
];

/** Aluminium in a bed kept at 5.5 or lower damages roots and stunts plants. */
export const ALUMINIUM_HARMS = { ph: 5.5, cite: { source: 'aluminium-sulphate-page', at: 'a bed at 5.5 or lower', mark: 'read' } satisfies Cite } as const;

/** Iron sulphate in one go on planted ground; more a month or two later. */
export const IRON_SULPHATE_LIMIT = { value: 7, unit: 'lb/100 sq ft', cite: { source: 'minnesota-iron-sulphate', at: 'in one go; more 1 to 2 months apart', mark: 'read' } satisfies Cite } as const;

/** Iron chelates, weakest first, with the pH up to which each holds its iron. */
export const CHELATES = [
  { id: 'EDTA', mostPh: 6.5, cite: { source: 'chelate-agronomist', at: 'EDTA, pH 6 to 6.5', mark: 'read' } },
  { id: 'DTPA', mostPh: 7, cite: { source: 'chelate-agronomist', at: 'DTPA, pH 7', mark: 'read' } },
  { id: 'EDDHA', mostPh: 9, cite: { source: 'chelate-agronomist', at: 'EDDHA, pH 9', mark: 'read' } },
] as const satisfies readonly { readonly id: string; readonly mostPh: number; readonly cite: Cite }[];
/** Above this the advice is EDDHA alone. */
export const EDDHA_ABOVE = { ph: 7.2, cite: { source: 'colorado-chlorosis', at: 'above pH 7.2', mark: 'read' } satisfies Cite } as const;
