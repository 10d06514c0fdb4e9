/** What was perhaps meant by a part of a tree's line that is no fact: "2018" for "planted 2018". */
import { suggest } from '../reason/suggest.ts';
import { CROP_WORDS, CROPS_WITHOUT_FIGURES, SIZES } from '../tables/crops.ts';
import { cropWord, FLAGS, MEASURES } from './fact-words.ts';
import { lengthOf } from './measure.ts';
import { likeStock, sizeOn } from './rootstock.ts';

/** Facts to write in its place, parted by commas; empty where none is likely. `lower` is the item in small letters. */
export function likelyFacts(item: string, lower: string, zones: readonly string[]): string {
  if (/^(?:19|20)\d\d$/.test(lower)) return `planted ${lower}`;
  if (/^\d+ *(?:years?|yrs?)\b/.test(lower)) return '';
  if (typeof lengthOf(lower) === 'number') return `${item} across, ${item} high`;
  // A rootstock without its word, or nearly right; with its size in one.
  if (sizeOn(lower)) return `rootstock ${item}`;
  const near = likeStock(lower);
  if (near.length > 0) return near.map((stock) => `rootstock ${stock}`).join(', ');
  const size = SIZES.find((s) => lower.startsWith(`${s} rootstock `));
  if (size) return `${size}, ${item.slice(size.length).trim()}`;
  // A variety before its crop, or behind it.
  const words = lower.split(' ');
  const crop = cropWord(words.at(-1)!) ?? cropWord(words[0]!);
  if (crop) return crop;
  const first = suggest(words[0]!, [...MEASURES, 'planting', 'bed']);
  const guess = first.length > 0 && words.length > 1 ? first : suggest(lower.replace(/^\d+ +/, ''), [...Object.keys(CROP_WORDS), ...CROPS_WITHOUT_FIGURES, ...FLAGS, ...SIZES, ...MEASURES, ...zones]);
  return guess.join(', ');
}
