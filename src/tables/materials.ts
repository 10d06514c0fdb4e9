/**
 * Fertiliser materials: grade, and weight of a US cup (oz) as low and high of the printed spread.
 * Used for measures by the cup, and only where the label is silent for anything else.
 */
import type { Cite } from '../reason/figure.ts';

export type Material = {
  readonly id: string;
  readonly names: readonly string[];
  /** N, P2O5, K2O in % as usually sold; a label outranks it. */
  readonly grade: readonly [n: number, p: number, k: number];
  readonly ozPerCup?: readonly [low: number, high: number];
  readonly chloride?: true;
  readonly temptsDogs?: true;
  readonly cite: Cite;
};

const handout: Cite = { source: 'bulk-density-handout', at: 'bulk densities, × 0.13368', mark: 'derived' };
const feeds: Cite = { source: 'fao-s4314e', at: 'bulk densities', mark: 'derived' };
const lsu: Cite = { source: 'lsu-tons-to-teaspoons', at: 'ounces a pint', mark: 'read' };
const household: Cite = { source: 'medlar', at: 'household-density', mark: 'memory' };

export const MATERIALS: readonly Material[] = [
  { id: 'ammonium-sulphate', names: ['ammonium sulphate', 'ammonium sulfate', 'sulphate of ammonia', 'sulfate of ammonia'], grade: [21, 0, 0], ozPerCup: [6.3, 8.8], cite: handout },
  { id: 'urea', names: ['urea'], grade: [46, 0, 0], ozPerCup: [5.9, 6.4], cite: handout },
  { id: 'ammonium-nitrate', names: ['ammonium nitrate'], grade: [34, 0, 0], ozPerCup: [6.5, 7.8], cite: handout },
  { id: 'calcium-nitrate', names: ['calcium nitrate', 'nitrate of lime'], grade: [15.5, 0, 0], ozPerCup: [8.3, 8.3], cite: household },
  { id: 'sodium-nitrate', names: ['sodium nitrate', 'nitrate of soda'], grade: [16, 0, 0], ozPerCup: [11.5, 11.5], cite: lsu },
  { id: 'map', names: ['monoammonium phosphate', 'map'], grade: [11, 52, 0], ozPerCup: [8.0, 8.7], cite: handout },
  { id: 'dap', names: ['diammonium phosphate', 'dap'], grade: [18, 46, 0], ozPerCup: [7.4, 8.0], cite: handout },
  { id: 'triple-superphosphate', names: ['triple superphosphate', 'triple super'], grade: [0, 46, 0], ozPerCup: [8.7, 10.0], cite: handout },
  { id: 'superphosphate', names: ['superphosphate', 'single superphosphate'], grade: [0, 20, 0], ozPerCup: [8.3, 9.2], cite: household },
  { id: 'potassium-chloride', names: ['muriate of potash', 'potassium chloride'], grade: [0, 0, 60], ozPerCup: [7.8, 8.7], chloride: true, cite: handout },
  { id: 'potassium-sulphate', names: ['sulphate of potash', 'sulfate of potash', 'potassium sulphate', 'potassium sulfate'], grade: [0, 0, 50], ozPerCup: [10.9, 10.9], cite: household },
  { id: 'potassium-magnesium-sulphate', names: ['potassium magnesium sulphate', 'potassium magnesium sulfate', 'patentkali', 'kalimagnesia', 'sulphate of potash magnesia', 'sulfate of potash magnesia'], grade: [0, 0, 22], ozPerCup: [12.0, 13.1], cite: handout },
  { id: '10-10-10', names: [], grade: [10, 10, 10], ozPerCup: [8, 8], cite: { source: 'virginia-note-21', at: 'half a pound is one cup', mark: 'read' } },
  { id: 'blood-meal', names: ['blood meal', 'dried blood'], grade: [12, 1, 0.6], ozPerCup: [5.1, 5.1], temptsDogs: true, cite: feeds },
  { id: 'bone-meal', names: ['bone meal', 'bonemeal'], grade: [3, 15, 0], ozPerCup: [6.7, 8.0], temptsDogs: true, cite: feeds },
  { id: 'fish-meal', names: ['fish meal'], grade: [10, 6, 2], ozPerCup: [4.0, 5.3], temptsDogs: true, cite: feeds },
  { id: 'feather-meal', names: ['feather meal'], grade: [12, 0, 0], ozPerCup: [4.5, 5.0], temptsDogs: true, cite: feeds },
  { id: 'cottonseed-meal', names: ['cottonseed meal'], grade: [6, 2.5, 1.5], ozPerCup: [4.9, 5.3], cite: lsu },
];

/** Countries whose labels print P and K as elements. New Zealand's rests on memory. */
export const ELEMENTAL_LABELS: Readonly<Record<string, Cite>> = {
  AU: { source: 'stylemanual-au', at: 'elemental N-P-K-S', mark: 'read' },
  IE: { source: 'irish-journal-labels', at: 'elemental P and K on the bag', mark: 'read' },
  NZ: { source: 'medlar', at: 'new-zealand-labels', mark: 'memory' },
};
