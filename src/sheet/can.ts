/** What a tub gets in its water, in words. */
import type { Dilute } from '../bags/dilute.ts';
import { showDay, showMass, showWater } from '../words/show.ts';
import type { Language } from '../words/words.ts';
import { say } from '../words/words.ts';

/** Small weights of a salt for the can are weighed in grams everywhere. */
export const diluteAmount = (d: Dilute, language: Language): string => showMass(d.g.value, 'metric', language);

export function diluteWhere(d: Dilute, language: Language, system: 'us' | 'metric'): string {
  return say(language, 'sheet', 'in-water', { water: showWater(d.waterL, system, language), from: showDay(d.from, language), until: showDay(d.until, language), n: d.times, often: d.weeks === 1 ? say(language, 'sheet', 'weekly') : say(language, 'sheet', 'every-weeks', { n: d.weeks }) });
}

/** "12 g of 20-20-20 in 9 L of water once a week, 1 April to 15 July (16 times)". */
export const diluteText = (d: Dilute, language: Language, system: 'us' | 'metric'): string => say(language, 'sheet', 'dilute', { amount: diluteAmount(d, language), bag: d.bag.label, where: diluteWhere(d, language, system) });
