/** Elemental sulphur: how much lowers the pH, by texture and exchange capacity; how much at a time; what free lime swallows. */
import type { Cite } from '../reason/figure.ts';
import type { Unit } from '../units/units.ts';

export type TextureClass = 'sand' | 'sandy loam' | 'loam' | 'clay';
export const TEXTURE_CLASSES: readonly TextureClass[] = ['sand', 'sandy loam', 'loam', 'clay'];

/** A rate for a change of `per` pH units on the classes it names. */
export type SulphurRate = { readonly rates: Partial<Record<TextureClass, number>>; readonly per: number; readonly unit: Unit; readonly organic?: { readonly over: number; readonly rate: number }; readonly cite: Cite };

export const SULPHUR_RATES: readonly SulphurRate[] = [
  { rates: { sand: 35, 'sandy loam': 75, loam: 110 }, per: 0.1, unit: 'kg/ha', cite: { source: 'ontario-blueberry-ph', at: 'sulphur for each 0.1 pH', mark: 'read' } },
  { rates: { sand: 1, 'sandy loam': 1, loam: 2, clay: 2 }, per: 1, unit: 'lb/100 sq ft', organic: { over: 2, rate: 2 }, cite: { source: 'extension-blueberry-ph', at: 'sandy; silt, clay or over 2 % organic matter', mark: 'read' } },
  { rates: { sand: 4 / 3, 'sandy loam': 4 / 3, loam: 2, clay: 8 / 3 }, per: 0.1, unit: 'lb/1000 sq ft', cite: { source: 'tennessee-blueberry-ph', at: 'silt loam; a third more on clay, a third less on sand', mark: 'read' } },
  { rates: { sand: 7, 'sandy loam': 7, loam: 11, clay: 17 }, per: 1, unit: 'lb/1000 sq ft', cite: { source: 'purdue-sulphur', at: 'sandy, loam, clay', mark: 'read' } },
];

/** lb of sulphur an acre from the pH of the row to 4.5; other goals by the difference of two rows. */
export const SULPHUR_TO_45 = {
  unit: 'lb/acre', classes: ['sand', 'loam', 'clay'],
  rows: [[4.5, 0, 0, 0], [5, 175, 530, 800], [5.5, 350, 1030, 1600], [6, 530, 1540, 2300], [6.5, 660, 2020, 3030], [7, 840, 2560, 3830]],
  cite: { source: 'michigan-sulphur', at: 'to pH 4.5, by texture', mark: 'read' } satisfies Cite,
} as const;

/** lb of sulphur an acre from the pH of the row to 6.5, by exchange capacity (meq/100 g), on soil without free lime. */
export const SULPHUR_BY_CEC = {
  unit: 'lb/acre', goal: 6.5, capacities: [5, 10, 20], rows: [[6.5, 0, 0, 0], [7, 180, 360, 720], [7.5, 300, 600, 1200], [8, 340, 670, 1340], [8.5, 370, 730, 1460]],
  cite: { source: 'ohio-agf507', at: 'by exchange capacity, to pH 6.5', mark: 'read' } satisfies Cite,
} as const;

/** From 7.0-7.5 to 6.0-6.5 in the top 15 cm: sandy to clay. */
export const SULPHUR_FROM_NEUTRAL = {
  unit: 'g/m2', from: [7, 7.5], to: [6, 6.5], low: 135, high: 270,
  cite: { source: 'rhs-acidifying', at: 'sulphur, pH 7.0 or 7.5 to 6.0-6.5', mark: 'read' } satisfies Cite,
} as const;

/** Established bushes, spread on the surface, a year. */
export const SULPHUR_LIMIT = { value: 0.7, unit: 'lb/100 sq ft', cite: { source: 'extension-blueberry-ph', at: 'established blueberries, a year, on the surface', mark: 'read' } satisfies Cite } as const;
export const SULPHUR_LIMITS_ELSEWHERE = [
  { value: 1000, unit: 'lb/acre', cite: { source: 'maine-254', at: 'established wild blueberries, a year', mark: 'read' } satisfies Cite },
] as const;

/** Lime in the soil has to go before the pH can fall: lb of sulphur an acre for each 1 % of carbonate in the top 6 in. */
export const FREE_LIME = { value: 6400, unit: 'lb/acre', cite: { source: 'agvise-free-lime', at: 'sulfur for 1 % calcium carbonate', mark: 'read' } satisfies Cite } as const;
/** pH above which acidifying for blueberries is very difficult and short-lived, and above which it is hard. */
export const SULPHUR_HOPELESS = { value: 7, hard: 6, unit: 'pH', cite: { source: 'ontario-blueberry-ph', at: 'above 7.0', mark: 'read' } satisfies Cite } as const;
/** pH above which a soil holds free lime as a rule. */
export const FREE_LIME_PH = { value: 7.5, unit: 'pH', cite: { source: 'wisconsin-xht1151', at: 'above pH 7.5', mark: 'read' } satisfies Cite } as const;

/** Texture by exchange capacity (meq/100 g), where nobody told the texture. */
export const TEXTURE_BY_CEC = { upTo: [[5, 'sand'], [8, 'sandy loam'], [12, 'loam'], [Infinity, 'clay']], cite: { source: 'michigan-sulphur', at: 'texture from exchange capacity', mark: 'read' } satisfies Cite } as const;
