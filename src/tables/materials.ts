/**
 * Fertiliser materials: what each mostly holds and weighs, used only where the label is silent. The weight of a US cup (oz) is
 * the low and high of the printed spread. And what the numbers of a label are, by country.
 */
import type { Cite } from '../reason/figure.ts';
import type { Material } from './material.ts';
import { MANURES } from './materials-manures.ts';
import { MEALS } from './materials-meals.ts';
import { MINERALS } from './materials-mineral.ts';

export type { Material, MaterialKind, OtherForm, Span } from './material.ts';

/** Both spellings of sulphur. */
const spelt = (names: readonly string[]): string[] => [...new Set(names.flatMap((n) => [n, n.replace(/sulph/g, 'sulf')]))];

export const MATERIALS: readonly Material[] = [...MINERALS, ...MEALS, ...MANURES].map((m) => ({ ...m, names: spelt(m.names) }));

/** A spread this wide, as a share of the chief nutrient, is told. */
export const WIDE_SPREAD = { share: 0.2, cite: { source: 'medlar', at: 'material-spread', mark: 'judgement' } satisfies Cite } as const;

/** Countries whose labels print P and K as elements. That of New Zealand rests on memory, and that the P and K of South Africa are no oxides. */
export const ELEMENTAL_LABELS: Readonly<Record<string, Cite>> = {
  AU: { source: 'stylemanual-au', at: 'elemental N-P-K-S', mark: 'read' },
  IE: { source: 'irish-journal-labels', at: 'elemental P and K on the bag', mark: 'read' },
  NZ: { source: 'medlar', at: 'new-zealand-labels', mark: 'memory' },
  ZA: { source: 'medlar', at: 'south-africa-labels', mark: 'memory' },
};
/** What a label says in so many words. */
export const SAID_ELEMENTAL: Cite = { source: 'grower', at: 'label', mark: 'read' };

/** A ratio with the total behind it in brackets: 2:3:2 (22) holds 22 × 2/7 % N. */
export const RATIO_LABELS = { countries: ['ZA'], cite: { source: 'south-africa-grades', at: '4:3:4 (33)', mark: 'read' } satisfies Cite } as const;
/** Where a fourth number without a name is sulphur. That of New Zealand rests on memory. */
export const FOURTH_IS_SULPHUR = { countries: ['AU', 'NZ'], cite: { source: 'western-australia-composition', at: '0:8.8:0:11', mark: 'read' } satisfies Cite } as const;
/** What the brackets of a Polish label hold: the oxides of what its list names. */
export const LISTED_AS = { forms: { S: 'SO3', Ca: 'CaO', Mg: 'MgO' }, cite: { source: 'poland-label', at: 'NPK (Ca,S) 4-12-12 (14-29)', mark: 'read' } satisfies Cite } as const;

/** Pounds in a US gallon of liquids whose three numbers are percent by weight. */
export type LiquidDensity = { readonly grade: readonly [n: number, p: number, k: number]; readonly low: number; readonly high: number; readonly unit: 'lb/gal'; readonly cite: Cite };
const handout: Cite = { source: 'bulk-density-handout', at: 'liquids', mark: 'read' };
const cornell: Cite = { source: 'cornell-nrcca', at: 'liquids', mark: 'read' };
const liquid = (grade: LiquidDensity['grade'], low: number, high: number, cite: Cite): LiquidDensity => ({ grade, low, high, unit: 'lb/gal', cite });
export const LIQUID_DENSITIES: readonly LiquidDensity[] = [
  liquid([28, 0, 0], 10.67, 10.7, handout), liquid([32, 0, 0], 11.06, 11.06, handout), liquid([10, 34, 0], 11.65, 11.7, handout), liquid([9, 18, 9], 11.7, 11.7, cornell), liquid([12, 0, 0], 11.04, 11.04, handout), liquid([7, 21, 7], 11.2, 11.2, handout),
  liquid([4, 10, 10], 10.3, 10.3, handout), liquid([8, 21, 4], 11.3, 11.3, handout), liquid([9, 18, 4], 11.3, 11.3, handout), liquid([18, 13, 0], 11.3, 11.3, handout), liquid([9, 20, 2], 11.4, 11.4, handout),
];
/** No liquid that feeds is lighter or heavier, g a mL; and no level US cup of a feed weighs less or more, g. */
export const DENSITY_ODD = { low: 0.9, high: 1.7, unit: 'g/mL', cite: { source: 'medlar', at: 'density-odd', mark: 'judgement' } satisfies Cite } as const;
export const CUP_ODD = { low: 20, high: 500, unit: 'g', cite: { source: 'medlar', at: 'density-odd', mark: 'judgement' } satisfies Cite } as const;
