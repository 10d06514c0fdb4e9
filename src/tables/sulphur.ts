/** Elemental sulphur: how much lowers the pH, by texture and exchange capacity; how much at a time; what free lime swallows. */
import type { Cite } from '../reason/figure.ts';
import type { Unit } from '../units/units.ts';
import type { Crop } from './crops.ts';

export type TextureClass = 'sand' | 'sandy loam' | 'loam' | 'clay';
export const TEXTURE_CLASSES: readonly TextureClass[] = ['sand', 'sandy loam', 'loam', 'clay'];

/** A rate for a change of `per` pH units on the classes it names; `from` is the span of pH to start at, `to` that of goals, where they are printed. What is `weak` is shown, never followed. */
export type SulphurRate = {
  readonly rates: Partial<Record<TextureClass, number>>; readonly per: number; readonly unit: Unit; readonly organic?: { readonly over: number; readonly rate: number };
  readonly from?: readonly [number, number]; readonly to?: readonly [number, number]; readonly depthIn?: number; readonly crops?: readonly Crop[]; readonly label?: 'weak'; readonly cite: Cite;
};

export const SULPHUR_RATES: readonly SulphurRate[] = [
  { rates: { sand: 35, 'sandy loam': 75, loam: 110 }, per: 0.1, unit: 'kg/ha', from: [0, 6.5], cite: { source: 'ontario-blueberry-ph', at: 'sulphur for each 0.1 pH', mark: 'read' } },
  { rates: { sand: 1, 'sandy loam': 1, loam: 2, clay: 2 }, per: 1, unit: 'lb/100 sq ft', organic: { over: 2, rate: 2 }, cite: { source: 'extension-blueberry-ph', at: 'sandy; silt, clay or over 2 % organic matter', mark: 'read' } },
  { rates: { sand: 4 / 3, 'sandy loam': 4 / 3, loam: 2, clay: 8 / 3 }, per: 0.1, unit: 'lb/1000 sq ft', to: [5.5, 14], depthIn: 3, cite: { source: 'tennessee-blueberry-ph', at: 'silt loam; a third more on clay, a third less on sand', mark: 'read' } },
  { rates: { sand: 7, 'sandy loam': 7, loam: 11, clay: 17 }, per: 1, unit: 'lb/1000 sq ft', cite: { source: 'purdue-sulphur', at: 'sandy, loam, clay', mark: 'read' } },
  { rates: { sand: 100, 'sandy loam': 100, loam: 100, clay: 100 }, per: 0.1, unit: 'lb/acre', crops: ['blueberry'], cite: { source: 'maine-254', at: 'wild-blueberry land, spread on the surface, for each 0.1 pH', mark: 'read' } },
  { rates: { sand: 1, 'sandy loam': 1, loam: 3 }, per: 1, unit: 'lb/100 sq ft', from: [5.5, 7], depthIn: 6, cite: { source: 'minnesota-sulphur', at: 'sandy and loam, the lesser, for 50 cubic feet', mark: 'read' } },
  { rates: { sand: 2, 'sandy loam': 2, loam: 6 }, per: 1, unit: 'lb/100 sq ft', from: [5.5, 7], depthIn: 6, cite: { source: 'minnesota-sulphur', at: 'sandy and loam, the greater, for 50 cubic feet', mark: 'read' } },
  { rates: { sand: 0.8, clay: 2.4 }, per: 1, unit: 'lb/100 sq ft', cite: { source: 'minnesota-sulphur-answer', at: 'by texture, 0.8 to 2.4', mark: 'read' } },
  { rates: { 'sandy loam': 10, loam: 15, clay: 20 }, per: 1, unit: 'lb/1000 sq ft', label: 'weak', cite: { source: 'garden-sulphur-page', at: 'light sandy, medium and heavy clay loam', mark: 'read' } },
  { rates: { sand: 15, 'sandy loam': 15, loam: 15, clay: 15 }, per: 1, unit: 'lb/1000 sq ft', label: 'weak', cite: { source: 'old-house-sulphur-page', at: 'any soil', mark: 'read' } },
  { rates: { sand: 0.75, loam: 1.5, clay: 3 }, per: 1, unit: 'lb/100 sq ft', to: [4.5, 14], label: 'weak', cite: { source: 'guides-sulphur-page', at: 'sand, loam, clay, above 4.5', mark: 'read' } },
  { rates: { loam: 2 }, per: 1, unit: 'lb/100 sq ft', to: [4.5, 14], label: 'weak', cite: { source: 'guides-sulphur-page', at: 'loam, the greater, above 4.5', mark: 'read' } },
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
  unit: 'g/m2', from: [7, 7.5], to: [6, 6.5], depthCm: 15, low: 135, high: 270,
  cite: { source: 'rhs-acidifying', at: 'sulphur, pH 7.0 or 7.5 to 6.0-6.5', mark: 'read' } satisfies Cite,
} as const;

/** Established bushes, spread on the surface, a year. */
export const SULPHUR_LIMIT = { value: 0.7, unit: 'lb/100 sq ft', cite: { source: 'extension-blueberry-ph', at: 'established blueberries, a year, on the surface', mark: 'read' } satisfies Cite } as const;
export const SULPHUR_LIMITS_ELSEWHERE = [
  { value: 1000, unit: 'lb/acre', cite: { source: 'maine-254', at: 'established wild blueberries, a year', mark: 'read' } satisfies Cite },
] as const;

/** Mixed into the soil before planting: over this the lesser share goes on now, and a soil test says whether the rest is wanted. */
export const SULPHUR_LIMIT_DUG = { value: 30, unit: 'lb/1000 sq ft', over: { share: 2 / 3 }, cite: { source: 'tennessee-blueberry-ph', at: 'over 30 lb two thirds first, the rest after a test some three months later', mark: 'read' } satisfies Cite } as const;

/** Months until the pH has come down, by warmth and moisture, and the warmth of soil that its bacteria need. */
export const SULPHUR_TIME = { months: [3, 12], cite: { source: 'ontario-blueberry-ph', at: '3 to 12 months, by temperature and moisture', mark: 'read' } satisfies Cite } as const;
export const SULPHUR_WARMTH = { fahrenheit: 55, cite: { source: 'sulphur-consultant', at: 'soil above 55 °F', mark: 'read' } satisfies Cite } as const;

/** Lime in the soil has to go before the pH can fall: lb of sulphur an acre for each 1 % of carbonate in the top 6 in. */
export const FREE_LIME = { value: 6400, unit: 'lb/acre', cite: { source: 'agvise-free-lime', at: 'sulfur for 1 % calcium carbonate', mark: 'read' } satisfies Cite } as const;
/** pH above which acidifying for blueberries is very difficult and short-lived, and above which it is hard. */
export const SULPHUR_HOPELESS = { value: 7, hard: 6, unit: 'pH', cite: { source: 'ontario-blueberry-ph', at: 'above 7.0', mark: 'read' } satisfies Cite } as const;
/** pH above which a soil holds free lime as a rule. */
export const FREE_LIME_PH = { value: 7.5, unit: 'pH', cite: { source: 'wisconsin-xht1151', at: 'above pH 7.5', mark: 'read' } satisfies Cite } as const;

/** A soil that fizzes with vinegar holds free lime; how much is not told, so it is taken as the least a lab can measure, %. */
export const FIZZ = { percent: 0.1, cite: { source: 'rhs-acidifying', at: 'fizzes with vinegar', mark: 'read' } satisfies Cite } as const;

/** Alkalinity of water, as calcium carbonate, above which it undoes sulphur about as fast as it works. */
export const WATER_UNDOES = { mgPerL: 100, cite: { source: 'medlar', at: 'water-undoes', mark: 'judgement' } satisfies Cite } as const;

/** Texture by exchange capacity (meq/100 g), where nobody told the texture. */
export const TEXTURE_BY_CEC = { upTo: [[5, 'sand'], [8, 'sandy loam'], [12, 'loam'], [Infinity, 'clay']], cite: { source: 'michigan-sulphur', at: 'texture from exchange capacity', mark: 'read' } satisfies Cite } as const;
