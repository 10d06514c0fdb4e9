/** Phosphate and potash by distance from target on the ground under the crown; zero is a real answer. */
import type { Cite, Figure } from '../reason/figure.ts';
import { figure, told } from '../reason/figure.ts';
import { TUB } from '../tables/limits.ts';
import { BEFORE_PLANTING, BRITISH_COLUMBIA_K, ONTARIO_P } from '../tables/potash.ts';
import { REMOVAL } from '../tables/removal.ts';
import { ELEMENT_SHARE } from '../units/substance.ts';
import { convert } from '../units/units.ts';
import type { Facts } from './facts.ts';
import { groundOf, has, isToCome, ratedOf, targetOf } from './facts.ts';
import { leafVerdict } from './growth.ts';
import type { ClassRate } from './soil-rate.ts';
import { classRate, ownRate, soilFigures } from './soil-rate.ts';
import { tubRate } from './tub.ts';

export type Phosphate = Figure<'g', 'P2O5'>;
export type Potash = Figure<'g', 'K2O'>;
export type SoilNeed<F> = { readonly need: F; readonly span: readonly [F, F]; readonly ask: 'fruit-weight' | null };

const arizona: Cite = { source: 'arizona-planting', at: 'planting year', mark: 'read' };
const untested: Cite = { source: 'medlar', at: 'no-soil-value', mark: 'judgement' };

/** Dug in before planting, by the class of the soil; the only time that phosphate and potash reach the depth of roots at once. */
function dugIn<S extends 'P2O5' | 'K2O'>(f: Facts, of: S, item: 'phosphorus' | 'potassium'): SoilNeed<Figure<'g', S>> {
  const target = targetOf(f, item);
  const ground = f.bed ?? null;
  const short = target === 'far-below' || target === 'below';
  const own = target && ownRate(f, of, 'planting', target);
  const usual: ClassRate = { low: BEFORE_PLANTING.low, high: BEFORE_PLANTING.veryLow, cite: BEFORE_PLANTING.cite };
  const give = (perM2: number, cite: Cite): Figure<'g', S> => figure(perM2 * (ground?.value ?? 0), 'g', of, perM2 === 0 || !ground ? 'none' : 'dug-in', cite, [...(ground ? [ground] : []), ...soilFigures(f, item)]);
  const need = own ? give(own.low, own.cite) : give(!short ? 0 : target === 'far-below' ? usual.high : usual.low, usual.cite);
  const poland = short ? classRate(of === 'P2O5' ? 'poland.planting.p2o5' : 'poland.planting.k2o', 'below') : null;
  return { need, span: [poland ? give(Math.min(usual.low, own?.low ?? usual.low), usual.cite) : need, poland ? give(Math.max(poland.high, own?.high ?? 0), poland.cite) : need], ask: null };
}

export function phosphateOf(f: Facts): SoilNeed<Phosphate> {
  const area = groundOf(f);
  const soil = soilFigures(f, 'phosphorus');
  const give = (perM2: number, cite: Cite): Phosphate => figure(perM2 * area.value, 'g', 'P2O5', perM2 === 0 ? 'none' : 'per-area', cite, [area, ...soil]);
  if (f.tree.tub !== undefined) return tub(f, 'P2O5');
  if (isToCome(f)) return dugIn(f, 'P2O5', 'phosphorus');
  const rated = ratedOf(f, 'phosphorus');
  const target = calcareous(f) && rated?.by === 'scale' && rated.reading.method !== 'olsen' ? null : rated?.target ?? null;
  const weinsberg = classRate('weinsberg.p2o5', 'below');
  const span = (low: number, high: number): readonly [Phosphate, Phosphate] => [give(low, weinsberg.cite), give(high, weinsberg.cite)];
  const lean = f.years === 0 || (has(f, 'fed lawn') && target !== 'far-below');
  if (target === null) return { need: give(0, untested), span: span(0, 0), ask: null };
  if (target === 'above') return { need: give(0, rated!.cite ?? weinsberg.cite), span: span(0, 0), ask: null };
  const own = ownRate(f, 'P2O5', 'bearing', target);
  if (target === 'at') return { need: own ? give(f.years === 0 || has(f, 'fed lawn') ? 0 : own.low, own.cite) : give(0, ONTARIO_P), span: span(0, Math.max(3, own?.high ?? 0)), ask: null };
  if (lean) return { need: give(0, f.years === 0 ? arizona : { source: 'iowa-fruit-trees', at: 'fed lawn', mark: 'read' }), span: span(0, 5), ask: null };
  const leafLow = target === 'far-below' && leafVerdict(f, 'P')?.verdict === 'below';
  const need = leafLow && !calcareous(f)
    ? give(8, { source: 'uk-rb209', at: 'established fruit, index 0', mark: 'memory' })
    : give((own ?? weinsberg).low, (own ?? weinsberg).cite);
  return { need, span: span(4, leafLow ? 8 : 5), ask: null };
}

export function potashOf(f: Facts): SoilNeed<Potash> {
  const area = groundOf(f);
  const soil = soilFigures(f, 'potassium');
  const give = (grams: number, cite: Cite, from: readonly Figure[] = [area]): Potash => figure(grams, 'g', 'K2O', grams === 0 ? 'none' : 'per-area', cite, [...from, ...soil]);
  const [poland, weinsberg] = [classRate('poland.bearing.k2o', 'below'), classRate('weinsberg.k2o', 'below')];
  const span = (low: number, high: number): readonly [Potash, Potash] => [give(low * area.value, poland.cite), give(high * area.value, weinsberg.cite)];
  if (f.tree.tub !== undefined) return tub(f, 'K2O');
  if (isToCome(f)) return dugIn(f, 'K2O', 'potassium');
  const target = targetOf(f, 'potassium');
  if (target === null) return { need: give(0, untested), span: span(0, 0), ask: null };
  if (target === 'above') return { need: give(0, ratedOf(f, 'potassium')!.cite ?? weinsberg.cite), span: span(0, 4), ask: null };
  if (f.years === 0) return { need: give(0, arizona), span: span(0, 20), ask: null };
  if (has(f, 'fed lawn') && target !== 'far-below') return { need: give(0, { source: 'iowa-fruit-trees', at: 'fed lawn', mark: 'read' }), span: span(0, 10), ask: null };

  const removed = removalOf(f);
  const own = ownRate(f, 'K2O', 'bearing', target);
  const magnesium = ratedOf(f, 'magnesium')?.rating;
  const vetoed = has(f, 'pit-prone') || magnesium === 'low' || magnesium === 'very-low' || potashOverMagnesium(f) > 5;
  if (target === 'at' || vetoed) {
    if (f.young) return { need: give(0, { source: 'medlar', at: 'young-potash', mark: 'judgement' }), span: span(0, 10), ask: null };
    // The cap that holds below target holds here too: a richer soil never gets more.
    const most = weinsberg.low * area.value;
    const replaced = removed && removed.value > most ? give(most, weinsberg.cite) : removed;
    const byScale = !vetoed && !removed && own ? give(own.low * area.value, own.cite) : null;
    return { need: replaced ?? byScale ?? give(0, { source: 'medlar', at: vetoed ? 'potash-vetoed' : 'potash-at-target', mark: 'judgement' }), span: span(target === 'at' ? 5 : 8, target === 'at' ? 10 : 20), ask: removed ? null : 'fruit-weight' };
  }
  let need: Potash;
  if (target === 'far-below') {
    const leafLow = leafVerdict(f, 'K')?.verdict === 'below';
    const canada = convert(BRITISH_COLUMBIA_K.kgPerHa, 'kg/ha', 'g/m2') / ELEMENT_SHARE.K2O.share;
    need = leafLow ? give(canada * area.value, BRITISH_COLUMBIA_K.cite) : give(weinsberg.low * area.value, weinsberg.cite);
  } else {
    const twice = removed ? (2 * removed.value) / area.value : 0;
    const least = own ?? poland;
    const rate = Math.min(weinsberg.low, Math.max(least.low, twice));
    const cite = rate === least.low ? least.cite : rate === weinsberg.low ? weinsberg.cite : { source: 'bavaria-garden', at: 'classes A and B: twice the need', mark: 'read' } satisfies Cite;
    need = figure(rate * area.value, 'g', 'K2O', removed ? 'twice-removal' : 'per-area', cite, [...(removed ? [removed, area] : [area]), ...soil]);
  }
  if (f.young) need = figure(need.value / 2, 'g', 'K2O', 'young-half', { source: 'medlar', at: 'young-potash', mark: 'judgement' }, [need]);
  return { need, span: span(8, 20), ask: null };
}

/** What the noted crop takes off, at the upper figure of its publication; null without a weight or a figure. */
function removalOf(f: Facts): Potash | null {
  const grams = f.tree.fruit?.g;
  const figures = REMOVAL.filter((r) => r.crops.includes(f.crop) && (r.of === 'K' || r.of === 'K2O') && r.part !== 'whole plant' && r.label === undefined);
  // A figure for this kind alone goes before one for the crop.
  const removal = figures.find((r) => r.kinds?.includes(f.tree.word)) ?? figures.find((r) => r.kinds === undefined);
  if (grams == null || !removal) return null;
  const fruit = told(grams, 'g', 'fruit', f.tree.name);
  // A short ton is 2,000 lb, so lb a ton is half a part in a thousand.
  const share = removal.high / (removal.unit === 'lb/ton' ? 2000 : 1000);
  const oxide = removal.of === 'K' ? share / ELEMENT_SHARE.K2O.share : share;
  return figure(grams * oxide, 'g', 'K2O', grams === 0 ? 'none' : 'removal', removal.cite, [fruit]);
}

/** K over Mg by weight, by the Austrian (CAL) tests only; asked of a soil that was tested for potash. */
function potashOverMagnesium(f: Facts): number {
  const k = ratedOf(f, 'potassium')!;
  const mg = ratedOf(f, 'magnesium');
  if (k.reading.method !== 'cal' || !k.mgPerKg || !mg?.mgPerKg || mg.mgPerKg.value === 0) return 0;
  return k.mgPerKg.value / mg.mgPerKg.value;
}

/** Free lime by the lab's own word. */
function calcareous(f: Facts): boolean {
  const word = ratedOf(f, 'carbonate')?.reading.lab.rating;
  return word === 'medium' || word === 'high' || word === 'very-high';
}

function tub<S extends 'P2O5' | 'K2O'>(f: Facts, of: S): SoilNeed<Figure<'g', S>> {
  const litres = told(f.tree.tub!, 'L', 'tub', f.tree.name);
  const need = figure((f.tree.tub! * tubRate(f.crop).gPerL * TUB.ratio[of]) / TUB.ratio.N, 'g', of, 'tub', TUB.cite, [litres]);
  return { need, span: [need, need], ask: null };
}
