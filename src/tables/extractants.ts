/**
 * From one extractant to another, as published: to = slope × from + intercept, mg/kg. A value is rated on a scale
 * of its own extractant; these serve only where there is none, and only where the publications agree.
 */
import type { Cite } from '../reason/figure.ts';
import type { Item, Method } from './items.ts';

export type Conversion = {
  readonly item: Item;
  readonly from: Method;
  readonly to: Method;
  readonly slope: number;
  readonly intercept: number;
  /** Where its soils came from; within them it is taken alone. */
  readonly states: readonly string[];
  readonly cite: Cite;
};

const triState = ['ohio', 'oh', 'indiana', 'in'];
const pennsylvania = ['pennsylvania', 'pa'];
const anr75: Cite = { source: 'ohio-anr75', at: 'summary of findings', mark: 'read' };
const house: Cite = { source: 'midwest-house-conversion', at: 'table 1', mark: 'read' };
const penn: Cite = { source: 'penn-extractants', at: 'tests before 1991 and now are similar; no factor', mark: 'read' };

const cations = (['potassium', 'calcium', 'magnesium'] as const);
export const CONVERSIONS: readonly Conversion[] = [
  { item: 'phosphorus', from: 'mehlich-3', to: 'bray-1', slope: 1 / 1.35, intercept: 0, states: triState, cite: anr75 },
  { item: 'phosphorus', from: 'mehlich-3', to: 'bray-1', slope: 0.832, intercept: -8.08, states: triState, cite: { source: 'ohio-soil-values', at: 'Mehlich-3 by ICP to Bray-1 by colour', mark: 'read' } },
  { item: 'phosphorus', from: 'mehlich-3', to: 'bray-1', slope: 0.7, intercept: 0, states: [], cite: house },
  { item: 'phosphorus', from: 'mehlich-3', to: 'bray-1', slope: 1, intercept: 0, states: pennsylvania, cite: penn },
  { item: 'potassium', from: 'mehlich-3', to: 'ammonium-acetate', slope: 1 / 1.14, intercept: 0, states: triState, cite: anr75 },
  { item: 'potassium', from: 'mehlich-3', to: 'ammonium-acetate', slope: 0.84, intercept: 0, states: [], cite: house },
  { item: 'calcium', from: 'mehlich-3', to: 'ammonium-acetate', slope: 0.75, intercept: 0, states: [], cite: house },
  { item: 'magnesium', from: 'mehlich-3', to: 'ammonium-acetate', slope: 0.88, intercept: 0, states: [], cite: house },
  ...cations.map((item): Conversion => ({ item, from: 'mehlich-3', to: 'ammonium-acetate', slope: 1, intercept: 0, states: pennsylvania, cite: penn })),
];

/** Pairs, either way, for which the sources say that no simple line serves. */
export const NO_CONVERSION: readonly { readonly item: Item; readonly pair: readonly [Method, Method]; readonly cite: Cite }[] = [
  { item: 'phosphorus', pair: ['mehlich-3', 'morgan'], cite: { source: 'morgan-estimate', at: 'needs pH, aluminium and calcium too; many answers below zero', mark: 'read' } },
  { item: 'phosphorus', pair: ['mehlich-3', 'modified-morgan'], cite: { source: 'morgan-estimate', at: 'needs pH, aluminium and calcium too; many answers below zero', mark: 'read' } },
  { item: 'phosphorus', pair: ['mehlich-3', 'olsen'], cite: { source: 'olsen-mehlich', at: 'a line of one region is hard to transfer', mark: 'read' } },
];

/** The published lines may lie this far apart, highest to lowest; beyond it they part by a rating class, which is a third wide at the low end. */
export const MOST_APART = { value: 1.25, cite: { source: 'medlar', at: 'lines-apart', mark: 'judgement' } satisfies Cite } as const;
/** What is carried at the least with a converted value. */
export const CONVERTED_ERROR = { part: 0.3, cite: { source: 'medlar', at: 'converted-error', mark: 'judgement' } satisfies Cite } as const;
