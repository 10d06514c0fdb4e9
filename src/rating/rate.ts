/**
 * Each value against the lab's own word, else its printed range, else its index, else the published scale of its method.
 * Says always also how far from target it is, what a published scale says beside the lab, and which class is near;
 * a method that nobody names is never guessed, and no value is held against another extractant's scale.
 */
import type { Cite, Figure } from '../reason/figure.ts';
import type { Notice } from '../reason/notice.ts';
import { notice } from '../reason/notice.ts';
import type { Reading, Sample } from '../soil/reading.ts';
import type { Item } from '../tables/items.ts';
import { ELEMENT_OF } from '../tables/items.ts';
import type { Band, Home, Kind, Rating, Scale, Target } from '../tables/ratings.ts';
import { COMMON_WORDS, INDEX_SCHEMES, PRECISION, SCALES, WORD_SCHEMES } from '../tables/ratings.ts';
import { GERMAN_P2O5 } from '../tables/scales-europe.ts';
import { sourceOf } from '../tables/sources.ts';
import { ELEMENT_SHARE } from '../units/substance.ts';
import type { Unit } from '../units/units.ts';
import { convert, UNITS } from '../units/units.ts';
import type { Ground } from './content.ts';
import { contentOf, densityOf, depthCmOf, inUnit, lab } from './content.ts';
import { manganeseIndex } from './convert.ts';
import { kindOf } from './soil-kind.ts';
import type { Heaviness } from './texture.ts';
import { heavinessOf } from './texture.ts';

/** Whose scales lead. `text` is the place as the grower wrote it; `crops` is what grows on the soil, where that is known. */
export type Region = { readonly country: string | null; readonly state: string | null; readonly text?: string; readonly crops?: readonly (string | null)[] };

/** What a published scale says; `name` is its own name of the class, `span` its target in its unit. */
export type Ours = {
  readonly rating: Rating;
  readonly target: Target;
  readonly scale: string;
  readonly name?: string;
  readonly field: boolean;
  /** Whether it is a table of the grower's own region. */
  readonly home: boolean;
  readonly span: { readonly low: number | null; readonly high: number | null; readonly unit: string } | null;
  readonly cite: Cite;
};

export type Rated = {
  readonly reading: Reading;
  readonly mgPerKg: Figure<'mg/kg'> | null;
  readonly rating: Rating | null;
  readonly target: Target | null;
  /** What decided: the lab's word, its range, a scale, or nothing. */
  readonly by: 'word' | 'range' | 'scale' | 'index' | null;
  readonly cite: Cite | null;
  /** What a published scale or index of the grower's region says, whoever decided. */
  readonly ours: Ours | null;
  /** Another class within the lab's own scatter of the value. */
  readonly near: Rating | null;
};

type Soil = { readonly heaviness: Heaviness | null; readonly kind: Kind | null; readonly cec: number | null; readonly ph: number | null; readonly density: number | null; readonly ground: Ground };
type Verdict = { readonly rating: Rating; readonly target: Target; readonly by: Rated['by']; readonly cite: Cite; readonly near: Rating | null };
type Judged = { readonly ours: Ours; readonly near: Rating | null };

/** Rates every reading of a sample. `region` chooses between scales of one method, and between the meanings of an index or a word. */
export function rateSample(sample: Sample, region: Region): Rated[] {
  const found = (item: Item): Reading | undefined => sample.readings.find((r) => r.item === item && r.value !== null);
  const cec = found('cec');
  const soil: Soil = {
    heaviness: heavinessOf(sample), kind: kindOf(sample), cec: cec ? converted(cec, 'meq/100g') : null, ph: found('ph')?.value ?? null,
    density: densityOf(sample), ground: { depthCm: depthCmOf(sample.depth), state: region.state },
  };
  return sample.readings.map((reading) => (sample.kind === 'leaf' ? rateLeaf(reading) : rate(reading, region, soil)));
}

/** A leaf is held against the lab's own word and range alone: scales of soils say nothing of it, and its contents are none of the soil. */
function rateLeaf(reading: Reading): Rated {
  const verdict = labsVerdict(reading, { country: null, state: null }, null);
  return { reading, mgPerKg: null, rating: verdict?.rating ?? null, target: verdict?.target ?? null, by: verdict?.by ?? null, cite: verdict?.cite ?? null, ours: null, near: null };
}

function rate(reading: Reading, region: Region, soil: Soil): Rated {
  const mgPerKg = contentOf(reading, soil.density, soil.ground);
  const byIndex = againstIndex(reading, region);
  const judged = byIndex ?? againstScale(reading, region, soil);
  const verdict = labsVerdict(reading, region, judged) ?? (judged && { ...judged.ours, by: byIndex ? 'index' as const : 'scale' as const, near: judged.near });
  return { reading, mgPerKg, rating: verdict?.rating ?? null, target: verdict?.target ?? null, by: verdict?.by ?? null, cite: verdict?.cite ?? null, ours: judged?.ours ?? null, near: verdict?.near ?? null };
}

/** The lab's word, else its range. A word has no edge to be near of; where our scale says the same word, its edges are taken. */
function labsVerdict(reading: Reading, region: Region, judged: Judged | null): Verdict | null {
  const { rating: word, range } = reading.lab;
  if (word) {
    const target = WORD_SCHEMES.find((s) => isHome(s, region))?.targets[word] ?? COMMON_WORDS[word];
    return { rating: word, target, by: 'word', cite: lab(reading), near: judged?.ours.rating === word ? judged.near : null };
  }
  if (reading.value === null || !range) return null;
  const target = againstRange(reading, range);
  const rating = ({ 'far-below': 'very-low', below: 'low', at: 'optimum', above: 'high' } as const)[target];
  return { rating, target, by: 'range', cite: lab(reading), near: nearOf(reading, reading.value, rangeBands(range)) };
}

/** Under the low end is below, under half of it far below. A value known only as "less than" stands below that number. */
function againstRange(reading: Reading, [low, high]: readonly [number | null, number | null]): Target {
  const value = reading.value!;
  if (low !== null && value < low) return value < low / 2 ? 'far-below' : 'below';
  if (high !== null && (reading.to ?? value) > high) return 'above';
  return 'at';
}

/** The same range as bands. */
const rangeBands = ([low, high]: readonly [number | null, number | null]): Band[] => [
  ...(low === null ? [] : [{ upTo: low / 2, rating: 'very-low', target: 'far-below' } as const, { upTo: low, rating: 'low', target: 'below' } as const]),
  { upTo: high, rating: 'optimum', target: 'at' },
  { upTo: null, rating: 'high', target: 'above' },
];

/** An index without its region says nothing; the reader asks. */
function againstIndex(reading: Reading, region: Region): Judged | null {
  const value = reading.unit === 'index' ? reading.value : reading.index ?? null;
  const scheme = reading.scheme ? INDEX_SCHEMES.find((s) => s.id === reading.scheme) : INDEX_SCHEMES.filter((s) => isHome(s, region)).at(-1);
  if (value === null || !scheme || value < scheme.from) return null;
  return { ours: oursOf(bandOf(scheme.bands, value), scheme.id, scheme.cite), near: null };
}

function againstScale(reading: Reading, region: Region, soil: Soil): Judged | null {
  if (reading.value === null) return null;
  const fits = SCALES.flatMap((scale, order) => {
    const rank = fitsSoil(scale, reading, soil) ? rankOf(scale, reading, region) : null;
    const value = rank === null ? null : valueIn(reading, scale, soil);
    return rank === null || value === null ? [] : [{ scale, value, rank: [...rank, order] }];
  });
  const [best] = fits.sort((a, b) => compare(a.rank, b.rank));
  if (!best) return null;
  const { scale } = best;
  // What is only known to lie below a number lies below an edge at that number too.
  const value = reading.below ? best.value - 1e-6 * Math.max(1, best.value) : best.value;
  const ours = { ...oursOf(bandOf(scale.bands, value), scale.id, scale.cite), field: scale.serves === 'field', home: isHome(scale, region), span: spanOf(scale) };
  return { ours, near: nearOf(reading, best.value, scale.bands, reading.to === undefined ? undefined : valueIn({ ...reading, value: reading.to }, scale, soil)) };
}

/** A named extractant is never held against a table of another, whose own name the list of methods lacks. */
const isNamed = (method: Reading['method']): boolean => method !== null && method !== 'unknown';

const fitsSoil = (s: Scale, reading: Reading, soil: Soil): boolean =>
  s.item === reading.item && (s.method === reading.method || (s.method === 'any' && !(ELEMENT_OF[s.item] && isNamed(reading.method))))
  && (!s.soil || s.soil === soil.heaviness) && (!s.kinds || (soil.kind !== null && s.kinds.includes(soil.kind)))
  && (!s.cec || (soil.cec !== null && soil.cec > s.cec[0] && soil.cec <= s.cec[1]));

/** The value in the scale's unit and form. MnAI is worked out of manganese and the sample's own pH. */
function valueIn(reading: Reading, scale: Scale, soil: Soil): number | null {
  if (scale.unit === 'MnAI') {
    const ppm = contentOf(reading, soil.density, soil.ground)?.value ?? null;
    return ppm === null || soil.ph === null ? null : manganeseIndex(ppm, soil.ph);
  }
  if (!ELEMENT_OF[reading.item]) return converted(reading, scale.unit);
  const element = inUnit(reading, scale, soil.density, soil.ground);
  return element === null ? null : element / (scale.form ? ELEMENT_SHARE[scale.form].share : 1);
}

/** A value that is no content of an element, in a unit of the same kind. */
function converted({ value, unit }: Reading, to: Unit): number | null {
  if (value === null || unit === null || !Object.hasOwn(UNITS, unit) || UNITS[unit as Unit].kind !== UNITS[to].kind) return null;
  return unit === to ? value : convert(value, unit as Unit, to);
}

/**
 * The grower's own state, then the country, then fruit anywhere. A general table stands in where the country is its own or is not told; a field table
 * serves its own region alone, and after every other of that region; what is only recalled never leaves its region. Among equals: one crop's own table, the printed unit and form, the order of the list. Null: not for this grower.
 */
function rankOf(scale: Scale, reading: Reading, region: Region): number[] | null {
  const { serves = 'general' } = scale;
  const crop = typeof serves === 'object' ? serves.only : null;
  if (crop !== null && !(region.crops && region.crops.length > 0 && region.crops.every((c) => c === crop))) return null;
  if (scale.within !== undefined && !placesOf(region).some((p) => p.includes(scale.within!))) return null;
  const same = [scale.unit === reading.unit && (scale.form ?? null) === reading.form ? 0 : 1];
  const what = crop !== null || serves === 'fruit' ? 0 : serves === 'general' ? 1 : 2;
  const special = crop !== null || scale.within !== undefined ? 0 : 1;
  if (isHome(scale, region)) return [scale.states ? 0 : 1, special, what, ...same];
  if (what === 2 || crop !== null || scale.within !== undefined || scale.homeOnly) return null;
  if (scale.cite.mark === 'memory') return null;
  if (what === 0) return [2, special, what, ...same];
  return region.country === null || (scale.countries ?? []).includes(region.country) ? [3, special, what, ...same] : null;
}

const compare = (a: readonly number[], b: readonly number[]): number => a.map((x, i) => x - b[i]!).find((d) => d !== 0) ?? 0;

const placesOf = (region: Region): string[] => [...(region.text ?? '').toLowerCase().split(',').map((p) => p.trim()), ...(region.state === null ? [] : [region.state])];

/** American and Canadian states are told apart from towns of their names; elsewhere any part of the place may be one. */
const isHome = (home: Home, region: Region): boolean =>
  region.country !== null && (home.countries ?? []).includes(region.country)
  && (!home.states || (region.country === 'US' || region.country === 'CA' ? [region.state ?? ''] : placesOf(region)).some((p) => home.states!.includes(p)));

const bandOf = (bands: readonly Band[], value: number): Band => bands.find((b) => b.upTo === null || value <= b.upTo)!;

const oursOf = (band: Band, scale: string, cite: Cite): Ours =>
  ({ rating: band.rating, target: band.target, scale, ...(band.name === undefined ? {} : { name: band.name }), field: false, home: true, span: null, cite });

/** The target of a scale, as printed; an edge stored just under a number is that number. */
function spanOf({ bands, unit }: Scale): Ours['span'] {
  const first = bands.findIndex((b) => b.target === 'at');
  if (first < 0) return null;
  const edge = (b: Band | undefined): number | null => (b?.upTo == null ? null : Number(b.upTo.toPrecision(6)));
  return { low: edge(bands[first - 1]), high: edge(bands.filter((b) => b.target === 'at').at(-1)), unit };
}

/** The class on the other side of the nearest edge that the lab's own scatter reaches, or that the other end of a printed span lies in. */
function nearOf(reading: Reading, value: number, bands: readonly Band[], to?: number | null): Rating | null {
  if (reading.below || reading.above) return null;
  const own = bandOf(bands, value);
  if (to != null) return bandOf(bands, to).rating === own.rating ? null : bandOf(bands, to).rating;
  const scatter = PRECISION.find((p) => p.items.includes(reading.item))?.within;
  if (!scatter) return null;
  const reach = Math.max(scatter.share * value, scatter.least);
  const edges = bands.flatMap((b, i) => (b.upTo === null ? [] : [{ away: Math.abs(b.upTo - value), other: value <= b.upTo ? bands[i + 1]! : b }]));
  const [nearest] = edges.filter((e) => e.away <= reach && e.other.rating !== own.rating).sort((a, b) => a.away - b.away);
  return nearest?.other.rating ?? null;
}

const SIDE: Readonly<Record<Target, string>> = { 'far-below': 'below', below: 'below', at: 'at', above: 'above' };

/** Which of Germany's two schemes rated phosphorus, where the lab prints no class: one note a sample. */
export function schemeNotes(rated: readonly Rated[]): Notice[] {
  const r = rated.find(({ by, ours }) => by === 'scale' && ours?.scale === 'vdlufa.phosphorus');
  if (!r) return [];
  const read = r.mgPerKg ? Number((r.mgPerKg.value / 10).toPrecision(3)) : '';
  return [notice('german-phosphorus', 'note', { read, low: r.ours!.span?.low ?? '', high: r.ours!.span?.high ?? '', oldLow: GERMAN_P2O5.low, oldHigh: GERMAN_P2O5.high }, r.reading.place)];
}

/** Where the lab's own word or range and a published scale stand on different sides of the target; another region's table is only a note. The lab's is used all the same. */
export function ratingNotices(rated: readonly Rated[]): Notice[] {
  return rated.flatMap(({ reading, rating, target, ours }) => {
    if (!ours || !rating || !target || SIDE[target] === SIDE[ours.target]) return [];
    const publisher = sourceOf(ours.cite.source)?.publisher ?? '';
    return [notice('rating-differs', ours.home ? 'warning' : 'note', { item: reading.item, labRating: rating, ourRating: ours.rating, source: publisher, span: spanText(ours.span), field: ours.field ? ' ' : '' }, reading.place)];
  });
}

function spanText(span: Ours['span']): string {
  if (!span) return '';
  const unit = span.unit === 'pH' || span.unit === 'MnAI' ? '' : ` ${span.unit}`;
  if (span.low === null) return span.high === null ? '' : `≤ ${span.high}${unit}`;
  return span.high === null ? `≥ ${span.low}${unit}` : `${span.low}-${span.high}${unit}`;
}
