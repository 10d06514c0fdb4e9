/** Index scales with a number behind them. The indices of the UK, Ireland and Maryland are classes: no content can be told from them. */
import type { Cite } from '../reason/figure.ts';
import type { Item } from './items.ts';

export const NORTH_CAROLINA_NAMES: readonly string[] = ['north carolina', 'nc'];

const circular: Cite = { source: 'north-carolina-circular-1', at: 'table 1.4, recalled', mark: 'memory' };
/** mg of the element in a litre of soil for one unit of North Carolina's index, Mehlich-3. */
export const NORTH_CAROLINA_INDEX: Partial<Record<Item, { readonly mgPerL: number; readonly cite: Cite }>> = {
  phosphorus: { mgPerL: 1.2, cite: circular },
  potassium: { mgPerL: 1.955, cite: circular },
  manganese: { mgPerL: 0.16, cite: { source: 'north-carolina-manganese', at: '0.6 for an index, against New Jersey’s 3.75 for a ppm', mark: 'derived' } },
  zinc: { mgPerL: 0.04, cite: circular },
  copper: { mgPerL: 0.02, cite: circular },
  sulphur: { mgPerL: 0.48, cite: circular },
};

const rates: Cite = { source: 'north-carolina-rates', at: 'table 2.4', mark: 'read' };
/** Rates of P2O5 or K2O by index: square × I² + slope × I + start. Which number a fruit tree takes was not seen. */
export const NORTH_CAROLINA_RATES = [
  { number: 14, square: 0.0116, slope: -2.75, start: 150, unit: 'lb/acre', cite: rates },
  { number: 15, square: 0.014, slope: -3.2, start: 150, unit: 'lb/acre', cite: rates },
  { number: 24, square: 0.0007, slope: -0.16, start: 8, unit: 'lb/1000 sq ft', cite: rates },
  { number: 25, square: 0.0005, slope: -0.13, start: 6.5, unit: 'lb/1000 sq ft', cite: rates },
] as const;

/** New Jersey's manganese availability: start + slope × ppm + acidity × pH; deficient under 25, a warning over 100. */
export const MANGANESE_INDEX = {
  start: 101.7, slope: 3.75, acidity: -15.2, critical: 25, high: 100,
  cite: { source: 'rutgers-levels', at: 'micronutrients, manganese', mark: 'read' } satisfies Cite,
} as const;
