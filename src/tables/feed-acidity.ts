/**
 * What feeds do to the soil's pH: lb of calcium carbonate that 100 lb of product are worth, minus where they are acid,
 * on the convention that half of the acid of nitrification stays in the soil.
 */
import type { Cite } from '../reason/figure.ts';

const alabama: Cite = { source: 'alabama-anr174', at: 'calcium carbonate equivalent', mark: 'read' };
const norganics: Cite = { source: 'norganics-acidity', at: 'acidity and alkalinity of materials', mark: 'read' };

/** `percentN` is the nitrogen of the product that was printed; a bag of another grade is worth as much more or less. Null where it is not the nitrogen that counts. */
export type FeedAcidity = { readonly id: string; readonly names: readonly string[]; readonly material?: string; readonly percentN: number | null; readonly lime: number; readonly unit: '%'; readonly cite: Cite };
/** The first that a label names: what holds the name of another comes before it. */
export const FEED_ACIDITY: readonly FeedAcidity[] = [
  { id: 'sulphur-coated-urea', names: ['sul(?:ph|f)ur[- ]coated urea'], percentN: 37, lime: -118, unit: '%', cite: alabama },
  { id: 'calcium-ammonium-nitrate', names: ['calcium ammonium nitrate', 'ammonium nitrate limestone', 'limestone ammonium nitrate', 'nitro-?chalk', 'kalkammonsalpeter'], percentN: 27, lime: 0, unit: '%', cite: alabama },
  { id: 'ammonium-sulphate', names: ['ammonium sul(?:ph|f)ate', 'sul(?:ph|f)ate of ammonia'], material: 'ammonium-sulphate', percentN: 21, lime: -110, unit: '%', cite: alabama },
  { id: 'uan', names: ['urea ammonium nitrate', 'uan'], material: 'uan', percentN: 28, lime: -49, unit: '%', cite: alabama },
  { id: 'urea', names: ['urea'], material: 'urea', percentN: 45, lime: -81, unit: '%', cite: alabama },
  { id: 'ammonium-nitrate', names: ['ammonium nitrate'], material: 'ammonium-nitrate', percentN: 34, lime: -61, unit: '%', cite: alabama },
  { id: 'calcium-nitrate', names: ['calcium nitrate', 'nitrate of lime'], material: 'calcium-nitrate', percentN: 15, lime: 20, unit: '%', cite: alabama },
  { id: 'potassium-nitrate', names: ['potassium nitrate', 'nitrate of potash', 'saltpet(?:re|er)'], percentN: 13, lime: 26, unit: '%', cite: alabama },
  { id: 'sodium-nitrate', names: ['sodium nitrate', 'nitrate of soda'], material: 'sodium-nitrate', percentN: 16, lime: 29, unit: '%', cite: alabama },
  { id: 'map', names: ['monoammonium phosphate', 'map'], material: 'map', percentN: 11, lime: -65, unit: '%', cite: norganics },
  { id: 'dap', names: ['diammonium phosphate', 'dap'], material: 'dap', percentN: 18, lime: -70, unit: '%', cite: norganics },
  { id: 'blood-meal', names: ['blood meal', 'dried blood'], material: 'blood-meal', percentN: 12, lime: -22, unit: '%', cite: norganics },
  { id: 'cottonseed-meal', names: ['cottonseed meal'], material: 'cottonseed-meal', percentN: 6, lime: -9, unit: '%', cite: norganics },
  { id: 'fish-meal', names: ['fish meal', 'fish scrap'], material: 'fish-meal', percentN: 9, lime: -8, unit: '%', cite: norganics },
  { id: 'bone-meal', names: ['bone ?meal'], material: 'bone-meal', percentN: null, lime: 20, unit: '%', cite: norganics },
  { id: 'tankage', names: ['tankage'], material: 'tankage', percentN: null, lime: 10, unit: '%', cite: norganics },
  { id: 'rock-phosphate', names: ['rock phosphate', 'phosphate rock'], material: 'rock-phosphate', percentN: null, lime: 10, unit: '%', cite: norganics },
  { id: 'wood-ash', names: ['wood ?ash(?:es)?'], percentN: null, lime: 60, unit: '%', cite: norganics },
];

/** A feed of no known material: lb of calcium carbonate for each lb of N. That of ammonia and urea is taken; ammonium sulphate makes three times as much acid. */
export const ACID_PER_N = { value: 1.8, unit: 'lb', per: 'lb N', cite: { source: 'crop-adviser-acidity', at: 'ammonia, urea, UAN', mark: 'read' } satisfies Cite } as const;

/** When a year's acid is told: from this much, where the pH lies as near as this to the low edge of what suits. */
export const ACID_TOLD = { value: 10, unit: 'g/m2', near: 0.3, cite: { source: 'medlar', at: 'acid-told', mark: 'judgement' } satisfies Cite } as const;
