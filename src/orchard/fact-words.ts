/** The words of a tree's line. */
import { CROP_WORDS, CROPS_WITHOUT_FIGURES } from '../tables/crops.ts';

export const FLAGS = [
  'mulch', 'bare', 'grass', 'fed lawn', 'bearing', 'not bearing', 'pruned hard', 'standing water', 'herbicide', 'fire blight', 'drought', 'pit-prone', 'compost', 'off year', 'spur-type', 'clover', 'blight-prone',
] as const;
export type Flag = (typeof FLAGS)[number];

/** Facts with a measure or a name behind or before them. */
export const MEASURES = ['planted', 'trunk', 'across', 'high', 'spacing', 'shoots', 'fruit', 'tub', 'rootstock', 'leaf', 'compost'] as const;

/** A crop in the singular, as the tables call it; null for a word that is none. */
export function cropWord(text: string): string | null {
  const known = (w: string): boolean => CROP_WORDS[w] !== undefined && Object.hasOwn(CROP_WORDS, w) || CROPS_WITHOUT_FIGURES.includes(w);
  const single = [text, text.replace(/ies$/, 'y'), text.replace(/(ch|sh|s|x)es$/, '$1'), text.replace(/s$/, '')];
  return single.find(known) ?? null;
}
