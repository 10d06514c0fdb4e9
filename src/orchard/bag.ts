/** A bag as its label says it: name, grade, weight, price, what is left, and words that matter. */
import type { Cite } from '../reason/figure.ts';
import type { Notice, Place } from '../reason/notice.ts';
import { notice } from '../reason/notice.ts';
import type { Material } from '../tables/materials.ts';
import { ELEMENTAL_LABELS, MATERIALS } from '../tables/materials.ts';
import { ELEMENT_SHARE } from '../units/substance.ts';
import type { Amendment } from './amendment.ts';
import { amendmentOf } from './amendment.ts';
import { amountsIn } from './label-amounts.ts';
import { isNeutralSalt } from './lime-label.ts';
import { numberOf } from './measure.ts';

/** N, P2O5 and K2O as shares from 0 to 1. */
export type Grade = { readonly N: number; readonly P2O5: number; readonly K2O: number };

export type Bag = {
  readonly label: string;
  /** The three numbers as printed. */
  readonly printed: string;
  readonly grade: Grade;
  /** Where the label prints P and K as elements: the rule by which they became oxides. */
  readonly elemental?: Cite;
  readonly g: number | null;
  readonly price: { readonly amount: number; readonly currency: string } | null;
  /** Grams in hand; only for what stands in the shed. */
  readonly left: number | null;
  readonly material: Material | null;
  readonly slow: boolean;
  readonly liquid: boolean;
  readonly chloride: boolean;
  readonly weedKiller: boolean;
  /** Lime or sulphur: it feeds nothing and is planned by the pH. */
  readonly amends?: Amendment;
  /** Stands in no list: any of its kind will do. */
  readonly unlisted?: true;
  readonly place: Place;
};

export type BagResult = { readonly bag: Bag | null; readonly notices: readonly Notice[] };

const DASH = ' *[-‐‑‒–—−/:] *';
const PART = '(\\d+(?:[.,]\\d{1,2})?)';
/** Three numbers, and behind them what the label adds: "+24S", "-24S", "(2 MgO)". */
const GRADE = new RegExp(`(?:n-?p-?k:? *)?(?<![\\d.,])${PART}${DASH}${PART}${DASH}${PART}(?:-\\d+(?:\\.\\d+)?(?![\\d.])(?: *%? *[A-Za-z]{1,3}\\b)?| *\\+ *[\\d.]+ *%? *[A-Za-z]+| *\\(? *\\d+(?:[.,]\\d+)? *%? *(?:SO3|S|CaO|Ca|MgO|Mg|Fe|TE)\\b\\)?)*`, 'i');
/** A number or a currency that stands alone, such as a weight without its unit. */
const LOST = /[$£€]|^[-+]?\d(?![\d.,]*\s*%)|(?:^|\s)[-+]?\d[\d.,]*$|\bleft$/;
/** Sold to acidify, and told of beside sulphur alone. */
const ACIDIFIER = /\b(?:iron(?: ?\(?ii\)?)?|ferrous|alumini?um) sul(?:ph|f)ate\b|\bcopperas\b/i;
/** 2,000 lb in grams, rounded down. */
const TON = 900_000;
/** A price by a measure that says no weight, or a rate. */
const BY_MEASURE = /(?:^| )(?:per|an?|\/) *(?:cubic )?(?:yards?|yd|m3|m³|bale|scoop|bucket|load|cu(?:bic)? ft|acre|hectare|ha|[\d,]* *(?:sq\.? ?ft|square feet|m2|m²))$/i;
/** How strong a sulphur is: read from the whole label. */
const STRENGTH = /^\d+(?:[.,]\d+)? *%/;
const SAYS_NO_NAME = /weed|herbicide|slow|coated|controlled|release|liquid|soluble|organic|sulphate|sulfate|chloride|muriate|granul|crystal|pellet/i;

/** Reads a label such as `Sulphate of ammonia, 21-0-0 +24S, 4 lb, $9`. */
export function parseBag(text: string, country: string | null, inShed: boolean, place: Place, state: string | null = null): BagResult {
  const notices: Notice[] = [];
  const amending = GRADE.test(text) ? null : amendmentOf(text, { country, state });
  const parts = (amending?.lime?.rest ?? text).split(/,\s+/).map((p) => p.trim()).filter(Boolean);
  let label = '';
  let grade: [number, number, number] | null = null;
  let printed = '';
  let g: number | null = null;
  let price: Bag['price'] = null;
  let left: { share?: number; g?: number } | null = null;
  let per: number | null = null;
  const words = text.toLowerCase();
  const unknown = (part: string): unknown => notices.push(notice('bag-part-unknown', 'error', { read: part, bag: text }, place));
  for (const [i, part] of parts.entries()) {
    // A bag known by its grade alone has it as its name too.
    if (parts.indexOf(part) < i && GRADE.exec(part)?.[0] === part) continue;
    const graded: RegExpExecArray | null = grade === null ? GRADE.exec(part) : null;
    if (graded) {
      const numbers: string[] = [graded[1]!, graded[2]!, graded[3]!].map((n) => n.replace(',', '.'));
      grade = [Number(numbers[0]), Number(numbers[1]), Number(numbers[2])];
      printed = numbers.join('-');
    }
    const pieces = graded ? [part.slice(0, graded.index), part.slice(graded.index + graded[0].length)] : [part];
    for (const [at, piece] of pieces.entries()) {
      const found = amountsIn(piece, country);
      per ??= found.per;
      for (const weight of found.weights) {
        if (weight !== null && typeof weight === 'object') notices.push(notice('number-two-ways', 'error', { read: weight.unclear, dot: weight.unclear.replace(',', '.'), plain: weight.unclear.replace(',', '') }, place));
        // A second weight is the same in other units, or nobody knows which holds.
        else if (!weight || (g !== null && Math.abs(weight - g) > 0.03 * g)) unknown(part);
        else g ??= weight;
      }
      for (const cost of found.prices) {
        if (cost && 'read' in cost) notices.push(notice('number-unclear', 'error', { ...cost }, place));
        else if (!cost || price !== null) unknown(part);
        else price = cost;
      }
      if (found.left) left = found.left;
      if (found.left && found.left.g === undefined && found.left.share === undefined) unknown(part);
      const rest = found.rest.replace(at === 0 && graded ? /[\s:(,–-]+$/ : /[\s,;]+$/, '');
      if (rest === '' || (graded && at === 1 && !LOST.test(rest)) || (!amending?.lime && STRENGTH.test(rest))) continue;
      if (BY_MEASURE.test(rest)) unknown(part);
      // Whatever is a number on a bag of lime has been read by now.
      else if (amending?.lime && /\d/.test(rest)) unknown(part);
      else if (/[$£€]|\bleft$/.test(rest) || ((label !== '' || grade !== null) && (LOST.test(rest) || numberOf(rest) !== null))) unknown(part);
      else if (label === '') label = rest;
      else if (!SAYS_NO_NAME.test(rest)) label += graded ? '' : `, ${rest}`;
    }
  }
  // Tons without a price may be meant for an acre.
  if (notices.length === 0 && g !== null && g >= TON && price === null && left === null) unknown(parts.find((p) => /\d *t(?:on|\b)/i.test(p)) ?? text);
  // Sold by weight: so much of it as the label says, else one such weight at a time.
  if (per !== null && price !== null && g !== null) price = { ...price, amount: (price.amount * g) / per };
  g ??= per;
  const material = materialOf(label, grade);
  grade ??= material ? [...material.grade] : null;
  const amends = grade === null ? amending : null;
  for (const fault of amends?.lime?.faults ?? []) notices.push(notice(fault.code, 'error', { ...fault.facts, bag: label || text }, place));
  if (amends) return { bag: notices.length > 0 ? null : amendmentBag(label || text, amends, { g, price, left: inShed ? inHandOf(g, left) : null, place }), notices };
  if (grade === null && notices.length === 0 && isNeutralSalt(text)) return { bag: null, notices: [notice('not-lime', 'warning', { bag: label || text }, place)] };
  if (grade === null && notices.length === 0 && ACIDIFIER.test(text)) return { bag: null, notices: [notice('acidifier-told', 'warning', { bag: label || text }, place)] };
  if (grade === null) {
    notices.push(notice('grade-missing', 'error', { bag: text }, place));
    return { bag: null, notices };
  }
  printed ||= grade.join('-');
  const fault = faultOf(grade, country);
  if (fault) {
    notices.push(notice(fault, 'error', { read: printed, bag: label || text }, place));
    return { bag: null, notices };
  }
  const elemental = country ? ELEMENTAL_LABELS[country] : undefined;
  const [n, p, k] = grade;
  const oxide = elemental ? { P2O5: 1 / ELEMENT_SHARE.P2O5.share, K2O: 1 / ELEMENT_SHARE.K2O.share } : { P2O5: 1, K2O: 1 };
  if (notices.length > 0) return { bag: null, notices };
  return {
    notices,
    bag: {
      label: label || printed, printed, place, g, price, material,
      grade: { N: n / 100, P2O5: (p * oxide.P2O5) / 100, K2O: (k * oxide.K2O) / 100 },
      ...(elemental ? { elemental } : {}),
      left: inShed ? inHandOf(g, left) : null,
      slow: /slow|coated|controlled/.test(words),
      liquid: /liquid/.test(words),
      chloride: k > 0 && carriesChloride(words, material),
      weedKiller: /(?<!sea ?)weed|herbicide|moss ?kill|2,4-d|dicamba|atrazine/.test(words),
    },
  };
}

/** What stands in the shed: the weight said to be left, else that share of the bag. */
const inHandOf = (g: number | null, left: { share?: number; g?: number } | null): number | null => left?.g ?? (g === null ? null : g * (left?.share ?? 1));

/** A bag that feeds nothing. */
export function amendmentBag(label: string, amends: Amendment, rest: Pick<Bag, 'g' | 'price' | 'left' | 'place' | 'unlisted'>): Bag {
  return { label, printed: '', grade: { N: 0, P2O5: 0, K2O: 0 }, material: null, slow: false, liquid: false, chloride: false, weedKiller: false, amends, ...rest };
}

/** The potash of a blend is nearly always chloride unless the label says sulphate or names something grown (memory). */
function carriesChloride(words: string, material: Material | null): boolean {
  if (/chloride[- ]free|no chloride/.test(words)) return false;
  if (/chloride|muriate/.test(words)) return true;
  if (/sul(?:ph|f)ate/.test(words)) return false;
  if (material && material.id !== '10-10-10') return material.chloride === true;
  return !/organic|meal|manure|seaweed|kelp|compost|\bash\b/.test(words);
}

function faultOf(grade: readonly number[], country: string | null): 'grade-empty' | 'grade-impossible' | null {
  const sum = grade.reduce((a, b) => a + b, 0);
  if (sum === 0) return 'grade-empty';
  const [n = 0, p = 0, k = 0] = grade;
  const elemental = country !== null && ELEMENTAL_LABELS[country] !== undefined;
  const held = elemental ? n + p / ELEMENT_SHARE.P2O5.share + k / ELEMENT_SHARE.K2O.share : sum;
  return held > 100 ? 'grade-impossible' : null;
}

/** The material a label names; failing a name, the one whose grade it prints. */
function materialOf(label: string, grade: readonly [number, number, number] | null): Material | null {
  const words = label.toLowerCase();
  const named = MATERIALS.find((m) => m.names.some((n) => new RegExp(`\\b${n}\\b`).test(words)));
  if (named) return named;
  return grade ? MATERIALS.find((m) => m.temptsDogs === undefined && m.grade.every((x, i) => x === grade[i])) ?? null : null;
}

/** Label and numbers. */
export const bagName = (bag: Bag): string => (bag.printed === '' || bag.label.includes(bag.printed) ? bag.label : `${bag.label} ${bag.printed}`);
