/** Phosphate and potash by distance from target on the ground under the crown; zero is a real answer. */
import type { Cite, Figure } from '../reason/figure.ts';
import { figure, told } from '../reason/figure.ts';
import { TUB } from '../tables/limits.ts';
import { BRITISH_COLUMBIA_K, ONTARIO_P, POLAND_K2O, REMOVAL, WEINSBERG } from '../tables/potash.ts';
import { ELEMENT_SHARE } from '../units/substance.ts';
import { convert } from '../units/units.ts';
import type { Facts } from './facts.ts';
import { has, ratedOf, targetOf } from './facts.ts';
import { leafVerdict } from './growth.ts';

export type Phosphate = Figure<'g', 'P2O5'>;
export type Potash = Figure<'g', 'K2O'>;
export type SoilNeed<F> = { readonly need: F; readonly span: readonly [F, F]; readonly ask: 'fruit-weight' | null };

const PER_HECTARE = 0.1;
const arizona: Cite = { source: 'arizona-planting', at: 'planting year', mark: 'read' };
const untested: Cite = { source: 'medlar', at: 'no-soil-value', mark: 'judgement' };

export function phosphateOf(f: Facts): SoilNeed<Phosphate> {
  const area = f.crown.area;
  const give = (perM2: number, cite: Cite, step: 'per-area' | 'none' = 'per-area'): Phosphate => figure(perM2 * area.value, 'g', 'P2O5', perM2 === 0 ? 'none' : step, cite, [area]);
  if (f.tree.tub !== undefined) return tub(f, 'P2O5');
  const rated = ratedOf(f, 'phosphorus');
  const target = calcareous(f) && rated?.by === 'scale' && rated.reading.method !== 'olsen' ? null : rated?.target ?? null;
  const span = (low: number, high: number): readonly [Phosphate, Phosphate] => [give(low, WEINSBERG.cite), give(high, WEINSBERG.cite)];
  const lean = f.years === 0 || (has(f, 'fed lawn') && target !== 'far-below');
  if (target === null) return { need: give(0, untested), span: span(0, 0), ask: null };
  if (target === 'above') return { need: give(0, rated!.cite ?? WEINSBERG.cite), span: span(0, 0), ask: null };
  if (target === 'at') return { need: give(0, ONTARIO_P), span: span(0, 3), ask: null };
  if (lean) return { need: give(0, f.years === 0 ? arizona : { source: 'iowa-fruit-trees', at: 'fed lawn', mark: 'read' }), span: span(0, 5), ask: null };
  const leafLow = target === 'far-below' && leafVerdict(f, 'P')?.verdict === 'below';
  const need = leafLow && !calcareous(f)
    ? give(8, { source: 'uk-rb209', at: 'established fruit, index 0', mark: 'memory' })
    : give(WEINSBERG.P2O5.low * PER_HECTARE, WEINSBERG.cite);
  return { need, span: span(4, leafLow ? 8 : 5), ask: null };
}

export function potashOf(f: Facts): SoilNeed<Potash> {
  const area = f.crown.area;
  const give = (grams: number, cite: Cite, from: readonly Figure[] = [area]): Potash => figure(grams, 'g', 'K2O', grams === 0 ? 'none' : 'per-area', cite, from);
  const span = (low: number, high: number): readonly [Potash, Potash] => [give(low * area.value, POLAND_K2O.cite), give(high * area.value, WEINSBERG.cite)];
  if (f.tree.tub !== undefined) return tub(f, 'K2O');
  const target = targetOf(f, 'potassium');
  if (target === null) return { need: give(0, untested), span: span(0, 0), ask: null };
  if (target === 'above') return { need: give(0, ratedOf(f, 'potassium')!.cite ?? WEINSBERG.cite), span: span(0, 4), ask: null };
  if (f.years === 0) return { need: give(0, arizona), span: span(0, 20), ask: null };
  if (has(f, 'fed lawn') && target !== 'far-below') return { need: give(0, { source: 'iowa-fruit-trees', at: 'fed lawn', mark: 'read' }), span: span(0, 10), ask: null };

  const removed = removalOf(f);
  const magnesium = ratedOf(f, 'magnesium')?.rating;
  const vetoed = has(f, 'pit-prone') || magnesium === 'low' || magnesium === 'very-low' || potashOverMagnesium(f) > 5;
  if (target === 'at' || vetoed) {
    if (f.young) return { need: give(0, { source: 'medlar', at: 'young-potash', mark: 'judgement' }), span: span(0, 10), ask: null };
    // The cap that holds below target holds here too: a richer soil never gets more.
    const most = WEINSBERG.K2O.low * PER_HECTARE * area.value;
    const replaced = removed && removed.value > most ? give(most, WEINSBERG.cite) : removed;
    return { need: replaced ?? give(0, { source: 'medlar', at: 'potash-at-target', mark: 'judgement' }), span: span(target === 'at' ? 5 : 8, target === 'at' ? 10 : 20), ask: removed ? null : 'fruit-weight' };
  }
  const [poland, weinsberg] = [POLAND_K2O.low[0] * PER_HECTARE, WEINSBERG.K2O.low * PER_HECTARE];
  let need: Potash;
  if (target === 'far-below') {
    const leafLow = leafVerdict(f, 'K')?.verdict === 'below';
    const canada = (BRITISH_COLUMBIA_K.kgPerHa * PER_HECTARE) / ELEMENT_SHARE.K2O.share;
    need = leafLow ? give(canada * area.value, BRITISH_COLUMBIA_K.cite) : give(weinsberg * area.value, WEINSBERG.cite);
  } else {
    const twice = removed ? (2 * removed.value) / area.value : 0;
    const rate = Math.min(weinsberg, Math.max(poland, twice));
    const cite = rate === poland ? POLAND_K2O.cite : rate === weinsberg ? WEINSBERG.cite : { source: 'bavaria-garden', at: 'classes A and B: twice the need', mark: 'read' } satisfies Cite;
    need = figure(rate * area.value, 'g', 'K2O', removed ? 'twice-removal' : 'per-area', cite, removed ? [removed, area] : [area]);
  }
  if (f.young) need = figure(need.value / 2, 'g', 'K2O', 'young-half', { source: 'medlar', at: 'young-potash', mark: 'judgement' }, [need]);
  return { need, span: span(8, 20), ask: null };
}

/** What the noted crop takes off, at the upper figure of its publication; null without a weight or a figure. */
function removalOf(f: Facts): Potash | null {
  const grams = f.tree.fruit?.g;
  const removal = REMOVAL.find((r) => r.crops.includes(f.crop));
  if (grams == null || !removal) return null;
  const fruit = told(grams, 'g', 'fruit', f.tree.name);
  // A short ton is 2,000 lb, so lb a ton is half a part in a thousand.
  const share = removal.unit === 'lb/ton' ? removal.high / 2000 : convert(removal.high, 'kg/t', 'kg/t') / 1000;
  const oxide = removal.of === 'K' ? share / ELEMENT_SHARE.K2O.share : share;
  return figure(grams * oxide, 'g', 'K2O', grams === 0 ? 'none' : 'removal', removal.cite, [fruit]);
}

/** K over Mg by weight, by the Austrian (CAL) tests only. */
function potashOverMagnesium(f: Facts): number {
  const k = ratedOf(f, 'potassium');
  const mg = ratedOf(f, 'magnesium');
  if (k?.reading.method !== 'cal' || !k.mgPerKg || !mg?.mgPerKg || mg.mgPerKg.value === 0) return 0;
  return k.mgPerKg.value / mg.mgPerKg.value;
}

/** Free lime by the lab's own word. */
function calcareous(f: Facts): boolean {
  const word = ratedOf(f, 'carbonate')?.reading.lab.rating;
  return word === 'medium' || word === 'high' || word === 'very-high';
}

function tub<S extends 'P2O5' | 'K2O'>(f: Facts, of: S): SoilNeed<Figure<'g', S>> {
  const litres = told(f.tree.tub!, 'L', 'tub', f.tree.name);
  const need = figure((f.tree.tub! * TUB.gPerL * TUB.ratio[of]) / TUB.ratio.N, 'g', of, 'tub', TUB.cite, [litres]);
  return { need, span: [need, need], ask: null };
}
