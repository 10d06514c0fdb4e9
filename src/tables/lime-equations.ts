/** Lime by arithmetic: lines and curves of a buffer pH for each goal, and small formulas of other facts; their constants as printed. */
import type { LimeMethod } from './lime-tests.ts';

/** Rate = constant + a × buffer + b × buffer² + c × pH, never below nothing. */
export type LimeEquations = LimeMethod & {
  /** Buffer pH that they were printed or reckoned for. */
  readonly span: readonly [low: number, high: number];
  /** In tenths, as the lime test index. */
  readonly index?: true;
  /** For each inch of the depth. */
  readonly perInch?: true;
  readonly most?: number;
  readonly classes: readonly string[];
  readonly rows: readonly (readonly [goal: number, constant: number, a: number, b?: number, c?: number])[];
};

const LINE = ['constant', 'buffer'];
const CURVE = ['constant', 'buffer', 'buffer squared'];
export const LIME_EQUATIONS: readonly LimeEquations[] = [
  {
    // An Ohio comparison of buffers found one equation to serve both.
    test: ['smp', 'sikora'], region: ['US-OH', 'US-IN', 'US-MI'], unit: 'ton/acre', depth: [8, 'in'], reference: 90, span: [6.0, 6.8], index: true, classes: LINE,
    rows: [[6.0, 49.3, -0.71], [6.5, 60.4, -0.87], [6.8, 71.4, -1.03]], cite: { source: 'tri-state-1995', at: 'by lime test index', mark: 'memory' },
  },
  {
    test: ['smp', 'sikora'], region: ['US-IA'], unit: 'lb/acre', depth: [6, 'in'], reference: 100, span: [5.8, 7.0], classes: LINE,
    rows: [[6.0, 38_619, -5915]], cite: { source: 'iowa-pm1688', at: 'equation to pH 6.0', mark: 'memory' },
  },
  {
    test: ['smp'], region: ['US-KS'], unit: 'lb/acre', depth: [6, 'in'], reference: 100, span: [5.0, 7.5], perInch: true, classes: CURVE,
    rows: [[5.5, 6405, -1590, 98], [6.0, 12_810, -3180, 196], [6.8, 25_620, -6360, 391]], cite: { source: 'kansas-mf2586', at: 'for each inch of depth', mark: 'memory' },
  },
  {
    // High beside every other table and not smooth from goal to goal; of a lime graded 60-69.
    test: ['sikora'], region: ['US-WI'], label: 'span', unit: 'ton/acre', depth: [7, 'in'], reference: 65, span: [5.0, 7.5], classes: ['constant', 'buffer', 'buffer squared', 'pH'],
    rows: [
      [5.2, 36.1, -3.29, 0, -2.67], [5.4, 48.2, -4.84, 0, -3.03], [5.6, 51, -5.4, 0, -2.67], [5.8, 57.2, -5.55, 0, -3.5], [6.0, 72.7, -7.59, 0, -3.78], [6.3, 103, -12.6, 0, -3.18],
      [6.5, 134, -17.2, 0, -2.73], [6.6, 152, -20.3, 0, -2.17], [6.8, 195, -28.4, 0, 0.144],
    ],
    cite: { source: 'wisconsin-a2809', at: 'lime of grade 60-69', mark: 'memory' },
  },
  {
    test: ['smp'], region: ['CA-ON'], unit: 't/ha', depth: [15, 'cm'], reference: 75, span: [5.2, 6.8], most: 20, classes: CURVE,
    rows: [[5.5, 37.7, -5.75], [6.0, 255.4, -73.15, 5.26], [6.5, 291.6, -80.99, 5.64], [7.0, 334.5, -90.79, 6.19]], cite: { source: 'ontario-811', at: 'agricultural index 75', mark: 'memory' },
  },
];

/** A small formula by its name, with its constants; `ph/lime-formulas.ts` evaluates it. */
export type LimeFormula = LimeMethod & (
  | { readonly formula: 'target-buffer'; readonly target: number; readonly perUnit: number }
  | { readonly formula: 'mehlich'; readonly bufferEnd: number; readonly nearEnd: number; readonly acidityFactor: number }
  | { readonly formula: 'adams-evans'; readonly bufferStart: number; readonly acidityFactor: number; readonly inefficiency: number; readonly curve: readonly [constant: number, slope: number, square: number]; readonly cecUnder: number }
  | { readonly formula: 'acidity-rule'; readonly neutralPh: number; readonly toNeutral: number; readonly goal: number; readonly toGoal: number; readonly acidityOver: number; readonly least: number }
  | { readonly formula: 'buffer-capacity'; readonly toEquilibrium: { readonly plain: number; readonly square: number }; readonly poundsPerPpm: number }
  | { readonly formula: 'saturation-goal'; readonly saturation: number; readonly perCharge: number }
  | { readonly formula: 'saturation-line'; readonly neutralPh: number; readonly perCharge: number }
  | { readonly formula: 'aluminium'; readonly clay: { readonly times: number; readonly plus: number }; readonly otherTimes: number }
  | { readonly formula: 'per-unit'; readonly perUnit: number }
  | { readonly formula: 'texture-factor'; readonly light: number; readonly medium: number; readonly heavy: number }
  | { readonly formula: 'texture-step'; readonly step: number; readonly light: number; readonly heavy: number }
  | { readonly formula: 'ph-rows'; readonly end: number; readonly classes: readonly string[]; readonly rows: readonly (readonly [ph: number, ...rates: number[]])[] }
  | { readonly formula: 'ph-line'; readonly constant: number; readonly perPh: number }
  | { readonly formula: 'kcl-classes'; readonly rates: Readonly<Record<'very light' | 'light' | 'medium' | 'heavy', { readonly rows: readonly (readonly [phUpTo: number, rate: number])[] }>> }
  | { readonly formula: 'garden-classes'; readonly rates: Readonly<Record<'light' | 'medium' | 'heavy', { readonly rows: readonly (readonly [cacl2Edge: number, rate: number])[] }>> }
  | { readonly formula: 'ecec'; readonly toPh: readonly number[]; readonly fromPh: readonly number[]; readonly classes: readonly string[]; readonly rows: readonly (readonly [ecec: number, ...rates: number[]])[] }
);

/** Two million pounds of soil to the acre. */
const TWO_MILLION = [6.67, 'in'] as const;

/** g/m² by pH in calcium chloride. */
const GERMAN_GARDEN = {
  least: { light: { rows: [[5.3, 150], [5.7, 120]] }, medium: { rows: [[5.7, 300], [6.5, 180]] }, heavy: { rows: [[6.3, 400], [6.9, 250]] } },
  most: { light: { rows: [[5.3, 200], [5.7, 180]] }, medium: { rows: [[5.7, 400], [6.5, 250]] }, heavy: { rows: [[6.3, 400], [6.9, 350]] } },
} as const;

export const LIME_FORMULAS: readonly LimeFormula[] = [
  // The target of the buffer is that of the example's grass: of fruit none was seen, and fruit wants no less.
  { formula: 'target-buffer', test: ['smp'], region: ['IE'], unit: 't/ha', depth: [10, 'cm'], reference: 100, target: 6.7, perUnit: 12.5, cite: { source: 'teagasc-lime', at: '(target − measured SMP) × 12.5', mark: 'read' } },
  { formula: 'mehlich', test: ['mehlich-buffer', 'acidity'], region: ['US-NC'], abroad: true, unit: 'ton/acre', depth: [20, 'cm'], reference: 100, bufferEnd: 6.6, nearEnd: 6.5, acidityFactor: 4, cite: { source: 'north-carolina-bufftab', at: 'acidity × factor', mark: 'read' } },
  { formula: 'mehlich', test: ['mehlich-buffer', 'acidity'], region: ['US-NC'], unit: 'ton/acre', depth: [20, 'cm'], reference: 100, bufferEnd: 6.6, nearEnd: 6.5, acidityFactor: 4,
    organic: { span: [20, 100], target: { ph: 5, cite: { source: 'north-carolina-lime-needs', at: 'target of organic soils, recalled', mark: 'memory' } } }, cite: { source: 'north-carolina-lime-needs', at: 'acidity × factor, organic soils', mark: 'read' } },
  {
    formula: 'adams-evans', test: ['adams-evans', 'moore-sikora'], region: ['US-AL', 'US-SC'], abroad: true, unit: 'lb/acre', depth: TWO_MILLION, reference: 100,
    bufferStart: 8, acidityFactor: 8000, inefficiency: 1.5, curve: [7.79, 5.55, 2.27], cecUnder: 13, cite: { source: 'alabama-adams-evans', at: 'equation read; curve of pH and saturation recalled', mark: 'memory' },
  },
  { formula: 'acidity-rule', label: 'span', test: ['acidity'], region: ['US-PA'], abroad: true, unit: 'lb/acre', depth: [7, 'in'], reference: 100, neutralPh: 7, toNeutral: 1000, goal: 6.5, toGoal: 840, acidityOver: 4, least: 2000, cite: { source: 'penn-agronomy-guide', at: 'limestone recommendation for fields', mark: 'read' } },
  { formula: 'buffer-capacity', test: ['lime-buffer-capacity'], region: ['US-GA'], abroad: true, unit: 'lb/acre', depth: TWO_MILLION, reference: 100, toEquilibrium: { plain: 1.4742, square: 0.0023 }, poundsPerPpm: 2, cite: { source: 'georgia-lbc', at: '30-minute reading to equilibrium', mark: 'read' } },
  { formula: 'saturation-goal', test: ['base-saturation'], region: ['BR'], unit: 't/ha', depth: [20, 'cm'], reference: 100, saturation: 70, perCharge: 1, cite: { source: 'brazil-base-saturation', at: 'T × (V2 − V1) / PRNT; fruit 70 %', mark: 'read' } },
  // At pH 7 the bases fill the whole capacity, by its definition; between, a straight line.
  { formula: 'saturation-line', test: ['base-saturation'], region: [], abroad: true, unit: 'lb/acre', depth: TWO_MILLION, reference: 100, neutralPh: 7, perCharge: 1000, cite: { source: 'midwest-base-saturation', at: '1,000 lb to a milliequivalent', mark: 'derived' } },
  { formula: 'aluminium', test: ['aluminium'], region: ['BR'], unit: 't/ha', depth: [20, 'cm'], reference: 100, clay: { times: 2, plus: 2 }, otherTimes: 1.5, cite: { source: 'brazil-aluminium', at: 'clay: 2 Al + 2 − (Ca + Mg); else 1.5 Al', mark: 'read' } },
  { formula: 'ecec', test: ['ecec'], region: ['AU'], abroad: true, unit: 't/ha', depth: [10, 'cm'], reference: 100, cite: { source: 'nsw-ac19-lime', at: 'lime to lift pH in calcium chloride', mark: 'memory' },
    fromPh: [4.0, 4.3, 4.7], toPh: [5.2, 5.5], classes: ['4.0 to 5.2', '4.3 to 5.2', '4.7 to 5.2', '5.2 to 5.5'],
    rows: [[1, 1.6, 0.8, 0.3, 0.2], [2, 2.4, 1.2, 0.5, 0.4], [3, 3.5, 1.7, 0.7, 0.5], [4, 3.9, 2.1, 0.9, 0.6], [5, 4.7, 2.5, 1.1, 0.7], [6, 5.5, 3, 1.2, 0.8], [8, 7.1, 3.8, 1.6, 1.1], [10, 8.7, 4.6, 1.9, 1.3], [15, 12.5, 6.7, 2.8, 1.9]],
  },
  { formula: 'per-unit', test: ['place'], region: ['GB'], unit: 't/ha', depth: [20, 'cm'], reference: 100, perUnit: 6, cite: { source: 'uk-lime-rule', at: '0.6 t/ha for each 0.1 below the target', mark: 'read' } },
  { formula: 'texture-factor', label: 'span', test: ['place'], region: ['GB'], unit: 't/ha', depth: [20, 'cm'], reference: 100, light: 6, medium: 7, heavy: 8, cite: { source: 'uk-lime-factors', at: 't/ha to a pH unit of arable land: sands, loams, clays', mark: 'memory' } },
  // Printed in whole tonnes up to the target of arable land, which the publisher's own page has at 6.7.
  { formula: 'ph-rows', label: 'span', test: ['place'], region: ['GB'], unit: 't/ha', depth: [20, 'cm'], reference: 100, end: 6.7, classes: ['sands', 'sandy and silt loams', 'clay loams and clays'],
    rows: [[5.0, 10, 12, 14], [5.5, 7, 8, 10], [6.0, 4, 5, 6], [6.2, 3, 4, 4]], cite: { source: 'uk-rb209-lime', at: 'arable land by soil and pH', mark: 'memory' } },
  { formula: 'ph-rows', test: ['place'], region: ['GB'], unit: 't/ha', depth: [20, 'cm'], reference: 100, end: 6.2, classes: ['organic soils'],
    organic: { span: [10, 20], target: { ph: 6.2, cite: { source: 'ahdb-lime-targets', at: 'continuous arable cropping, organic', mark: 'read' } } },
    rows: [[5.0, 14], [5.5, 9], [6.0, 4]], cite: { source: 'uk-rb209-lime', at: 'arable land, organic soils', mark: 'memory' } },
  { formula: 'ph-rows', test: ['place'], region: ['GB'], unit: 't/ha', depth: [20, 'cm'], reference: 100, end: 6.0, classes: ['peaty soils'],
    organic: { span: [20, 100], target: { ph: 6.0, cite: { source: 'ahdb-lime-targets', at: 'continuous arable cropping, peaty soils', mark: 'read' } } },
    rows: [[5.0, 16], [5.5, 8]], cite: { source: 'uk-rb209-lime', at: 'arable land, peaty soils', mark: 'memory' } },
  { formula: 'ph-line', test: ['place'], region: ['US-OH', 'US-IN', 'US-MI'], unit: 'ton/acre', depth: [8, 'in'], reference: 90, constant: 32.9, perPh: -6.31,
    organic: { span: [20, 100], target: { ph: 5.3, cite: { source: 'tri-state-1995', at: 'organic soils, pH wanted', mark: 'read' } } },
    cite: { source: 'tri-state-1995', at: 'organic soils, by soil pH', mark: 'memory' } },
  // 1 t/ha lifts the pH by 0.7, 0.5, 0.3.
  { formula: 'texture-factor', test: ['place'], region: ['AU'], unit: 't/ha', depth: [10, 'cm'], reference: 100, light: 1 / 0.7, medium: 1 / 0.5, heavy: 1 / 0.3, cite: { source: 'australia-lime-texture', at: 'pure lime to a pH unit: sand, loam, clay', mark: 'derived' } },
  { formula: 'kcl-classes', test: ['place'], region: ['PL'], unit: 't/ha', depth: [20, 'cm'], reference: 178.5, cite: { source: 'iung-lime', at: 'CaO by class of pH; scale and depth recalled', mark: 'memory' },
    rates: {
      'very light': { rows: [[4, 3], [4.5, 2], [5, 1]] }, light: { rows: [[4.5, 3.5], [5, 2.5], [5.5, 2]] },
      medium: { rows: [[5, 4.5], [5.5, 3], [6, 2.5], [6.5, 1]] }, heavy: { rows: [[5.5, 6], [6, 4], [6.5, 3], [7, 1.5]] },
    },
  },
  // Carbonate of lime of about 50 % CaO, for two to three years. The least of each class leads; the most acid heavy soil has one figure.
  ...(['least', 'most'] as const).map((end): LimeFormula => ({
    formula: 'garden-classes', test: ['place'], region: ['DE'], ...(end === 'most' ? { label: 'span' as const } : {}), unit: 'g/m2', depth: [2, 'in'], asSpread: true, reference: 89,
    cite: { source: 'nrw-garden-40', at: `lime in the garden, ${end}; a depth of 2 in is ours`, mark: 'read' }, rates: GERMAN_GARDEN[end],
  })),
  { formula: 'texture-step', test: ['place'], region: ['US-AL'], unit: 'ton/acre', depth: [6, 'in'], reference: 100, step: 1.5, light: 1, heavy: 4, cite: { source: 'alabama-texture', at: 'from 5.0 to 6.5, sandy and clay; the depth of 6 in is ours', mark: 'read' } },
];
