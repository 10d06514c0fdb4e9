// A reading made by hand, as the reader would give it.
import type { Reading } from '../../src/soil/reading.ts';

export const made = (item: Reading['item'], value: number | null, unit: Reading['unit'], more: Partial<Reading> = {}): Reading => ({
  item, value, unit, asPrinted: '', place: { file: 'soil.txt', line: 7, column: 1, length: 1, source: '' }, method: null, form: null, lab: { rating: null, range: null }, ...more,
});
