/** A reading in the words of `read`: what it was taken as, how it rates, and what follows of a sample. */
import type { Where } from '../orchard/where.ts';
import type { Rated } from '../rating/rate.ts';
import { waterPhOf } from '../rating/salt-ph.ts';
import { isLimeIndex } from '../ph/soil.ts';
import type { Item } from '../tables/items.ts';
import { ELEMENT_OF } from '../tables/items.ts';
import { LEAF_RANGES } from '../tables/leaf.ts';
import { sourceOf } from '../tables/sources.ts';
import { numeral, say, sayIfKnown } from '../words/words.ts';

/** What a line was taken as: "P 164 ppm". */
export function takenAs({ reading: r }: Rated, where: Where): string {
  const name = sayIfKnown(where.language, 'item', r.item);
  const n = (x: number): string => numeral(x, where.language);
  const form = r.form ?? name;
  const sign = r.below ? '<' : r.above ? '>' : '';
  const unit = r.unit === null ? '?' : r.unit === 'pH' ? '' : r.unit;
  if (r.value === null) return name;
  if (r.item === 'buffer-ph' && isLimeIndex(r.value)) return `${name} ${n(r.value / 10)} (${n(r.value)} ÷ 10)`;
  return `${r.item === 'ph' ? name : form} ${sign}${n(r.value)}${r.to === undefined ? '' : `-${n(r.to)}`} ${unit}`.trim();
}

/** What a value decides that no scale rates. */
const DECIDES: Partial<Record<Item, 'sets-lime' | 'sets-amount' | 'may-stop' | 'may-halve'>> = {
  'buffer-ph': 'sets-lime', acidity: 'sets-lime', 'lime-requirement': 'sets-lime', texture: 'sets-amount', cec: 'sets-amount', clay: 'sets-amount', carbonate: 'sets-amount',
  salts: 'may-stop', sar: 'may-stop', 'saturation-na': 'may-stop', 'organic-matter': 'may-halve',
};
const MICRO = ['boron', 'zinc', 'manganese', 'copper', 'iron'];

/** The rating and who says so. */
export function ratingText(r: Rated, where: Where): string {
  const L = where.language;
  if (r.reading.item === 'ph' && r.target) return say(L, 'rating', r.target === 'at' ? 'at-ph' : r.target === 'above' ? 'above-ph' : 'below-ph');
  const water = r.reading.item === 'ph-salt' && r.rating === null ? waterPhOf(r.reading) : null;
  if (water) return say(L, 'rating', 'salt-ph', { n: Number((water.value - r.reading.value!).toFixed(1)) });
  const decides = DECIDES[r.reading.item];
  if (decides && (r.rating === null || decides === 'sets-amount')) return say(L, 'rating', decides);
  const dosed = MICRO.includes(r.reading.item) ? `; ${say(L, 'rating', 'not-dosed')}` : '';
  if (r.rating === null) return ELEMENT_OF[r.reading.item] ? say(L, 'rating', 'no-scale') + dosed : say(L, 'rating', 'informs');
  const by = r.by === 'scale' ? say(L, 'rating', 'by-scale', { source: r.cite ? sourceOf(r.cite.source)?.publisher ?? '' : '', field: r.ours?.field ? ' ' : '', recalled: r.cite?.mark === 'memory' ? ' ' : '' }) : say(L, 'rating', r.by === 'word' ? 'by-word' : r.by === 'range' ? 'by-range' : 'by-index');
  const near = r.near ? say(L, 'rating', 'near', { rating: say(L, 'rating', r.near) }) : '';
  return `${say(L, 'rating', r.rating)}${near} ${by}${dosed}`;
}

/** A leaf's content beside the published ranges of these crops; the lab's own word or range where none is held. */
export function leafText(r: Rated, where: Where, crops: readonly string[]): string {
  const L = where.language;
  const { item, value, unit, form } = r.reading;
  const ranges = value === null || form !== null ? [] : crops.flatMap((crop) => {
    // The first that is printed for the crop as such, as the plan takes it.
    const range = LEAF_RANGES.find((x) => x.nutrient === ELEMENT_OF[item] && x.crops.some((c) => c === crop) && x.unit === unit && !x.kinds && !x.label && !x.young);
    return range ? [{ crop, low: range.low, high: range.high }] : [];
  });
  const said = ranges.map(({ crop, low, high }) => say(L, 'rating', 'leaf-range', { crop, low, high, unit: unit ?? '', verdict: say(L, 'rating', value! < low ? 'leaf-below' : value! > high ? 'leaf-over' : 'leaf-within') }));
  return said.length > 0 ? said.join(', ') : r.rating === null ? '' : ratingText(r, where);
}

/** "So: no phosphate, no lime; ..." */
export function summary(rated: readonly Rated[], where: Where): string {
  const L = where.language;
  const target = (item: string): Rated['target'] => rated.find((r) => r.reading.item === item)?.target ?? null;
  const p = target('phosphorus');
  const k = target('potassium');
  const ph = target('ph');
  const parts = [
    say(L, 'read', p === null ? 'so-p-unknown' : p === 'at' || p === 'above' ? 'so-p-none' : 'so-p-some'),
    say(L, 'read', k === null ? 'so-k-unknown' : k === 'above' ? 'so-k-none' : k === 'at' ? 'so-k-crop' : 'so-k-some'),
    ...(ph === null ? [] : [say(L, 'read', ph === 'at' ? 'so-ph-fine' : ph === 'above' ? 'so-ph-high' : 'so-ph-low')]),
  ];
  return `${say(L, 'read', 'so', { text: parts.join(', ') })}. ${say(L, 'read', 'so-n')}`;
}
