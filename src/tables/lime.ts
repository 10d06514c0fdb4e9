/**
 * Lime: what each test asks for, dug in, in the unit printed; how strong a lime is; how much goes on at once under standing trees.
 * Every test has its own reference lime, depth and goals: rates of two tests are never mixed.
 */
import type { Cite } from '../reason/figure.ts';
import type { Unit } from '../units/units.ts';

export type LimeTest = 'sikora' | 'smp' | 'acidity';

/** A grid: goals across, the test's value down. `reference` is the strength (CCE, %) of the lime the rates are for. */
export type LimeTable = {
  readonly test: LimeTest;
  readonly goals: readonly number[];
  readonly rows: readonly (readonly [value: number, ...rates: number[]])[];
  readonly unit: Unit;
  readonly depthIn: number;
  readonly reference: number;
  /** The states whose own table it is; without, it serves everywhere. */
  readonly states?: readonly string[];
  readonly cite: Cite;
};

export const LIME_TABLES: readonly LimeTable[] = [
  {
    test: 'sikora', goals: [5.6, 6.0, 6.4, 6.8, 7.2], unit: 'ton/acre', depthIn: 6, reference: 100, cite: { source: 'oregon-em9585', at: 'Sikora buffer table', mark: 'read' },
    rows: [
      [6.9, 0, 0, 0.5, 0.8, 1], [6.8, 0, 0.4, 0.8, 1.2, 1.6], [6.7, 0.2, 0.7, 1.1, 1.6, 2.2], [6.6, 0.4, 0.9, 1.5, 2.1, 2.7], [6.5, 0.7, 1.2, 1.8, 2.5, 3.3], [6.4, 0.9, 1.5, 2.1, 2.9, 3.8],
      [6.3, 1.1, 1.7, 2.5, 3.3, 4.4], [6.2, 1.3, 2, 2.8, 3.7, 4.9], [6.1, 1.5, 2.3, 3.1, 4.2, 5.5], [6.0, 1.7, 2.5, 3.5, 4.6, 6], [5.9, 1.9, 2.8, 3.8, 5, 6.6], [5.8, 2.2, 3.1, 4.1, 5.4, 7.1],
      [5.7, 2.7, 4, 5.5, 7.2, 9.9], [5.6, 3.1, 4.5, 6.2, 8.3, 11.4], [5.5, 3.5, 5.1, 7, 9.3, 12.9], [5.4, 3.8, 5.6, 7.7, 10.3, 14.3], [5.3, 4.2, 6.2, 8.5, 11.3, 15.8], [5.2, 4.6, 6.7, 9.2, 12.3, 17.3],
      [5.1, 5, 7.3, 10, 13, 18.7], [5.0, 5.3, 7.8, 10.7, 14, 20.2], [4.9, 5.7, 8.4, 11.5, 15, 21.7], [4.8, 6.1, 8.9, 12.2, 16.3, 23.2],
    ],
  },
  {
    test: 'smp', goals: [6.5, 6.9], unit: 'lb/acre', depthIn: 6, reference: 100, states: ['iowa'], cite: { source: 'iowa-pm1688', at: 'buffer pH table', mark: 'read' },
    rows: [[7.0, 0, 1100], [6.6, 2100, 4400], [6.2, 5000, 7700], [5.8, 7900, 10600]],
  },
  {
    test: 'smp', goals: [6.0, 6.5, 7.0], unit: 'ton/acre', depthIn: 8, reference: 90, cite: { source: 'ncr-221', at: 'SMP table, agricultural ground limestone', mark: 'memory' },
    rows: [
      [6.8, 1, 1.2, 1.4], [6.7, 1.7, 2.1, 2.4], [6.6, 2.4, 2.9, 3.4], [6.5, 3.1, 3.8, 4.5], [6.4, 3.9, 4.7, 5.5], [6.3, 4.6, 5.5, 6.5], [6.2, 5.3, 6.4, 7.5], [6.1, 6, 7.2, 8.6], [6.0, 6.7, 8.1, 9.6],
      [5.8, 8.1, 9.8, 11.7], [5.5, 10.3, 12.5, 14.8], [5.2, 12.4, 15.1, 17.9], [5.0, 13.9, 16.9, 20],
    ],
  },
  {
    test: 'acidity', goals: [6.0, 6.5, 7.0], unit: 'lb/1000 sq ft', depthIn: 7, reference: 100, cite: { source: 'penn-lime-turf', at: 'home garden and turf table, by exchangeable acidity', mark: 'read' },
    rows: [
      [2, 50, 50, 50], [2.6, 50, 50, 70], [3.3, 50, 50, 70], [3.9, 50, 70, 90], [5.2, 50, 90, 110], [5.8, 50, 90, 140], [6.5, 70, 110, 160], [7.1, 90, 110, 160], [7.8, 90, 140, 180], [9, 110, 160, 210],
      [9.7, 140, 180, 230], [10.3, 140, 180, 230], [11, 160, 210, 250], [11.6, 160, 210, 280], [12.3, 180, 230, 280], [13.5, 210, 250, 320], [14.2, 210, 280, 320], [14.8, 230, 280, 340], [15.5, 230, 300, 370],
      [16.1, 250, 320, 370], [16.8, 250, 320, 390], [18, 280, 340, 410], [18.7, 300, 370, 440], [19.3, 300, 390, 440], [20, 320, 390, 460], [20.6, 320, 410, 480], [21.9, 340, 460, 510], [22.5, 370, 460, 530],
      [23.2, 370, 460, 530], [23.8, 390, 480, 550], [24.5, 390, 480, 570], [25.1, 410, 510, 570], [25.7, 410, 530, 600],
    ],
  },
];

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

/** The most lime on the surface under standing trees: a year, by the strictest orchard rule; others allow more. */
export const LIME_LIMIT = { value: 1, unit: 'ton/acre', cite: { source: 'north-carolina-note16', at: 'surface lime on apples, a year', mark: 'read' } satisfies Cite } as const;
export const LIME_LIMITS_ELSEWHERE = [
  { value: 50, unit: 'lb/1000 sq ft', cite: { source: 'north-carolina-lime', at: 'gardens and lawns, at once', mark: 'read' } satisfies Cite },
  { value: 2, unit: 'ton/acre', cite: { source: 'georgia-nectarine', at: 'bearing trees, a year', mark: 'read' } satisfies Cite },
  { value: 10, unit: 'lb/100 sq ft', cite: { source: 'penn-home-garden', at: 'a dose, six months apart', mark: 'derived' } satisfies Cite },
] as const;
/** Light garden soil takes less: carbonate of lime, g/m², by pH in CaCl2. */
export const LIME_LIMIT_LIGHT = {
  unit: 'g/m2', bands: [{ under: 5.3, most: 200 }, { under: Infinity, most: 180 }],
  cite: { source: 'nrw-garden-40', at: 'light soil', mark: 'read' } satisfies Cite,
} as const;

/** pH in CaCl2 or KCl reads lower than in water. */
export const SALT_PH = { value: 0.6, unit: 'pH', cite: { source: 'nsw-ac19', at: '0.5 to 0.8 lower; 0.6 is taken', mark: 'derived' } satisfies Cite } as const;

/** Calcium carbonate equivalent, % of pure limestone, used where the label gives none. */
export type LimeMaterial = { readonly id: string; readonly names: readonly string[]; readonly cce: number; readonly burns?: true; readonly dolomitic?: true; readonly cite: Cite };
const pure: Cite = { source: 'nebraska-lime', at: 'neutralizing value of the pure material', mark: 'read' };
export const LIME_MATERIALS: readonly LimeMaterial[] = [
  { id: 'dolomitic-lime', names: ['dolomitic', 'dolomite', 'magnesium lime', 'dolomitkalk'], cce: 108.6, dolomitic: true, cite: { source: 'definition', at: 'atomic weights', mark: 'derived' } },
  { id: 'hydrated-lime', names: ['hydrated lime', 'slaked lime', 'builder\'s lime', 'löschkalk'], cce: 135, burns: true, cite: pure },
  { id: 'quicklime', names: ['quicklime', 'burnt lime', 'branntkalk'], cce: 178, burns: true, cite: pure },
  { id: 'ground-limestone', names: ['limestone', 'lime', 'chalk', 'calcium carbonate', 'kalk', 'kohlensaurer kalk'], cce: 100, cite: pure },
];
/** UK and German labels give the neutralising value as % CaO: calcium carbonate is 56 of it. */
export const CAO_IN_CARBONATE = { value: 56, unit: '%', cite: { source: 'nebraska-lime', at: 'calcium carbonate as calcium oxide', mark: 'derived' } satisfies Cite } as const;

/** Under this, lime with magnesium is the one to take; ppm of magnesium. */
export const DOLOMITIC_BELOW = { value: 50, unit: 'mg/kg', cite: { source: 'ohio-lime-source', at: 'dolomitic lime', mark: 'read' } satisfies Cite } as const;

