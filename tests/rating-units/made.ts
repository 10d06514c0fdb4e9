// A reading made by hand, as the reader would give it; and what every figure owes.
import { expect } from 'vitest';
import { reasonOf } from '../../src/json/reason.ts';
import type { Figure } from '../../src/reason/figure.ts';
import { MARKS } from '../../src/reason/figure.ts';
import type { Reading } from '../../src/soil/reading.ts';
import { sourceOf } from '../../src/tables/sources.ts';

export const made = (item: Reading['item'], value: number | null, unit: Reading['unit'], more: Partial<Reading> = {}): Reading => ({
  item, value, unit, asPrinted: '', place: { file: 'soil.txt', line: 7, column: 1, length: 1, source: '' }, method: null, form: null, lab: { rating: null, range: null }, ...more,
});

/** A figure without its cite would be nobody's: every step below it has its sentence, and names a thing, a source of the list, a place in it and a mark. */
export function expectSourced(f: Figure): void {
  expect([f.step, f.of, f.cite.at, reasonOf(f, 'en-US', 'us')]).toEqual(Array(4).fill(expect.stringMatching(/./)));
  expect([f.step, sourceOf(f.cite.source) !== undefined, MARKS.includes(f.cite.mark)]).toEqual([f.step, true, true]);
  f.from.forEach(expectSourced);
}
