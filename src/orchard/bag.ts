/** A bag as its label says it: name, grade, weight, price, what is left, and words that matter. */
import type { Cite } from '../reason/figure.ts';
import type { Facts, Notice, Place } from '../reason/notice.ts';
import { notice } from '../reason/notice.ts';
import type { Material, MaterialKind } from '../tables/materials.ts';
import { CUP_ODD, ELEMENTAL_LABELS, SAID_ELEMENTAL, WIDE_SPREAD } from '../tables/materials.ts';
import { ELEMENT_SHARE } from '../units/substance.ts';
import type { NoticeId } from '../words/words.ts';
import type { Amendment } from './amendment.ts';
import { amendmentOf } from './amendment.ts';
import type { Form, Read } from './label-grade.ts';
import { gradeIn, MARK } from './label-grade.ts';
import { fits, materialNamed, materialOfGrade, spansOf, strengthBehind } from './label-material.ts';
import type { OtherShares } from './label-others.ts';
import { othersOf } from './label-others.ts';
import type { Parts } from './label-parts.ts';
import { partsIn } from './label-parts.ts';
import { weighed } from './label-density.ts';
import { bringsNitrate, carriesChloride, isFresh, isSlow, killsWeeds, organicKind, saysLiquid, saysSolid, saysSoluble, sayingsIn, slowShareOf } from './label-words.ts';
import { isNeutralSalt } from './lime-label.ts';

/** N, P2O5 and K2O as shares from 0 to 1. */
export type Grade = { readonly N: number; readonly P2O5: number; readonly K2O: number };

export type Bag = {
  readonly label: string;
  /** The three numbers as printed. */
  readonly printed: string;
  readonly grade: Grade;
  /** S, Ca, Mg and Cl as elements, shares from 0 to 1; what is not told is not there. */
  readonly others: OtherShares;
  /** Where the label prints P and K as elements: the rule by which they became oxides. */
  readonly elemental?: Cite;
  readonly g: number | null;
  /** g/mL of a liquid or of what is sold by volume; 1 where the label counts grams in 100 mL, so that `g` is its millilitres. */
  readonly density?: number;
  /** Grams that one level US cup of it weighs, by the grower's own scale. */
  readonly cupG?: number;
  readonly price: { readonly amount: number; readonly currency: string } | null;
  /** Grams in hand; only for what stands in the shed. */
  readonly left: number | null;
  readonly material: Material | null;
  /** What grew or lived. */
  readonly organic: Exclude<MaterialKind, 'mineral'> | null;
  /** Raw manure. */
  readonly fresh?: true;
  readonly nitrate: boolean;
  /** Of its nitrogen, from 0 to 1; `slow` from a half on. */
  readonly slowShare: number;
  readonly slow: boolean;
  readonly liquid: boolean;
  /** Sold to be dissolved in water. */
  readonly soluble?: true;
  readonly chloride: boolean;
  readonly weedKiller: boolean;
  /** Lime or sulphur: it feeds nothing and is planned by the pH. */
  readonly amends?: Amendment;
  /** Stands in no list: any of its kind will do. */
  readonly unlisted?: true;
  readonly place: Place;
};

export type BagResult = { readonly bag: Bag | null; readonly notices: readonly Notice[] };

/** Sold to acidify, and told of beside sulphur alone. */
const ACIDIFIER = /\b(?:iron(?: ?\(?ii\)?)?|ferrous|alumini?um) sul(?:ph|f)ate\b|\bcopperas\b/i;
/** No label is longer. */
const LONGEST = 1000;
/** g/mL. Water weighs a kilogram a litre, and with salts in it more; what is sold in litres and weighs less is pellets or meal. */
const LIGHTEST_LIQUID = 0.9;

/** Reads a label such as `Sulphate of ammonia, 21-0-0 +24S, 4 lb, $9`. */
export function parseBag(text: string, country: string | null, inShed: boolean, place: Place, state: string | null = null): BagResult {
  if (text.length > LONGEST) return { bag: null, notices: [notice('bag-long', 'error', { read: text.slice(0, 40), most: LONGEST }, place)] };
  const said = sayingsIn(text, country);
  const read = gradeIn(said.rest, country);
  const named = namedIn(read, said.rest);
  const feeds = read.numbers !== null || (named !== null && named.material.kind !== 'ash' && named.material.sold.grade.some((x) => x > 0) && amendmentOf(named.before, { country, state }) === null);
  const amending = feeds ? null : amendmentOf(said.rest, { country, state });
  const told = read.numbers === null ? null : read.printed;
  const parts = partsIn(amending?.lime?.rest ?? (amending ? said.rest : read.rest), { whole: text, country, place, told, noVolume: amending !== null && named?.material.bulk === undefined, lime: amending?.lime !== undefined });
  const notices: Notice[] = [...parts.notices];
  const bagWord = parts.label || told || text;
  const tell = (severity: 'error' | 'note', { code, facts }: { code: NoticeId; facts: Facts }): unknown => notices.push(notice(code, severity, { ...facts, bag: bagWord }, place));
  if (said.cup !== null && (said.cup < CUP_ODD.low || said.cup > CUP_ODD.high)) tell('error', { code: 'cup-odd', facts: { g: Math.round(said.cup), low: CUP_ODD.low, high: CUP_ODD.high } });
  if (amending) {
    for (const fault of amending.lime?.faults ?? []) notices.push(notice(fault.code, 'error', { ...fault.facts, bag: parts.label || text }, place));
    const bulk = parts.g === null && parts.mL !== null ? weighed({ ...parts, density: said.density, byVolume: false, material: named?.material ?? null, printed: null, system: country === 'US' ? 'us' : 'metric' }) : null;
    if (bulk?.fault) tell('error', bulk.fault);
    if (bulk?.note) tell('note', bulk.note);
    const g = parts.g ?? bulk?.g ?? parts.per;
    return { bag: notices.some((n) => n.severity === 'error') ? null : amendmentBag(parts.label || text, amending, { g, price: priceOf(parts, g, parts.mL), left: inShed ? inHandOf(g, parts.left) : null, place, ...(said.cup === null ? {} : { cupG: said.cup }) }), notices };
  }
  for (const fault of read.faults) tell('error', fault);
  const strength = read.numbers === null && named ? strengthBehind(named, said.rest) : null;
  const material = named && (read.numbers === null || fits(named.material, read.numbers)) ? named.material : read.numbers ? materialOfGrade(read.numbers) : null;
  const known = material !== null && material.sold.grade.some((x) => x > 0);
  if (read.numbers === null && strength === null && !known) {
    const none = notices.length > 0 ? null : isNeutralSalt(text) ? 'not-lime' : ACIDIFIER.test(text) ? 'acidifier-told' : null;
    return { bag: null, notices: none ? [notice(none, 'warning', { bag: parts.label || text }, place)] : [...notices, notice('grade-missing', 'error', { bag: text }, place)] };
  }
  if (read.numbers === null && strength === null && material!.bagOnly) tell('error', { code: 'material-bag-only', facts: { spread: spreadOf(material!) } });
  const own = read.numbers ?? strength;
  const form = formsOf(read, said.basis, country, own !== null);
  const numbers = own ?? material!.sold.grade;
  const printed = told ?? (own ?? asPrintedIn(country, numbers)).join('-');
  const fault = faultOf(numbers, form);
  if (fault) notices.push(notice(fault, 'error', { read: printed, bag: bagWord }, place));
  const byVolume = said.byVolume || read.byVolume;
  const weight = weighed({ ...parts, mL: parts.mL ?? (parts.g === null ? parts.perVolume : null), density: said.density, byVolume, material, printed: form.p === 'oxide' && !byVolume ? numbers : null, system: country === 'US' ? 'us' : 'metric' });
  if (weight.fault) tell('error', weight.fault);
  if (notices.length > 0) return { bag: null, notices };
  for (const note of [...read.notes, ...(weight.note ? [weight.note] : [])]) tell('note', note);
  if (read.numbers === null && strength === null && isWide(material!)) tell('note', { code: 'material-spread', facts: { grade: printed, spread: spreadOf(material!) } });
  const g = weight.g ?? parts.per;
  const words = text.toLowerCase();
  // Percent by volume: a millilitre weighs what the label says, or counts as a gram.
  const share = byVolume ? 100 * (weight.density ?? 1) : 100;
  const grade = { N: numbers[0] / share, P2O5: (numbers[1] * form.toP2O5) / share, K2O: (numbers[2] * form.toK2O) / share };
  const slowShare = slowShareOf(said.slow, numbers[0], words, material);
  return {
    notices,
    bag: {
      label: parts.label || printed, printed, place, g, material, grade,
      others: othersOf(read.others, material, share),
      ...(form.cite ? { elemental: form.cite } : {}),
      ...(weight.density === null ? {} : { density: weight.density }),
      ...(said.cup === null ? {} : { cupG: said.cup }),
      price: priceOf(parts, g, parts.mL),
      left: inShed ? inHandOf(g, parts.left) : null,
      organic: organicKind(words, material),
      ...(isFresh(words, material, read.numbers !== null) ? { fresh: true as const } : {}),
      nitrate: bringsNitrate(words, material, grade),
      slowShare, slow: isSlow(slowShare),
      liquid: saysLiquid(words) || material?.liquid === true || (parts.mL !== null && parts.ofLiquid && material?.bulk === undefined && (weight.density ?? 1) >= LIGHTEST_LIQUID && !saysSolid(words)),
      ...(saysSoluble(words) ? { soluble: true as const } : {}),
      chloride: grade.K2O > 0 && carriesChloride(words, material),
      weedKiller: killsWeeds(words),
    },
  };
}

/** The material in front of the numbers, or else behind them and before what they are made from. */
function namedIn(read: Read, whole: string): ReturnType<typeof materialNamed> {
  if (!read.rest.includes(MARK)) return materialNamed(whole);
  const [before, after] = read.rest.split(MARK) as [string, string];
  return materialNamed(before) ?? materialNamed(after.split(/\b(?:with|contains?|containing|from|plus|and|mit|con|avec)\b|[,;]/i)[0]!);
}

type Forms = { readonly p: Form; readonly toP2O5: number; readonly toK2O: number; readonly cite: Cite | null };

/** What P and K are: as the label says, else as the country's labels are; a table's own numbers are oxides. */
function formsOf(read: Read, basis: Form, country: string | null, own: boolean): Forms {
  const home = country !== null && Object.hasOwn(ELEMENTAL_LABELS, country) ? ELEMENTAL_LABELS[country]! : null;
  const of = (form: Form): boolean => own && (form ?? basis ?? (home ? 'element' : 'oxide')) === 'element';
  const [p, k] = [of(read.p), of(read.k)];
  const cite = !p && !k ? null : read.p === 'element' || read.k === 'element' ? ELEMENTAL_LABELS.ZA! : basis === 'element' ? SAID_ELEMENTAL : home;
  return { p: p ? 'element' : 'oxide', toP2O5: p ? 1 / ELEMENT_SHARE.P2O5.share : 1, toK2O: k ? 1 / ELEMENT_SHARE.K2O.share : 1, cite };
}

/** A table's oxides as a bag there would print them. */
const asPrintedIn = (country: string | null, numbers: readonly number[]): readonly number[] =>
  country !== null && Object.hasOwn(ELEMENTAL_LABELS, country) ? [1, ELEMENT_SHARE.P2O5.share, ELEMENT_SHARE.K2O.share].map((share, i) => Math.round(numbers[i]! * share * 10) / 10) : numbers;

/** Sold by weight or volume: so much of it as the label says, else one such measure at a time. */
function priceOf(parts: Parts, g: number | null, mL: number | null): Bag['price'] {
  if (parts.price === null) return null;
  if (parts.per !== null && g !== null) return { ...parts.price, amount: (parts.price.amount * g) / parts.per };
  return parts.perVolume !== null && mL !== null ? { ...parts.price, amount: (parts.price.amount * mL) / parts.perVolume } : parts.price;
}

/** What stands in the shed: the weight said to be left, else that share of the bag. */
const inHandOf = (g: number | null, left: Parts['left']): number | null => left?.g ?? (g === null ? null : g * (left?.share ?? 1));

/** A bag that feeds nothing. */
export function amendmentBag(label: string, amends: Amendment, rest: Pick<Bag, 'g' | 'price' | 'left' | 'place' | 'unlisted' | 'cupG'>): Bag {
  return { label, printed: '', grade: { N: 0, P2O5: 0, K2O: 0 }, others: {}, material: null, organic: null, nitrate: false, slowShare: 0, slow: false, liquid: false, chloride: false, weedKiller: false, amends, ...rest };
}

function faultOf(numbers: readonly number[], form: Forms): 'grade-empty' | 'grade-impossible' | null {
  const [n = 0, p = 0, k = 0] = numbers;
  if (n + p + k === 0) return 'grade-empty';
  return n + p * form.toP2O5 + k * form.toK2O > 100 ? 'grade-impossible' : null;
}

const isWide = (m: Material): boolean => spansOf(m).some(([low, high]) => high - low > WIDE_SPREAD.share * Math.max(...m.sold.grade));
/** "10 to 15 % N, up to 3 % P2O5". */
const spreadOf = (m: Material): string => spansOf(m).flatMap(([low, high], i) => (high > 0 ? [`${low === high ? high : `${low}–${high}`} % ${['N', 'P2O5', 'K2O'][i]!}`] : [])).join(', ');

/** Whether a text names the numbers printed on a bag; "15-10-10" does not name 5-10-10, and no text the numbers of a bag without any. */
export const holdsGrade = (text: string, printed: string): boolean => (text.match(/\d[\d.,-]*/g) ?? []).some((t) => t.replace(/\D+$/, '') === printed || t.startsWith(`${printed}-`));

/** Label and numbers. */
export const bagName = (bag: Bag): string => (bag.printed === '' || bag.label.includes(bag.printed) ? bag.label : `${bag.label} ${bag.printed}`);
