/**
 * Lime by grids: what a test's table prints, the test's value down and the goals across, dug in, in the unit printed.
 * Every test has its own reference lime, depth, goals and home: rates of two tests are never mixed.
 */
import type { Cite } from '../reason/figure.ts';
import type { Unit } from '../units/units.ts';

/** Buffers that a lab reads a lime rate from; of Woodruff's and the modified Mehlich buffer no table was seen. */
export type BufferTest = 'sikora' | 'smp' | 'mehlich-buffer' | 'modified-mehlich' | 'moore-sikora' | 'adams-evans' | 'woodruff';
/** `place` goes by the pH alone (and the texture), as a country's own rule may. */
export type LimeTest = BufferTest | 'acidity' | 'lime-buffer-capacity' | 'base-saturation' | 'aluminium' | 'ecec' | 'place';

export type LimeMethod = {
  readonly test: readonly LimeTest[];
  /** Countries or states whose own it is: "BR", "US-OH". */
  readonly region: readonly string[];
  /** Serves other places too, where they have none of their own; the first in the order of the tables. */
  readonly abroad?: true;
  /** Widens the span and never leads: doubted, or meant for fields. */
  readonly label?: 'span';
  readonly unit: Unit;
  readonly depth: readonly [number, 'in' | 'cm'];
  /** A dose as it is spread, whatever layer was sampled. */
  readonly asSpread?: true;
  /** For organic soil alone: over how much organic matter and up to how much, %, and the pH that such soil is brought to and no further. All others are for mineral soil. */
  readonly organic?: { readonly span: readonly [over: number, upTo: number]; readonly target: { readonly ph: number; readonly cite: Cite } };
  /** Strength (CCE, %) of the lime that the rates are for. */
  readonly reference: number;
  readonly cite: Cite;
};

export type LimeGrid = LimeMethod & {
  readonly goals: readonly number[];
  readonly rows: readonly (readonly [value: number, ...rates: number[]])[];
};

/** With more organic matter than this a soil is not mineral, %; the last stands where a country has none of its own. */
export const ORGANIC_SOIL: readonly { readonly countries: readonly string[]; readonly above: number; readonly unit: '%'; readonly cite: Cite }[] = [
  { countries: ['GB'], above: 10, unit: '%', cite: { source: 'uk-rb209-lime', at: 'organic soils', mark: 'memory' } },
  { countries: ['DE'], above: 15, unit: '%', cite: { source: 'vdlufa-humus', at: 'half-bog from 15.1 %', mark: 'read' } },
  { countries: [], above: 20, unit: '%', cite: { source: 'tri-state-1995', at: 'organic soils, over 20 %', mark: 'read' } },
];

export const LIME_GRIDS: readonly LimeGrid[] = [
  {
    test: ['sikora'], region: ['US-OR'], abroad: true, goals: [5.6, 6.0, 6.4, 6.8, 7.2], unit: 'ton/acre', depth: [6, 'in'], reference: 100, cite: { source: 'oregon-em9585', at: 'Sikora buffer table', mark: 'read' },
    rows: [
      [6.9, 0, 0, 0.5, 0.8, 1], [6.8, 0, 0.4, 0.8, 1.2, 1.6], [6.7, 0.2, 0.7, 1.1, 1.6, 2.2], [6.6, 0.4, 0.9, 1.5, 2.1, 2.7], [6.5, 0.7, 1.2, 1.8, 2.5, 3.3], [6.4, 0.9, 1.5, 2.1, 2.9, 3.8],
      [6.3, 1.1, 1.7, 2.5, 3.3, 4.4], [6.2, 1.3, 2, 2.8, 3.7, 4.9], [6.1, 1.5, 2.3, 3.1, 4.2, 5.5], [6.0, 1.7, 2.5, 3.5, 4.6, 6], [5.9, 1.9, 2.8, 3.8, 5, 6.6], [5.8, 2.2, 3.1, 4.1, 5.4, 7.1],
      [5.7, 2.7, 4, 5.5, 7.2, 9.9], [5.6, 3.1, 4.5, 6.2, 8.3, 11.4], [5.5, 3.5, 5.1, 7, 9.3, 12.9], [5.4, 3.8, 5.6, 7.7, 10.3, 14.3], [5.3, 4.2, 6.2, 8.5, 11.3, 15.8], [5.2, 4.6, 6.7, 9.2, 12.3, 17.3],
      [5.1, 5, 7.3, 10, 13, 18.7], [5.0, 5.3, 7.8, 10.7, 14, 20.2], [4.9, 5.7, 8.4, 11.5, 15, 21.7], [4.8, 6.1, 8.9, 12.2, 16.3, 23.2],
    ],
  },
  {
    test: ['smp'], region: ['US-OR', 'US-WA'], goals: [5.6, 6.0, 6.4], unit: 'ton/acre', depth: [6, 'in'], reference: 100, cite: { source: 'oregon-em9057', at: 'SMP buffer table of 2013', mark: 'memory' },
    rows: [
      [6.7, 0, 0, 0], [6.6, 0, 0, 1.1], [6.5, 0, 1, 1.7], [6.4, 0, 1.1, 2.2], [6.3, 0, 1.5, 2.7], [6.2, 1, 2, 3.2], [6.1, 1.4, 2.4, 3.7], [6.0, 1.7, 2.9, 4.2], [5.9, 2.1, 3.3, 4.7], [5.8, 2.5, 3.7, 5.3],
      [5.7, 2.8, 4.2, 5.8], [5.6, 3.2, 4.6, 6.3], [5.5, 3.6, 5.1, 6.8], [5.4, 3.9, 5.5, 7.3], [5.3, 4.3, 6, 7.8], [5.2, 4.7, 6.4, 8.3], [5.1, 5, 6.9, 8.9], [5.0, 5.4, 7.3, 9.4], [4.9, 5.8, 7.7, 9.9], [4.8, 6.2, 8.2, 10.4],
    ],
  },
  {
    test: ['smp', 'sikora'], region: ['US-IA'], goals: [6.5, 6.9], unit: 'lb/acre', depth: [6, 'in'], reference: 100, cite: { source: 'iowa-pm1688', at: 'buffer pH table', mark: 'read' },
    rows: [[7.0, 0, 1100], [6.6, 2100, 4400], [6.2, 5000, 7700], [5.8, 7900, 10600]],
  },
  {
    test: ['sikora'], region: ['US-MN'], goals: [6.0, 6.5], unit: 'lb/acre', depth: [7, 'in'], reference: 100, cite: { source: 'minnesota-fo5956', at: 'pounds of effective neutralizing power, west and east; samples of 6 to 8 in', mark: 'memory' },
    rows: [[6.8, 2000, 3000], [6.7, 2000, 4000], [6.6, 2000, 5000], [6.5, 2500, 6000], [6.4, 3000, 7000], [6.3, 3500, 8000], [6.2, 4000, 9000], [6.1, 4500, 10_000], [6.0, 5000, 11_000]],
  },
  {
    test: ['smp'], region: ['BR'], goals: [5.5, 6.0, 6.5], unit: 't/ha', depth: [20, 'cm'], reference: 100, cite: { source: 'brazil-cqfs', at: 'SMP table, PRNT 100', mark: 'memory' },
    rows: [
      [7.0, 0, 0, 0.2], [6.8, 0, 0.3, 0.8], [6.6, 0.2, 0.8, 1.6], [6.4, 0.6, 1.4, 2.6], [6.2, 1, 2.2, 3.7], [6.0, 1.6, 3.2, 4.9], [5.8, 2.3, 4.2, 6.3], [5.6, 3.2, 5.4, 7.8], [5.4, 4.2, 6.8, 9.5], [5.2, 5.3, 8.3, 11.3],
      [5.0, 6.6, 9.9, 13.3], [4.8, 8.5, 11.9, 15.7], [4.6, 10.9, 15.1, 20], [4.4, 15, 21, 29],
    ],
  },
  {
    test: ['smp'], region: [], abroad: true, goals: [6.0, 6.5, 7.0], unit: 'ton/acre', depth: [8, 'in'], reference: 90, cite: { source: 'ncr-221', at: 'SMP table, agricultural ground limestone', mark: 'memory' },
    rows: [
      [6.8, 1, 1.2, 1.4], [6.7, 1.7, 2.1, 2.4], [6.6, 2.4, 2.9, 3.4], [6.5, 3.1, 3.8, 4.5], [6.4, 3.9, 4.7, 5.5], [6.3, 4.6, 5.5, 6.5], [6.2, 5.3, 6.4, 7.5], [6.1, 6, 7.2, 8.6], [6.0, 6.7, 8.1, 9.6],
      [5.8, 8.1, 9.8, 11.7], [5.5, 10.3, 12.5, 14.8], [5.2, 12.4, 15.1, 17.9], [5.0, 13.9, 16.9, 20],
    ],
  },
  {
    test: ['acidity'], region: ['US-PA'], abroad: true, goals: [6.0, 6.5, 7.0], unit: 'lb/1000 sq ft', depth: [7, 'in'], reference: 100, cite: { source: 'penn-lime-turf', at: 'home garden and turf table, by exchangeable acidity', mark: 'read' },
    rows: [
      [2, 50, 50, 50], [2.6, 50, 50, 70], [3.3, 50, 50, 70], [3.9, 50, 70, 90], [5.2, 50, 90, 110], [5.8, 50, 90, 140], [6.5, 70, 110, 160], [7.1, 90, 110, 160], [7.8, 90, 140, 180], [9, 110, 160, 210],
      [9.7, 140, 180, 230], [10.3, 140, 180, 230], [11, 160, 210, 250], [11.6, 160, 210, 280], [12.3, 180, 230, 280], [13.5, 210, 250, 320], [14.2, 210, 280, 320], [14.8, 230, 280, 340], [15.5, 230, 300, 370],
      [16.1, 250, 320, 370], [16.8, 250, 320, 390], [18, 280, 340, 410], [18.7, 300, 370, 440], [19.3, 300, 390, 440], [20, 320, 390, 460], [20.6, 320, 410, 480], [21.9, 340, 460, 510], [22.5, 370, 460, 530],
      [23.2, 370, 460, 530], [23.8, 390, 480, 550], [24.5, 390, 480, 570], [25.1, 410, 510, 570], [25.7, 410, 530, 600],
    ],
  },
];
